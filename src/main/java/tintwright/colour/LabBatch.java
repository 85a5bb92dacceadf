package tintwright.colour;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * CIELAB of many reflectances on plain arrays: one light, one observer, one grid, nothing allocated.
 *
 * <p>The same answers as {@link Lab#of(Spectrum, Viewing)} to 1e-9. Reflectances are not checked here: what comes
 * from outside belongs in a {@link Spectrum} first. May be shared between threads.
 */
public final class LabBatch {
    private static final double LINEAR_BELOW = 216.0 / 24389.0;
    private static final double SLOPE = 24389.0 / 27.0;

    private static final Map<Key, LabBatch> MADE = new ConcurrentHashMap<>();

    private record Key(Viewing viewing, Grid grid) {}

    private final int count;
    /** Weights over the white, so that the sums are the ratios CIELAB asks for: X, then Y, then Z. */
    private final double[] weight;

    private LabBatch(Viewing viewing, Grid grid) {
        this.count = grid.count();
        this.weight = new double[3 * count];
        TristimulusWeights weights = TristimulusWeights.of(viewing, grid);
        double[][] rows = weights.toArray();
        double[] white = {
            weights.white().x(), weights.white().y(), weights.white().z()
        };
        for (int axis = 0; axis < 3; axis++) {
            for (int i = 0; i < count; i++) {
                weight[axis * count + i] = rows[axis][i] / white[axis];
            }
        }
    }

    /** @return the form for a light, an observer and a grid; made once and kept */
    public static LabBatch of(Viewing viewing, Grid grid) {
        return MADE.computeIfAbsent(new Key(viewing, grid), key -> new LabBatch(viewing, grid));
    }

    /**
     * One colour.
     *
     * @param reflectance holds the reflectances of the grid from index {@code from} on
     * @param lab         L*, a*, b* are written at {@code at}, {@code at + 1}, {@code at + 2}
     */
    public void lab(double[] reflectance, int from, double[] lab, int at) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = 0; i < count; i++) {
            double r = reflectance[from + i];
            x += weight[i] * r;
            y += weight[count + i] * r;
            z += weight[2 * count + i] * r;
        }
        write(response(x), response(y), response(z), lab, at);
    }

    /**
     * Many colours at once.
     *
     * @param reflectances a row for each wavelength of the grid, a column for each colour
     * @param labs         filled with a row of L*, a*, b* for each colour
     */
    public void labs(double[][] reflectances, double[][] labs) {
        double[] x = new double[labs.length];
        double[] y = new double[labs.length];
        double[] z = new double[labs.length];
        for (int i = 0; i < count; i++) {
            double[] row = reflectances[i];
            double byX = weight[i];
            double byY = weight[count + i];
            double byZ = weight[2 * count + i];
            for (int one = 0; one < x.length; one++) {
                x[one] += byX * row[one];
                y[one] += byY * row[one];
                z[one] += byZ * row[one];
            }
        }
        for (int one = 0; one < x.length; one++) {
            write(response(x[one]), response(y[one]), response(z[one]), labs[one], 0);
        }
    }

    /**
     * One colour and how it moves with each reflectance.
     *
     * @param slopes filled with three rows, dL*, da*, db*, each by every wavelength
     */
    public void labAndSlopes(double[] reflectance, double[] lab, double[][] slopes) {
        double[] steep = new double[3];
        lab(reflectance, lab, steep);
        for (int i = 0; i < count; i++) {
            double byX = steep[0] * weight[i];
            double byY = steep[1] * weight[count + i];
            double byZ = steep[2] * weight[2 * count + i];
            slopes[0][i] = 116 * byY;
            slopes[1][i] = 500 * (byX - byY);
            slopes[2][i] = 200 * (byY - byZ);
        }
    }

    /**
     * One colour, ready for {@link #along}.
     *
     * @param steep filled with how steeply the eye's responses to X, Y, Z rise there
     */
    public void lab(double[] reflectance, double[] lab, double[] steep) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = 0; i < count; i++) {
            double r = reflectance[i];
            x += weight[i] * r;
            y += weight[count + i] * r;
            z += weight[2 * count + i] * r;
        }
        double fx = response(x);
        double fy = response(y);
        double fz = response(z);
        write(fx, fy, fz, lab, 0);
        steep[0] = slope(x, fx);
        steep[1] = slope(y, fy);
        steep[2] = slope(z, fz);
    }

    /**
     * How a colour moves when its reflectances all change at once.
     *
     * @param change of each reflectance
     * @param steep  of the colour, as {@link #lab(double[], double[], double[])} left it
     * @param moves  filled with the change of L*, a*, b*
     */
    public void along(double[] change, double[] steep, double[] moves) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = 0; i < count; i++) {
            double by = change[i];
            x += weight[i] * by;
            y += weight[count + i] * by;
            z += weight[2 * count + i] * by;
        }
        x *= steep[0];
        y *= steep[1];
        z *= steep[2];
        moves[0] = 116 * y;
        moves[1] = 500 * (x - y);
        moves[2] = 200 * (y - z);
    }

    /** One colour from its own array, into L*, a*, b*. */
    public void lab(double[] reflectance, double[] lab) {
        lab(reflectance, 0, lab, 0);
    }

    private static void write(double fx, double fy, double fz, double[] lab, int at) {
        lab[at] = 116 * fy - 16;
        lab[at + 1] = 500 * (fx - fy);
        lab[at + 2] = 200 * (fy - fz);
    }

    private static double response(double ratio) {
        return ratio > LINEAR_BELOW ? Math.cbrt(ratio) : (SLOPE * ratio + 16) / 116;
    }

    private static double slope(double ratio, double response) {
        return ratio > LINEAR_BELOW ? 1 / (3 * response * response) : SLOPE / 116;
    }
}
