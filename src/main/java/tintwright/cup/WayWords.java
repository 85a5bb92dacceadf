package tintwright.cup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tintwright.colour.DifferenceWords;
import tintwright.units.Grams;

/** The ways on from a cup, each said alike, so that they can be compared line by line. */
public final class WayWords {
    private final CupSight sight;
    private final CupWords words;

    public WayWords(CupSight sight) {
        this.sight = sight;
        this.words = new CupWords(sight);
    }

    /**
     * One way in words.
     *
     * @param title      what it is, in a few words
     * @param purpose    what it is for, one sentence
     * @param why        why it is recommended; empty when it is not
     * @param deeds      what to do, in order
     * @param rows       the same questions in the same order for each way
     * @param whiteShort true when more white is needed than is held back
     * @param how        how to weigh doses too small for the scale
     * @param levels     the cup on this way, from now to its end
     */
    public record Said(
            String title,
            String purpose,
            Optional<String> why,
            List<Deed> deeds,
            List<Row> rows,
            boolean whiteShort,
            List<String> how,
            List<Level> levels) {
        public Said {
            deeds = List.copyOf(deeds);
            rows = List.copyOf(rows);
            how = List.copyOf(how);
            levels = List.copyOf(levels);
        }

        /** @return all of it, one line each */
        public List<String> lines() {
            List<String> lines = new ArrayList<>();
            lines.add(title + ". " + purpose
                    + why.map(reason -> " Recommended: " + reason + ".").orElse(""));
            int number = 1;
            for (Deed deed : deeds) {
                lines.add(number++ + ". " + deed.text());
            }
            rows.forEach(row -> lines.add(row.question() + ": " + row.answer()));
            lines.addAll(how);
            return lines;
        }
    }

    /**
     * One thing to do.
     *
     * @param lead   such as "Add"; may be empty
     * @param figure such as "79.4 g"; may be empty
     * @param rest   such as "plain white"
     */
    public record Deed(String lead, String figure, String rest) {
        /** @return the whole of it */
        public String text() {
            return (lead + " " + figure + " " + rest).strip().replace("  ", " ");
        }
    }

    /** What is in a cup on the way. */
    public enum Inside {
        /** What is in it now. */
        NOW,
        /** White alone. */
        WHITE,
        /** The colour it is to have in the end. */
        END
    }

    /** A cup on the way, how full and of what, grams above 0. */
    public record Level(Inside inside, double grams) {}

    /** One question about a way and its answer. */
    public record Row(String question, String answer) {}

    /** @return the ways in words, in their order */
    public List<Said> all(List<Way> ways) {
        long within = ways.stream().filter(way -> way.beyondReserve() == 0).count();
        List<Said> said = new ArrayList<>();
        for (int i = 0; i < ways.size(); i++) {
            Way way = ways.get(i);
            boolean first = i == 0 && way.beyondReserve() == 0 && ways.size() > 1;
            said.add(of(
                    way,
                    first
                            ? Optional.of(within == 1 ? "stays within your white" : "fewest steps within your white")
                            : Optional.empty()));
        }
        return said;
    }

    private Said of(Way way, Optional<String> why) {
        List<Deed> deeds = new ArrayList<>();
        List<Dose> doses = List.of();
        String title;
        String purpose;
        String surplus = over(way);
        List<Level> levels =
                new ArrayList<>(List.of(new Level(Inside.NOW, sight.state().mass())));
        if (way instanceof Way.Climb climb) {
            title = "Lift the whole cup";
            purpose = "Nothing is poured off; the cup grows.";
            doses = climb.doses();
        } else if (way instanceof Way.Split split) {
            title = split.shortBy() > 0 ? "Pour some off, make less" : "Pour some off, lift the rest";
            purpose = split.shortBy() > 0
                    ? "Makes what your white is enough for."
                    : "Makes what you want from a part of the cup.";
            levels.add(new Level(Inside.NOW, split.keep()));
            deeds.add(new Deed("Pour off", pour(split.setAside()), "and write \u201c" + split.name() + "\u201d on it"));
            doses = split.doses();
            surplus = Grams.about(split.setAside()) + " dark, kept";
        } else if (way instanceof Way.Fresh fresh) {
            title = "Start again from white";
            purpose = "This cup tints fresh white, bit by bit.";
            levels.set(0, new Level(Inside.WHITE, fresh.white()));
            deeds.add(new Deed(
                    "Weigh", pour(fresh.white()), words.name(sight.cup().base()) + " into a clean cup"));
            deeds.add(new Deed("Stir in", pour(fresh.darkFirst()), "of this cup, then read a chip"));
            if (fresh.dark() > fresh.darkFirst() * 1.02) {
                deeds.add(new Deed("Go on to about", pour(fresh.dark()), "of this cup"));
            }
            doses = fresh.doses();
            surplus = Grams.about(Math.max(0, sight.state().mass() - fresh.dark())) + " dark, kept";
        } else {
            title = "Stop here";
            purpose = way.after().expected() <= 1
                    ? "It is as near as it needs to be."
                    : "Nothing on the shelf brings it nearer.";
        }
        deeds.addAll(added(doses));
        if (!(way instanceof Way.StopHere)) {
            levels.add(new Level(Inside.END, way.finalMass()));
        }
        List<String> how = new ArrayList<>();
        doses.forEach(dose -> how.addAll(words.how(dose)));
        how.addAll(words.notRead());
        how.addAll(words.wet());
        return new Said(title, purpose, why, deeds, rows(way, surplus), way.beyondReserve() > 0, how, levels);
    }

    private List<Deed> added(List<Dose> doses) {
        List<Deed> deeds = new ArrayList<>();
        List<String> tints = new ArrayList<>();
        for (Dose dose : doses) {
            if (dose.part().equals(sight.cup().base())) {
                deeds.add(new Deed("Add", pour(dose.grams()), words.name(dose.part())));
            } else {
                tints.add((dose.letDown().isPresent() ? Grams.fine(dose.grams()) : words.grams(dose.grams())) + " "
                        + words.name(dose.part()));
            }
        }
        if (!tints.isEmpty()) {
            deeds.add(new Deed("then", "", String.join(", ", tints)));
        }
        return deeds;
    }

    private List<Row> rows(Way way, String surplus) {
        double wanted = sight.cup().wantedGrams();
        return List.of(
                new Row("Makes", Grams.about(way.finalMass()) + " of " + Grams.about(wanted)),
                new Row("How close", DifferenceWords.off(way.after().expected())),
                new Row("How sure", DifferenceWords.likely(way.after().within90())),
                new Row("White", white(way)),
                new Row("Left over", surplus));
    }

    /** As fine as a hand pours: the figure to weigh to comes with the step itself. */
    private String pour(double grams) {
        return grams < 10 ? words.grams(grams) : String.format(Locale.ROOT, "%.1f g", grams);
    }

    private String white(Way way) {
        if (way.white() == 0) {
            return "none needed";
        }
        return Grams.about(way.white())
                + (way.beyondReserve() > 0
                        ? ", " + Grams.about(way.beyondReserve()) + " short"
                        : " of " + Grams.about(sight.state().reserve()) + " held back");
    }

    private String over(Way way) {
        return way.beyondNeed() > 0.03 * sight.cup().wantedGrams()
                ? Grams.about(way.beyondNeed()) + " more than you need"
                : "nothing";
    }
}
