package tintwright.logbook.disk;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import tintwright.files.Claim;

/**
 * Entries the log folder would not take, kept on this machine's own disk until it does. The files have the shape
 * of log files, so that they can be put into the log by hand should it ever come to that.
 */
final class WaitingRoom implements Closeable {
    private final Path room;
    private final ThisBench bench;
    private final Disk disk;
    private final Map<UUID, Entry> entries = new LinkedHashMap<>();
    private final List<Trouble> troubles = new ArrayList<>();
    private final List<Left> left = new ArrayList<>();
    private Pen pen;

    /** A file of an earlier run, claimed so that no second window empties it too. */
    private record Left(Path file, Claim claim, boolean sound) {}

    WaitingRoom(Path room, ThisBench bench, Disk disk) {
        this.room = room;
        this.bench = bench;
        this.disk = disk;
        for (Path file : list()) {
            takeOver(file);
        }
    }

    private List<Path> list() {
        if (!Files.isDirectory(room)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(room)) {
            return files.filter(file -> file.toString().endsWith(Pen.ENDING))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            troubles.add(new Trouble(room.toString(), 0, Trouble.Kind.UNREADABLE, LogFailure.whyNotRead(room, e)));
            return List.of();
        }
    }

    private void takeOver(Path file) {
        try {
            Optional<Claim> claim = Claim.tryOn(bench.locksOfWaiting().resolve(file.getFileName() + ".lock"));
            if (claim.isPresent()) {
                LogFile read = LogFile.read(file);
                read.entries().forEach(entry -> entries.put(entry.id(), entry));
                read.troubles()
                        .forEach(trouble -> troubles.add(
                                new Trouble(file.toString(), trouble.line(), trouble.kind(), trouble.what())));
                left.add(new Left(file, claim.get(), read.isSound()));
            }
        } catch (IOException e) {
            troubles.add(new Trouble(file.toString(), 0, Trouble.Kind.UNREADABLE, LogFailure.whyNotRead(file, e)));
        }
    }

    /** @return where it is kept; empty if even this machine's own disk refused */
    Optional<Path> keep(Entry entry, Instant now) {
        entries.put(entry.id(), entry);
        try {
            if (pen == null || pen.isSpent()) {
                dropPen();
                pen = Pen.take(room, bench, bench.locksOfWaiting(), disk, now, Pen.Memory.NONE);
            }
            pen.write(List.of(entry));
            return Optional.of(pen.file());
        } catch (IOException | SecurityException refused) {
            dropPen();
            return Optional.empty();
        }
    }

    private void dropPen() {
        if (pen != null) {
            Path file = pen.file();
            try {
                pen.close();
                Claim.tryOn(bench.locksOfWaiting().resolve(file.getFileName() + ".lock"))
                        .ifPresent(claim -> left.add(new Left(file, claim, true)));
            } catch (IOException staysUntilTheNextStart) {
                troubles.add(new Trouble(
                        file.toString(),
                        0,
                        Trouble.Kind.UNREADABLE,
                        LogFailure.whyNotRead(file, staysUntilTheNextStart)));
            }
            pen = null;
        }
    }

    List<Entry> all() {
        return List.copyOf(entries.values());
    }

    boolean isEmpty() {
        return entries.isEmpty();
    }

    /** The log has this one now. */
    void done(Entry entry) {
        entries.remove(entry.id());
    }

    /** Empties the room once the log has everything; a file with any harm in it is moved aside, not deleted. */
    void clear() {
        dropPen();
        for (Left one : left) {
            try (Claim released = one.claim()) {
                if (one.sound() && LogFile.read(one.file()).troubles().isEmpty()) {
                    Files.deleteIfExists(one.file());
                } else {
                    Path aside = Files.createDirectories(room.resolve(Pen.SET_ASIDE));
                    Files.move(
                            one.file(),
                            Files.createTempFile(aside, one.file().getFileName() + "-", ".txt"),
                            StandardCopyOption.REPLACE_EXISTING);
                }
            } catch (IOException staysUntilTheNextStart) {
                troubles.add(new Trouble(
                        one.file().toString(),
                        0,
                        Trouble.Kind.UNREADABLE,
                        LogFailure.whyNotRead(one.file(), staysUntilTheNextStart)));
            }
        }
        left.clear();
    }

    List<Trouble> troubles() {
        return List.copyOf(troubles);
    }

    @Override
    public void close() {
        dropPen();
        for (Left one : left) {
            try {
                one.claim().close();
            } catch (IOException ignored) {
                // The claim goes with the process anyway.
            }
        }
        left.clear();
    }
}
