package tintwright.reading.photo;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import tintwright.Reference;
import tintwright.colour.Grid;
import tintwright.colour.Spectrum;

/**
 * Faded hulls for the simulated phones: real pigments in much white, opaque.
 *
 * <p>Source of the pigments: Okumura (2005), K and S of acrylics; mixed by Kubelka-Munk with the surface of k1 =
 * 0.04, k2 = 0.60 that the same work gives, gloss left out.
 */
final class PaintedHulls {
    private static final int FIRST_COLUMN_OF_400 = 6;
    private final Map<String, double[][]> pigments = new LinkedHashMap<>();
    /** The families that gel coat is tinted with: black, iron oxides, phthalocyanines, organic red and yellow,
     * umber; common practice, no source. The oxides and black stand twice, as they go into most hulls. */
    private final List<String> names = List.of(
            "Carbon Black",
            "Carbon Black",
            "Red Oxide",
            "Red Oxide",
            "Yellow Ochre",
            "Yellow Ochre",
            "Phthalo Blue (Green Shade)",
            "Phthalo Green (Blue Shade)",
            "Pyrrole Red",
            "Hansa Yellow Opaque",
            "Raw Umber",
            "Ultramarine Blue");

    PaintedHulls() {
        for (String[] row : Reference.rows("paints/acrylic-k-s-okumura-2005.csv")) {
            double[][] both = pigments.computeIfAbsent(row[0], name -> new double[2][Grid.INSIDE.count()]);
            for (int i = 0; i < Grid.INSIDE.count(); i++) {
                both[row[1].equals("K") ? 0 : 1][i] = Double.parseDouble(row[FIRST_COLUMN_OF_400 + i]);
            }
        }
    }

    /** One to three pigments; most hulls are light, one in five is dark or strong. */
    Spectrum random(Random random) {
        double[] k = pigments.get("Titanium White")[0].clone();
        double[] s = pigments.get("Titanium White")[1].clone();
        int count = 1 + random.nextInt(3);
        boolean strong = random.nextInt(5) == 0;
        for (int n = 0; n < count; n++) {
            double[][] pigment = pigments.get(names.get(random.nextInt(names.size())));
            double part = Math.exp(Math.log(strong ? 0.05 : 0.002) + random.nextDouble() * Math.log(strong ? 20 : 30));
            for (int i = 0; i < k.length; i++) {
                k[i] += part * pigment[0][i];
                s[i] += part * pigment[1][i];
            }
        }
        double[] out = new double[k.length];
        for (int i = 0; i < out.length; i++) {
            double ratio = k[i] / s[i];
            double inside = 1 + ratio - Math.sqrt(ratio * ratio + 2 * ratio);
            out[i] = 0.96 * 0.4 * inside / (1 - 0.6 * inside);
        }
        return Spectrum.of(Grid.INSIDE, out);
    }
}
