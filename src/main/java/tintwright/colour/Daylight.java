package tintwright.colour;

import java.math.BigDecimal;

/**
 * Relative power of daylight from its temperature.
 *
 * <p>Source: CIE 15:2018, the calculation of daylight; ISO/CIE 11664-2.
 */
final class Daylight {
    static final double COLDEST = 4000;
    static final double HOTTEST = 25000;
    private static final double MIDDLE = 7000;
    private static final Grid TABLE = Grid.between(380, 780, 10);
    private static final double[][] COMPONENT = CieTable.columns("daylight.csv", 1, 3);

    /** The second constant of radiation as it is now and as it was when D50 to D75 were named, in cm K; ISO/CIE 11664-2. */
    private static final double NOW = 1.4388;

    private static final double THEN = 1.4380;

    private Daylight() {}

    /** @return the temperature that the daylight named after a nominal temperature has on today's scale, in kelvin */
    static double ofNominal(double kelvin) {
        return kelvin * NOW / THEN;
    }

    static String name(double kelvin) {
        return "D" + BigDecimal.valueOf(kelvin).stripTrailingZeros().toPlainString() + "K";
    }

    static double[] power(double kelvin, Grid grid) {
        if (!(kelvin >= COLDEST && kelvin <= HOTTEST)) {
            throw new IllegalArgumentException("temperature of daylight must be 4000 to 25000 K, was " + kelvin);
        }
        double x = chromaticityX(kelvin);
        double y = -3.000 * x * x + 2.870 * x - 0.275;
        double below = 0.0241 + 0.2562 * x - 0.7341 * y;
        double first = threeDecimals((-1.3515 - 1.7703 * x + 5.9114 * y) / below);
        double second = threeDecimals((0.0300 - 31.4424 * x + 30.0717 * y) / below);
        double[] power = new double[grid.count()];
        for (int i = 0; i < power.length; i++) {
            double position = (grid.nm(i) - TABLE.firstNm()) / (double) TABLE.stepNm();
            int left = Math.min((int) position, TABLE.count() - 2);
            double part = position - left;
            power[i] = (1 - part) * mixed(left, first, second) + part * mixed(left + 1, first, second);
        }
        return power;
    }

    private static double mixed(int row, double first, double second) {
        return COMPONENT[0][row] + first * COMPONENT[1][row] + second * COMPONENT[2][row];
    }

    static double chromaticityX(double kelvin) {
        double t = 1000 / kelvin;
        return kelvin <= MIDDLE
                ? ((-4.6070 * t + 2.9678) * t + 0.09911) * t + 0.244063
                : ((-2.0064 * t + 1.9018) * t + 0.24748) * t + 0.237040;
    }

    private static double threeDecimals(double value) {
        return Math.round(value * 1000) / 1000.0;
    }
}
