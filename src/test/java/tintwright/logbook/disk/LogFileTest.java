package tintwright.logbook.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole lines that a stranger's program could have written: named, never thrown, and what follows is read. */
class LogFileTest {
    private static final EntryIds IDS = new EntryIds(Folders.NOON, new SplittableRandom(77));

    @TempDir
    Path tmp;

    private static byte[] header(int version) {
        return new Header(version, "anna", Folders.NOON.instant()).line();
    }

    private static byte[] sealed(String fields) {
        return Line.seal(fields.getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] note(int number) {
        return Entry.of(IDS.next(), Folders.NOON.instant(), "note", null, null, Folders.note("n" + number))
                .line(number);
    }

    private static LogFile read(byte[]... lines) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] line : lines) {
            all.writeBytes(line);
        }
        return LogFile.of("anna-0001.jsonl", all.toByteArray());
    }

    private static List<Trouble.Kind> kinds(LogFile read) {
        return read.troubles().stream().map(Trouble::kind).toList();
    }

    @Test
    void everyLineNumberIsReadWhole() {
        byte[][] lines = new byte[121][];
        lines[0] = header(1);
        for (int i = 1; i < lines.length; i++) {
            lines[i] = note(i);
        }
        LogFile read = read(lines);
        assertEquals(List.of(), read.troubles());
        assertEquals(120, read.entries().size());
        assertEquals(121, read.nextNumber());
    }

    /** The check value of CRC-32, which is over these nine digits (ITU-T V.42; the value from memory). */
    @Test
    void theCheckOfALineIsCrc32() {
        assertEquals("{\"crc\":\"cbf43926\",123456789\n", new String(sealed("123456789"), StandardCharsets.US_ASCII));
    }

    @Test
    void theFirstLineSaysWhoseFileItIsAndSinceWhen() {
        assertEquals(
                new Header(1, "anna", Folders.NOON.instant()),
                read(header(1)).header().orElseThrow());
        assertEquals(List.of(Trouble.Kind.DAMAGED), kinds(read(sealed("\"n\":0,\"log\":\"other\",\"version\":1}"))));
        assertEquals(List.of(Trouble.Kind.DAMAGED), kinds(read(new byte[0])));
    }

    @Test
    void aWholeLineThatMeansNothingIsNamedAndTheRestIsRead() {
        for (String strange :
                List.of("}", "\"n\"", "\"n\":1", "\"m\":1}", "\"n\":x}", "\"n\":99999999999}", "\"n\":1,\"id\":7}")) {
            LogFile middle = read(header(1), sealed(strange), note(2));
            assertEquals(1, middle.entries().size(), strange);
            assertEquals(Trouble.Kind.DAMAGED, kinds(middle).get(0), strange);
            // As the last line, without its line feed, where there is nothing to read beyond it.
            byte[] line = sealed(strange);
            LogFile last = read(header(1), java.util.Arrays.copyOf(line, line.length - 1));
            assertEquals(List.of(Trouble.Kind.DAMAGED), kinds(last), strange);
            assertTrue(!last.isSound());
        }
    }

    /** Somebody has put two files behind each other, or an empty line before the first. */
    @Test
    void filesBehindEachOtherAreRead() {
        LogFile read = read(header(1), note(1), header(1), note(1), note(2));
        assertEquals(List.of(), read.troubles());
        assertEquals(3, read.entries().size());
        assertEquals(2, read(header(1), header(2)).header().orElseThrow().version());
        assertEquals(2, read(header(2), header(1)).header().orElseThrow().version());
        assertEquals(
                1,
                read("\n".getBytes(StandardCharsets.US_ASCII), header(1), note(1))
                        .entries()
                        .size());
    }

    @Test
    void whatIsMissingOrCutOffIsNamedWithItsPlace() {
        assertEquals(List.of(Trouble.Kind.MISSING), kinds(read(note(1), note(2))), "without a first line");
        LogFile torn = read(header(1), note(1), "{\"crc\"".getBytes(StandardCharsets.US_ASCII));
        Trouble named = torn.troubles().get(0);
        assertEquals(3, named.line());
        assertTrue(named.what().contains("(6 bytes)"), named.what());
        assertTrue(torn.isSound(), "what is before it is as it was written");
    }

    @Test
    void whatANewerVersionAddsIsNotCalledDamage() {
        LogFile read = read(header(2), sealed("\"n\":1,\"id\":7}"), note(2));
        assertEquals(1, read.entries().size());
        assertEquals(Trouble.Kind.NEWER, kinds(read).get(0));
        assertEquals(Trouble.Kind.NEWER, kinds(read).get(1));
        assertEquals(2, read.header().orElseThrow().version());
    }

    @Test
    void aLineIsShownByItsBeginning() {
        String what = read(header(1), "no line of ours\u0007\n".getBytes(StandardCharsets.UTF_8))
                .troubles()
                .get(0)
                .what();
        assertTrue(what.startsWith("this line is not as it was written"), what);
        assertTrue(what.endsWith(": no line of ours."), what);
        String cut = read(header(1), ("x".repeat(61) + "\n").getBytes(StandardCharsets.UTF_8))
                .troubles()
                .get(0)
                .what();
        assertTrue(cut.endsWith(": " + "x".repeat(60) + "..."), cut);
    }

    @Test
    void whatCannotBeALogIsNamedAndTheLogIsOpenAllTheSame() throws IOException {
        Files.createDirectories(tmp.resolve("log/folder.jsonl"));
        try (RandomAccessFile huge =
                new RandomAccessFile(tmp.resolve("log/huge.jsonl").toFile(), "rw")) {
            huge.setLength(LogFile.LARGEST + 1);
        }
        Files.write(tmp.resolve("log/bert-0001.jsonl"), header(1));
        try (LogStore store = Folders.open(tmp.resolve("log"), Folders.bench(tmp, "anna"))) {
            assertEquals(
                    List.of("folder.jsonl", "huge.jsonl"),
                    store.troubles().stream().map(Trouble::file).toList());
            assertTrue(
                    store.troubles().stream().allMatch(trouble -> trouble.kind() == Trouble.Kind.UNREADABLE),
                    store.troubles().toString());
            assertTrue(store.troubles().get(1).what().contains("larger than any log file (256 MiB)"));
            assertTrue(store.append("note", null, Folders.note("one")) instanceof Saved.OnDisk);
        }
    }
}
