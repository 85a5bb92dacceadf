package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import tintwright.Reference;

/** White points of CIE 15: chromaticities as printed, and X, Z as 5 nm sums. */
class WhitePointsPublishedTest {
    @Test
    void agreeWithThePublishedTables() {
        int checked = 0;
        for (String[] row : Reference.rows("cie/whitepoints.csv")) {
            if (row[0].equals("LED-RGB1")) {
                continue;
            }
            Xyz white = Viewing.of(row[0], Integer.parseInt(row[1])).white();
            String which = row[0] + " " + row[1] + " degrees";
            assertEquals(Double.parseDouble(row[2]), white.x(), 0.00006, which + " X");
            assertEquals(Double.parseDouble(row[4]), white.z(), 0.00006, which + " Z");
            double sum = white.x() + white.y() + white.z();
            // The printed FL values for 10 degrees come from finer sums: up to 0.00015 from 5 nm sums.
            assertEquals(Double.parseDouble(row[7]), white.x() / sum, 0.00015, which + " x");
            assertEquals(Double.parseDouble(row[8]), white.y() / sum, 0.00015, which + " y");
            checked++;
        }
        assertEquals(18, checked);
    }
}
