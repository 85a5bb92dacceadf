package tintwright.window.shelf;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import tintwright.bench.ShelfBench;
import tintwright.bench.TidyShelf;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.files.LabRange;
import tintwright.files.ShelfFile;
import tintwright.match.NextChip;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.shelf.Base;
import tintwright.shelf.Chip;
import tintwright.shelf.Doubt;
import tintwright.shelf.ItemKind;
import tintwright.shelf.Knowledge;
import tintwright.shelf.Parts;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.Stock;
import tintwright.shelf.StockItem;
import tintwright.shelf.Tint;
import tintwright.units.Entry;
import tintwright.units.UnitSystem;
import tintwright.window.frame.Latest;
import tintwright.window.frame.Said;
import tintwright.window.job.JobModel;
import tintwright.window.picture.Shade;

/** What stands on the shelf, how well it is known, and what chip to make next. */
public final class ShelfModel {
    /** Share of tint in the chip that is proposed: far from white and far from hiding the white. */
    private static final double CHIP_SHARE = 0.01;
    /** A tint whose strength is known this well, in ln, needs no chip. */
    private static final double KNOWN = 0.12;

    private static final double GUESSED = 0.5;

    private final JobModel job;
    private final Clock clock;
    private final Latest looking;
    private final Latest files;
    private final ReadOnlyObjectWrapper<Stand> stand = new ReadOnlyObjectWrapper<>(Stand.NONE);
    private final ReadOnlyObjectWrapper<Advice> next = new ReadOnlyObjectWrapper<>(Advice.NONE);
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper stockProblem = new ReadOnlyStringWrapper("");

    /**
     * One thing on the shelf as shown.
     *
     * @param look     its colour: a tint at one part in a hundred of white
     * @param known    how well its strength is known; empty where there is nothing to know
     * @param chips    how many chips hold it; empty where none can
     * @param left     grams left where they were weighed; else empty
     * @param warnings what to see to; may be empty
     */
    public record Line(
            String id,
            String name,
            ItemKind kind,
            Optional<Shade> look,
            String known,
            String chips,
            OptionalDouble left,
            String warnings) {}

    /**
     * The chip to make next.
     *
     * @param words what to make and what it is good for
     * @param line  the beginning of its line, to be ended with what the meter shows; empty when no chip is needed
     */
    public record Advice(String words, String line) {
        static final Advice NONE = new Advice("", "");
    }

    /**
     * One base, tint or leftover, to be put right.
     *
     * @param family    its pigment; empty for what has none
     * @param left      grams left, when weighed
     * @param chips     the chips that hold it, words by id
     * @param goes      true when it can be taken off the shelf
     */
    public record Detail(
            String id,
            String name,
            Optional<PigmentFamily> family,
            OptionalDouble left,
            Map<String, String> chips,
            boolean goes) {}

    /**
     * The whole shelf as shown.
     *
     * @param toBuy what is low or old and why; may be empty
     */
    public record Stand(String name, List<Line> lines, Advice next, List<String> doubts, List<String> toBuy) {
        static final Stand NONE = new Stand("", List.of(), Advice.NONE, List.of(), List.of());
    }

    /** @param wanted the chip that would make the plan in hand most certain */
    public ShelfModel(
            JobModel job, ObservableValue<Optional<NextChip>> wanted, Latest looking, Latest files, Clock clock) {
        this.job = job;
        next.bind(Bindings.createObjectBinding(
                () -> wanted.getValue()
                        .flatMap(chip -> job.now()
                                .shelf()
                                .tint(chip.tintId())
                                .map(tint -> new Advice(
                                        chip.words(),
                                        begun(tint, chip.share(), job.now().scaleStep()))))
                        .orElse(stand.get().next()),
                wanted,
                stand));
        this.clock = clock;
        this.looking = looking;
        this.files = files;
        job.knowledgeProperty().addListener((property, before, after) -> look(after));
        if (job.knowledgeProperty().get() != null) {
            look(job.knowledgeProperty().get());
        }
    }

    private void look(Knowledge knowledge) {
        LocalDate today = LocalDate.now(clock);
        double step = job.now().scaleStep();
        looking.ask(() -> stand(knowledge, today, step), stand::set, failure -> problem.set(Said.of(failure)));
    }

