package tintwright.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process that works at cup, shelf, log, kept job and settings dies at each of its steps on the disk in turn: nothing
 * that was acknowledged is lost and every file opens.
 */
class KillsTest {
    @TempDir
    private Path tmp;

    @Test
    void nothingAcknowledgedIsLostWhereAProcessDies() throws Exception {
        for (int step : new int[] {9, 52}) {
            killAt(step);
        }
    }

    @Test
    void nothingAcknowledgedIsLostAtAnyOfTheFirstSteps() throws Exception {
        die(1, 30);
    }

    /** {@code mvn test -Dwanted.groups=study -Dtest=KillsTest}, with {@code -Dtintwright.kills=1000} or more. */
    @Test
    @Tag("study")
    void nothingAcknowledgedIsLostIn1000Deaths() throws Exception {
        die(1, Integer.getInteger("tintwright.kills", 1000));
    }

    private void die(int from, int to) throws Exception {
        int count = 0;
        for (int step = from; step <= to; step++) {
            Path folder = Files.createDirectory(tmp.resolve("death-" + step));
            Hands.begin(folder);
            Set<String> acknowledged = new HashSet<>();
            int deadly = step;
            assertThrows(
                    KillingFiles.Death.class,
                    () -> HandWriter.work(KillingFiles.dying(folder, deadly), 1, 1_000_000, acknowledged::add));
            count += acknowledged.size();
            assertEquals(Set.of(), Hands.missing(folder, acknowledged), "at step " + step);
            // The next is not held up by what the dead one left, and its work is kept as well.
            HandWriter.work(folder, 2, 1, acknowledged::add);
            assertEquals(Set.of(), Hands.missing(folder, acknowledged), "after step " + step);
            if (step % 100 == 0) {
                System.out.println(step + " deaths, " + count + " acknowledged changes, 0 lost");
            }
        }
        assertTrue(count > 2 * (to - from), "too few to mean anything: " + count);
    }

    private void killAt(int step) throws Exception {
        Path folder = Files.createDirectory(tmp.resolve("step-" + step));
        Hands.begin(folder);
        // What it still does after so many steps is the same again and again, so the end of the work is never reached.
        Process process = Hands.start(HandWriter.class, folder.toString(), "1", "1000000", Integer.toString(step));
        Set<String> acknowledged = Hands.acknowledged(process);
        assertEquals(137, process.waitFor(), "it died of the disk and of nothing else");
        assertEquals(Set.of(), Hands.missing(folder, acknowledged), "at step " + step);
        // The next process is not held up by what the dead one left, and its work is kept as well.
        Process next = Hands.start(HandWriter.class, folder.toString(), "2", "1");
        Set<String> more = new HashSet<>(acknowledged);
        more.addAll(Hands.acknowledged(next));
        assertEquals(0, next.waitFor());
        assertEquals(Set.of(), Hands.missing(folder, more), "after step " + step);
    }
}
