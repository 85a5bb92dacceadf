package tintwright.demo;

import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/**
 * The invented world behind the demo data: it weighs with a real scale, draws films that hide, and reads them with
 * an instrument that is never quite sure. Written apart from the engine on purpose, so that the engine is not
 * tried on its own formulas.
 *
 * <p>Assumptions: films hide; the mix is as even as its masses; surface of a resin of index 1.5, gloss included
 * (k1 = 0.04, k2 = 0.60); the tint mass on the scale is off by up to half a step of 0.01 g; each reflectance is off
 * by 0.002 (one standard deviation), independently.
 */
final class HiddenBench {
    static final int FIRST_NM = 400;
    static final int STEP_NM = 10;
    static final int COUNT = 31;
    static final double NOISE = 0.002;
    private static final double HALF_STEP_GRAMS = 0.005;

    private final Random chance;

    HiddenBench(long seed) {
        this.chance = new Random(seed);
    }

    /** @return true reflectance of a film of these grams, gloss included */
    static double[] reflectance(Map<HiddenPigment, Double> grams) {
        double[] out = new double[COUNT];
        for (int i = 0; i < COUNT; i++) {
            double nm = FIRST_NM + i * STEP_NM;
            double k = 0;
            double s = 0;
            for (Map.Entry<HiddenPigment, Double> part : grams.entrySet()) {
                k += part.getKey().absorption(nm) * part.getValue();
                s += part.getKey().scattering(nm) * part.getValue();
            }
            // What goes down, what comes up: the two roots of the opaque layer multiply to 1.
            double a = 1 + k / s;
            double inside = a - StrictMath.sqrt(a * a - 1);
            out[i] = 0.04 + 0.96 * 0.40 * inside / (1 - 0.60 * inside);
        }
        return out;
    }

    /** @return what really went in when the scale showed these grams; the base is heavy enough not to matter */
    Map<HiddenPigment, Double> weighed(Map<HiddenPigment, Double> shown) {
        Map<HiddenPigment, Double> real = new java.util.EnumMap<>(HiddenPigment.class);
        shown.forEach((pigment, grams) -> real.put(pigment, grams + HALF_STEP_GRAMS * (2 * chance.nextDouble() - 1)));
        return real;
    }

    /** @return reflectances as the instrument prints them, four decimals */
    double[] read(double[] truth, DoubleUnaryOperator weathered) {
        double[] out = new double[COUNT];
        for (int i = 0; i < COUNT; i++) {
            double value = truth[i] * weathered.applyAsDouble(FIRST_NM + i * STEP_NM) + NOISE * chance.nextGaussian();
            out[i] = StrictMath.rint(value * 10000) / 10000;
        }
        return out;
    }
}
