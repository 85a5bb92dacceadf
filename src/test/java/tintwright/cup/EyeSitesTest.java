package tintwright.cup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Moments of a normal cut off at its middle: mean {@code s sqrt(2/pi)}, variance {@code s^2 (1 - 2/pi)}; Johnson, Kotz
 * and Balakrishnan (1994), Continuous Univariate Distributions 1, 13.10.1 (half-normal).
 */
class EyeSitesTest {
    private static double[][] before(double... deviation) {
        Random random = new Random(1);
        double[][] all = new double[20000][3];
        for (int i = 0; i < all.length; i += 2) {
            for (int axis = 0; axis < 3; axis++) {
                all[i][axis] = deviation[axis] * random.nextGaussian();
                all[i + 1][axis] = -all[i][axis];
            }
        }
        return all;
    }

    @Test
    void anIntervalMovesMeanAndSpreadAsATruncatedNormalDoes() {
        EyeSites sites = new EyeSites(before(2, 1, 1));
        double[] likelihood =
                Arrays.stream(sites.drawn()).mapToDouble(d -> d[0] > 0 ? 1 : 0).toArray();
        EyeSites.Site site = sites.site(likelihood);
        // Normal before times normal of the site.
        double[][] said = Small.inverse(site.covariance());
        double[][] precision = Small.inverse(site.covariance());
        double[] first = {4.04, 1.04, 1.04};
        double[] pull = new double[3];
        for (int i = 0; i < 3; i++) {
            precision[i][i] += 1 / first[i];
            for (int j = 0; j < 3; j++) {
                pull[i] += said[i][j] * site.mean()[j];
            }
        }
        double[][] after = Small.inverse(precision);
        double mean = after[0][0] * pull[0] + after[0][1] * pull[1] + after[0][2] * pull[2];
        assertEquals(2.01 * Math.sqrt(2 / Math.PI), mean, 0.12);
        assertEquals(4.04 * (1 - 2 / Math.PI), after[0][0], 0.15);
        assertEquals(1.04, after[1][1], 0.15, "nothing was said of the other axes");
    }

    @Test
    void anAnswerThatFitsEverythingTeachesNothing() {
        EyeSites sites = new EyeSites(before(3, 3, 3));
        double[] likelihood = new double[sites.drawn().length];
        Arrays.fill(likelihood, 0.4);
        EyeSites.Site site = sites.site(likelihood);
        for (int axis = 0; axis < 3; axis++) {
            assertTrue(site.covariance()[axis][axis] > 100, "variance " + site.covariance()[axis][axis]);
        }
    }
}
