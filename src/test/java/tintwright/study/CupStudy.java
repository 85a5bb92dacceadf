package tintwright.study;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tintwright.bench.CupBench;
import tintwright.cup.CupSight;
import tintwright.cup.Deed;
import tintwright.cup.DosePlanner;
import tintwright.cup.Plan;
import tintwright.cup.Way;
import tintwright.cup.Ways;
import tintwright.match.Aim;
import tintwright.match.Matcher;
import tintwright.match.Target;
import tintwright.match.Wish;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Parts;

/** Random jobs played dose by dose, beside two rivals; fills the cup tables of docs/accuracy.md. */
class CupStudy {
    private static final int JOBS = Integer.getInteger("jobs", 300);
    private static final int MOST_READINGS = 3;
    /** Nearer or farther by less than this, CIEDE2000, is the same. */
    private static final double SEEN = 0.2;

    @Test
    @Tag("study")
    void guidedDosesWithAnInstrument() {
        double[][] after = guided(false, HiddenShop.Trouble.NONE);
        assertTrue(at(after[2], 0.5) <= 0.7 && at(after[2], 0.95) <= 1.5, "median and 95th after two readings");
    }

    @Test
    @Tag("study")
    void guidedDosesWithPhotos() {
        double[][] after = guided(true, HiddenShop.Trouble.NONE);
        assertTrue(at(after[3], 0.5) <= 1.2, "median after three photos");
    }

    /** Shops that break the theory on purpose. */
    @Test
    @Tag("study")
    void guidedDosesWithAnInstrumentInHardShops() {
        double[][] after = guided(false, HiddenShop.Trouble.ALL);
        assertTrue(at(after[2], 0.5) <= 0.8, "median after two readings");
    }

    @Test
    @Tag("study")
    void guidedDosesWithPhotosInHardShops() {
        double[][] after = guided(true, HiddenShop.Trouble.ALL);
        assertTrue(at(after[3], 0.5) <= 1.2, "median after three photos");
    }

    private double[][] guided(boolean photo, HiddenShop.Trouble trouble) {
        double[][] after = new double[MOST_READINGS + 1][JOBS];
        Tally tally = new Tally((photo ? "guided, photos" : "guided, instrument")
                + (trouble == HiddenShop.Trouble.NONE ? "" : ", hard shops"));
        List<Held> held = new ArrayList<>();
        for (int r = 0; r <= MOST_READINGS; r++) {
            held.add(new Held(r + " readings"));
        }
        for (int i = 0; i < JOBS; i++) {
            CupJob job = new CupJob(5000 + i, photo, trouble);
            double planned = start(job);
            boolean stopped = false;
            int read = 0;
            for (int round = 0; round <= MOST_READINGS; round++) {
                Plan plan = dose(job);
                stopped |= plan instanceof Plan.Stop;
                after[round][i] = job.above();
                held.get(round).add(job.inRange());
                if (!stopped && round < MOST_READINGS) {
                    job.readChip(plan instanceof Plan.TakeChip chip && chip.besideHull());
                    read++;
                }
            }
            tally.add(job, read, planned);
        }
        for (int r = 0; r <= MOST_READINGS; r++) {
            tally.line(r + " readings", after[r]);
            System.out.printf(
                    Locale.ROOT,
                    "| after %d readings | stated 90 %% held %.0f %% |%n",
                    r,
                    held.get(r).percent());
        }
        tally.print();
        int worse = 0;
        for (int i = 0; i < JOBS; i++) {
            worse += after[MOST_READINGS][i] > after[1][i] + SEEN ? 1 : 0;
        }
        System.out.printf(
                Locale.ROOT, "| ended worse than after the first reading | %.0f %% |%n", 100.0 * worse / JOBS);
        Held.mustBeHonest(held.subList(1, held.size()));
        return after;
    }

    /** White in, reserve held; gives the white of the plan. */
    static double start(CupJob job) {
        Plan.Start start = (Plan.Start) DosePlanner.plan(CupSight.of(job.knowledge, job.cup));
        job.act(new Deed.Weighed("white", start.white(), CupJob.STEP));
        job.act(new Deed.Held(start.reserve()));
        return start.white() + start.reserve();
    }

