package tintwright.window.shelf;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
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
import tintwright.colour.Viewing;
import tintwright.files.ShelfFile;
import tintwright.match.NextChip;
import tintwright.shelf.Base;
import tintwright.shelf.Chip;
import tintwright.shelf.ItemKind;
import tintwright.shelf.Parts;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.Stock;
import tintwright.shelf.StockItem;
import tintwright.shelf.Tint;
import tintwright.shelf.knowledge.Doubt;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.units.Entry;
import tintwright.units.UnitSystem;
import tintwright.window.frame.FailureWords;
import tintwright.window.frame.LatestAnswer;
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
    private final ChipModel chip;
    private final Clock clock;
    private final LatestAnswer looking;
    private final LatestAnswer files;
    private final Consumer<String> copy;
    private final ReadOnlyObjectWrapper<Stand> stand = new ReadOnlyObjectWrapper<>(Stand.NONE);
    private final ReadOnlyObjectWrapper<Advice> next = new ReadOnlyObjectWrapper<>(Advice.NONE);
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper stockProblem = new ReadOnlyStringWrapper("");

    /**
     * One thing on the shelf as shown.
     *
     * @param look     its colour: a tint at one part in a hundred of white; empty where nothing is known of it yet
     * @param known    how well its strength is known; empty where there is nothing to know
     * @param figure   the same as a figure; may be empty
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
            String figure,
            String chips,
            OptionalDouble left,
            String warnings) {}

    /**
     * The chip to make next.
     *
     * @param words what to make and what it is good for
     * @param chip  what it is made of; empty when no chip is needed
     */
    public record Advice(String words, Optional<Proposed> chip) {
        static final Advice NONE = new Advice("", Optional.empty());
    }

    /**
     * What a chip is to be made of.
     *
     * @param part  id of a tint, or of a white that is drawn down alone
     * @param grams of the tint as a scale shows it; empty for a white
     * @param white grams of white; empty for a white alone
     */
    public record Proposed(String part, String grams, String white) {
        static Proposed of(Tint tint, double share, double step) {
            double grams = NextChip.grams(share, step);
            return new Proposed(tint.id(), say("%.2f", grams * share), say("%.1f", grams * (1 - share)));
        }
    }

    /**
     * What a family of tints looks like.
     *
     * @param tub     as it stands in the tub
     * @param inWhite one part in a hundred of white
     */
    public record Looks(Shade tub, Shade inWhite) {}

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
     * @param looks what each family looks like on this shelf; none for the unknown
     */
    public record Stand(
            String name,
            List<Line> lines,
            Advice next,
            List<String> doubts,
            List<String> toBuy,
            Map<PigmentFamily, Looks> looks) {
        static final Stand NONE = new Stand("", List.of(), Advice.NONE, List.of(), List.of(), Map.of());
    }

    /**
     * @param wanted the chip that would make the plan in hand most certain
     * @param copy   takes what is to be pasted elsewhere
     */
    public ShelfModel(
            JobModel job,
            ObservableValue<Optional<NextChip>> wanted,
            LatestAnswer looking,
            LatestAnswer files,
            Clock clock,
            Consumer<String> copy) {
        this.copy = copy;
        this.job = job;
        chip = new ChipModel(job, files, clock);
        next.bind(Bindings.createObjectBinding(
                () -> wanted.getValue()
                        .flatMap(chip -> job.now()
                                .shelf()
                                .tint(chip.tintId())
                                .map(tint -> new Advice(
                                        chip.words(),
                                        Optional.of(Proposed.of(
                                                tint, chip.share(), job.now().scaleStep())))))
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

    /** Puts the list of what to buy on the clipboard. */
    public void copyToBuy() {
        copy.accept(String.join(
                System.lineSeparator(), ShelfBench.listToBuy(job.now().shelf(), LocalDate.now(clock))));
    }

    private void look(Knowledge knowledge) {
        LocalDate today = LocalDate.now(clock);
        double step = job.now().scaleStep();
        looking.ask(() -> stand(knowledge, today, step), stand::set, failure -> problem.set(FailureWords.of(failure)));
    }

    private static Stand stand(Knowledge knowledge, LocalDate today, double step) {
        List<Line> lines = new ArrayList<>();
        for (ShelfBench.Line item : ShelfBench.look(knowledge, today)) {
            // How far a mere guess may be off is no figure for a person.
            String figure = item.deviation().isEmpty() || item.deviation().getAsDouble() > GUESSED
                    ? ""
                    : say("to %.0f %%", 100 * item.deviation().getAsDouble());
            boolean unseen = item.item() instanceof Tint tint && ChipModel.unseen(tint, knowledge);
            // Nobody asks how strong a white is.
            boolean white = item.item().kind() == ItemKind.BASE;
            String known = unseen ? "not known: make one chip of it" : white ? "" : item.known();
            String chips = item.deviation().isEmpty() ? "" : Integer.toString(item.chips());
            lines.add(new Line(
                    item.item().id(),
                    item.item().name(),
                    item.item().kind(),
                    unseen ? Optional.empty() : shade(knowledge, item.item()),
                    known,
                    figure,
                    chips,
                    item.item().stock().gramsLeft(),
                    String.join(", ", item.warnings())));
        }
        List<String> doubts = knowledge.doubts().stream().map(Doubt::words).toList();
        List<String> toBuy = ShelfBench.toBuy(knowledge.shelf(), today).stream()
                .map(ShelfBench.Wanted::words)
                .toList();
        return new Stand(knowledge.shelf().name(), lines, next(knowledge, step), doubts, toBuy, looks(knowledge));
    }

    private static Map<PigmentFamily, Looks> looks(Knowledge knowledge) {
        Map<PigmentFamily, Looks> looks = new EnumMap<>(PigmentFamily.class);
        for (PigmentFamily family : PigmentFamily.values()) {
            if (family != PigmentFamily.UNKNOWN) {
                looks.put(
                        family,
                        new Looks(
                                Shade.of(ShelfBench.usualColour(knowledge, family, 1)),
                                Shade.of(ShelfBench.usualColour(knowledge, family, CHIP_SHARE))));
            }
        }
        return looks;
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
        List<Tint> tints = knowledge.shelf().tints();
        if (tints.isEmpty()) {
            return new Advice(
                    "Put your first tint on the shelf: its name and what it looks like. Three or four will do.",
                    Optional.empty());
        }
        Optional<Tint> unseen =
                tints.stream().filter(tint -> ChipModel.unseen(tint, knowledge)).findFirst();
        if (unseen.isPresent()) {
            return chip("nobody knows its colour yet", unseen.get(), step);
        }
        Base white = knowledge.shelf().bases().get(0);
        if (knowledge.chipsWith(white.id()) == 0) {
            return new Advice(
                    say(
                            "Read your white first: spread %s on a card with nothing in it, let it cure, read it. "
                                    + "Everything is mixed from it.",
                            white.name()),
                    Optional.of(new Proposed(white.id(), "", "")));
        }
        Tint least = tints.stream()
                .max(Comparator.comparingDouble(tint -> knowledge.strengthDeviation(tint.id())))
                .orElseThrow();
        if (knowledge.strengthDeviation(least.id()) < KNOWN) {
            return new Advice(
                    "None is needed: every tint is known. A chip now and then keeps it so.", Optional.empty());
        }
        return chip("it is the least known", least, step);
    }

    private static Advice chip(String why, Tint tint, double step) {
        Proposed made = Proposed.of(tint, CHIP_SHARE, step);
        return new Advice(
                say(
                        "Make a chip of %s: %s. Weigh %s g of it into %s g of white, spread it on a card, let it "
                                + "cure, read it.",
                        tint.name(), why, made.grams(), made.white()),
                Optional.of(made));
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    /**
     * Puts a tint on the shelf.
     *
     * @param family what it looks like; empty when nothing was chosen, which is not the same as not known
     * @return false when it cannot be; {@link #stockProblemProperty()} says why
     */
    public boolean addTint(String name, Optional<PigmentFamily> family, String gramsLeft, UnitSystem units) {
        return changed(stockProblem, () -> {
            Shelf shelf = job.now().shelf();
            String called = name.isBlank()
                    ? family.filter(looks -> looks != PigmentFamily.UNKNOWN)
                            .map(looks -> freeName(looks.plain(), shelf))
                            .orElseThrow(() -> new IllegalArgumentException("give the tint a name, as its label says"))
                    : name.trim();
            PigmentFamily known = family.orElseThrow(() -> new IllegalArgumentException(
                    "choose what it looks like, or \u201c" + PigmentFamily.UNKNOWN.plain() + "\u201d"));
            TidyShelf.checkFree(shelf, "", called);
            return shelf.with(Tint.of(idOf(called, shelf), called, known)
                    .withStock(Stock.UNKNOWN.withGramsLeft(left(gramsLeft, units))));
        });
    }

    /** A tint without a label is called what it looks like. */
    private static String freeName(String looks, Shelf shelf) {
        List<String> taken = shelf.tints().stream().map(Tint::name).toList();
        String name = looks;
        for (int i = 2; taken.contains(name); i++) {
            name = looks + " " + i;
        }
        return name;
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
                failure -> problem.set(FailureWords.of(failure)));
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
            said.set(FailureWords.of(e));
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

    /** @return the chip in hand */
    ChipModel chip() {
        return chip;
    }

    /** What was wrong with the last shelf file. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** What was wrong with the last tint that was added, changed or taken off. */
    ReadOnlyStringProperty stockProblemProperty() {
        return stockProblem.getReadOnlyProperty();
    }
}
