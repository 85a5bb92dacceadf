package tintwright.logbook.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The files of one log folder as they were last seen; reads again only what changed. */
final class LogFolder {
    /** A program that keeps folders in step takes a file away for a moment and puts another in its place. */
    private static final Duration JUST_NOW = Duration.ofMinutes(1);

    private final Path folder;
    private final Clock clock;
    private final Map<String, Seen> seen = new TreeMap<>();
    private final Map<String, Trouble> gone = new LinkedHashMap<>();

    LogFolder(Path folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /** A file at one moment; its entries are dropped once they are in the ledger. */
    private record Seen(long size, FileTime changed, int lines, boolean newer, List<Trouble> troubles) {
        boolean isStill(BasicFileAttributes file) {
            return size == file.size() && changed.equals(file.lastModifiedTime());
        }
    }

    Path path() {
        return folder;
    }

    /** @return the files that are new or changed since the last look, by name */
    List<LogFile> readChanged() {
        Map<Path, BasicFileAttributes> changed = new LinkedHashMap<>();
        for (Path file : list()) {
            try {
                BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
                Seen before = seen.get(file.getFileName().toString());
                if (before == null || !before.isStill(attributes)) {
                    changed.put(file, attributes);
                }
            } catch (IOException e) {
                String name = file.getFileName().toString();
                gone.put(name, new Trouble(name, 0, Trouble.Kind.UNREADABLE, LogFailure.whyNotRead(file, e)));
            }
        }
        List<LogFile> read =
                changed.keySet().parallelStream().map(LogFile::read).toList();
        for (LogFile file : read) {
            note(file, changed.get(folder.resolve(file.name())));
        }
        return read;
    }

    private void note(LogFile file, BasicFileAttributes attributes) {
        boolean newer = file.header()
                .filter(header -> header.version() > Header.VERSION)
                .isPresent();
        seen.put(
                file.name(),
                new Seen(
                        attributes.size(),
                        attributes.lastModifiedTime(),
                        file.lines(),
                        newer,
                        List.copyOf(file.troubles())));
    }

    private List<Path> list() {
        gone.clear();
        List<Path> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(file -> file.getFileName().toString().endsWith(Pen.ENDING))
                    .sorted()
                    .forEach(found::add);
        } catch (NoSuchFileException e) {
            // A folder that never was is an empty log; one that was is a loss, named below.
            found.clear();
        } catch (IOException | java.io.UncheckedIOException e) {
            IOException cause = e instanceof IOException io ? io : new IOException(e);
            gone.put(
                    "",
                    new Trouble(folder.toString(), 0, Trouble.Kind.UNREADABLE, LogFailure.whyNotRead(folder, cause)));
            return found;
        }
        List<String> names =
                found.stream().map(file -> file.getFileName().toString()).toList();
        seen.keySet().stream().filter(name -> !names.contains(name)).forEach(name -> gone.put(name, absent(name)));
        return found;
    }

    private Trouble absent(String name) {
        return isArriving(name)
                ? arriving(name, 0)
                : new Trouble(
                        name,
                        0,
                        Trouble.Kind.MISSING,
                        "the file was there and is gone; what it said is still known to this window. Put it back, or"
                                + " connect the disk or share that holds it");
    }

    /** @return whether the file, or when it is not there its folder, was changed a moment ago */
    boolean isArriving(String name) {
        Path file = folder.resolve(name);
        try {
            FileTime changed = Files.getLastModifiedTime(Files.exists(file) ? file : folder);
            return Duration.between(changed.toInstant(), clock.instant()).abs().compareTo(JUST_NOW) < 0;
        } catch (IOException notThere) {
            return false;
        }
    }

    static Trouble arriving(String name, int line) {
        return new Trouble(
                name,
                line,
                Trouble.Kind.ARRIVING,
                "the file is not whole at this moment and its folder was changed just now: a program that keeps folders"
                        + " in step may be bringing it. Look again in a minute");
    }

    /** @return how many lines each file had */
    Map<String, Integer> lines() {
        Map<String, Integer> lines = new TreeMap<>();
        seen.forEach((name, file) -> lines.put(name, file.lines()));
        return lines;
    }

    List<Trouble> troubles() {
        List<Trouble> all = new ArrayList<>();
        seen.forEach((name, file) -> {
            if (!gone.containsKey(name)) {
                all.addAll(file.troubles());
            }
        });
        all.addAll(gone.values());
        return all;
    }

    /** @return whether this file is named as gone already */
    boolean names(Trouble trouble) {
        return gone.containsKey(trouble.file());
    }

    boolean hasNewer() {
        return seen.values().stream().anyMatch(Seen::newer);
    }
}