    /** Follows the plan until it asks for a chip or a dab, or says stop; gives what it says then. */
    static Plan dose(CupJob job) {
        Plan plan = null;
        for (int turn = 0; turn < 4; turn++) {
            CupSight sight = CupSight.of(job.knowledge, job.cup);
            plan = DosePlanner.plan(sight);
            if (plan instanceof Plan.Doses give) {
                job.act(give.doses());
            } else if (plan instanceof Plan.WayBack) {
                follow(job, Ways.of(sight));
                return plan;
            } else {
                return plan;
            }
        }
        return plan;
    }

    /** The first way in this cup that the reserve is enough for, else the first in this cup. */
    private static void follow(CupJob job, List<Way> ways) {
        Way chosen = ways.stream()
                .filter(w -> !(w instanceof Way.Fresh) && w.beyondReserve() == 0)
                .findFirst()
                .or(() -> ways.stream().filter(w -> !(w instanceof Way.Fresh)).findFirst())
                .orElseThrow();
        if (chosen instanceof Way.Climb climb) {
            job.act(climb.doses());
        } else if (chosen instanceof Way.Split split) {
            job.act(new Deed.SetAside(split.setAside(), split.name()));
            job.act(split.doses());
        }
    }

    @Test
    @Tag("study")
    void allAtOnce() {
        double[] above = new double[JOBS];
        Tally tally = new Tally("all at once");
        for (int i = 0; i < JOBS; i++) {
            CupJob job = new CupJob(5000 + i, false);
            Target target = Aim.of(new PlaceReadings(
                            "", "hull", List.of(job.hull.readings().get(0)), ""))
                    .target();
            Parts recipe = new Matcher(job.knowledge)
                    .match(Wish.of(target, CupJob.WANTED, CupJob.STEP))
                    .best()
                    .weighed();
            recipe.grams().forEach((id, grams) -> job.act(new Deed.Weighed(id, grams, CupJob.STEP)));
            above[i] = job.above();
            tally.add(job, 0, recipe.grams("white"));
        }
        tally.line("0 readings", above);
        tally.print();
        assertTrue(at(above, 0.5) > 0);
    }

    @Test
    @Tag("study")
    void byEye() {
        double[] above = new double[JOBS];
        Tally tally = new Tally("by eye");
        for (int i = 0; i < JOBS; i++) {
            CupJob job = new CupJob(5000 + i, false);
            new ByEye(job).mix();
            above[i] = job.above();
            tally.add(job, 0, CupJob.WANTED);
        }
        tally.line("when done", above);
        tally.print();
        assertTrue(at(above, 0.5) > 0);
    }

    @Test
    @Tag("study")
    void spoiledCups() {
        assertTrue(spoiled(false) >= 0.8, "too few came back by instrument");
    }

    @Test
    @Tag("study")
    void spoiledCupsByPhoto() {
        assertTrue(spoiled(true) >= 0.6, "too few came back by photo");
    }

    /** The share of cups with twice their black that came back within the reserve. */
    private static double spoiled(boolean photo) {
        List<Double> above = new ArrayList<>();
        List<Double> overLeast = new ArrayList<>();
        List<Double> mass = new ArrayList<>();
        int within = 0;
        int jobs = 0;
        int kept = 0;
        for (int i = 0; i < JOBS; i++) {
            CupJob job = new CupJob(7000 + i, photo);
            double planned = start(job);
            Plan first = DosePlanner.plan(CupSight.of(job.knowledge, job.cup));
            if (!(first instanceof Plan.Doses doses)
                    || !doses.doses().get(0).part().equals("carbon-black")) {
                continue;
            }
            jobs++;
            job.act(doses.doses());
            job.act(doses.doses().get(0).deed());
            job.dilution = 1;
            double least = HiddenBest.leastMass(job.shop, job.real, job.truth, job.limit + 0.5) / job.mass();
            for (int read = 0; read < MOST_READINGS; read++) {
                job.readChip(false);
                CupSight sight = CupSight.of(job.knowledge, job.cup);
                follow(job, Ways.of(sight));
            }
            double whiteIn = job.whiteUsed;
            boolean reserveDid = whiteIn <= planned + 1;
            kept += reserveDid ? 1 : 0;
            within += reserveDid && job.above() <= 1 ? 1 : 0;
            above.add(job.above());
            overLeast.add(job.dilution / least);
            mass.add(job.mass());
        }
        double[] ends = above.stream().mapToDouble(d -> d).toArray();
        System.out.printf(
                Locale.ROOT,
                "| twice the black, %s | %d cups | within 1.0 without passing the reserve %.0f %% |"
                        + " reserve held %.0f %% | after: median %.2f, 95th %.2f | climb over the least possible: median"
                        + " %.2f, 95th %.2f | final cup median %.0f g, 5th %.0f g |%n",
                photo ? "photo" : "instrument",
                jobs,
                100.0 * within / jobs,
                100.0 * kept / jobs,
                at(ends, 0.5),
                at(ends, 0.95),
                at(overLeast.stream().mapToDouble(d -> d).toArray(), 0.5),
                at(overLeast.stream().mapToDouble(d -> d).toArray(), 0.95),
                at(mass.stream().mapToDouble(d -> d).toArray(), 0.5),
                at(mass.stream().mapToDouble(d -> d).toArray(), 0.05));
        return within / (double) jobs;
    }

