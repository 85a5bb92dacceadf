package tintwright.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process that works at cup, shelf, log, kept job and settings dies at each of its steps on the disk in turn: nothing
 * that was acknowledged is lost and every file opens.
 */
class KillsTest {
    private static final int ROW = Hands.MOST_HANDS - 10;

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
        for (int step = 1; step <= 30; step++) {
            Path folder = Files.createDirectory(tmp.resolve("death-" + step));
            Hands.begin(folder);
            Set<String> acknowledged = new HashSet<>();
            die(folder, 1, step, acknowledged);
            assertEquals(Set.of(), Hands.missing(folder, acknowledged), "at step " + step);
            // The next is not held up by what the dead one left, and its work is kept as well.
            HandWriter.work(folder, 2, 1, acknowledged::add);
            assertEquals(Set.of(), Hands.missing(folder, acknowledged), "after step " + step);
        }
    }

    /** {@code mvn test -Dwanted.groups=study -Dtest=KillsTest#*1000Deaths}. */
    @Test
    @Tag("study")
    void nothingAcknowledgedIsLostIn1000Deaths() throws Exception {
        int deaths = Integer.getInteger("tintwright.kills", 1000);
        inRows(deaths, (folder, hand, death, acknowledged) -> {
            // Each step of the first four rounds, in an order that puts near and far ones beside each other.
            die(folder, hand, 1 + death * 37 % 100, acknowledged);
        });
    }

    /**
     * The same with processes that the system itself kills as they enter the n-th call that writes, and so without
     * trust in {@link KillingFiles}: {@code mvn test -Dwanted.groups=study -Dtest=KillsTest#*SystemCall}.
     */
    @Test
    @Tag("study")
    void nothingAcknowledgedIsLostAtAnySystemCall() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/strace")), "no strace here");
        int calls = Integer.getInteger("tintwright.calls", 120);
        inRows(calls, (folder, hand, death, acknowledged) -> {
            String writing = "write,pwrite64,fsync,fdatasync,rename,ftruncate,unlink,mkdir";
            List<String> tracer = List.of(
                    "/usr/bin/strace",
                    "-f",
                    "-qq",
                    "-o",
                    "/dev/null",
                    "-e",
                    "trace=" + writing,
                    "-e",
                    "inject=" + writing + ":signal=KILL:when=" + (death + 1));
            Process process =
                    Hands.startUnder(tracer, HandWriter.class, folder.toString(), Integer.toString(hand), "50");
            acknowledged.addAll(Hands.acknowledged(process));
            assertEquals(137, process.waitFor(), "it was killed and did not end of itself");
        });
    }

    /** One that dies. */
    private interface Dying {
        void die(Path folder, int hand, int death, Set<String> acknowledged) throws Exception;
    }

    /** Each goes on in the folder where the last one died, so that what one leaves half done is what the next finds. */
    private void inRows(int deaths, Dying one) throws Exception {
        int count = 0;
        for (int death = 0; death < deaths; death += ROW) {
            Path folder = Files.createDirectory(tmp.resolve("row-" + death));
            Hands.begin(folder);
            Set<String> acknowledged = new HashSet<>();
            int row = Math.min(ROW, deaths - death);
            for (int hand = 0; hand < row; hand++) {
                one.die(folder, hand, death + hand, acknowledged);
                assertEquals(Set.of(), Hands.missing(folder, acknowledged), "at death " + (death + hand));
            }
            HandWriter.work(folder, row, 1, acknowledged::add);
            assertEquals(Set.of(), Hands.missing(folder, acknowledged), "after death " + (death + row));
            count += acknowledged.size();
            System.out.println((death + row) + " deaths, " + count + " acknowledged changes, 0 lost");
        }
        assertTrue(count > 2 * deaths, "too few to mean anything: " + count);
    }

    private static void die(Path folder, int hand, int step, Set<String> acknowledged) throws Exception {
        assertThrows(
                KillingFiles.Death.class,
                () -> HandWriter.work(KillingFiles.dying(folder, step), hand, 1_000_000, acknowledged::add));
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
