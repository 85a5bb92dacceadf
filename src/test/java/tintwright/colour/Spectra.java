package tintwright.colour;

import java.util.Arrays;
import java.util.Random;

/** Made-up reflectances for the laws: smooth curves of a few waves, all strictly between 0 and 1. */
public final class Spectra {
    private Spectra() {}

    public static Spectrum flat(double value) {
        double[] values = new double[Grid.INSIDE.count()];
        Arrays.fill(values, value);
        return Spectrum.of(Grid.INSIDE, values);
    }

    public static Spectrum random(Random random) {
        double level = random.nextGaussian() * 1.2;
        double tilt = random.nextGaussian();
        double wave = random.nextGaussian() * 0.8;
        double phase = random.nextDouble() * 6;
        double[] values = new double[Grid.INSIDE.count()];
        for (int i = 0; i < values.length; i++) {
            double t = i / (values.length - 1.0);
            double z = level + tilt * (2 * t - 1) + wave * Math.sin(6 * t + phase);
            values[i] = 1 / (1 + Math.exp(-z));
        }
        return Spectrum.of(Grid.INSIDE, values);
    }
}
