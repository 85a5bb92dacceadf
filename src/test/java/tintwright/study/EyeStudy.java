package tintwright.study;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tintwright.colour.Ciede2000;
import tintwright.cup.CupSight;
import tintwright.cup.Eye;
import tintwright.cup.Plan;

/**
 * Cups brought to the hull by what an eye says of dabs, in shops whose paints are hidden; every second of them breaks the
 * theory on purpose. Constants were chosen on other
 * shops than those reported: {@code -Dchoosing=true} plays them.
 */
class EyeStudy {
    private static final int JOBS = Integer.getInteger("jobs", 20);
    private static final long FIRST = Boolean.getBoolean("choosing") ? 12000 : 22000;
    private static final int MOST = 6;

    @Test
    @Tag("study")
    void plainPhotoThenTheEye() {
        played("plain photo, then the eye", CupJob.Start.PLAIN_PHOTO, false, 1).mustBe(2.2, 6);
    }

    @Test
    @Tag("study")
    void ownChipsThenTheEye() {
        played("own chips, then the eye", CupJob.Start.OWN_CHIPS, false, 1).mustBe(1.4, 4);
    }

    @Test
    @Tag("study")
    void ownChipsAndEveryDabPhotographed() {
        played("own chips, dab photos and the eye", CupJob.Start.OWN_CHIPS, true, 1)
                .mustBe(1.0, 4);
    }

    @Test
    @Tag("study")
    void ownChipsAndEveryDabPhotographedWithoutTheEye() {
        played("own chips, dab photos, no eye", CupJob.Start.OWN_CHIPS, true, 0).mustBe(1.3, 4);
    }

    @Test
    @Tag("study")
    void noPhoto() {
        played("no photo", CupJob.Start.PICKED, false, 1).mustBe(2.8, 6);
    }

    @Test
    @Tag("study")
    void plainPhotoAndAPoorEye() {
        played("plain photo, an eye twice as poor", CupJob.Start.PLAIN_PHOTO, false, 2)
                .mustBe(3.0, 6);
    }

    @Test
    @Tag("study")
    void ownChipsAndAPoorEye() {
        played("own chips, an eye twice as poor", CupJob.Start.OWN_CHIPS, false, 2)
                .mustBe(1.7, 6);
    }

    /** The rival: what a careful hand does by rules of thumb, with an eye that sees numbers. */
    @Test
    @Tag("study")
    void aCarefulHand() {
        StringBuilder line = new StringBuilder("| a careful hand (rules in ByEye) |");
        double[] above = new double[JOBS];
        int dark = 0;
        for (int looks : new int[] {0, 2, 3, 4, 6}) {
            dark = 0;
            for (int i = 0; i < JOBS; i++) {
                CupJob job = new CupJob(FIRST + i, CupJob.Start.PICKED);
                new ByEye(job).mix(looks);
                above[i] = job.above();
                dark += job.deepest > 0.5 ? 1 : 0;
            }
            line.append(String.format(Locale.ROOT, " %.2f (%.2f) |", CupStudy.at(above, 0.5), CupStudy.at(above, 0.9)));
        }
        System.out.printf(Locale.ROOT, "%s %d jobs | too dark %.1f %% |%n", line, JOBS, 100.0 * dark / JOBS);
        assertTrue(CupStudy.at(above, 0.5) > 2, "no rival any more: nobody needs the bench");
    }

    /** What became of all jobs. */
    private record Row(String name, double[][] after, int held, int stated) {
        /** The median after so many answers, and the ranges. */
        void mustBe(double median, int answers) {
            double got = CupStudy.at(after[answers], 0.5);
            assertTrue(got <= median, name + " after " + answers + ": " + got);
            double share = held / (double) stated;
            assertTrue(share >= 0.80 && share <= 0.97, name + " held " + share);
        }
    }

    /**
     * @param photos   whether every dab is also photographed beside the hull
     * @param poorness of the eye; 0 for none
     */
    private static Row played(String name, CupJob.Start start, boolean photos, double poorness) {
        double[][] after = new double[MOST + 1][JOBS];
        int dark = 0;
        int poor = 0;
        double[] seemed = new double[JOBS];
        double[] mass = new double[JOBS];
        int trials = 0;
        int said = 0;
        int stopped = 0;
        int held = 0;
        int stated = 0;
        for (int i = 0; i < JOBS; i++) {
            CupJob job = new CupJob(FIRST + i, start);
            HiddenEye eye = new HiddenEye(FIRST + i, poorness);
            CupStudy.start(job);
            Plan plan = null;
            for (int answers = 0; answers <= MOST; answers++) {
                plan = plan instanceof Plan.Stop ? plan : CupStudy.dose(job);
                after[answers][i] = job.above();
                if (plan instanceof Plan.Stop) {
                    continue;
                }
                if (answers > 0) {
                    stated++;
                    held += within(job) ? 1 : 0;
                }
                if (answers < MOST) {
                    said++;
                    if (photos) {
                        job.photographDab();
                    }
                    if (poorness > 0) {
                        job.look(eye, plan);
                    }
                }
            }
            stopped += plan instanceof Plan.Stop ? 1 : 0;
            dark += job.deepest > 0.5 ? 1 : 0;
            trials += job.trials;
            mass[i] = job.mass();
            Eye eyes = CupSight.of(job.knowledge, job.cup).eye();
            poor += eyes.poor() ? 1 : 0;
            seemed[i] = eyes.poorness();
        }
        StringBuilder line = new StringBuilder("| " + name + " |");
        for (int answers : new int[] {0, 2, 3, 4, 6}) {
            line.append(String.format(
                    Locale.ROOT, " %.2f (%.2f) |", CupStudy.at(after[answers], 0.5), CupStudy.at(after[answers], 0.9)));
        }
        System.out.printf(
                Locale.ROOT,
                "%s %d jobs | held %.0f %% of %d | too dark %.1f %% | stopped %.0f %% | answers %.1f | called poor %.0f %%, strays seemed %.2f (%.2f) | trial dabs %.1f | grams in the end %.0f |%n",
                line,
                JOBS,
                100.0 * held / stated,
                stated,
                100.0 * dark / JOBS,
                100.0 * stopped / JOBS,
                said / (double) JOBS,
                100.0 * poor / JOBS,
                CupStudy.at(seemed, 0.5),
                CupStudy.at(seemed, 0.9),
                trials / (double) JOBS,
                CupStudy.at(mass, 0.5));
        return new Row(name, after, held, stated);
    }

    private static boolean within(CupJob job) {
        double stated =
                CupSight.of(job.knowledge, job.cup).outlook().orElseThrow().within90();
        return Ciede2000.between(job.colour(), job.truth) <= stated;
    }
}