    @Test
    @Tag("study")
    void unknownCups() {
        int jobs = Math.min(JOBS, 150);
        double[][] after = new double[3][jobs];
        int same = 0;
        int listed = 0;
        for (int i = 0; i < jobs; i++) {
            CupJob job = new CupJob(9000 + i, false);
            // What stands there: the hull of another boat, mixed by somebody from the same tints.
            Map<String, Double> parts = new HiddenShop(9000 + i).mixture(4000 + i, 80);
            job.real.putAll(parts);
            CupBench bench = CupBench.open(job.knowledge, job.cup);
            CupBench.Unknown unknown = bench.unknown(java.time.Instant.EPOCH, 80, job.shop.read(job.colour()));
            job.cup = unknown.bench().cup();
            same += unknown.likely().get(0).parts().grams().keySet().equals(parts.keySet()) ? 1 : 0;
            listed += unknown.likely().stream()
                            .anyMatch(c -> c.parts().grams().keySet().equals(parts.keySet()))
                    ? 1
                    : 0;
            after[0][i] = job.above();
            for (int round = 1; round < 3; round++) {
                follow(job, Ways.of(CupSight.of(job.knowledge, job.cup)));
                after[round][i] = job.above();
                job.readChip(false);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "| unknown cup | %d cups | likeliest set right %.0f %%, listed %.0f %% | as found"
                        + " median %.2f | after one correction median %.2f, 95th %.2f | after two median %.2f, 95th %.2f |%n",
                jobs,
                100.0 * same / jobs,
                100.0 * listed / jobs,
                at(after[0], 0.5),
                at(after[1], 0.5),
                at(after[1], 0.95),
                at(after[2], 0.5),
                at(after[2], 0.95));
        assertTrue(at(after[2], 0.5) < 1.5);
    }

    /** What a table of one way of working says. */
    private static final class Tally {
        private final String name;
        private final List<Double> doses = new ArrayList<>();
        private final List<Double> readings = new ArrayList<>();
        private final List<Double> white = new ArrayList<>();
        private final List<Double> mass = new ArrayList<>();
        private final List<Double> wasted = new ArrayList<>();
        private int dark;

        Tally(String name) {
            this.name = name;
        }

        void add(CupJob job, int read, double planned) {
            dark += job.deepest > 0.5 ? 1 : 0;
            doses.add((double) job.doses);
            readings.add((double) read);
            white.add(job.whiteUsed - planned);
            mass.add(job.mass());
            wasted.add(job.tintWasted());
        }

        void line(String when, double[] above) {
            System.out.printf(
                    Locale.ROOT, "| %s | after %s | %.2f | %.2f |%n", name, when, at(above, 0.5), at(above, 0.95));
        }

        void print() {
            int n = doses.size();
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %d jobs | ever too dark %.1f %% | doses median %.0f, 95th %.0f |"
                            + " readings mean %.1f | white over plan median %.1f g, 95th %.1f g | final mass 5th %.0f g, 95th"
                            + " %.0f g | tint wasted median %.2f g, 95th %.2f g |%n",
                    name,
                    n,
                    100.0 * dark / n,
                    of(doses, 0.5),
                    of(doses, 0.95),
                    readings.stream().mapToDouble(d -> d).average().orElse(0),
                    of(white, 0.5),
                    of(white, 0.95),
                    of(mass, 0.05),
                    of(mass, 0.95),
                    of(wasted, 0.5),
                    of(wasted, 0.95));
        }

        private static double of(List<Double> values, double share) {
            return at(values.stream().mapToDouble(d -> d).toArray(), share);
        }
    }

    static double at(double[] values, double share) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.min(sorted.length - 1, Math.max(0, Math.ceil(share * sorted.length) - 1))];
    }
}
