package tintwright.logbook;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.random.RandomGenerator;
import tintwright.colour.Lab;
import tintwright.logbook.disk.Disk;
import tintwright.logbook.disk.Entry;
import tintwright.logbook.disk.EntryIds;
import tintwright.logbook.disk.Ledger;
import tintwright.logbook.disk.LogFailure;
import tintwright.logbook.disk.LogStore;
import tintwright.logbook.disk.Saved;
import tintwright.logbook.disk.ThisBench;
import tintwright.logbook.disk.Trouble;

/**
 * The log of a shop: everything ever written about its boats, in one folder. Any number of windows and benches may
 * have the same folder open; each appends to files of its own, and {@link #refresh} brings in what others wrote.
 *
 * <p>Every method may be called from any thread. An entry that {@link Saved.OnDisk} speaks of is on the disk.
 */
public final class LogBook implements Closeable {
    private final LogStore store;
    private final Search search = new Search();

    private LogBook(Path folder, ThisBench bench, Clock clock, RandomGenerator random) {
        this.store = new LogStore(
                folder, bench, Disk.REAL, clock, random, entry -> entry.boat().ifPresent(search::changed));
    }

    /**
     * Opens a log. A folder that is not there is an empty log and made with the first entry. Nothing that is wrong
     * with the files keeps the rest from being read: see {@link #troubles}.
     *
     * @param clock when entries are written
     */
    public static LogBook open(Path folder, ThisBench bench, Clock clock, RandomGenerator random) {
        return new LogBook(folder, bench, clock, random);
    }

    public Path folder() {
        return store.path();
    }

    /** Writes a boat that was not in the log. */
    public Saved begin(Page.Boat boat) {
        return store.begin(PageShape.kind(boat), PageShape.body(boat));
    }

    /**
     * Writes a page.
     *
     * @param boat the boat it belongs to; empty for something of no boat, such as a chip for the shelf
     */
    public Saved write(Optional<UUID> boat, Page page) {
        return store.append(PageShape.kind(page), boat.orElse(null), PageShape.body(page));
    }

    /**
     * Writes what counts from now on in place of an earlier page, which stays on disk.
     *
     * @throws IllegalArgumentException if there is no such entry
     */
    public Saved correct(UUID id, Page page) {
        return store.replace(id, PageShape.kind(page), PageShape.body(page));
    }

    /**
     * Takes a page back; it stays on disk, and {@link #correct} brings it back.
     *
     * @throws IllegalArgumentException if there is no such entry
     */
    public Saved withdraw(UUID id, String why) {
        return store.replace(
                id,
                Entry.WITHDRAWN,
                PageShape.body(new Page.Remark(Optional.empty(), why.isBlank() ? "no reason given" : why)));
    }

    /**
     * Puts a photo into the folder of the log, for a page to name. Its name gets a mark of its content, so that two
     * benches that each keep a "bow.jpg" keep both.
     *
     * @param name  letters, digits, spaces, dots and dashes, ending in .jpg, .jpeg, .png, .tif or .tiff
     * @param bytes the photo
     * @return the name it is kept under
     * @throws LogFailure when the folder cannot be written; what stood there still stands
     */
    public String keepPhoto(String name, byte[] bytes) throws LogFailure {
        if (!BoatZip.PHOTO_NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("a photo is named with letters, digits, spaces, dots and dashes and"
                    + " ends in .jpg, .png or .tif, was \"" + name + "\"; rename it");
        }
        String kept = BoatZip.nameByContent(name, bytes);
        Path photo = folder().resolve(BoatZip.PHOTOS).resolve(kept);
        try {
            Files.createDirectories(photo.getParent());
            Disk.REAL.place(photo, bytes);
            return kept;
        } catch (IOException e) {
            throw LogFailure.notWritten(folder(), e);
        }
    }

