package tintwright.logbook.disk;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tintwright.files.Claim;

/**
 * Appends to one file of our own. An entry is acknowledged when its bytes were forced to the disk, never before.
 * After any failure the pen is broken: take another, which looks at what is really in the file.
 */
public final class Pen implements Closeable {
    public static final String SET_ASIDE = "set-aside";
    public static final String ENDING = ".jsonl";
    /** A file this long is closed and another begun, so that a program that copies files has little to copy. */
    private static final long FULL = 2 << 20;

    /** What is remembered of the files in a folder. */
    interface Memory {
        /** Nothing. */
        Memory NONE = new Memory() {
            @Override
            public boolean knows(String name) {
                return false;
            }

            @Override
            public boolean wasLonger(String name, int lines) {
                return false;
            }
        };

        /** @return whether there was a file of this name */
        boolean knows(String name);

        /** @return whether the file had more lines than these: then an older copy of it has been put back */
        boolean wasLonger(String name, int lines);
    }

    private final Path file;
    private final Claim claim;
    private final Disk.Sheet sheet;
    private long end;
    private int nextNumber;
    private boolean broken;

    private Pen(Path file, Claim claim, Disk.Sheet sheet, long end, int nextNumber) {
        this.file = file;
        this.claim = claim;
        this.sheet = sheet;
        this.end = end;
        this.nextNumber = nextNumber;
    }

    /**
     * Takes a file of ours that is sound, not full and not held by another window, or begins a new one.
     *
     * @param locks where the locks lie, one folder of them for each folder of files
     * @param now   when the file is begun, should it be new
     * @param memory what the folder held: a file of ours may only be late in arriving
     */
    static Pen take(Path folder, ThisBench bench, Path locks, Disk disk, Instant now, Memory memory)
            throws IOException {
        Files.createDirectories(folder);
        int highest = 0;
        for (int number : numbersOfOurs(folder, bench)) {
            highest = Math.max(highest, number);
            Optional<Pen> pen = takeExisting(folder, name(bench, number), bench, locks, disk, memory);
            if (pen.isPresent()) {
                return pen.get();
            }
        }
        for (int number = highest + 1; ; number++) {
            String name = name(bench, number);
            Optional<Pen> pen =
                    memory.knows(name) ? Optional.empty() : begin(folder.resolve(name), bench, locks, disk, now);
            if (pen.isPresent()) {
                return pen.get();
            }
        }
    }

    private static String name(ThisBench bench, int number) {
        String digits = Integer.toString(number);
        return bench.id() + "-" + "0".repeat(Math.max(0, 4 - digits.length())) + digits + ENDING;
    }

    private static List<Integer> numbersOfOurs(Path folder, ThisBench bench) throws IOException {
        Pattern ours = Pattern.compile(Pattern.quote(bench.id()) + "-(\\d{4,9})" + Pattern.quote(ENDING));
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(path -> ours.matcher(path.getFileName().toString()))
                    .filter(match -> match.matches())
                    .map(match -> Integer.valueOf(match.group(1)))
                    .sorted()
                    .toList();
        }
    }

    private static Optional<Pen> takeExisting(
            Path folder, String name, ThisBench bench, Path locks, Disk disk, Memory memory) throws IOException {
        Path file = folder.resolve(name);
        if (Files.size(file) >= FULL) {
            return Optional.empty();
        }
        Optional<Claim> claim = Claim.tryOn(locks.resolve(name + ".lock"));
        if (claim.isEmpty()) {
            return Optional.empty();
        }
        try {
            LogFile read = LogFile.read(file);
            boolean whole = read.isSound() && !memory.wasLonger(name, read.lines());
            if (whole && read.header().orElseThrow().bench().equals(bench.id())) {
                return Optional.of(continueAfter(read, folder, claim.get(), disk));
            }
            claim.get().close();
            return Optional.empty();
        } catch (IOException | RuntimeException e) {
            claim.get().close();
            throw e;
        }
    }

    private static Pen continueAfter(LogFile read, Path folder, Claim claim, Disk disk) throws IOException {
        Path file = folder.resolve(read.name());
        setAside(read, folder, disk);
        Disk.Sheet sheet = disk.open(file);
        try {
            if (sheet.size() != read.length()) {
                throw new IOException("the file " + file + " grew while it was ours alone");
            }
            if (read.tornFrom() < read.length()) {
                sheet.cutTo(read.tornFrom());
            }
            Pen pen = new Pen(file, claim, sheet, read.tornFrom(), read.nextNumber());
            if (read.endsWithoutLineFeed()) {
                pen.put(new byte[] {'\n'});
            }
            return pen;
        } catch (IOException e) {
            sheet.close();
            throw e;
        }
    }

    /** Nothing is thrown away: what a cut-off line still says is kept beside the log before it is cut off. */
    private static void setAside(LogFile read, Path folder, Disk disk) throws IOException {
        if (read.tornFrom() < read.length()) {
            Path aside = folder.resolve(SET_ASIDE);
            Files.createDirectories(aside);
            disk.place(aside.resolve(read.name() + "-from-byte-" + read.tornFrom() + ".txt"), read.torn());
        }
    }

    private static Optional<Pen> begin(Path file, ThisBench bench, Path locks, Disk disk, Instant now)
            throws IOException {
        Optional<Claim> claim = Claim.tryOn(locks.resolve(file.getFileName() + ".lock"));
        if (claim.isEmpty()) {
            return Optional.empty();
        }
        try {
            if (Files.exists(file)) {
                claim.get().close();
                return Optional.empty();
            }
            byte[] header = new Header(Header.VERSION, bench.id(), now).line();
            disk.place(file, header);
            return Optional.of(new Pen(file, claim.get(), disk.open(file), header.length, 1));
        } catch (IOException | RuntimeException e) {
            claim.get().close();
            throw e;
        }
    }

    Path file() {
        return file;
    }

    /** @return how many lines the file has, by its name */
    Map<String, Integer> lines() {
        return Map.of(file.getFileName().toString(), nextNumber);
    }

    /** @return whether another file should be taken for the next entry */
    boolean isSpent() {
        return broken || end >= FULL;
    }

    /** Returns when the entries are on the disk: all of them are acknowledged, or none. */
    void write(List<Entry> entries) throws IOException {
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        int number = nextNumber;
        for (Entry entry : entries) {
            lines.write(entry.line(number++));
        }
        put(lines.toByteArray());
        nextNumber = number;
    }

    private void put(byte[] bytes) throws IOException {
        if (broken) {
            throw new IOException("this pen is broken");
        }
        broken = true;
        if (sheet.size() != end) {
            throw new IOException("somebody else changed " + file);
        }
        addForced(bytes);
        if (!sheet.isStill(file)) {
            throw new IOException("somebody else put another file in place of " + file);
        }
        end += bytes.length;
        broken = false;
    }

    private void addForced(byte[] bytes) throws IOException {
        try {
            sheet.add(bytes);
            sheet.force();
        } catch (IOException e) {
            takeBack(e);
            throw e;
        }
    }

    /** A half-written line would be reported as cut off by everyone who reads it; better not to leave it. */
    private void takeBack(IOException because) {
        try {
            sheet.cutTo(end);
        } catch (IOException alsoFailed) {
            because.addSuppressed(alsoFailed);
        }
    }

    @Override
    public void close() throws IOException {
        try {
            sheet.close();
        } finally {
            claim.close();
        }
    }
}
