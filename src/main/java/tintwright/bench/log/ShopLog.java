package tintwright.bench.log;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import tintwright.logbook.DemoLog;
import tintwright.logbook.LogBook;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.logbook.disk.LogFailure;
import tintwright.logbook.disk.ThisBench;

/** Opens the log of the shop, or that of the invented boat. The other things done with a log begin here. */
public final class ShopLog implements AutoCloseable {
    /** Names another folder for the log. */
    public static final String FOLDER_VARIABLE = "TINTWRIGHT_LOG";
    /** Names another folder for what this machine alone keeps. */
    public static final String HOME_VARIABLE = "TINTWRIGHT_HOME";

    private final LogBook book;
    private final Clock clock;
    private final Optional<Path> scratch;

    private ShopLog(LogBook book, Clock clock, Optional<Path> scratch) {
        this.book = book;
        this.clock = clock;
        this.scratch = scratch;
    }

    /** @return where the log of this person is: what the variable says, else a folder in the home folder */
    public static Path usualFolder() {
        String named = System.getenv(FOLDER_VARIABLE);
        return named == null || named.isBlank()
                ? Path.of(System.getProperty("user.home"), "Tintwright", "log")
                : Path.of(named);
    }

    /** @return where this machine keeps its own small files: what the variable says, else in the home folder */
    public static Path usualHome() {
        String named = System.getenv(HOME_VARIABLE);
        return named == null || named.isBlank()
                ? Path.of(System.getProperty("user.home"), ".tintwright")
                : Path.of(named);
    }

    /**
     * Opens a log; a folder that is not there is an empty one, made with the first entry.
     *
     * @param home where this machine keeps its own small files
     */
    public static ShopLog open(Path folder, Path home, Clock clock) throws LogFailure {
        SecureRandom random = new SecureRandom();
        ThisBench bench = ThisBench.at(home, ThisMachine.marks(), random);
        return new ShopLog(LogBook.open(folder, bench, clock, random), clock, Optional.empty());
    }

    /** Opens a copy of the invented boat's log; what is written into it is gone when it is closed. */
    public static ShopLog demo(Clock clock) throws LogFailure {
        try {
            Path scratch = Files.createTempDirectory("tintwright-demo");
            DemoLog.copyTo(scratch.resolve("log"));
            LogBook book = LogBook.open(
                    scratch.resolve("log"),
                    new ThisBench("visitor", scratch.resolve("home")),
                    clock,
                    new SecureRandom());
            return new ShopLog(book, clock, Optional.of(scratch));
        } catch (IOException e) {
            throw new LogFailure(
                    "The demo log could not be copied to the folder for temporary files (" + e.getMessage()
                            + "). Make room there, or make it writable.",
                    e);
        }
    }

    public LogBook book() {
        return book;
    }

    Clock clock() {
        return clock;
    }

    /**
     * The one boat of this name.
     *
     * @throws IllegalArgumentException when there is none or more than one, saying what there is
     */
    public Noted<Page.Boat> boat(String name) {
        List<Noted<Page.Boat>> found = book.boatsNamed(name);
        if (found.size() > 1) {
            throw new IllegalArgumentException("there are " + found.size() + " boats called \"" + name
                    + "\" in the log; give one of them another name first");
        }
        if (found.isEmpty()) {
            List<String> near = book.search(name, 5).stream()
                    .map(boat -> boat.page().name())
                    .toList();
            throw new IllegalArgumentException("there is no boat \"" + name + "\" in the log " + book.folder()
                    + (near.isEmpty() ? "" : "; did you mean " + String.join(", ", near) + "?"));
        }
        return found.get(0);
    }

    /**
     * The one place of this name on a boat.
     *
     * @throws IllegalArgumentException when there is none, saying which there are
     */
    public Noted<Page.Place> place(Noted<Page.Boat> boat, String name) {
        List<Noted<Page.Place>> places = book.of(boat.id(), Page.Place.class);
        return places.stream()
                .filter(place -> place.page().name().equalsIgnoreCase(name.strip()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no place \"" + name + "\" on the "
                        + boat.page().name()
                        + (places.isEmpty()
                                ? "; add it first"
                                : "; its places are "
                                        + String.join(
                                                ", ",
                                                places.stream()
                                                        .map(place ->
                                                                place.page().name())
                                                        .toList()))));
    }

    /**
     * A cup of a boat: the one of this name, or the last one.
     *
     * @throws IllegalArgumentException when there is none
     */
    public Noted<Page.Cup> cup(Noted<Page.Boat> boat, Optional<String> name) {
        List<Noted<Page.Cup>> cups = book.of(boat.id(), Page.Cup.class).stream()
                .sorted(Comparator.comparing(cup -> cup.page().day()))
                .toList();
        if (cups.isEmpty()) {
            throw new IllegalArgumentException(
                    "no cup was written down for the " + boat.page().name());
        }
        return cups.stream()
                .filter(cup -> name.isEmpty()
                        || cup.page().name().equalsIgnoreCase(name.get().strip()))
                .reduce((first, last) -> last)
                .orElseThrow(() -> new IllegalArgumentException("there is no cup \"" + name.get() + "\" of the "
                        + boat.page().name() + "; its cups are "
                        + String.join(
                                ", ",
                                cups.stream().map(cup -> cup.page().name()).toList())));
    }

    /** @return the names of all cups and leftovers of a boat; none for a boat that is not in the log */
    public Set<String> cupNames(String boat) {
        Set<String> names = new HashSet<>();
        for (Noted<Page.Boat> one : book.boatsNamed(boat)) {
            book.of(one.id(), Page.Cup.class)
                    .forEach(page -> names.add(page.page().name()));
            book.of(one.id(), Page.LeftOver.class)
                    .forEach(page -> names.add(page.page().leftover().name()));
        }
        return names;
    }

    /** @return the cup with this name in the log; empty when there is none */
    @SuppressWarnings("unchecked") // what kind of page it is was looked at
    public Optional<Noted<Page.Cup>> cup(UUID id) {
        return book.find(id).filter(noted -> noted.page() instanceof Page.Cup).map(noted ->
                (Noted<Page.Cup>) (Noted<?>) noted);
    }

    @Override
    public void close() throws LogFailure {
        book.close();
        if (scratch.isPresent()) {
            try (Stream<Path> all = Files.walk(scratch.get())) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            } catch (IOException e) {
                throw new LogFailure(
                        "The copy of the demo log in " + scratch.get() + " could not be cleared away (" + e.getMessage()
                                + "). Delete that folder.",
                        e);
            }
        }
    }
}
