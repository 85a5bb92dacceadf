package tintwright.reading.photo.camera;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import tintwright.colour.Lab;
import tintwright.colour.RgbSpace;
import tintwright.colour.Viewing;
import tintwright.reading.photo.card.Sample;
import tintwright.reading.photo.file.Rgb;

class CameraModelTest {
    private final CameraModel model = new CameraModel(Viewing.D65_2);

    @Test
    void isPlainSrgbWhileNothingIsLearned() {
        double[] lab = new double[3];
        model.colour(new double[CameraModel.UNKNOWNS], sample(0.3, 0.2, 0.1), lab, null, null);
        Lab plain = RgbSpace.SRGB.decode(RgbSpace.toCode(0.3), RgbSpace.toCode(0.2), RgbSpace.toCode(0.1));
        assertEquals(plain.lightness(), lab[0], 1e-9);
        assertEquals(plain.a(), lab[1], 1e-9);
        assertEquals(plain.b(), lab[2], 1e-9);
    }

    @Test
    void keepsGreyGreyHoweverItMixes() {
        double[] t = new double[CameraModel.UNKNOWNS];
        for (int i = CameraModel.FIRST_MIX; i < CameraModel.BEND; i++) {
            t[i] = 0.1 * Math.sin(i);
        }
        double[] lab = new double[3];
        model.colour(t, sample(0.4, 0.4, 0.4), lab, null, null);
        assertEquals(0, lab[1], 1e-9);
        assertEquals(0, lab[2], 1e-9);
    }

    @Test
    void slopesAreThoseOfSmallSteps() {
        Random random = new Random(7);
        for (int round = 0; round < 20; round++) {
            double[] t = new double[CameraModel.UNKNOWNS];
            for (int i = 0; i < t.length; i++) {
                t[i] = 0.05 * random.nextGaussian();
            }
            Sample sample = sample(
                    0.02 + 0.9 * random.nextDouble(),
                    0.02 + 0.9 * random.nextDouble(),
                    0.02 + 0.9 * random.nextDouble());
            double[][] slopes = new double[3][CameraModel.UNKNOWNS];
            double[][] byLight = new double[3][3];
            model.colour(t, sample, new double[3], slopes, byLight);
            double step = 1e-6;
            for (int i = 0; i < t.length; i++) {
                double[] less = t.clone();
                double[] more = t.clone();
                less[i] -= step;
                more[i] += step;
                checkSlope(colour(less, sample), colour(more, sample), slopes, i, step);
            }
            Rgb l = sample.light();
            checkSlope(
                    colour(t, sample(l.red() - step, l.green(), l.blue())),
                    colour(t, sample(l.red() + step, l.green(), l.blue())),
                    byLight,
                    0,
                    step);
            checkSlope(
                    colour(t, sample(l.red(), l.green(), l.blue() - step)),
                    colour(t, sample(l.red(), l.green(), l.blue() + step)),
                    byLight,
                    2,
                    step);
        }
    }

    private static void checkSlope(double[] less, double[] more, double[][] slopes, int column, double step) {
        for (int axis = 0; axis < 3; axis++) {
            double slope = (more[axis] - less[axis]) / (2 * step);
            assertEquals(slope, slopes[axis][column], 1e-3 * (1 + Math.abs(slope)), "unknown " + column);
        }
    }

    private double[] colour(double[] t, Sample sample) {
        double[] lab = new double[3];
        model.colour(t, sample, lab, null, null);
        return lab;
    }

    private static Sample sample(double red, double green, double blue) {
        return new Sample(new Rgb(red, green, blue), new Rgb(0, 0, 0), 0.2, -0.4);
    }
}
