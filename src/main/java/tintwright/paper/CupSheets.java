package tintwright.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tintwright.colour.Lab;
import tintwright.colour.Looks;
import tintwright.colour.RgbSpace;
import tintwright.fill.Caution;
import tintwright.logbook.MeanColour;
import tintwright.logbook.Page;
import tintwright.shelf.Parts;

/** What a logged cup carries on it: a label for the cup, and a card with the whole recipe for the drawer. */
public final class CupSheets {
    /** A label as office shops sell them, 90 by 55 mm; common practice, no source. */
    public static final Paper LABEL = Paper.card(90, 55);
    /** A6, 105 by 148 mm (ISO 216). */
    public static final Paper CARD = Paper.card(105, 148);

    private CupSheets() {}

    /**
     * A cup and what belongs to it.
     *
     * @param boat     name of the boat
     * @param place    the place it was mixed for; may be empty
     * @param cup      the cup
     * @param target   what was read at that place nearest to its day
     * @param verdicts how it came out, a sentence each
     * @param entry    the last letters of its name in the log, to find it again
     * @param code     what the code on its label holds
     */
    public record Told(
            String boat,
            String place,
            Page.Cup cup,
            Optional<Lab> target,
            List<String> verdicts,
            String entry,
            String code) {
        public Told {
            verdicts = List.copyOf(verdicts);
        }

        String where() {
            return place.isBlank() ? boat : boat + ", " + place;
        }
    }

    /** @return the label: where it is for, what is in it, when, and what not to forget */
    public static Sheet label(Told told) {
        Page.Cup cup = told.cup();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Facts(List.of(
                new Block.Fact("Mixed", cup.day().toString()),
                new Block.Fact("Grams", grams(cup.parts().total())),
                new Block.Fact("Log", told.entry()))));
        colour(cup).ifPresent(lab -> blocks.add(patch(lab, Looks.of(lab) + ", " + show(lab))));
        List<String> parts = new ArrayList<>();
        shares(cup).forEach((name, share) -> parts.add(name + " " + per100(share)));
        blocks.add(new Block.Code(told.code(), "In 100 g: " + String.join(", ", parts)));
        blocks.add(new Block.Text("Keep without catalyst. Flammable, styrene vapour: closed, cool, away from flame. "
                + "The product's data sheet comes first."));
        return new Sheet(told.where(), cup.name(), blocks, "");
    }

    /** @return the card: the recipe per 100 g, what was weighed, how near it came and how it came out */
    public static Sheet card(Told told) {
        Page.Cup cup = told.cup();
        List<Block> blocks = new ArrayList<>();
        List<Block.Fact> facts = new ArrayList<>(List.of(
                new Block.Fact("Mixed", cup.day().toString()),
                new Block.Fact("Grams", grams(cup.parts().total())),
                new Block.Fact("Log", told.entry())));
        blocks.add(new Block.Facts(facts));
        told.target().ifPresent(lab -> blocks.add(patch(lab, "Hull: " + Looks.of(lab) + ", " + show(lab))));
        colour(cup).ifPresent(lab -> blocks.add(patch(lab, "Mix: " + Looks.of(lab) + ", " + show(lab))));
        blocks.add(new Block.Heading("Recipe"));
        List<List<String>> rows = new ArrayList<>();
        shares(cup)
                .forEach((name, share) -> rows.add(
                        List.of(name, per100(share), grams(share * cup.parts().total()))));
        blocks.add(new Block.Table(
                List.of(
                        new Block.Column("part", 3, false),
                        new Block.Column("g in 100 g", 1.4, true),
                        new Block.Column("g then", 1.2, true)),
                rows));
        if (!cup.weighings().isEmpty()) {
            blocks.add(new Block.Heading("Weighed, in this order"));
            List<List<String>> weighed = new ArrayList<>();
            int number = 1;
            for (Page.Weighing one : cup.weighings()) {
                weighed.add(List.of(
                        Integer.toString(number++),
                        cup.nameOf(one.part()) + (one.note().isBlank() ? "" : " (" + one.note() + ")"),
                        grams(one.grams())));
            }
            blocks.add(new Block.Table(
                    List.of(
                            new Block.Column("", 0.4, true),
                            new Block.Column("what", 3.6, false),
                            new Block.Column("g", 1.2, true)),
                    weighed));
        }
        List<String> came = new ArrayList<>(told.verdicts());
        if (!cup.note().isBlank()) {
            came.add(cup.note());
        }
        if (!came.isEmpty()) {
            blocks.add(new Block.Heading("How it came out"));
            came.forEach(line -> blocks.add(new Block.Text(line)));
        }
        blocks.add(new Block.Notice(
                "Take care", List.of(Caution.DATA_SHEET.words(), Caution.STYRENE.words(), Caution.PEROXIDE.words())));
        return new Sheet(
                told.where(),
                cup.name(),
                blocks,
                "A printed patch is not a swatch: a cured chip against the hull decides.");
    }

    private static Map<String, Double> shares(Page.Cup cup) {
        Map<String, Double> shares = new LinkedHashMap<>();
        Parts parts = cup.parts();
        parts.grams().forEach((id, mass) -> shares.merge(cup.nameOf(id), mass / parts.total(), Double::sum));
        return shares;
    }

    private static Optional<Lab> colour(Page.Cup cup) {
        return MeanColour.of(cup.readings()).map(MeanColour::lab);
    }

    private static Block.Patch patch(Lab lab, String label) {
        RgbSpace.Code code = RgbSpace.SRGB.encode(lab);
        return new Block.Patch(byteOf(code.red()), byteOf(code.green()), byteOf(code.blue()), label);
    }

    private static int byteOf(double code) {
        return (int) Math.rint(code * 255);
    }

    private static String show(Lab lab) {
        return String.format(
                Locale.ROOT, "L* %.1f a* %.1f b* %.1f (%s)", lab.lightness(), lab.a(), lab.b(), lab.viewing());
    }

    private static String per100(double share) {
        return String.format(Locale.ROOT, share < 0.1 ? "%.3f" : "%.2f", share * 100);
    }

    private static String grams(double grams) {
        return String.format(Locale.ROOT, "%.2f", grams);
    }
}
