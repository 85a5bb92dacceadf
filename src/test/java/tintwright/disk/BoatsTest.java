package tintwright.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.job.Job;
import tintwright.bench.job.RecentBoats;
import tintwright.files.BoatsFile;
import tintwright.files.Demo;
import tintwright.files.FileProblem;
import tintwright.window.Desk;

/** The boats that were left are jobs in files of their own and a list of them: never one in place of another. */
class BoatsTest {
    @TempDir
    private Path folder;

    private static Job on(String boat) {
        return Desk.own().withPlaces(boat, Demo.places(), 0);
    }

    private static void everyListedBoatIsItself(RecentBoats boats) throws FileProblem {
        for (BoatsFile.Left left : boats.list()) {
            assertEquals(left.boat(), boats.fetch(left.boat()).orElseThrow().boat());
        }
    }

    private static Set<String> names(RecentBoats boats) throws FileProblem {
        return boats.list().stream().map(BoatsFile.Left::boat).collect(Collectors.toSet());
    }

    @Test
    void windowsThatLeaveBoatsAtOnceKeepThemAll() throws Exception {
        ExecutorService windows = Executors.newFixedThreadPool(RecentBoats.MOST);
        try {
            List<Future<List<BoatsFile.Left>>> left = new ArrayList<>();
            for (int i = 0; i < RecentBoats.MOST; i++) {
                Job job = on("Boat " + i);
                left.add(windows.submit(() -> new RecentBoats(folder).leave(job)));
            }
            for (Future<List<BoatsFile.Left>> one : left) {
                one.get();
            }
        } finally {
            windows.shutdown();
        }
        RecentBoats boats = new RecentBoats(folder);
        assertEquals(RecentBoats.MOST, names(boats).size());
        everyListedBoatIsItself(boats);
    }

    @Test
    void noBoatStandsInPlaceOfAnotherWhereLeavingOneDies() throws Exception {
        RecentBoats boats = new RecentBoats(folder);
        for (int i = 0; i < RecentBoats.MOST; i++) {
            boats.leave(on("Boat " + i));
        }
        for (int step = 1; step <= 9; step++) {
            Set<String> before = names(boats);
            RecentBoats dying = new RecentBoats(KillingFiles.dying(folder, step));
            Job next = on("Last " + step);
            assertThrows(KillingFiles.Death.class, () -> dying.leave(next), "at step " + step);
            everyListedBoatIsItself(boats);
            before.removeAll(names(boats));
            assertEquals(Set.of(), before, "lost at step " + step);
        }
        boats.leave(on("Dunnelquay"));
        everyListedBoatIsItself(boats);
        assertEquals("Dunnelquay", boats.list().get(0).boat());
    }
}
