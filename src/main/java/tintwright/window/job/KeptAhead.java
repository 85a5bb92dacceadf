package tintwright.window.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import tintwright.cup.Deed;

/** What is still to be done of a chosen way back, as lines of a properties file. */
final class KeptAhead {
    private static final String COUNT = "ahead";

    private KeptAhead() {}

    static void write(List<Deed> ahead, Properties list) {
        list.setProperty(COUNT, Integer.toString(ahead.size()));
        for (int i = 0; i < ahead.size(); i++) {
            String name = COUNT + "." + i + ".";
            Deed deed = ahead.get(i);
            if (deed instanceof Deed.Weighed weighed) {
                put(list, name, "weigh", weighed.part(), weighed.grams());
                list.setProperty(name + "step", Double.toString(weighed.step()));
            } else if (deed instanceof Deed.LetDown down) {
                put(list, name, "letdown", down.part(), down.grams());
                list.setProperty(name + "step", Double.toString(down.step()));
                list.setProperty(name + "oneIn", Integer.toString(down.oneIn()));
            } else if (deed instanceof Deed.SetAside aside) {
                put(list, name, "set aside", aside.name(), aside.grams());
            } else {
                throw new IllegalStateException("no way back holds " + deed);
            }
        }
    }

    private static void put(Properties list, String name, String what, String of, double grams) {
        list.setProperty(name + "do", what);
        list.setProperty(name + "of", of);
        list.setProperty(name + "grams", Double.toString(grams));
    }

    /** @throws IllegalArgumentException when a line is missing or says what cannot be */
    static List<Deed> read(Properties list) {
        List<Deed> ahead = new ArrayList<>();
        int count = Integer.parseInt(list.getProperty(COUNT, "0"));
        for (int i = 0; i < count; i++) {
            String name = COUNT + "." + i + ".";
            String of = words(list, name + "of");
            double grams = number(list, name + "grams");
            ahead.add(
                    switch (words(list, name + "do")) {
                        case "weigh" -> new Deed.Weighed(of, grams, number(list, name + "step"));
                        case "letdown" ->
                            new Deed.LetDown(
                                    of, (int) number(list, name + "oneIn"), grams, number(list, name + "step"));
                        case "set aside" -> new Deed.SetAside(grams, of);
                        default -> throw new IllegalArgumentException(name + "do must be weigh, letdown or set aside");
                    });
        }
        return ahead;
    }

    private static String words(Properties list, String name) {
        String words = list.getProperty(name);
        if (words == null) {
            throw new IllegalArgumentException(name + " is missing");
        }
        return words;
    }

    private static double number(Properties list, String name) {
        return Double.parseDouble(words(list, name));
    }
}
