package tintwright.bench;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.LabBatch;
import tintwright.colour.Viewing;
import tintwright.optics.KubelkaMunk;
import tintwright.optics.Surface;
import tintwright.shelf.ItemKind;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.StockItem;
import tintwright.shelf.Tint;
import tintwright.shelf.knowledge.Knowledge;

/** Look over the shelf: what stands on it, how well it is known, what has run low or grown old, what to buy. */
public final class ShelfBench {
    /** Days ahead that an end of shelf life is worth a word; a judgement of ours. */
    private static final int SOON_DAYS = 30;

    private ShelfBench() {}

    /**
     * One thing on the shelf.
     *
     * @param chips     how many chips hold it
     * @param deviation how well its strength is known, one standard deviation in ln; empty where there is none to know
     * @param warnings  what to see to; mostly none
     */
    public record Line(StockItem item, int chips, OptionalDouble deviation, List<String> warnings) {
        /** @return the pigment of a tint */
        public Optional<PigmentFamily> family() {
            return item instanceof Tint tint ? Optional.of(tint.family()) : Optional.empty();
        }

        /** @return such as "well known" */
        public String known() {
            return deviation.isPresent() ? wordsFor(deviation.getAsDouble()) : "";
        }
    }

    /**
     * One thing to buy.
     *
     * @param why such as "running low"; at least one reason
     */
    public record Wanted(StockItem item, List<String> why) {
        /** @return such as "soot black: running low, 12 g left" */
        public String words() {
            OptionalDouble left = item.stock().gramsLeft();
            return item.name() + ": " + String.join(", ", why)
                    + (left.isPresent() ? String.format(Locale.ROOT, ", %.0f g left", left.getAsDouble()) : "");
        }
    }

    /** A tint that no chip taught is at 0.7; one chip by photo brings it below this; a judgement of ours. */
    private static final double ROUGHLY = 0.5;

    /** @return a deviation of the strength in words */
    public static String wordsFor(double deviation) {
        if (deviation < 0.04) {
            return "well known";
        }
        if (deviation < 0.12) {
            return "known";
        }
        return deviation < ROUGHLY ? "roughly known" : "only guessed";
    }

    /**
     * A tint of a family as it usually is, in the first white of the shelf.
     *
     * @param share of the tint by mass, 0 to 1
     * @return its cured colour under daylight, gloss and all
     */
    public static Lab usualColour(Knowledge knowledge, PigmentFamily family, double share) {
        double[][] tint = knowledge.usual(family);
        int white = knowledge.ids().indexOf(knowledge.shelf().bases().get(0).id());
        double[] k = knowledge.absorption()[white];
        double[] s = knowledge.scattering()[white];
        double[] film = new double[Grid.INSIDE.count()];
        for (int w = 0; w < film.length; w++) {
            double ratio = (share * tint[0][w] + (1 - share) * k[w]) / (share * tint[1][w] + (1 - share) * s[w]);
            film[w] = Surface.RESIN.measured(KubelkaMunk.reflectance(ratio), Geometry.SPECULAR_INCLUDED);
        }
        double[] lab = new double[3];
        LabBatch.of(Viewing.D65_10, Grid.INSIDE).lab(film, lab);
        return new Lab(lab[0], lab[1], lab[2], Viewing.D65_10);
    }

    /** @return everything, in the order of the shelf */
    public static List<Line> look(Knowledge knowledge, LocalDate today) {
        return knowledge.shelf().items().stream()
                .map(item -> switch (item.kind()) {
                    case BASE, TINT ->
                        new Line(
                                item,
                                knowledge.chipsWith(item.id()),
                                OptionalDouble.of(knowledge.strengthDeviation(item.id())),
                                warnings(item, today));
                    case PASTE, LEFTOVER, CATALYST, WAX, KIT ->
                        new Line(item, 0, OptionalDouble.empty(), warnings(item, today));
                })
                .toList();
    }

    /** @return what is low, past its shelf life or soon will be, in the order of the shelf; a leftover never */
    public static List<Wanted> toBuy(Shelf shelf, LocalDate today) {
        return shelf.items().stream()
                .filter(item -> item.kind() != ItemKind.LEFTOVER)
                .map(item -> new Wanted(item, warnings(item, today)))
                .filter(wanted -> !wanted.why().isEmpty())
                .toList();
    }

    /** @return the same as a list to take along, a thing a line below whose it is and of what day; empty when nothing is wanted */
    public static List<String> listToBuy(Shelf shelf, LocalDate today) {
        List<String> list = new ArrayList<>();
        for (Wanted wanted : toBuy(shelf, today)) {
            list.add(wanted.words());
        }
        if (!list.isEmpty()) {
            list.add(0, "To buy for " + shelf.name() + ", " + today);
        }
        return list;
    }

    /** @return what an item is to be looked at for; mostly nothing */
    static List<String> warnings(StockItem item, LocalDate today) {
        List<String> warnings = new ArrayList<>();
        item.bestBefore().ifPresent(day -> {
            // What keeps for two weeks only is not yet ending on the day it is opened.
            long keeps = ChronoUnit.DAYS.between(item.stock().openedOn().orElse(day), day);
            if (day.isBefore(today)) {
                warnings.add("past its shelf life since " + day);
            } else if (day.isBefore(today.plusDays(Math.min(SOON_DAYS, keeps / 2)))) {
                warnings.add("shelf life ends on " + day);
            }
        });
        if (item.low()) {
            warnings.add("running low");
        }
        return warnings;
    }
}
