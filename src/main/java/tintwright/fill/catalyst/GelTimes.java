package tintwright.fill.catalyst;

import java.util.List;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Mix;
import tintwright.fill.repair.Published;

/**
 * How long a cup can be worked and when the tape comes off, by temperature and share of catalyst: the published point,
 * two rules of thumb, and what this shop noted.
 *
 * <p>The logarithm of the gel time is a straight line in temperature, and the time goes in inverse proportion to the
 * share (common practice, no source). What is known before anything was noted: 10 to 17 minutes at 25 degrees Celsius
 * and 1.8 % by volume (published), and a factor of 2 in 6 to 10 degrees (common practice, no source). Each noted time
 * is one equation with its own error; the two unknowns follow by least squares with that knowledge as the other
 * equations (Gauss-Markov, two unknowns in closed form). All spreads are half-ranges of the logarithm, taken as equally
 * sure; they add as squares.
 */
public final class GelTimes {
    private static final double AT = 25;
    private static final double PERCENT = Published.CATALYST_AT_25.low();
    private static final double LEVEL = Math.log(Published.GEL_TIME_AT_25.low() * Published.GEL_TIME_AT_25.high()) / 2;
    private static final double LEVEL_SPREAD =
            Math.log(Published.GEL_TIME_AT_25.high() / Published.GEL_TIME_AT_25.low()) / 2;
    private static final double SLOPE = (Math.log(2) / 6 + Math.log(2) / 10) / 2;
    private static final double SLOPE_SPREAD = (Math.log(2) / 6 - Math.log(2) / 10) / 2;
    /** One cup against the next, and one pair of eyes: a sixth; common practice, no source. */
    private static final double CUP_SPREAD = 0.15;
    /** Tape comes off at 1.2 to 3.5 times the gel time of a cup: a thin film stays cooler; common practice, no source. */
    private static final double TAPE_RATIO = Math.log(1.2 * 3.5) / 2;

    private static final double TAPE_SPREAD = Math.log(3.5 / 1.2) / 2;

    // Weights (1 / spread squared) and right-hand sides of the two normal equations.
    private double levels = 1 / (LEVEL_SPREAD * LEVEL_SPREAD - CUP_SPREAD * CUP_SPREAD);
    private double slopes = 1 / (SLOPE_SPREAD * SLOPE_SPREAD);
    private double both;
    private double levelSum = levels * LEVEL;
    private double slopeSum = slopes * SLOPE;
    private double tapes = 1 / (TAPE_SPREAD * TAPE_SPREAD - CUP_SPREAD * CUP_SPREAD);
    private double tapeSum = tapes * TAPE_RATIO;

    public GelTimes(List<NotedTime> noted, Densities densities) {
        double weight = 1 / (CUP_SPREAD * CUP_SPREAD);
        for (NotedTime one : noted) {
            double colder = AT - one.celsius();
            double share = Math.log(PERCENT / one.share().percentByVolume(Mix.NEAT, densities));
            one.gelMinutes().ifPresent(minutes -> {
                double log = Math.log(minutes) - share;
                levels += weight;
                both += weight * colder;
                slopes += weight * colder * colder;
                levelSum += weight * log;
                slopeSum += weight * colder * log;
            });
        }
        for (NotedTime one : noted) {
            one.tapeOffMinutes().ifPresent(minutes -> {
                double gel = one.gelMinutes()
                        .orElse(Math.exp(log(one.celsius(), one.share().percentByVolume(Mix.NEAT, densities))));
                tapes += weight;
                tapeSum += weight * Math.log(minutes / gel);
            });
        }
    }

    private double log(double celsius, double percentByVolume) {
        double determinant = levels * slopes - both * both;
        double level = (slopes * levelSum - both * slopeSum) / determinant;
        double slope = (levels * slopeSum - both * levelSum) / determinant;
        return level + slope * (AT - celsius) + Math.log(PERCENT / percentByVolume);
    }

    private double variance(double celsius) {
        double colder = AT - celsius;
        double determinant = levels * slopes - both * both;
        return (slopes - 2 * both * colder + levels * colder * colder) / determinant + CUP_SPREAD * CUP_SPREAD;
    }

    /** @return how long a cup of this temperature and share can be worked */
    public WorkingTime at(double celsius, double percentByVolume) {
        return range(log(celsius, percentByVolume), Math.sqrt(variance(celsius)));
    }

    /**
     * When the tape comes off a film on a hull.
     *
     * @param known how long the cup can be worked at this temperature
     */
    public WorkingTime tapeOff(WorkingTime known) {
        double spread = Math.log(known.mostMinutes() / known.leastMinutes()) / 2;
        return range(
                Math.log(known.mostMinutes() * known.leastMinutes()) / 2 + tapeSum / tapes,
                Math.sqrt(spread * spread + 1 / tapes + CUP_SPREAD * CUP_SPREAD));
    }

    /** A time known at one temperature, at another: what else is known of it stays, the rule of thumb widens it. */
    public static WorkingTime moved(WorkingTime known, double from, double to) {
        double spread =
                Math.hypot(Math.log(known.mostMinutes() / known.leastMinutes()) / 2, SLOPE_SPREAD * (from - to));
        return range(Math.log(known.mostMinutes() * known.leastMinutes()) / 2 + SLOPE * (from - to), spread);
    }

    private static WorkingTime range(double log, double spread) {
        return new WorkingTime(Math.exp(log - spread), Math.exp(log + spread));
    }
}
