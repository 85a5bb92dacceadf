package tintwright.study;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tintwright.cup.CupSight;
import tintwright.cup.Deed;
import tintwright.cup.DosePlanner;
import tintwright.cup.Plan;

/** Random jobs played dose by dose; fills the cup tables of docs/accuracy.md. */
class CupStudy {
    private static final int JOBS = Integer.getInteger("jobs", 300);
    private static final int MOST_READINGS = 3;

    @Test
    @Tag("study")
    void guidedDosesWithAnInstrument() {
        guided(false);
    }

    @Test
    @Tag("study")
    void guidedDosesWithPhotos() {
        guided(true);
    }

    private void guided(boolean photo) {
        double[][] after = new double[MOST_READINGS + 1][JOBS];
        double[] doses = new double[JOBS];
        double[] readings = new double[JOBS];
        double[] white = new double[JOBS];
        double[] mass = new double[JOBS];
        int dark = 0;
        int tooDark = 0;
        List<Double> held = new ArrayList<>();
        for (int i = 0; i < JOBS; i++) {
            CupJob job = new CupJob(5000 + i, photo);
            Plan.Start start = (Plan.Start) DosePlanner.plan(CupSight.of(job.knowledge, job.cup));
            held.add(start.reserve() / (start.white() + start.reserve()));
            job.act(new Deed.Weighed("white", start.white(), CupJob.STEP));
            job.act(new Deed.Held(start.reserve()));
            boolean stopped = false;
            int read = 0;
            for (int round = 0; round <= MOST_READINGS; round++) {
                for (int turn = 0; turn < 4 && !stopped; turn++) {
                    Plan plan = DosePlanner.plan(CupSight.of(job.knowledge, job.cup));
                    if (plan instanceof Plan.Doses give) {
                        job.act(give.doses());
                    } else {
                        stopped = plan instanceof Plan.Stop;
                        if (plan instanceof Plan.WayBack dd) { System.out.printf(Locale.ROOT, "%d round %d needs %.1f exp %.2f mass %.1f res %.1f%n", i, round, dd.white(), dd.now().expected(), job.mass(), job.cup.state().reserve());
                            tooDark++;
                        }
                        break;
                    }
                }
                after[round][i] = job.above();
                if (!stopped && round < MOST_READINGS) {
                    job.readChip();
                    read++;
                }
            }
            dark += job.deepest > 0.5 ? 1 : 0;
            doses[i] = job.doses;
            readings[i] = read;
            white[i] = job.whiteUsed - (start.white() + start.reserve());
            mass[i] = job.mass();
        }
        System.out.println(photo ? "photo" : "instrument");
        for (int r = 0; r <= MOST_READINGS; r++) {
            System.out.printf(Locale.ROOT, "after %d readings: median %.2f p95 %.2f%n", r, at(after[r], 0.5),
                    at(after[r], 0.95));
        }
        System.out.printf(Locale.ROOT, "too dark at any moment %.1f %%, too-dark answers %d%n", 100.0 * dark / JOBS, tooDark);
        System.out.printf(Locale.ROOT, "doses median %.0f p95 %.0f, readings median %.0f, white over plan median %.1f p95 %.1f"
                + " mass median %.1f p5 %.1f p95 %.1f%n", at(doses, 0.5), at(doses, 0.95), at(readings, 0.5), at(white, 0.5),
                at(white, 0.95), at(mass, 0.5), at(mass, 0.05), at(mass, 0.95));
        System.out.printf(Locale.ROOT, "reserve share median %.2f max %.2f%n", at(held.stream().mapToDouble(d -> d).toArray(), 0.5),
                at(held.stream().mapToDouble(d -> d).toArray(), 1));
        assertTrue(at(after[2], 0.5) < 1.5);
    }

    private static double at(double[] values, double share) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.min(sorted.length - 1, Math.max(0, Math.ceil(share * sorted.length) - 1))];
    }
}
