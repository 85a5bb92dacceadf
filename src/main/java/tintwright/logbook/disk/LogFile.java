package tintwright.logbook.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** One file of the log folder as it was read: what it says, and what is wrong with it. */
public final class LogFile {
    /** Larger files are no log of ours; one is closed long before. */
    static final long LARGEST = 1L << 28;

    private final String name;
    private final byte[] bytes;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Trouble> troubles = new ArrayList<>();
    private Header header;
    private int lines;
    private int tornFrom;
    private int lastNumber = -1;
    private boolean numbersLost;

    private LogFile(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes;
        this.tornFrom = bytes.length;
    }

    /** Reads a file; whatever is wrong with it is in {@link #troubles()}, never thrown. */
    static LogFile read(Path file) {
        String name = file.getFileName().toString();
        try {
            if (Files.size(file) > LARGEST) {
                return unreadable(name, "larger than any log file (" + LARGEST / (1 << 20) + " MiB); move it away");
            }
            return of(name, Files.readAllBytes(file));
        } catch (IOException e) {
            return unreadable(name, LogFailure.whyNotRead(file, e));
        }
    }

    /** The same for bytes that are in memory already. */
    public static LogFile of(String name, byte[] bytes) {
        LogFile read = new LogFile(name, bytes);
        read.takeApart();
        return read;
    }

    private static LogFile unreadable(String name, String why) {
        LogFile none = new LogFile(name, new byte[0]);
        none.troubles.add(new Trouble(name, 0, Trouble.Kind.UNREADABLE, why));
        return none;
    }

    String name() {
        return name;
    }

    public List<Entry> entries() {
        return entries;
    }

    public List<Trouble> troubles() {
        return troubles;
    }

    public Optional<Header> header() {
        return Optional.ofNullable(header);
    }

    /** @return how many bytes were read */
    int length() {
        return bytes.length;
    }

    /** @return how many whole lines there are, good or bad */
    int lines() {
        return lines;
    }

    /** @return the number the next line must carry */
    int nextNumber() {
        return lastNumber + 1;
    }

    /** @return where the line without an end begins; the length of the file when there is none */
    int tornFrom() {
        return tornFrom;
    }

    /** @return whether the last line is whole but for its end */
    boolean endsWithoutLineFeed() {
        return tornFrom == bytes.length && bytes.length > 0 && bytes[bytes.length - 1] != '\n';
    }

    byte[] torn() {
        return Arrays.copyOfRange(bytes, tornFrom, bytes.length);
    }

    /** @return whether every byte up to a torn last line is as it was written, by this version */
    boolean isSound() {
        return header != null
                && header.version() <= Header.VERSION
                && troubles.stream().allMatch(trouble -> trouble.kind() == Trouble.Kind.TORN);
    }

    private void takeApart() {
        int from = 0;
        for (int at = 0; at < bytes.length; at++) {
            if (bytes[at] == '\n') {
                lines++;
                // A program that carries files between systems may have put CR before LF.
                boolean carriageReturn = at > from && bytes[at - 1] == '\r';
                take(from, carriageReturn ? at - 1 : at);
                from = at + 1;
            }
        }
        if (from < bytes.length) {
            takeLast(from);
        }
        if (bytes.length == 0) {
            trouble(
                    0,
                    Trouble.Kind.DAMAGED,
                    "the file is empty; it was begun with one line at least." + " Copy it again from where it came");
        }
    }

    private void takeLast(int from) {
        if (Line.holds(bytes, from, bytes.length)) {
            lines++;
            take(from, bytes.length);
            return;
        }
        tornFrom = from;
        trouble(
                lines + 1,
                Trouble.Kind.TORN,
                "the last line was cut off while it was written (" + (bytes.length - from)
                        + " bytes); everything before it is read");
    }

    private void take(int from, int to) {
        if (!Line.holds(bytes, from, to)) {
            numbersLost = true;
            trouble(
                    lines,
                    Trouble.Kind.DAMAGED,
                    "this line is not as it was written, so it is left out: " + beginning(from, to));
            return;
        }
        try {
            int number = number(from);
            if (number == 0) {
                takeHeader(Header.read(bytes, from, to));
            } else {
                entries.add(Entry.read(bytes, from, to));
            }
            countOff(number);
        } catch (IOException | ArithmeticException e) {
            boolean newer = header != null && header.version() > Header.VERSION;
            trouble(
                    lines,
                    newer ? Trouble.Kind.NEWER : Trouble.Kind.DAMAGED,
                    "this line is whole but means nothing to this version: " + beginning(from, to));
        }
    }

    private void takeHeader(Header read) {
        header = header == null || read.version() > header.version() ? read : header;
        lastNumber = -1;
        if (read.version() > Header.VERSION) {
            trouble(
                    0,
                    Trouble.Kind.NEWER,
                    "written by a newer Tintwright (version " + read.version() + " of the log, this program knows "
                            + Header.VERSION + "); it is read as far as possible");
        }
    }

    /** Lines carry numbers so that whole lines cannot vanish unnoticed. */
    private void countOff(int number) {
        int missing = number - lastNumber - 1;
        if (missing > 0 && !numbersLost) {
            trouble(
                    lines,
                    Trouble.Kind.MISSING,
                    missing == 1
                            ? "one line before this one is missing"
                            : missing + " lines before this one are missing");
        }
        lastNumber = number;
        numbersLost = false;
    }

    /** The number is the first checked field, so that it can be had without taking the line apart. */
    private int number(int from) throws IOException {
        int at = from + Line.CHECKED_FROM;
        if (bytes.length < at + 4
                || bytes[at] != '"'
                || bytes[at + 1] != 'n'
                || bytes[at + 2] != '"'
                || bytes[at + 3] != ':') {
            throw new IOException("no line number");
        }
        int number = 0;
        for (at += 4; at < bytes.length && bytes[at] >= '0' && bytes[at] <= '9'; at++) {
            number = Math.addExact(Math.multiplyExact(number, 10), bytes[at] - '0');
        }
        return number;
    }

    private String beginning(int from, int to) {
        int shown = Math.min(to - from, 60);
        String text = new String(bytes, from, shown, StandardCharsets.UTF_8).replaceAll("\\p{Cntrl}", ".");
        return shown < to - from ? text + "..." : text;
    }

    private void trouble(int line, Trouble.Kind kind, String what) {
        troubles.add(new Trouble(name, line, kind, what));
    }
}
