package tintwright.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Several processes change one cup, one shelf and one log at once. Before there was one way to change a file, every
 * fifth acknowledged dose and every third chip was lost.
 */
class WritersTest {
    @TempDir
    private Path folder;

    @Test
    void whatThreeProcessesWereToldIsThere() throws Exception {
        write(3, 6);
    }

    /** {@code mvn test -Dwanted.groups=study -Dtest=WritersTest}. */
    @Test
    @Tag("study")
    void whatFourProcessesWereTold200TimesIsThere() throws Exception {
        write(4, 200);
    }

    private void write(int hands, int times) throws Exception {
        Hands.begin(folder);
        List<Process> all = new ArrayList<>();
        for (int hand = 0; hand < hands; hand++) {
            all.add(Hands.start(HandWriter.class, folder.toString(), Integer.toString(hand), Integer.toString(times)));
        }
        Set<String> acknowledged = new HashSet<>();
        for (Process one : all) {
            acknowledged.addAll(Hands.acknowledged(one));
            assertEquals(0, one.waitFor());
        }
        assertEquals(5 * hands * times, acknowledged.size());
        assertEquals(Set.of(), Hands.missing(folder, acknowledged));
    }
}
