package tintwright.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
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
    void nothingAcknowledgedIsLostWhereverItDies() throws Exception {
        kill(new int[] {9, 15, 23, 31, 52});
    }

    /** {@code mvn test -Dwanted.groups=study -Dtest=KillsTest}, with {@code -Dtintwright.kills=1000} or more. */
    @Test
    @Tag("study")
    void nothingAcknowledgedIsLostIn1000Deaths() throws Exception {
        int[] steps = new int[Integer.getInteger("tintwright.kills", 1000)];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = i + 1;
        }
        kill(steps);
    }

    private void kill(int[] steps) throws Exception {
        AtomicInteger acknowledged = new AtomicInteger();
        ExecutorService lanes = Executors.newFixedThreadPool(2);
        try {
            List<Callable<Boolean>> all = new ArrayList<>();
            for (int step : steps) {
                all.add(() -> killAt(step, acknowledged));
            }
            for (Future<Boolean> one : lanes.invokeAll(all)) {
                one.get();
            }
        } finally {
            lanes.shutdownNow();
        }
        assertTrue(acknowledged.get() > steps.length / 2, "too few to mean anything: " + acknowledged);
        System.out.println(steps.length + " deaths, " + acknowledged + " acknowledged changes, 0 lost");
    }

    private boolean killAt(int step, AtomicInteger count) throws Exception {
        Path folder = Files.createDirectory(tmp.resolve("step-" + step));
        Hands.begin(folder);
        // What it still does after so many steps is the same again and again, so the end of the work is never reached.
        Process process = Hands.start(HandWriter.class, folder.toString(), "1", "1000000", Integer.toString(step));
        Set<String> acknowledged = Hands.acknowledged(process);
        assertEquals(137, process.waitFor(), "it died of the disk and of nothing else");
        count.addAndGet(acknowledged.size());
        assertEquals(Set.of(), Hands.missing(folder, acknowledged), "at step " + step);
        if (step % 10 != 1) {
            return true;
        }
        // The next process is not held up by what the dead one left, and its work is kept as well.
        Process next = Hands.start(HandWriter.class, folder.toString(), "2", "1");
        Set<String> more = new HashSet<>(acknowledged);
        more.addAll(Hands.acknowledged(next));
        assertEquals(0, next.waitFor());
        assertEquals(Set.of(), Hands.missing(folder, more), "after step " + step);
        return true;
    }
}
