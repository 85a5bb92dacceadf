package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tintwright.Reference;

class AdaptationTest {
    private static double[] whiteOf(double x, double y) {
        return new double[] {x / y, 1, (1 - x - y) / y};
    }

    /** colour-science 0.4.6, whites from the printed chromaticities. */
    @Test
    void bradfordIsTheOracleMatrix() throws IOException {
        List<String> lines = Files.readAllLines(Reference.file("oracle/bradford-d65-to-d50.csv"));
        double[][] ours = Adaptation.BRADFORD.matrix(whiteOf(0.3127, 0.3290), whiteOf(0.3457, 0.3585));
        for (int row = 0; row < 3; row++) {
            String[] cells = lines.get(row).split(",");
            for (int column = 0; column < 3; column++) {
                assertEquals(Double.parseDouble(cells[column]), ours[row][column], 1e-9);
            }
        }
    }

    /** D65 to D50 as the profiles of screens print it, to four decimals (from memory). */
    @Test
    void bradfordIsTheMatrixOfTheProfiles() {
        double[][] printed = {{1.0479, 0.0229, -0.0502}, {0.0296, 0.9904, -0.0171}, {-0.0092, 0.0151, 0.7519}};
        double[][] ours = Adaptation.BRADFORD.matrix(whiteOf(0.3127, 0.3290), whiteOf(0.3457, 0.3585));
        for (int row = 0; row < 3; row++) {
            assertArrayEquals(printed[row], ours[row], 0.00006);
        }
    }

    /** Li and others (2017): the equal-energy white has responses 1, 1, 1; so whites of equal energy scale alike. */
    @Test
    void equalEnergyHasEqualResponsesInCat16() {
        double[][] doubled = Adaptation.CAT16.matrix(new double[] {1, 1, 1}, new double[] {2, 2, 2});
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                assertEquals(row == column ? 2 : 0, doubled[row][column], 1e-12);
            }
        }
        for (double[] row : Adaptation.CAT16.responses()) {
            assertEquals(1, row[0] + row[1] + row[2], 1e-12);
        }
        double[][] sums = Adaptation.BRADFORD.responses();
        assertEquals(1.0001, sums[0][0] + sums[0][1] + sums[0][2], 1e-12);
        assertEquals(1.0000, sums[1][0] + sums[1][1] + sums[1][2], 1e-12);
        assertEquals(1.0000, sums[2][0] + sums[2][1] + sums[2][2], 1e-12);
    }

    @Test
    void whiteBecomesWhiteAndTheWayBackIsTheWayBack() {
        Random random = new Random(71);
        for (Adaptation way : Adaptation.values()) {
            for (int i = 0; i < 200; i++) {
                Xyz colour = Xyz.of(Spectra.random(random), Viewing.A_10);
                Xyz there = way.adapt(colour, Viewing.D65_10);
                Xyz back = way.adapt(there, Viewing.A_10);
                assertEquals(colour.x(), back.x(), 1e-10);
                assertEquals(colour.y(), back.y(), 1e-10);
                assertEquals(colour.z(), back.z(), 1e-10);
            }
            Xyz white = way.adapt(Viewing.A_10.white(), Viewing.D65_10);
            assertEquals(0, Cie76.between(Lab.of(white), new Lab(100, 0, 0, Viewing.D65_10)), 1e-10);
        }
    }
}
