package tintwright.logbook.disk;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.random.RandomGenerator;

/**
 * Entries in and out of one log folder, whatever they mean. Every method may be called from any thread.
 */
public final class LogStore implements Closeable {
    private final LogFolder folder;
    private final ThisBench bench;
    private final Disk disk;
    private final Clock clock;
    private final EntryIds ids;
    private final Consumer<Entry> news;
    private final Ledger ledger = new Ledger();
    private final WaitingRoom waiting;
    private final SeenBefore before;
    private List<Trouble> lost;
    private Pen pen;

    /**
     * Opens a folder and reads it; a folder that is not there is an empty log.
     *
     * @param news is told of every entry that comes into the ledger, from the moment of opening on
     */
    public LogStore(
            Path folder, ThisBench bench, Disk disk, Clock clock, RandomGenerator random, Consumer<Entry> news) {
        this.folder = new LogFolder(folder, clock);
        this.bench = bench;
        this.disk = disk;
        this.clock = clock;
        this.ids = new EntryIds(clock, random);
        this.news = news;
        this.waiting = new WaitingRoom(bench.waiting(folder), bench, disk);
        for (LogFile file : this.folder.readChanged()) {
            file.entries().forEach(entry -> enter(entry, file.name()));
        }
        this.before = new SeenBefore(bench.seen(folder));
        this.lost = before.missing(this.folder.lines(), this.folder::isArriving);
        before.remember(this.folder.lines());
        for (Entry entry : waiting.all()) {
            if (ledger.find(entry.id()).filter(entry::saysTheSameAs).isPresent()) {
                waiting.done(entry);
            } else {
                enter(entry, "waiting");
            }
        }
    }

    private void enter(Entry entry, String file) {
        if (ledger.add(entry, file)) {
            news.accept(entry);
        }
    }

    /** Looks what other windows and benches have written since. */
    public synchronized void refresh() {
        for (LogFile file : folder.readChanged()) {
            for (Entry entry : file.entries()) {
                if (ledger.find(entry.id()).filter(entry::saysTheSameAs).isEmpty()) {
                    enter(entry.apart(), file.name());
                }
            }
        }
        lost = before.missing(folder.lines(), folder::isArriving).stream()
                .filter(trouble -> !folder.names(trouble))
                .toList();
        before.remember(folder.lines());
    }

    /** What is missing will not come back: stop naming it. */
    public synchronized void acceptLosses() {
        before.accept(folder.lines());
        lost = List.of();
    }

    /** Writes a new entry. */
    public synchronized Saved append(String kind, UUID boat, String body) {
        return keep(Entry.of(ids.next(), clock.instant(), kind, boat, null, body));
    }

    /** Writes a new entry that others will belong to; it belongs to itself. */
    public synchronized Saved begin(String kind, String body) {
        UUID id = ids.next();
        return keep(Entry.of(id, clock.instant(), kind, id, null, body));
    }

    /** Writes what counts from now on in place of an earlier entry, which stays on disk. */
    public synchronized Saved replace(UUID earlier, String kind, String body) {
        Entry first = ledger.find(earlier)
                .orElseThrow(() -> new IllegalArgumentException("there is no entry " + earlier + " to correct"));
        UUID root = Ledger.rootOf(first);
        List<Entry> history = ledger.history(root);
        UUID id = ids.nextAfter(history.get(history.size() - 1).id());
        return keep(Entry.of(id, clock.instant(), kind, first.boat().orElse(null), root, body));
    }

    /**
     * What became of entries that were written elsewhere.
     *
     * @param added   how many were new
     * @param waiting why they are not in the folder yet; empty when they are
     */
    public record Adopted(int added, Optional<String> waiting) {}

    /** Writes entries that were written elsewhere, as they are; those that are known already are left alone. */
    public synchronized Adopted adopt(List<Entry> entries) {
        List<Entry> fresh = entries.stream()
                .filter(entry ->
                        ledger.find(entry.id()).filter(entry::saysTheSameAs).isEmpty())
                .toList();
        if (fresh.isEmpty()) {
            return new Adopted(0, Optional.empty());
        }
        fresh.forEach(entry -> enter(entry, bench.id()));
        Optional<String> refused = tryWaiting();
        if (refused.isEmpty()) {
            refused = tryWrite(fresh);
        }
        if (refused.isPresent()) {
            fresh.forEach(entry -> waiting.keep(entry, clock.instant()));
        }
        return new Adopted(fresh.size(), refused);
    }

    private Saved keep(Entry entry) {
        enter(entry, bench.id());
        Optional<String> refused = tryWaiting();
        if (refused.isEmpty()) {
            refused = tryWrite(List.of(entry));
        }
        return refused.isEmpty()
                ? new Saved.OnDisk(entry)
                : new Saved.Waiting(entry, refused.get(), waiting.keep(entry, clock.instant()));
    }

    /** Offers what waits to the folder again. @return why it was refused, or nothing when none waits any more */
    synchronized Optional<String> tryWaiting() {
        if (waiting.isEmpty()) {
            return Optional.empty();
        }
        for (Entry entry : waiting.all()) {
            Optional<String> refused = tryWrite(List.of(entry));
            if (refused.isPresent()) {
                return refused;
            }
            waiting.done(entry);
        }
        waiting.clear();
        return Optional.empty();
    }

    private Optional<String> tryWrite(List<Entry> entries) {
        if (folder.hasNewer()) {
            return Optional.of("The log " + folder.path() + " was written by a newer Tintwright, so this one only"
                    + " reads it. Use the newer program to add to it.");
        }
        try {
            writeOnce(entries);
            return Optional.empty();
        } catch (IOException | SecurityException first) {
            return tryAfresh(entries);
        }
    }

    /** A new pen looks at what is really there: another file may have been put in place of the one that was open. */
    private Optional<String> tryAfresh(List<Entry> entries) {
        try {
            writeOnce(entries);
            return Optional.empty();
        } catch (IOException | SecurityException e) {
            return Optional.of(LogFailure.whyNotWritten(folder.path(), e) + ".");
        }
    }

    private void writeOnce(List<Entry> entries) throws IOException {
        try {
            pen().write(entries);
        } catch (IOException | SecurityException e) {
            dropPen();
            throw e;
        }
    }

    private Pen pen() throws IOException {
        if (pen != null && pen.isSpent()) {
            dropPen();
        }
        if (pen == null && before.isAllGone(folder.path())) {
            // An unplugged share often leaves an empty folder behind: what is written there is hidden once it is back.
            throw new NoSuchFileException(folder.path().toString());
        }
        if (pen == null) {
            pen = Pen.take(folder.path(), bench, bench.locks(), disk, clock.instant(), before);
        }
        return pen;
    }

    private void dropPen() {
        try {
            if (pen != null) {
                before.remember(pen.lines());
                pen.close();
            }
        } catch (IOException everythingAcknowledgedIsForced) {
            pen = null;
        }
        pen = null;
    }

    public Instant now() {
        return clock.instant();
    }

    public synchronized <T> T ask(Function<Ledger, T> question) {
        return question.apply(ledger);
    }

    public synchronized List<Entry> waiting() {
        return waiting.all();
    }

    public synchronized List<Trouble> troubles() {
        List<Trouble> all = new ArrayList<>(folder.troubles());
        all.addAll(lost);
        all.addAll(ledger.clashes());
        all.addAll(waiting.troubles());
        return all;
    }

    public synchronized boolean isReadOnly() {
        return folder.hasNewer();
    }

    public Path path() {
        return folder.path();
    }

    @Override
    public synchronized void close() {
        tryWaiting();
        waiting.close();
        dropPen();
    }
}
