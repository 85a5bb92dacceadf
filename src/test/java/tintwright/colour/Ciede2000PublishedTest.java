package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import tintwright.Reference;

/** Sharma, Wu, Dalal (2005), Color Res. Appl. 30(1), 21-30, doi:10.1002/col.20070, table 1. */
class Ciede2000PublishedTest {
    /** Half of the last printed digit. */
    private static final double PRINTED_TO_4_DECIMALS = 0.00005;

    @Test
    void agreesWithAllPublishedPairsBothWaysRound() {
        List<String[]> pairs = Reference.rows("ciede2000/sharma-2005.csv");
        assertEquals(34, pairs.size());
        for (String[] p : pairs) {
            Lab first = lab(p, 1);
            Lab second = lab(p, 4);
            double published = Double.parseDouble(p[7]);
            assertEquals(published, Ciede2000.between(first, second), PRINTED_TO_4_DECIMALS, "pair " + p[0]);
            assertEquals(published, Ciede2000.between(second, first), PRINTED_TO_4_DECIMALS, "pair " + p[0]);
        }
    }

    private static Lab lab(String[] cells, int from) {
        return new Lab(
                Double.parseDouble(cells[from]),
                Double.parseDouble(cells[from + 1]),
                Double.parseDouble(cells[from + 2]),
                Viewing.D65_10);
    }
}
