package tintwright.logbook.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ThisBenchTest {
    private static final List<String> MACHINE = List.of("id a", "card b");

    @TempDir
    private Path tmp;

    private static String id(Path home, List<String> machine) throws LogFailure {
        return ThisBench.at(home, machine, new SecureRandom()).id();
    }

    @Test
    void oneMarkOfTheMachineIsEnough() throws Exception {
        String id = id(tmp.resolve("home"), MACHINE);
        assertEquals(id, id(tmp.resolve("home"), List.of("card b")), "a card was taken out, the machine was renamed");
        assertNotEquals(id, id(tmp.resolve("home"), List.of("card c")));
    }

    @Test
    void aHomeCopiedToAnotherPlaceIsAnotherBench() throws Exception {
        String id = id(tmp.resolve("home"), MACHINE);
        Files.createDirectories(tmp.resolve("copy"));
        Files.copy(tmp.resolve("home/bench.json"), tmp.resolve("copy/bench.json"));
        assertNotEquals(id, id(tmp.resolve("copy"), MACHINE));
        assertEquals(id, id(tmp.resolve("home"), MACHINE));
    }

    @Test
    void theFileTellsNobodyTheAddressesOfTheCards() throws Exception {
        id(tmp.resolve("home"), MACHINE);
        assertFalse(Files.readString(tmp.resolve("home/bench.json")).contains("card b"));
    }

    @Test
    void firstStartsAtTheSameMomentAllSucceedAndAgree() throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(4);
        try {
            for (int round = 0; round < 40; round++) {
                Path home = tmp.resolve("home-" + round);
                Callable<String> start = () -> id(home, MACHINE);
                Set<String> ids = new HashSet<>();
                for (Future<String> one : pool.invokeAll(List.of(start, start, start, start))) {
                    ids.add(one.get());
                }
                assertEquals(1, ids.size(), ids.toString());
            }
        } finally {
            pool.shutdownNow();
        }
    }

    @Test
    void twoFoldersOfOneHashKeepTwoMemories() {
        ThisBench bench = new ThisBench("anna", tmp);
        // "Aa" and "BB" have one hash of 32 bits, and so have paths that differ in nothing else.
        Path one = Path.of("/shops/Aa/log");
        Path other = Path.of("/shops/BB/log");
        assertEquals(one.toString().hashCode(), other.toString().hashCode());
        assertNotEquals(bench.seen(one), bench.seen(other));
        assertNotEquals(bench.waiting(one), bench.waiting(other));
    }
}
