package tintwright.study;

import java.util.Random;
import tintwright.colour.Lab;
import tintwright.cup.Deed;

/**
 * How a careful person matches by eye, written down as rules. Our own; common practice, no source.
 *
 * <ol>
 * <li>All the white goes in. Value first: black in doses of 0.05 g, of 0.02 g once it looks within 4 L* of the hull,
 *     until the cup no longer looks lighter by more than 1.5.
 * <li>Then hue: whichever of red-green and yellow-blue looks farther off, by more than 1.5, gets 0.05 g of red oxide
 *     or yellow oxide, or 0.02 g of phthalo green or blue.
 * <li>A cup that looks darker by more than 1.5 gets 10 g of white.
 * <li>Done when nothing looks farther off than 1.5, or after 30 additions.
 * </ol>
 * The eye sees the cured colour at once, off by one unit (one standard deviation) on each axis at every look; both
 * are kinder than real life.
 */
final class ByEye {
    private static final double SEEN = 1.5;
    private static final double EYE = 1.0;
    private static final int MOST = 30;

    private final CupJob job;
    private final Random random;

    ByEye(CupJob job) {
        this.job = job;
        this.random = new Random(job.hull.hashCode() + 99L);
    }

    void mix() {
        mix(MOST);
    }

    /** @param looks after which the hand stops, whatever it sees */
    void mix(int looks) {
        weigh("white", CupJob.WANTED - 1);
        for (int i = 0; i < looks; i++) {
            double[] miss = look();
            if (miss[0] < -SEEN) {
                weigh("white", 10);
            } else if (miss[0] > SEEN) {
                weigh("carbon-black", miss[0] > 4 ? 0.05 : 0.02);
            } else if (Math.max(Math.abs(miss[1]), Math.abs(miss[2])) <= SEEN) {
                return;
            } else if (Math.abs(miss[1]) > Math.abs(miss[2])) {
                weigh(miss[1] < 0 ? "red-iron-oxide" : "phthalo-green", miss[1] < 0 ? 0.05 : 0.02);
            } else {
                weigh(miss[2] < 0 ? "yellow-iron-oxide" : "phthalo-blue", miss[2] < 0 ? 0.05 : 0.02);
            }
        }
    }

    private void weigh(String id, double grams) {
        job.act(new Deed.Weighed(id, grams, CupJob.STEP));
    }

    /** Cup minus hull in L*, a*, b*, as the eye has it. */
    private double[] look() {
        Lab cup = job.colour();
        Lab hull = job.truth;
        return new double[] {
            cup.lightness() - hull.lightness() + EYE * random.nextGaussian(),
            cup.a() - hull.a() + EYE * random.nextGaussian(),
            cup.b() - hull.b() + EYE * random.nextGaussian()
        };
    }
}
