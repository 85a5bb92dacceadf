package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tintwright.Reference;

class Ciede2000LawTest {
    private static final double PRINTED_TO_4_DECIMALS = 0.00005;

    private static Lab lab(double l, double a, double b) {
        return new Lab(l, a, b, Viewing.D65_10);
    }

    /** Rows of table 1 of Sharma, Wu, Dalal (2005) that between them lean on every constant of the formula. */
    @Test
    void holdsPublishedPairsAlsoWhereTheTablesAreAbsent() {
        double[][] pairs = {
            {50, 2.6772, -79.7751, 50, 0, -82.7485, 2.0425},
            {50, 3.1571, -77.2803, 50, 0, -82.7485, 2.8615},
            {50, 0, 0, 50, -1, 2, 2.3669},
            {50, 2.49, -0.001, 50, -2.49, 0.0011, 7.2195},
            {50, 2.5, 0, 73, 25, -18, 27.1492},
            {50, 2.5, 0, 61, -5, 29, 22.8977},
            {50, 2.5, 0, 56, -27, -3, 31.9030},
            {50, 2.5, 0, 58, 24, 15, 19.4535},
            {60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644},
            {63.0109, -31.0961, -5.8663, 62.8187, -29.7946, -4.0864, 1.2630},
            {22.7233, 20.0904, -46.6940, 23.0331, 14.9730, -42.5619, 2.0373},
            {36.4612, 47.8580, 18.3852, 36.2715, 50.5065, 21.2231, 1.4146},
            {90.8027, -2.0831, 1.4410, 91.1528, -1.6435, 0.0447, 1.4441},
            {90.9257, -0.5406, -0.9208, 88.6381, -0.8985, -0.7239, 1.5381},
            {6.7747, -0.2908, -2.4247, 5.8714, -0.0985, -2.2286, 0.6377},
            {2.0776, 0.0795, -1.1350, 0.9033, -0.0636, -0.5514, 0.9082}
        };
        for (double[] p : pairs) {
            assertEquals(p[6], Ciede2000.between(lab(p[0], p[1], p[2]), lab(p[3], p[4], p[5])), PRINTED_TO_4_DECIMALS);
        }
    }

    /** 300 pairs by a general-purpose library, printed to six decimals, inputs to three. */
    @Test
    void agreesWithTheOracleTable() {
        List<String[]> rows = Reference.rows("oracle/difference-300.csv");
        assertEquals(300, rows.size());
        for (String[] row : rows) {
            double[] v = new double[10];
            for (int i = 0; i < 10; i++) {
                v[i] = Double.parseDouble(row[i]);
            }
            assertEquals(v[9], Ciede2000.between(lab(v[0], v[1], v[2]), lab(v[3], v[4], v[5])), 0.0000006);
            assertEquals(v[6], Cie76.between(lab(v[0], v[1], v[2]), lab(v[3], v[4], v[5])), 0.0000006);
        }
    }

    /** Pairs far apart and hardly apart, greys, hues that lie opposite, all round the circle. */
    @Test
    void plainNumbersGiveWhatColoursGive() {
        Random random = new Random(82);
        double[] sizes = {0, 1e-9, 1e-3, 0.5, 8, 60};
        for (int i = 0; i < 200_000; i++) {
            double size = sizes[i % sizes.length];
            double step = sizes[i / sizes.length % sizes.length];
            boolean opposite = i % 11 == 0;
            double l1 = random.nextDouble() * 100;
            double a1 = random.nextGaussian() * size;
            double b1 = random.nextGaussian() * size;
            double l2 = Math.min(100, Math.max(0, l1 + random.nextGaussian() * step));
            double a2 = (opposite ? -a1 : a1) + random.nextGaussian() * step;
            double b2 = (opposite ? -b1 : b1) + random.nextGaussian() * step;
            double slow = Ciede2000.between(lab(l1, a1, b1), lab(l2, a2, b2));
            assertEquals(
                    slow,
                    Ciede2000.between(l1, a1, b1, l2, a2, b2),
                    1e-9 * (1 + slow),
                    () -> "pair " + l1 + " " + a1 + " " + b1 + ", " + l2 + " " + a2 + " " + b2);
        }
    }

