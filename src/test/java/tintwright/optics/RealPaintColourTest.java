package tintwright.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import tintwright.Reference;
import tintwright.colour.Cie76;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;

/**
 * 108 readings of oil paint (Geldof and others 2018, Heritage Science 6:17) under five lights, against a
 * general-purpose library (colour-science 0.4.6) in its two ways: 5 nm sums over straight lines between the readings,
 * and, for two lights, the tables of ASTM E308 for 10 nm readings. The ways lie up to 0.43 apart.
 */
class RealPaintColourTest {
    /** The first five columns of the table were made with straight lines, the others with the printed weights. */
    private static final int STRAIGHT = 5;

    @Test
    void colourOfEveryPaintUnderFiveLights() {
        List<String[]> spectra = Reference.rows("paints/oil-mixtures-geldof-2018.csv");
        List<String[]> labs = Reference.rows("paints/oil-mixtures-geldof-2018-lab.csv");
        assertEquals(108, labs.size());
        String[][] lights = {
            {"D65", "10"}, {"D50", "2"}, {"A", "10"}, {"FL11", "10"}, {"LED-B3", "10"}, {"D65", "10"}, {"D50", "2"}
        };
        double[] worst = new double[lights.length];
        for (int row = 0; row < labs.size(); row++) {
            String[] s = spectra.get(row);
            String[] l = labs.get(row);
            assertEquals(s[0] + s[1], l[0] + l[1]);
            double[] values = new double[31];
            for (int i = 0; i < 31; i++) {
                values[i] = Double.parseDouble(s[5 + i]);
            }
            Spectrum spectrum = Spectrum.of(Grid.INSIDE, values);
            for (int k = 0; k < lights.length; k++) {
                Viewing viewing = Viewing.of(lights[k][0], Integer.parseInt(lights[k][1]));
                Lab theirs = new Lab(
                        Double.parseDouble(l[2 + 3 * k]),
                        Double.parseDouble(l[3 + 3 * k]),
                        Double.parseDouble(l[4 + 3 * k]),
                        viewing);
                Spectrum read = k < STRAIGHT ? straight(values) : spectrum;
                worst[k] = Math.max(worst[k], Cie76.between(Lab.of(read, viewing), theirs));
            }
        }
        for (int k = 0; k < lights.length; k++) {
            // Straight lines: the tables' three printed decimals. Made weights against printed ones: as measured.
            assertTrue(worst[k] < (k < STRAIGHT ? 0.001 : 0.015), "way " + k + ": " + worst[k]);
        }
    }

    /** The readings every 5 nm from 380 to 780 nm: straight lines between, the ends held. */
    private static Spectrum straight(double[] values) {
        Grid fine = Grid.between(380, 780, 5);
        double[] out = new double[fine.count()];
        for (int i = 0; i < out.length; i++) {
            double position = Math.max(0, Math.min(30, (fine.nm(i) - 400) / 10.0));
            int left = Math.min((int) position, 29);
            out[i] = values[left] + (position - left) * (values[left + 1] - values[left]);
        }
        return Spectrum.of(fine, out);
    }
}