    private static Stand stand(Knowledge knowledge, LocalDate today, double step) {
        List<Line> lines = new ArrayList<>();
        for (ShelfBench.Line item : ShelfBench.look(knowledge, today)) {
            // How far a mere guess may be off is no figure for a person.
            String known = item.deviation().isEmpty()
                    ? ""
                    : item.deviation().getAsDouble() > GUESSED
                            ? item.known()
                            : say(
                                    "%s, to %.0f %%",
                                    item.known(), 100 * item.deviation().getAsDouble());
            String chips = item.deviation().isEmpty() ? "" : Integer.toString(item.chips());
            lines.add(new Line(
                    item.item().id(),
                    item.item().name(),
                    item.item().kind(),
                    shade(knowledge, item.item()),
                    known,
                    chips,
                    item.item().stock().gramsLeft(),
                    String.join(", ", item.warnings())));
        }
        List<String> doubts = knowledge.doubts().stream().map(Doubt::words).toList();
        List<String> toBuy = ShelfBench.toBuy(knowledge.shelf(), today).stream()
                .map(ShelfBench.Wanted::words)
                .toList();
        return new Stand(knowledge.shelf().name(), lines, next(knowledge, step), doubts, toBuy);
    }

    private static Optional<Shade> shade(Knowledge knowledge, StockItem item) {
        String base = knowledge.shelf().bases().get(0).id();
        Map<String, Double> mix = switch (item.kind()) {
            case TINT -> Map.of(base, 1 - CHIP_SHARE, item.id(), CHIP_SHARE);
            case BASE, LEFTOVER -> Map.of(item.id(), 1.0);
            case PASTE, CATALYST, WAX, KIT -> Map.of();
        };
        return mix.isEmpty()
                ? Optional.empty()
                : Optional.of(Shade.of(knowledge.colour(Parts.of(mix), Viewing.D65_10, Geometry.SPECULAR_INCLUDED)));
    }

    private static Advice next(Knowledge knowledge, double step) {
        Optional<Tint> least = knowledge.shelf().tints().stream()
                .max(Comparator.comparingDouble(tint -> knowledge.strengthDeviation(tint.id())));
        if (least.isEmpty()) {
            return new Advice(
                    "Put your first tint on the shelf: its name, its pigment if you know it, and how much "
                            + "there is.",
                    "");
        }
        Base white = knowledge.shelf().bases().get(0);
        if (knowledge.chipsWith(white.id()) == 0) {
            return new Advice(
                    say(
                            "Read your white first: draw %s down with nothing in it, let it cure, read it. "
                                    + "Everything is mixed from it.",
                            white.name()),
                    white.name() + ": ");
        }
        if (knowledge.strengthDeviation(least.get().id()) < KNOWN) {
            return new Advice("None is needed: every tint is known. A chip now and then keeps it so.", "");
        }
        double grams = NextChip.grams(CHIP_SHARE, step);
        return new Advice(
                say(
                        "Make a chip of %s: it is the least known. Weigh %.2f g of it into %.1f g of white, draw "
                                + "it down, let it cure, read it.",
                        least.get().name(), grams * CHIP_SHARE, grams * (1 - CHIP_SHARE)),
                begun(least.get(), CHIP_SHARE, step));
    }

