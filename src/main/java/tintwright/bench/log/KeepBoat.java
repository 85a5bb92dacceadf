package tintwright.bench.log;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.logbook.disk.LogFailure;
import tintwright.logbook.disk.Saved;

/** Puts a boat or a place into the log, or corrects what is said of it. */
public final class KeepBoat {
    /** A zip of one boat takes no larger one. */
    private static final long LARGEST_PHOTO = 60_000_000;

    private final ShopLog log;

    public KeepBoat(ShopLog log) {
        this.log = log;
    }

    /** @throws IllegalArgumentException when a boat of this name is in the log already: it could not be told apart */
    public Saved add(Page.Boat boat) {
        List<Noted<Page.Boat>> same = log.book().boatsNamed(boat.name());
        if (!same.isEmpty()) {
            throw new IllegalArgumentException(
                    "there is a boat \"" + same.get(0).page().name()
                            + "\" in the log already; give this one another name, such as one with its owner's");
        }
        return log.book().begin(boat);
    }

    /** Changes what is given and keeps the rest. */
    public Saved change(
            Noted<Page.Boat> boat,
            Optional<String> name,
            Optional<String> type,
            Optional<Integer> year,
            Optional<String> notes) {
        Page.Boat old = boat.page();
        return log.book()
                .correct(
                        boat.id(),
                        new Page.Boat(
                                name.orElse(old.name()),
                                type.orElse(old.type()),
                                year.or(old::year),
                                notes.orElse(old.notes()),
                                old.photos()));
    }

    /**
     * Copies a photo into the log and names it with the boat, or with one of its places.
     *
     * @throws LogFailure when the photo cannot be read, or the log cannot be written
     */
    public Saved addPhoto(Noted<Page.Boat> boat, Optional<Noted<Page.Place>> place, Path photo) throws LogFailure {
        byte[] bytes;
        try {
            if (Files.size(photo) > LARGEST_PHOTO) {
                throw new IllegalArgumentException(photo + " is larger than 60 MB; make it smaller first");
            }
            bytes = Files.readAllBytes(photo);
        } catch (IOException e) {
            throw new LogFailure("The photo " + photo + " cannot be read. Check its name and its folder.", e);
        }
        String name = log.book().keepPhoto(photo.getFileName().toString(), bytes);
        if (place.isPresent()) {
            Page.Place old = place.get().page();
            return log.book()
                    .correct(place.get().id(), new Page.Place(old.name(), old.aged(), with(old.photos(), name)));
        }
        Page.Boat old = boat.page();
        return log.book()
                .correct(
                        boat.id(),
                        new Page.Boat(old.name(), old.type(), old.year(), old.notes(), with(old.photos(), name)));
    }

    /** @return the boat of this name, begun in the log when it is not there yet */
    public Noted<Page.Boat> boat(String name) {
        if (log.book().boatsNamed(name).isEmpty()) {
            add(new Page.Boat(name, "", Optional.empty(), "", List.of()));
        }
        return log.boat(name);
    }

    /** @return the place of this name, written down when it is not there yet */
    public Noted<Page.Place> place(Noted<Page.Boat> boat, String name) {
        if (!known(boat, name)) {
            addPlace(boat, name, "");
        }
        return log.place(boat, name);
    }

    private boolean known(Noted<Page.Boat> boat, String place) {
        return log.book().of(boat.id(), Page.Place.class).stream()
                .anyMatch(one -> one.page().name().equalsIgnoreCase(place.strip()));
    }

    private static List<String> with(List<String> photos, String name) {
        return Stream.concat(photos.stream(), Stream.of(name)).distinct().toList();
    }

    /** @throws IllegalArgumentException when the boat has a place of this name */
    public Saved addPlace(Noted<Page.Boat> boat, String name, String aged) {
        if (known(boat, name)) {
            throw new IllegalArgumentException("the " + boat.page().name() + " has a place \"" + name + "\" already");
        }
        return log.book().write(Optional.of(boat.id()), new Page.Place(name.strip(), aged, List.of()));
    }
}
