package tintwright.logbook.disk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.disk.Damage;
import tintwright.logbook.LogBook;
import tintwright.logbook.Samples;

/** Bytes change under us: never a crash, never a loss that is not named. */
class DamageTest {
    private static final int ENTRIES = 12;

    @TempDir
    Path tmp;

    private Path file;
    private byte[] sound;

    @BeforeEach
    void writeALog() throws IOException {
        try (LogStore store = Folders.open(tmp.resolve("log"), Folders.bench(tmp, "anna"))) {
            UUID boat = store.append("boat", null, Folders.note("Tarrowmere"))
                    .entry()
                    .id();
            for (int i = 1; i < ENTRIES; i++) {
                store.append("note", boat, Folders.note("entry " + i));
            }
        }
        file = Folders.onlyFile(tmp.resolve("log"));
        sound = Files.readAllBytes(file);
    }

    /** Every byte of the file, each changed to several others: all single-byte damage of this file, sampled. */
    @Test
    void oneByteAnywhereIsAlwaysNamed() {
        SplittableRandom random = new SplittableRandom(1);
        for (int at = 0; at < sound.length; at++) {
            for (byte other :
                    new byte[] {(byte) (sound[at] ^ 1 << random.nextInt(8)), '\n', 0, (byte) random.nextInt(256)}) {
                if (other != sound[at]) {
                    byte[] harmed = sound.clone();
                    harmed[at] = other;
                    LogFile read = readBack(harmed);
                    assertFalse(read.troubles().isEmpty(), "byte " + at + " became " + other + " unnoticed");
                    assertTrue(read.entries().size() >= ENTRIES - 2, "byte " + at + " cost more than its neighbours");
                }
            }
        }
    }

    @Test
    void damageOfAnySizeIsAlwaysNamed() {
        SplittableRandom random = new SplittableRandom(2);
        for (int round = 0; round < 3000; round++) {
            byte[] harmed = sound.clone();
            int from = random.nextInt(harmed.length);
            int length = Math.min(harmed.length - from, 1 + random.nextInt(1 << random.nextInt(11)));
            byte[] noise = new byte[length];
            random.nextBytes(noise);
            System.arraycopy(noise, 0, harmed, from, length);
            if (!Arrays.equals(harmed, sound)) {
                assertFalse(readBack(harmed).troubles().isEmpty(), "round " + round);
            }
        }
    }

    @Test
    void bytesTakenOutOrPutInAreNamedUnlessNothingIsLost() {
        SplittableRandom random = new SplittableRandom(3);
        for (int round = 0; round < 2000; round++) {
            int from = random.nextInt(sound.length);
            int to = Math.min(sound.length - 1, from + random.nextInt(200));
            byte[] harmed = new byte[sound.length - (to - from)];
            System.arraycopy(sound, 0, harmed, 0, from);
            System.arraycopy(sound, to, harmed, from, sound.length - to);
            LogFile read = readBack(harmed);
            assertTrue(read.entries().size() == ENTRIES || !read.troubles().isEmpty(), "round " + round);
        }
    }

