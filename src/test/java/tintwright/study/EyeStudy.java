package tintwright.study;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tintwright.cup.CupSight;

/**
 * Cups brought to the hull by answers of the eye alone, in shops whose paints are hidden.
 */
class EyeStudy {
    private static final int JOBS = Integer.getInteger("jobs", 20);
    private static final int MOST = 6;

    @Test
    @Tag("study")
    void plainPhotoThenTheEye() {
        assertTrue(played(CupJob.Start.PLAIN_PHOTO)[0] < 0.6, "share left after six answers");
    }

    @Test
    @Tag("study")
    void ownChipsThenTheEye() {
        assertTrue(played(CupJob.Start.OWN_CHIPS)[0] < 0.6, "share left after six answers");
    }

    @Test
    @Tag("study")
    void noPhoto() {
        assertTrue(played(CupJob.Start.PICKED)[0] < 0.7, "share left after six answers");
    }

    /** Plays one start for a usual and for a poor eye; gives what six answers left of the first median distance, as a share. */
    private static double[] played(CupJob.Start start) {
        return new double[] {played(start, 1), played(start, 2)};
    }

    private static double played(CupJob.Start start, double poorness) {
        double[][] after = new double[MOST + 1][JOBS];
        int dark = 0;
        int poor = 0;
        int said = 0;
        int stopped = 0;
        int inside = 0;
        for (int i = 0; i < JOBS; i++) {
            CupJob job = new CupJob(12000 + i, start);
            HiddenEye eye = new HiddenEye(12000 + i, poorness);
            CupStudy.start(job);
            boolean stop = false;
            for (int answers = 0; answers <= MOST; answers++) {
                stop |= CupStudy.dose(job);
                after[answers][i] = job.above();
                if (!stop && answers < MOST) {
                    job.look(eye);
                    said++;
                }
            }
            CupSight sight = CupSight.of(job.knowledge, job.cup);
            stopped += stop ? 1 : 0;
            dark += job.deepest > 0.5 ? 1 : 0;
            poor += sight.eye().poor() ? 1 : 0;
            inside += job.above() + job.limit <= sight.outlook().orElseThrow().within90() ? 1 : 0;
        }
        StringBuilder line = new StringBuilder("| " + start + ", eye " + poorness + " |");
        for (int answers : new int[] {0, 2, 3, 4, 6}) {
            line.append(String.format(
                    Locale.ROOT,
                    " %.2f (90th %.2f) |",
                    CupStudy.at(after[answers], 0.5),
                    CupStudy.at(after[answers], 0.9)));
        }
        System.out.printf(
                Locale.ROOT,
                "%s %d jobs | ever too dark %.1f %% | stopped by itself %.0f %% | answers mean %.1f | called poor %.0f %%"
                        + " | inside the range stated %.0f %% |%n",
                line,
                JOBS,
                100.0 * dark / JOBS,
                100.0 * stopped / JOBS,
                said / (double) JOBS,
                100.0 * poor / JOBS,
                100.0 * inside / JOBS);
        return CupStudy.at(after[MOST], 0.5) / CupStudy.at(after[0], 0.5);
    }
}
