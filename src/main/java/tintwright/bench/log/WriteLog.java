package tintwright.bench.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.stream.Collectors;
import tintwright.cup.Cup;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.logbook.disk.Saved;
import tintwright.reading.Reading;
import tintwright.shelf.Chip;
import tintwright.shelf.ItemKind;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;
import tintwright.shelf.StockItem;
import tintwright.shelf.Tint;

/** Writes down what was read, weighed, filled and judged, as it happens. */
public final class WriteLog {
    private final ShopLog log;

    public WriteLog(ShopLog log) {
        this.log = log;
    }

    /** What was read at a place today. */
    public Saved reading(Noted<Page.Boat> boat, Noted<Page.Place> place, List<Reading> readings, String note) {
        return log.book().write(Optional.of(boat.id()), new Page.Target(place.id(), today(), readings, note));
    }

    /**
     * A cup as it was mixed today.
     *
     * @param weighings what went onto the scale, in order; the parts themselves when it was weighed in one go
     * @param readings  what was read from it; may be empty
     * @throws IllegalArgumentException for parts that are not on the shelf
     */
    public Saved cup(
            Noted<Page.Boat> boat,
            Optional<Noted<Page.Place>> place,
            String name,
            Parts parts,
            Shelf shelf,
            List<Page.Weighing> weighings,
            List<Reading> readings,
            String note) {
        Parts plain = withoutLeftovers(parts, shelf);
        return log.book()
                .write(
                        Optional.of(boat.id()),
                        new Page.Cup(
                                name,
                                today(),
                                place.map(Noted::id),
                                plain,
                                ingredients(plain, shelf),
                                weighings,
                                readings,
                                note));
    }

    /**
     * A cup as it stands now. Handed over after every weighing, it is in the log as it happens: the first time it
     * is written, each later time the same page is corrected, and every wording stays on disk.
     *
     * @param earlier the page of this cup, when it was written before
     * @throws IllegalArgumentException for an empty cup, or parts that are not on the shelf
     */
    public Saved cup(
            Noted<Page.Boat> boat,
            Optional<Noted<Page.Place>> place,
            Cup cup,
            Shelf shelf,
            String note,
            Optional<UUID> earlier) {
        Page.Cup page = new CupPages(cup, shelf).cup(place.map(Noted::id), today(), note);
        return earlier.isPresent()
                ? log.book().correct(earlier.get(), page)
                : log.book().write(Optional.of(boat.id()), page);
    }

    /**
     * The cup in hand as it stands now, with boat and place where the log has them not yet.
     *
     * @throws IllegalArgumentException for an empty cup, or parts that are not on the shelf
     */
    public Saved inHand(String boat, Cup cup, Shelf shelf) {
        KeepBoat boats = new KeepBoat(log);
        Noted<Page.Boat> whose = boats.boat(boat);
        Noted<Page.Place> place = boats.place(whose, cup.hull().place());
        return cup(whose, Optional.of(place), cup, shelf, "", pageOf(whose, cup));
    }

    /** @return the page of this cup, from today or before: no two cups of a boat carry one name */
    public Optional<UUID> pageOf(Noted<Page.Boat> boat, Cup cup) {
        return log.book().of(boat.id(), Page.Cup.class).stream()
                .filter(page -> page.page().name().equals(cup.name()))
                .map(Noted::id)
                .reduce((first, last) -> last);
    }

    /**
     * What came of a cup besides itself, once it is done: the chips read on the way and what was set aside. What is
     * in the log already is not written twice.
     *
     * @param logged the page of the cup
     */
    public List<Saved> doneWith(Noted<Page.Boat> boat, UUID logged, Cup cup, Shelf shelf) {
        CupPages pages = new CupPages(cup, shelf);
        List<Saved> saved = new ArrayList<>();
        Optional<UUID> cupPage = Optional.of(logged);
        pages.chips(logged).stream()
                .filter(chip -> log.book().of(boat.id(), Page.ChipMade.class).stream()
                        .noneMatch(known -> known.page().cup().equals(cupPage)
                                && known.page().chip().id().equals(chip.chip().id())))
                .forEach(chip -> saved.add(log.book().write(Optional.of(boat.id()), chip)));
        pages.leftovers(logged, today()).stream()
                .filter(left -> log.book().of(boat.id(), Page.LeftOver.class).stream()
                        .noneMatch(known -> known.page().cup().equals(cupPage)
                                && known.page()
                                        .leftover()
                                        .name()
                                        .equals(left.leftover().name())))
                .forEach(left -> saved.add(log.book().write(Optional.of(boat.id()), left)));
        return saved;
    }

