package tintwright.reading.photo;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A dozen phones of the study in docs/accuracy.md, with room for chance. */
class SimulatedPhoneTest {
    private static final int PHOTOS = 12;

    @TempDir
    Path folder;

    @Test
    void hullsBesideTwentyFourPatchesComeOutRightAndHonest() throws Exception {
        SimulatedScene.Summary all = SimulatedScene.many(PHOTOS, 0, 3, folder);
        assertTrue(all.median() <= 1.3, "median " + all.median());
        assertTrue(all.most95() <= 3.2, "95 % " + all.most95());
        assertTrue(all.held().percent() >= 82, "in range " + all.held().percent());
        // Real cameras need ranges this wide; made-up ones would hold with 3.
        assertTrue(all.stated() <= 3.6, "stated " + all.stated());
    }

    @Test
    void sixGreysGiveLessAndSaySo() throws Exception {
        SimulatedScene.Summary all = SimulatedScene.many(PHOTOS, 3, 3, folder);
        assertTrue(all.median() <= 2.7, "median " + all.median());
        assertTrue(all.held().percent() >= 78, "in range " + all.held().percent());
        assertTrue(all.stated() >= 2.5 && all.stated() <= 6.5, "stated " + all.stated());
    }
}