    /** The line of a chip up to what only the meter can say. */
    private static String begun(Tint tint, double share, double step) {
        double grams = NextChip.grams(share, step);
        return say("%.2f %s in %.1f: ", grams * share, tint.name(), grams * (1 - share));
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    /**
     * Puts a tint on the shelf: three fields and no more.
     *
     * @return false when it cannot be; {@link #stockProblemProperty()} says why
     */
    public boolean addTint(String name, PigmentFamily family, String gramsLeft, UnitSystem units) {
        return changed(stockProblem, () -> {
            if (name.isBlank()) {
                throw new IllegalArgumentException("give the tint a name, as its label says");
            }
            Shelf shelf = job.now().shelf();
            TidyShelf.checkFree(shelf, "", name);
            return shelf.with(Tint.of(idOf(name, shelf), name.trim(), family)
                    .withStock(Stock.UNKNOWN.withGramsLeft(left(gramsLeft, units))));
        });
    }

    private static OptionalDouble left(String typed, UnitSystem units) {
        return typed.isBlank() ? OptionalDouble.empty() : OptionalDouble.of(Entry.grams("what is left", typed, units));
    }

    /** @return what can be put right of one thing on the shelf */
    public Detail detail(String id) {
        Shelf shelf = job.now().shelf();
        Map<String, String> chips = new LinkedHashMap<>();
        shelf.chips().stream()
                .filter(chip -> chip.parts().grams(id) > 0)
                .forEach(chip -> chips.put(chip.id(), words(chip, shelf)));
        return new Detail(
                id,
                shelf.nameOf(id),
                shelf.tint(id).map(Tint::family),
                shelf.item(id).map(StockItem::stock).orElse(Stock.UNKNOWN).gramsLeft(),
                chips,
                shelf.base(id).isEmpty());
    }

    private static String words(Chip chip, Shelf shelf) {
        List<String> parts = new ArrayList<>();
        chip.parts()
                .grams()
                .forEach((id, grams) -> parts.add(say(grams < 1 ? "%.2f g %s" : "%.1f g %s", grams, shelf.nameOf(id))));
        return String.join(", ", parts) + chip.madeOn().map(day -> ", " + day).orElse("");
    }

    /**
     * Puts right what is written of a base or a tint.
     *
     * @return false when it cannot be; {@link #stockProblemProperty()} says why
     */
    public boolean change(String id, String name, PigmentFamily family, String gramsLeft, UnitSystem units) {
        return changed(
                stockProblem, () -> TidyShelf.change(job.now().shelf(), id, name, family, left(gramsLeft, units)));
    }

    /** Takes a tint or leftover off the shelf with its chips; undo brings all of it back. */
    public boolean takeOff(String id) {
        return changed(
                stockProblem,
                () -> TidyShelf.takeOff(
                        job.now().shelf(),
                        id,
                        job.now().cup().flatMap(cup -> cup.state().parts())));
    }

    /** Forgets a chip that was wrong; undo brings it back. */
    public boolean forget(String chipId) {
        return changed(stockProblem, () -> TidyShelf.forget(job.now().shelf(), chipId));
    }

    private static String idOf(String name, Shelf shelf) {
        String plain = name.trim().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
        String id = plain.isBlank() ? "tint" : plain;
        int number = 2;
        while (shelf.item(id).isPresent()) {
            id = plain + "-" + number++;
        }
        return id;
    }

    /**
     * Takes a chip as one line: "0.2 soot black in 19.8: 61.2 -0.4 -1.1", grams and name of each tint, grams of white,
     * L*, a*, b* as read under D65 and the 10 degree observer.
     *
     * @return false when the line cannot be read; {@link #problemProperty()} says why
     */
    public boolean addChip(String line) {
        return changed(() -> {
            ChipLine read = ChipLine.read(line, job.now().shelf());
            LabRange.check(read.lightness(), read.a(), read.b());
            Lab colour = new Lab(read.lightness(), read.a(), read.b(), Viewing.D65_10);
            Shelf shelf = job.now().shelf();
            if (shelf.chips().stream()
                    .anyMatch(chip -> chip.parts().grams().equals(read.grams())
                            && chip.readings().stream()
                                    .anyMatch(known -> known instanceof ColourReading same
                                            && same.lab().equals(colour)))) {
                throw new IllegalArgumentException("this chip is on the shelf already, the same to the last digit; one "
                        + "made a second time reads a little differently");
            }
            int number = shelf.chips().size() + 1;
            while (taken(shelf, "chip-" + number)) {
                number++;
            }
            Chip chip = new Chip(
                    "chip-" + number,
                    Parts.of(read.grams()),
                    List.of(new ColourReading(
                            colour,
                            Covariance.same(ColourReading.USUAL_NOISE),
                            Geometry.SPECULAR_EXCLUDED,
                            FilmState.CURED,
                            Optional.empty())),
                    Optional.of(LocalDate.now(clock)),
                    "");
            List<Chip> chips = new ArrayList<>(shelf.chips());
            chips.add(chip);
            return shelf.withChips(chips);
        });
    }

    private static boolean taken(Shelf shelf, String id) {
        return shelf.chips().stream().anyMatch(chip -> chip.id().equals(id));
    }

    /** Starts a shelf of one's own: a white and nothing else. */
    public boolean startOwn(String white) {
        return changed(() -> {
            String name = white.isBlank() ? "White" : white.trim();
            Base base = new Base("white", name, Base.USUAL_DENSITY, false, Stock.UNKNOWN);
            return new Shelf("My shelf", List.of(base), List.of());
        });
    }

    /** Reads a shelf's file, off the screen's thread. */
    public void open(Path file) {
        files.ask(
                () -> ShelfFile.read(file),
                read -> {
                    problem.set("");
                    job.change(before -> before.with(read));
                },
                failure -> problem.set(Said.of(failure)));
    }

    private boolean changed(Supplier<Shelf> edit) {
        return changed(problem, edit);
    }

    /** @param said where it is said when the change cannot be made */
    private boolean changed(ReadOnlyStringWrapper said, Supplier<Shelf> edit) {
        try {
            Shelf shelf = edit.get();
            problem.set("");
            stockProblem.set("");
            job.change(before -> before.with(shelf));
            return true;
        } catch (IllegalArgumentException e) {
            said.set(Said.of(e));
            return false;
        }
    }

    ReadOnlyObjectProperty<Stand> standProperty() {
        return stand.getReadOnlyProperty();
    }

    /** The chip that would make the plan in hand most certain; without one, the tint known least. */
    ReadOnlyObjectProperty<Advice> nextProperty() {
        return next.getReadOnlyProperty();
    }

    /** What was wrong with the last chip or shelf file. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** What was wrong with the last tint that was added, changed or taken off. */
    ReadOnlyStringProperty stockProblemProperty() {
        return stockProblem.getReadOnlyProperty();
    }
}
