package tintwright.logbook.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A real disk that is really full: a small file system of its own, named by the person who runs this, such as
 * {@code mount -t tmpfs -o size=1m none /mnt/small} and then
 * {@code mvn test -Dwanted.groups=study -Dtest=FullDiskTest -Dtintwright.smallDisk=/mnt/small}.
 */
@Tag("study")
class FullDiskTest {
    @TempDir
    Path tmp;

    @Test
    void whatAFullDiskRefusesIsSaidAndWrittenOnceThereIsRoom() throws IOException {
        String small = System.getProperty("tintwright.smallDisk", "");
        assumeTrue(!small.isEmpty(), "no small disk was named with -Dtintwright.smallDisk, so this was not tried");
        assumeTrue(Files.getFileStore(Path.of(small)).getTotalSpace() < 64 << 20, small + " is not small");
        Path log = Path.of(small, "log");
        Path ballast = Path.of(small, "ballast");
        Files.write(ballast, new byte[200_000]);
        ThisBench bench = Folders.bench(tmp, "anna");
        Set<UUID> given = new HashSet<>();
        int onDisk = 0;
        int waiting = 0;
        try (LogStore store = Folders.open(log, bench)) {
            while (waiting < 50) {
                Saved saved = store.append("note", null, Folders.note("x".repeat(1000)));
                given.add(saved.entry().id());
                if (saved instanceof Saved.Waiting refused) {
                    waiting++;
                    assertTrue(refused.sentence().contains("is full. Make room on it."), refused.sentence());
                    assertTrue(refused.keptIn().isPresent());
                } else {
                    onDisk++;
                }
                fillUp(ballast, waiting);
            }
            assertTrue(onDisk > 100, "it was written until it was full: " + onDisk);
            Files.delete(ballast);
            assertTrue(store.append("note", null, Folders.note("there is room")) instanceof Saved.OnDisk);
            assertEquals(List.of(), store.waiting());
        }
        try (LogStore store = Folders.open(log, bench)) {
            Set<UUID> there =
                    store.ask(ledger -> ledger.all().stream().map(Entry::id).collect(Collectors.toSet()));
            assertTrue(there.containsAll(given));
            assertEquals(List.of(), store.troubles());
        }
    }

    /** Takes what little room a refused entry left, so that the next one is refused too. */
    private static void fillUp(Path ballast, int refused) {
        if (refused > 0) {
            try (OutputStream more = Files.newOutputStream(ballast, StandardOpenOption.APPEND)) {
                more.write(new byte[1 << 20]);
            } catch (IOException full) {
                return;
            }
        }
    }
}
