package tintwright.shelf.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tintwright.Reference;
import tintwright.shelf.PigmentFamily;

/**
 * The family curves against the published K and S of acrylic paints: Okumura (2005), RIT thesis. An artist's paint
 * is weaker than a paste by one factor for the whole maker, which is what the shared strength stands for; it is
 * taken out first. The curves were drawn from some of these paints; those marked false were not used for them.
 */
class PriorCoverageTest {
    private record Paint(String name, PigmentFamily family, boolean drawnFrom) {}

    private static final List<Paint> PAINTS = List.of(
            new Paint("Carbon Black", PigmentFamily.CARBON_BLACK, true),
            new Paint("Red Oxide", PigmentFamily.RED_IRON_OXIDE, true),
            new Paint("Burnt Sienna", PigmentFamily.RED_IRON_OXIDE, true),
            new Paint("Burnt Umber", PigmentFamily.BROWN_OXIDE, true),
            new Paint("Raw Umber", PigmentFamily.BROWN_OXIDE, true),
            new Paint("Yellow Ochre", PigmentFamily.YELLOW_IRON_OXIDE, true),
            new Paint("Raw Sienna", PigmentFamily.YELLOW_IRON_OXIDE, true),
            new Paint("Diarylide Yellow", PigmentFamily.ORGANIC_YELLOW, true),
            new Paint("Hansa Yellow Opaque", PigmentFamily.ORGANIC_YELLOW, true),
            new Paint("Pyrrole Red", PigmentFamily.ORGANIC_RED, true),
            new Paint("Naphthol Red Medium", PigmentFamily.ORGANIC_RED, true),
            new Paint("Quinacridone Crimson", PigmentFamily.ORGANIC_RED, true),
            new Paint("Phthalo Blue (Green Shade)", PigmentFamily.PHTHALO_BLUE, true),
            new Paint("Phthalo Green (Blue Shade)", PigmentFamily.PHTHALO_GREEN, true),
            new Paint("Ultramarine Blue", PigmentFamily.ULTRAMARINE, true),
            new Paint("Dioxazine Purple", PigmentFamily.VIOLET, true),
            new Paint("Cerulean Blue", PigmentFamily.UNKNOWN, false),
            new Paint("Cobalt Blue", PigmentFamily.UNKNOWN, false),
            new Paint("Chromium Oxide Green", PigmentFamily.UNKNOWN, false),
            new Paint("Quinacridone Magenta", PigmentFamily.UNKNOWN, false),
            new Paint("Anthraquinone Blue", PigmentFamily.UNKNOWN, false),
            new Paint("Permanent Green Light", PigmentFamily.UNKNOWN, false),
            new Paint("Green Gold", PigmentFamily.UNKNOWN, false));

    /** Share of a normal distribution outside two standard deviations. */
    private static final double EXPECTED_OUTSIDE = 0.0455;
    /** Below this K and S are rounding in the published fit, not paint; the table has six decimals. */
    private static final double FLOOR = 0.005;

    @Test
    void noMoreOfThePublishedPaintsLieOutsideTwoDeviationsThanExpected() {
        Map<String, double[]> published = new HashMap<>();
        for (String[] row : Reference.rows("paints/acrylic-k-s-okumura-2005.csv")) {
            double[] curve = new double[31];
            for (int w = 0; w < 31; w++) {
                // The table begins at 360 nm.
                curve[w] = Math.log(Math.max(FLOOR, Double.parseDouble(row[2 + 4 + w])));
            }
            published.put(row[0] + row[1], curve);
        }
        double shared = 0;
        int known = 0;
        for (Paint paint : PAINTS) {
            if (paint.family() != PigmentFamily.UNKNOWN) {
                shared += strengthApart(published.get(paint.name() + "K"), paint.family());
                known++;
            }
        }
        shared /= known;
        int[] points = new int[2];
        int[] outside = new int[2];
        for (Paint paint : PAINTS) {
            PartPrior prior = PartPrior.tint(paint.family());
            int which = paint.drawnFrom() ? 0 : 1;
            for (int w = 0; w < 31; w++) {
                double k = published.get(paint.name() + "K")[w] - shared;
                double s = published.get(paint.name() + "S")[w] - shared;
                outside[which] += outsideTwo(k, prior.absorption(), w) + outsideTwo(s, prior.scattering(), w);
                points[which] += 2;
            }
        }
        System.out.printf(
                Locale.ROOT,
                "outside two deviations: %.1f %% of %d points of families, %.1f %% of %d of "
                        + "unknown paints; shared strength %.2f%n",
                100.0 * outside[0] / points[0],
                points[0],
                100.0 * outside[1] / points[1],
                points[1],
                shared);
        assertEquals(16 * 62, points[0]);
        assertTrue(outside[0] <= EXPECTED_OUTSIDE * points[0], outside[0] + " of " + points[0]);
        assertTrue(outside[1] <= EXPECTED_OUTSIDE * points[1], outside[1] + " of " + points[1]);
    }

    private static double strengthApart(double[] lnK, PigmentFamily family) {
        CurvePrior prior = PartPrior.tint(family).absorption();
        double sum = 0;
        double weights = 0;
        for (int w = 0; w < 31; w++) {
            double weight = Math.exp(prior.middle(w));
            sum += weight * (lnK[w] - prior.middle(w));
            weights += weight;
        }
        return sum / weights;
    }

    private static int outsideTwo(double value, CurvePrior prior, int w) {
        return Math.abs(value - prior.middle(w)) > 2 * prior.deviation(w) ? 1 : 0;
    }
}