    /** @return every boat by name */
    public List<Noted<Page.Boat>> boats() {
        List<Noted<Page.Boat>> boats = store.ask(ledger -> new ArrayList<>(ledger.current()
                .filter(entry -> entry.kind().equals("boat"))
                .flatMap(entry -> BoatReader.read(entry).stream().map(boat -> noted(entry, boat)))
                .toList()));
        Map<UUID, String> plain = new HashMap<>();
        boats.forEach(boat -> plain.put(boat.id(), Plain.of(boat.page().name())));
        boats.sort(Comparator.comparing((Noted<Page.Boat> boat) -> plain.get(boat.id()))
                .thenComparing(Noted::id, EntryIds.ORDER));
        return boats;
    }

    /** @return the boats of this name, upper and lower case and accents being the same */
    public List<Noted<Page.Boat>> boatsNamed(String name) {
        String plain = Plain.of(name);
        return boats().stream()
                .filter(boat -> Plain.of(boat.page().name()).equals(plain))
                .toList();
    }

    /** @return what counts today of a boat, the boat itself included, oldest first */
    public List<Noted<Page>> of(UUID boat) {
        return store.ask(
                ledger -> ledger.currentOf(boat).stream().map(LogBook::noted).toList());
    }

    /** @return the pages of one sort of a boat, oldest first */
    public <P extends Page> List<Noted<P>> of(UUID boat, Class<P> sort) {
        return store.ask(ledger -> ledger.currentOf(boat).stream()
                .flatMap(entry -> as(sort, entry).stream())
                .toList());
    }

    /** @return everything that counts today, of all boats and of none, oldest first */
    public List<Noted<Page>> all() {
        return store.ask(ledger -> ledger.current()
                .sorted(Comparator.comparing(Ledger::rootOf, EntryIds.ORDER))
                .map(LogBook::noted)
                .toList());
    }

    /** @return what counts today under this name; empty if it was taken back or never was */
    public Optional<Noted<Page>> find(UUID id) {
        return store.ask(ledger -> ledger.current(id).map(LogBook::noted));
    }

    /** @return every wording a page ever had, oldest first; a withdrawal as {@link Page.Unknown} */
    public List<Noted<Page>> history(UUID id) {
        return store.ask(
                ledger -> ledger.history(id).stream().map(LogBook::noted).toList());
    }

    /**
     * Boats by words in their log: names, places, colours, notes, dates. Upper and lower case and accents do not
     * matter, and the beginning or middle of a word is enough.
     *
     * @param most how many to give
     * @return those found by their names first, then the most recently written
     */
    public List<Noted<Page.Boat>> search(String words, int most) {
        return store.ask(ledger -> search.find(words, most, ledger).stream()
                .flatMap(boat -> ledger.current(boat).stream())
                .flatMap(entry -> BoatReader.read(entry).stream().map(boat -> noted(entry, boat)))
                .toList());
    }

    /** @return the cups, chips and leftovers nearest in colour */
    public Nearest nearest(Lab colour, int most) {
        return store.ask(ledger -> Nearest.to(colour, most, ledger));
    }

    /** Brings in what other windows and benches have written. */
    public void refresh() {
        store.refresh();
    }

    /** @return what is wrong with the folder, to be shown and not to be hidden; empty when all is well */
    public List<Trouble> troubles() {
        return store.troubles();
    }

    /** What is missing will not come back: stop naming it, and write into the folder as it is now. */
    public void acceptLosses() {
        store.acceptLosses();
    }

    /** @return whether a newer Tintwright wrote here, so that nothing can be added */
    public boolean isReadOnly() {
        return store.isReadOnly();
    }

    /** @return how many entries the folder has not taken yet */
    public int waiting() {
        return store.waiting().size();
    }

    LogStore store() {
        return store;
    }

    private static Noted<Page> noted(Entry entry) {
        return noted(entry, PageShape.read(entry));
    }

    private static <P extends Page> Noted<P> noted(Entry entry, P page) {
        return new Noted<>(Ledger.rootOf(entry), entry.at(), entry.boat(), page);
    }

    private static <P extends Page> Optional<Noted<P>> as(Class<P> sort, Entry entry) {
        Page page = PageShape.read(entry);
        return sort.isInstance(page) ? Optional.of(noted(entry, sort.cast(page))) : Optional.empty();
    }

    @Override
    public void close() {
        store.close();
    }
}
