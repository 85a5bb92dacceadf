package tintwright.bench;

import java.util.List;
import java.util.Optional;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.logbook.Saved;

/** Puts a boat or a place into the log, or corrects what is said of it. */
public final class KeepBoat {
    private final ShopLog log;

    public KeepBoat(ShopLog log) {
        this.log = log;
    }

    /** @throws IllegalArgumentException when a boat of this name is in the log already: it could not be told apart */
    public Saved add(Page.Boat boat) {
        List<Noted<Page.Boat>> same = log.book().boatsNamed(boat.name());
        if (!same.isEmpty()) {
            throw new IllegalArgumentException("there is a boat \"" + same.get(0).page().name() + "\" in the log already; give this"
                    + " one another name, such as one with its owner's");
        }
        return log.book().begin(boat);
    }

    /** Changes what is given and keeps the rest. */
    public Saved change(Noted<Page.Boat> boat, Optional<String> name, Optional<String> type, Optional<Integer> year,
            Optional<String> notes) {
        Page.Boat old = boat.page();
        return log.book().correct(boat.id(), new Page.Boat(name.orElse(old.name()), type.orElse(old.type()),
                year.or(old::year), notes.orElse(old.notes()), old.photos()));
    }

    /** @throws IllegalArgumentException when the boat has a place of this name */
    public Saved addPlace(Noted<Page.Boat> boat, String name, String aged) {
        boolean known = log.book().of(boat.id(), Page.Place.class).stream()
                .anyMatch(place -> place.page().name().equalsIgnoreCase(name.strip()));
        if (known) {
            throw new IllegalArgumentException("the " + boat.page().name() + " has a place \"" + name + "\" already");
        }
        return log.book().write(Optional.of(boat.id()), new Page.Place(name.strip(), aged, List.of()));
    }
}
