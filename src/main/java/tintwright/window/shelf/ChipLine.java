package tintwright.window.shelf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tintwright.shelf.Base;
import tintwright.shelf.Shelf;
import tintwright.shelf.Tint;
import tintwright.window.pieces.Figures;

/**
 * A chip in one line, such as "0.2 soot black, 0.1 straw yellow in 19.7: 61.2 -0.4 3.1", or of the white alone,
 * "white: 93.5 -0.8 2.1".
 *
 * @param grams grams by id, the base among them
 */
record ChipLine(Map<String, Double> grams, double lightness, double a, double b) {
    private static final double WHITE_GRAMS = 20;
    private static final Pattern SHAPE = Pattern.compile("(.+)\\bin\\s+([0-9.,]+)\\s*g?\\s*([^:]*):(.+)");
    /** The white with nothing in it; how much of it was drawn down says nothing and may be left out. */
    private static final Pattern WHITE =
            Pattern.compile("(?:in\\s+)?(?:[0-9.,]+\\s*g?\\b\\s*)?(?:in\\s+)?([^:]*):(.+)");

    private static final Pattern PART = Pattern.compile("\\s*([0-9]+(?:[.,][0-9]+)?)\\s*(?:g\\s+)?(\\S.*?)\\s*");
    private static final Pattern NUMBER = Pattern.compile("[-\u2212+]?[0-9]+(?:[.,][0-9]+)?");

    /** @throws IllegalArgumentException when the line cannot be read; the message says what was meant instead */
    static ChipLine read(String line, Shelf shelf) {
        String example = String.format(
                Locale.ROOT,
                "write it like: 0.2 %s in 19.8: 61.2 -0.4 -1.1",
                shelf.tints().isEmpty() ? "black" : shelf.tints().get(0).name());
        Matcher white = WHITE.matcher(line.trim());
        if (white.matches() && base(white.group(1).trim(), shelf).isPresent()) {
            List<Double> numbers = reading(white.group(2), example);
            return new ChipLine(
                    Map.of(base(white.group(1).trim(), shelf).get(), WHITE_GRAMS),
                    numbers.get(0),
                    numbers.get(1),
                    numbers.get(2));
        }
        Matcher shape = SHAPE.matcher(line.trim());
        if (!shape.matches()) {
            throw new IllegalArgumentException("the chip could not be read; " + example);
        }
        Map<String, Double> grams = new LinkedHashMap<>();
        String base = base(shape.group(3).trim(), shelf)
                .orElseThrow(() -> new IllegalArgumentException(
                        "no base on the shelf is called \"" + shape.group(3).trim() + "\""));
        grams.put(base, Figures.number("grams of white", shape.group(2)));
        // A comma parts two tints only where a space and a new weight follow it; else it is a decimal comma.
        for (String each : shape.group(1).split("\\s*(?:\\+|;|,\\s(?=\\s*[0-9.,]+\\s*g?\\s+\\p{L})|\\band\\b)\\s*")) {
            Matcher part = PART.matcher(each);
            if (!part.matches()) {
                throw new IllegalArgumentException(
                        "\"" + each.trim() + "\" is no weight and name of a tint; " + example);
            }
            grams.merge(tintId(part.group(2), shelf), Figures.number("grams", part.group(1)), Double::sum);
        }
        List<Double> numbers = reading(shape.group(4), example);
        return new ChipLine(grams, numbers.get(0), numbers.get(1), numbers.get(2));
    }

    private static List<Double> reading(String typed, String example) {
        List<Double> numbers = new ArrayList<>();
        Matcher number = NUMBER.matcher(typed);
        while (number.find()) {
            numbers.add(Figures.number("a reading", number.group()));
        }
        if (numbers.size() != 3) {
            throw new IllegalArgumentException("after the colon stand L*, a* and b*, three numbers; " + example);
        }
        return numbers;
    }

    private static Optional<String> base(String name, Shelf shelf) {
        if (name.isEmpty() || name.equalsIgnoreCase("white")) {
            return Optional.of(shelf.bases().get(0).id());
        }
        return shelf.bases().stream()
                .filter(base -> same(base.name(), name) || same(base.id(), name))
                .map(Base::id)
                .findFirst();
    }

    private static String tintId(String name, Shelf shelf) {
        return shelf.tints().stream()
                .filter(tint -> same(tint.name(), name) || same(tint.id(), name))
                .map(Tint::id)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no tint on the shelf is called \"" + name
                        + "\"; there are "
                        + String.join(
                                ", ", shelf.tints().stream().map(Tint::name).toList())));
    }

    private static boolean same(String one, String other) {
        return one.trim().equalsIgnoreCase(other.trim());
    }
}
