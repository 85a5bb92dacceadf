package tintwright.shelf.knowledge;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * A normal cut off at its middle has the mean {@code s sqrt(2/pi)} and the variance {@code s^2 (1 - 2/pi)}: Johnson, Kotz
 * and Balakrishnan (1994), Continuous Univariate Distributions 1, 13.10.1 (half-normal; from memory). A normal observed
 * with a normal error: Bishop (2006), Pattern Recognition and Machine Learning, 2.3.3.
 */
class EllipticalSliceTest {
    private static final EllipticalSlice.Walk WALK = new EllipticalSlice.Walk(400, 4000, 4, 7L);

    private static void unit(Random random, double[] draw) {
        for (int i = 0; i < draw.length; i++) {
            draw[i] = random.nextGaussian();
        }
    }

    private static double[] moments(EllipticalSlice.Draws draws, int axis) {
        double mean = 0;
        double square = 0;
        for (double[] row : draws.rows()) {
            mean += row[axis] / draws.rows().length;
            square += row[axis] * row[axis] / draws.rows().length;
        }
        return new double[] {mean, square - mean * mean};
    }

    @Test
    void anIntervalGivesTheMomentsOfACutOffNormal() {
        EllipticalSlice.Draws draws =
                EllipticalSlice.draws(3, EllipticalSliceTest::unit, x -> x[0] > 0 ? 0 : -1e9, WALK);
        double[] cut = moments(draws, 0);
        assertEquals(Math.sqrt(2 / Math.PI), cut[0], 0.03);
        assertEquals(1 - 2 / Math.PI, cut[1], 0.03);
        assertEquals(cut[0], draws.mean()[0], 0.03);
        double[] other = moments(draws, 1);
        assertEquals(0, other[0], 0.05, "nothing was said of the others");
        assertEquals(1, other[1], 0.06);
    }

    @Test
    void aNormalSeenFarOutWithASmallErrorIsFound() {
        double seen = 3;
        double error = 0.1;
        EllipticalSlice.Draws draws = EllipticalSlice.draws(
                5, EllipticalSliceTest::unit, x -> -(x[2] - seen) * (x[2] - seen) / (2 * error * error), WALK);
        double[] after = moments(draws, 2);
        double precision = 1 + 1 / (error * error);
        assertEquals(seen / (error * error) / precision, after[0], 0.02);
        assertEquals(1 / precision, after[1], 0.002);
    }

    @Test
    void theSameSeedGivesTheSameDraws() {
        EllipticalSlice.Walk few = new EllipticalSlice.Walk(10, 5, 2, 3L);
        EllipticalSlice.Draws one = EllipticalSlice.draws(2, EllipticalSliceTest::unit, x -> -x[0] * x[0], few);
        EllipticalSlice.Draws two = EllipticalSlice.draws(2, EllipticalSliceTest::unit, x -> -x[0] * x[0], few);
        for (int i = 0; i < 5; i++) {
            assertArrayEquals(one.rows()[i], two.rows()[i]);
        }
    }
}
