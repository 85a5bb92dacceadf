package tintwright.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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

    private static LogFile readBack(byte[] bytes) {
        return LogFile.of("anna-0001.jsonl", bytes);
    }
}