    /**
     * A cup set aside today.
     *
     * @throws IllegalArgumentException for parts that are not on the shelf
     */
    public Saved leftover(Noted<Page.Boat> boat, Optional<UUID> cup, Leftover leftover, Shelf shelf) {
        Parts plain = withoutLeftovers(leftover.parts(), shelf);
        Leftover expanded = new Leftover(
                leftover.id(),
                leftover.name(),
                plain,
                leftover.readings(),
                leftover.setAside().or(() -> Optional.of(today())));
        return log.book()
                .write(Optional.of(boat.id()), new Page.LeftOver(cup, expanded, ingredients(plain, shelf), false));
    }

    /**
     * A chip made today.
     *
     * @param cured how it cured; may be empty
     * @throws IllegalArgumentException for parts that are not on the shelf, or without a reading
     */
    public Saved chip(
            Noted<Page.Boat> boat, String name, Parts parts, Shelf shelf, List<Reading> readings, String cured) {
        Parts plain = withoutLeftovers(parts, shelf);
        ingredients(plain, shelf);
        return log.book()
                .write(
                        Optional.of(boat.id()),
                        new Page.ChipMade(
                                Optional.empty(), new Chip(name, plain, readings, Optional.of(today()), ""), cured));
    }

    /**
     * Holes filled today.
     *
     * @param grams how much was mixed for them, when known; 0 or more
     */
    public Saved fill(
            Noted<Page.Boat> boat,
            Optional<Noted<Page.Place>> place,
            OptionalDouble grams,
            List<String> steps,
            String note) {
        if (grams.isPresent() && !(grams.getAsDouble() >= 0)) {
            throw new IllegalArgumentException("grams must be 0 or more, were " + grams.getAsDouble());
        }
        return log.book()
                .write(
                        Optional.of(boat.id()),
                        new Page.Filled(place.map(Noted::id), Optional.empty(), today(), grams, steps, note));
    }

    /** How a cup, a chip or a fill came out; a later word takes the place of an earlier one. */
    public Saved verdict(Noted<Page.Boat> boat, UUID of, Page.Outcome outcome, String note) {
        Optional<Noted<Page.Verdict>> earlier = log.book().of(boat.id(), Page.Verdict.class).stream()
                .filter(said -> said.page().of().equals(of))
                .reduce((first, last) -> last);
        if (earlier.isPresent()) {
            return log.book().correct(earlier.get().id(), new Page.Verdict(of, outcome, today(), note));
        }
        return log.book().write(Optional.of(boat.id()), new Page.Verdict(of, outcome, today(), note));
    }

    /** Anything else, such as a fill or a chip; a note. */
    public Saved page(Noted<Page.Boat> boat, Page page) {
        return log.book().write(Optional.of(boat.id()), page);
    }

    private LocalDate today() {
        return LocalDate.now(log.clock());
    }

    /**
     * What a mix is made of in the end: a leftover in it counts as its own base and tints, for next year it is
     * no longer on the shelf.
     */
    static Parts withoutLeftovers(Parts parts, Shelf shelf) {
        Parts plain = parts;
        for (int depth = 0; depth <= shelf.leftovers().size(); depth++) {
            Optional<Leftover> inside = plain.grams().keySet().stream()
                    .flatMap(id -> shelf.leftover(id).stream())
                    .findFirst();
            if (inside.isEmpty()) {
                return plain;
            }
            double grams = plain.grams(inside.get().id());
            Parts own = inside.get().parts();
            Map<String, Double> rest = new LinkedHashMap<>(plain.grams());
            rest.remove(inside.get().id());
            own.times(grams / own.total()).grams().forEach((id, mass) -> rest.merge(id, mass, Double::sum));
            plain = Parts.of(rest);
        }
        throw new IllegalArgumentException("the leftovers on the shelf hold each other; correct their parts first");
    }

    /** @return what the parts are on this shelf */
    static List<Page.Ingredient> ingredients(Parts parts, Shelf shelf) {
        List<Page.Ingredient> all = new ArrayList<>();
        for (String id : parts.grams().keySet()) {
            StockItem item = shelf.item(id)
                    .filter(WriteLog::coloured)
                    .orElseThrow(() -> new IllegalArgumentException("there is no \"" + id + "\" on the shelf \""
                            + shelf.name() + "\"; its bases and tints are " + names(shelf)));
            String family = item instanceof Tint tint ? tint.family().code() : "";
            all.add(new Page.Ingredient(id, item.name(), item.kind().word(), family));
        }
        return all;
    }

    private static boolean coloured(StockItem item) {
        return item.kind() == ItemKind.BASE || item.kind() == ItemKind.TINT;
    }

    private static String names(Shelf shelf) {
        return shelf.items().stream()
                .filter(WriteLog::coloured)
                .map(StockItem::id)
                .collect(Collectors.joining(", "));
    }
}