    @Test
    void isZeroForOneAndTheSameAndAlikeBothWaysRound() {
        Random random = new Random(81);
        for (int i = 0; i < 500; i++) {
            Lab first = lab(random.nextDouble() * 100, random.nextGaussian() * 50, random.nextGaussian() * 50);
            Lab second = lab(random.nextDouble() * 100, random.nextGaussian() * 50, random.nextGaussian() * 50);
            assertEquals(0, Ciede2000.between(first, first), 0);
            Ciede2000.Parts there = Ciede2000.parts(first, second);
            Ciede2000.Parts back = Ciede2000.parts(second, first);
            assertEquals(there.total(), back.total(), 1e-12);
            assertEquals(there.lightness(), -back.lightness(), 1e-12);
            assertEquals(there.chroma(), -back.chroma(), 1e-12);
            assertEquals(there.hue(), -back.hue(), 1e-12);
            assertEquals(
                    there.total() * there.total(),
                    there.lightness() * there.lightness()
                            + there.chroma() * there.chroma()
                            + there.hue() * there.hue()
                            + there.rotation(),
                    1e-9);
        }
    }

    /**
     * Red and green of chroma 25, half a turn apart: of the two hues midway the formula means yellow, 90 degrees. Worked
     * by hand: G = (1 - sqrt(1/2)) / 2, C' = 28.66116524, T = 1 - 0.085 - 0.24 + 0.033449108 - 0.0907981.
     */
    @Test
    void betweenRedAndGreenLiesYellow() {
        double worked = 2 * 28.66116524 / (1 + 0.015 * 28.66116524 * 0.617651008);
        Ciede2000.Parts parts = Ciede2000.parts(lab(50, 25, 0), lab(50, -25, 0));
        assertEquals(worked, parts.hue(), 1e-6);
        assertEquals(worked, parts.total(), 1e-6);
        assertEquals(-worked, Ciede2000.parts(lab(50, -25, 0), lab(50, 25, 0)).hue(), 1e-6);
    }

    @Test
    void greaterWeightsForgiveMore() {
        Lab first = lab(50, 20, 10);
        Lab second = lab(56, 25, 3);
        Ciede2000.Parts plain = Ciede2000.parts(first, second);
        Ciede2000.Parts textile = Ciede2000.parts(first, second, 2, 1, 1);
        assertEquals(plain.lightness() / 2, textile.lightness(), 1e-14);
        assertEquals(plain.chroma() / 3, Ciede2000.parts(first, second, 1, 3, 1).chroma(), 1e-14);
        assertEquals(plain.hue() / 4, Ciede2000.parts(first, second, 1, 1, 4).hue(), 1e-14);
        assertEquals(
                plain.rotation() / 12, Ciede2000.parts(first, second, 1, 3, 4).rotation(), 1e-14);
        assertThrows(IllegalArgumentException.class, () -> Ciede2000.parts(first, second, 0, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> Ciede2000.parts(first, second, 1, Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> Ciede2000.parts(first, second, 1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> Ciede2000.parts(first, second, 1, 1, 0));
    }

    @Test
    void anyFinitePairGivesANumber() {
        double[] edge = {0, -0.0, 1e-300, -1e-300, 1e-9, 1, 100, -128, 1e6, -1e9, 1e40};
        Random random = new Random(82);
        for (int i = 0; i < 20000; i++) {
            double[] v = new double[6];
            for (int k = 0; k < 6; k++) {
                v[k] = edge[random.nextInt(edge.length)];
            }
            double difference = Ciede2000.between(lab(v[0], v[1], v[2]), lab(v[3], v[4], v[5]));
            assertTrue(difference >= 0, () -> java.util.Arrays.toString(v) + " gave " + difference);
        }
    }
}
