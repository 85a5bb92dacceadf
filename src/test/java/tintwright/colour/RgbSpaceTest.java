package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tintwright.Reference;

class RgbSpaceTest {
    /** IEC 61966-2-1, printed to four decimals. */
    @Test
    void theMatrixOfTheStandardFollowsFromThePrimaries() {
        double[][] printed = {{0.4124, 0.3576, 0.1805}, {0.2126, 0.7152, 0.0722}, {0.0193, 0.1192, 0.9505}};
        near(printed, RgbSpace.SRGB.matrixToXyz(), 0.00006);
    }

    /** Display P3 with SMPTE EG 432-1 primaries and the same white; six decimals, from memory. */
    @Test
    void theMatrixOfTheWiderScreenFollowsFromItsPrimaries() {
        double[][] printed = {
            {0.486571, 0.265668, 0.198217}, {0.228975, 0.691739, 0.079287}, {0.000000, 0.045113, 1.043944}
        };
        near(printed, RgbSpace.DISPLAY_P3.matrixToXyz(), 0.000001);
    }

    private static void near(double[][] expected, double[][] found, double tolerance) {
        for (int row = 0; row < 3; row++) {
            assertArrayEquals(expected[row], found[row], tolerance);
        }
    }

    /** IEC 61966-2-1: the two pieces meet, and each is the printed formula. */
    @Test
    void theTransferCurveIsTheExactOne() {
        assertEquals(0.04 / 12.92, RgbSpace.toLinear(0.04), 1e-17);
        assertEquals(0.04045 / 12.92, RgbSpace.toLinear(0.04045), 1e-17);
        // Worked apart, to 12 digits: ((0.5 + 0.055) / 1.055)^2.4 and ((0.2 + 0.055) / 1.055)^2.4.
        assertEquals(0.214041140482, RgbSpace.toLinear(0.5), 1e-12);
        assertEquals(0.0331047665709, RgbSpace.toLinear(0.2), 1e-12);
        assertEquals(Math.pow((0.04046 + 0.055) / 1.055, 2.4), RgbSpace.toLinear(0.04046), 1e-17);
        assertEquals(1, RgbSpace.toLinear(1), 0);
        assertEquals(RgbSpace.toLinear(0.04045), RgbSpace.toLinear(0.04045 + 1e-12), 3e-8);
        assertEquals(RgbSpace.toCode(0.0031308), RgbSpace.toCode(0.0031308 + 1e-12), 3e-7);
        assertEquals(12.92 * 0.003130, RgbSpace.toCode(0.003130), 1e-15);
        assertEquals(1.055 * Math.pow(0.003132, 1 / 2.4) - 0.055, RgbSpace.toCode(0.003132), 1e-15);
        assertEquals(-RgbSpace.toLinear(0.3), RgbSpace.toLinear(-0.3), 0);
        for (double code = -0.2; code < 1.3; code += 0.01) {
            assertEquals(code, RgbSpace.toCode(RgbSpace.toLinear(code)), 1e-7);
        }
    }

    /** Rounded matrix in the oracle's table: 0.02 in Lab (colour-science 0.4.6). */
    @Test
    void agreesWithTheOracleTable() {
        List<String[]> rows = Reference.rows("oracle/srgb-to-lab-100.csv");
        assertEquals(100, rows.size());
        double worst = 0;
        for (String[] row : rows) {
            Lab ours = RgbSpace.SRGB.decode(cell(row, 0) / 255, cell(row, 1) / 255, cell(row, 2) / 255);
            Lab theirs = new Lab(cell(row, 6), cell(row, 7), cell(row, 8), Viewing.D65_2);
            worst = Math.max(worst, Cie76.between(ours, theirs));
            Lab graphic = Lab.of(Adaptation.BRADFORD.adapt(ours.toXyz(), Viewing.D50_2));
            Lab theirGraphic = new Lab(cell(row, 9), cell(row, 10), cell(row, 11), Viewing.D50_2);
            worst = Math.max(worst, Cie76.between(graphic, theirGraphic));
        }
        assertTrue(worst < 0.02, "worst " + worst);
    }

    private static double cell(String[] row, int index) {
        return Double.parseDouble(row[index]);
    }

    @Test
    void codesGoThereAndBack() {
        Random random = new Random(61);
        for (RgbSpace space : RgbSpace.values()) {
            for (int i = 0; i < 300; i++) {
                double r = random.nextDouble();
                double g = random.nextDouble();
                double b = random.nextDouble();
                RgbSpace.Code code = space.encode(space.decode(r, g, b));
                assertArrayEquals(new double[] {r, g, b}, new double[] {code.red(), code.green(), code.blue()}, 1e-6);
                assertTrue(code.inGamut());
            }
        }
    }

    @Test
    void equalCodesAreGreyAndWhiteIsWhiteUnderEveryLight() {
        Lab grey = RgbSpace.SRGB.decode(0.5, 0.5, 0.5);
        assertEquals(0, grey.chroma(), 1e-9);
        for (Viewing viewing : new Viewing[] {Viewing.D65_10, Viewing.A_10, Viewing.D50_2}) {
            RgbSpace.Code code = RgbSpace.SRGB.encode(new Lab(100, 0, 0, viewing));
            assertArrayEquals(new double[] {1, 1, 1}, new double[] {code.red(), code.green(), code.blue()}, 1e-9);
        }
    }

    @Test
    void saysWhenTheScreenCannotShowAColour() {
        Lab wide = RgbSpace.DISPLAY_P3.decode(0, 1, 0);
        assertFalse(RgbSpace.SRGB.encode(wide).inGamut());
        assertTrue(RgbSpace.DISPLAY_P3.encode(wide).inGamut());
    }
}