    /** Between two lines a cut file looks sound; only the bench that saw it whole can tell. */
    @Test
    void aFileCutShortAnywhereIsNamedByTheBenchThatSawItWhole() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        for (int length = 0; length < sound.length - 1; length++) {
            boolean nearALineEnd = length == 0 || sound[length - 1] == '\n' || sound[length] == '\n';
            if (nearALineEnd || length % 29 == 0) {
                Files.write(file, Arrays.copyOf(sound, length));
                try (LogStore store = Folders.open(tmp.resolve("log"), bench)) {
                    boolean allThere = Folders.count(store) == ENTRIES;
                    assertTrue(allThere || !store.troubles().isEmpty(), "length " + length);
                }
            }
        }
    }

    @Test
    void aFileThatIsGoneIsNamedUntilTheLossIsAccepted() throws IOException {
        ThisBench bench = Folders.bench(tmp, "anna");
        Files.delete(file);
        for (int look = 0; look < 2; look++) {
            try (LogStore store = Folders.open(tmp.resolve("log"), bench)) {
                assertEquals(Trouble.Kind.MISSING, store.troubles().get(0).kind());
                assertEquals("anna-0001.jsonl", store.troubles().get(0).file());
                store.append("note", null, Folders.note("meanwhile"));
                assertFalse(Files.exists(file), "the lost file may still arrive");
            }
        }
        try (LogStore store = Folders.open(tmp.resolve("log"), bench)) {
            store.acceptLosses();
        }
        try (LogStore store = Folders.open(tmp.resolve("log"), bench)) {
            assertEquals(List.of(), store.troubles());
        }
    }

    @Test
    void noiseInPlaceOfALogIsNamed() {
        SplittableRandom random = new SplittableRandom(4);
        for (int round = 0; round < 200; round++) {
            byte[] noise = new byte[random.nextInt(3000)];
            random.nextBytes(noise);
            LogFile read = readBack(noise);
            assertEquals(List.of(), read.entries());
            assertFalse(read.troubles().isEmpty());
        }
    }

    @Test
    void aLogOfEverySortOfPageIsReadAndLeftAsItIs() throws IOException {
        harmWholeLogs(100);
    }

    /** {@code mvn test -Dwanted.groups=study -Dtest=DamageTest}. */
    @Test
    @Tag("study")
    void aLogOfEverySortOfPageIsReadAndLeftAsItIs5000Times() throws IOException {
        harmWholeLogs(5000);
    }

    /**
     * Half of the damage is as it comes; half has its check put right again, as a stranger's program would write it, so
     * that what is inside the line is reached. Whatever is there, a new page can be written, and the harmed bytes stay.
     */
    private void harmWholeLogs(int rounds) throws IOException {
        Path untouched = tmp.resolve("untouched");
        UUID boat;
        try (LogBook book = open(untouched)) {
            boat = book.begin(Samples.boat()).entry().id();
            Samples.every().stream().skip(1).forEach(page -> book.write(Optional.of(boat), page));
        }
        byte[] good = Files.readAllBytes(Folders.onlyFile(untouched.resolve("log")));
        Random chance = new Random(5);
        int named = 0;
        for (int round = 0; round < rounds; round++) {
            byte[] bad = Damage.to(good, chance);
            if (round % 2 == 1) {
                bad = sealedAgain(bad);
            }
            Path here = tmp.resolve("round");
            copy(untouched, here);
            Path pages = Folders.onlyFile(here.resolve("log"));
            Files.write(pages, bad);
            try (LogBook book = open(here)) {
                book.boats().forEach(each -> book.of(each.id()));
                book.search("chalky", 5);
                book.nearest(new Lab(60, -3, 10, Viewing.D65_10), 5);
                for (Trouble trouble : book.troubles()) {
                    named++;
                    assertEquals(1, trouble.sentence().lines().count(), trouble.sentence());
                    assertTrue(trouble.sentence().startsWith("berta-0001.jsonl"), trouble.sentence());
                }
                assertArrayEquals(bad, Files.readAllBytes(pages), "reading wrote, round " + round);
                Folders.onlyFile(here.resolve("log"));
                if (book.isReadOnly()) {
                    assertThrows(LogFailure.class, () -> book.write(Optional.of(boat), Samples.remark()));
                    Folders.onlyFile(here.resolve("log"));
                } else {
                    UUID added = book.write(Optional.of(boat), Samples.remark())
                            .entry()
                            .id();
                    try (LogBook again = open(here)) {
                        assertTrue(again.find(added).isPresent(), "an acknowledged page is gone, round " + round);
                    }
                }
                // A torn last line is set aside by whoever writes after it; the rest of the file stays.
                int whole = readBack(bad).tornFrom();
                assertArrayEquals(
                        Arrays.copyOf(bad, whole),
                        Arrays.copyOf(Files.readAllBytes(pages), whole),
                        "harmed bytes were lost, round " + round);
            }
            remove(here);
        }
        assertTrue(named > rounds / 4, "damage must be named: " + named);
    }

    private static LogBook open(Path here) {
        return LogBook.open(here.resolve("log"), Folders.bench(here, "berta"), Folders.NOON, new SplittableRandom(7));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : all.toList()) {
                Files.copy(each, to.resolve(from.relativize(each)));
            }
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }

    private static byte[] sealedAgain(byte[] bad) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        int from = 0;
        for (int at = 0; at < bad.length; at++) {
            if (bad[at] == '\n') {
                if (at - from > Line.CHECKED_FROM) {
                    all.writeBytes(Line.seal(Arrays.copyOfRange(bad, from + Line.CHECKED_FROM, at)));
                } else {
                    all.writeBytes(Arrays.copyOfRange(bad, from, at + 1));
                }
                from = at + 1;
            }
        }
        all.writeBytes(Arrays.copyOfRange(bad, from, bad.length));
        return all.toByteArray();
    }

    private static LogFile readBack(byte[] bytes) {
        return LogFile.of("anna-0001.jsonl", bytes);
    }
}
