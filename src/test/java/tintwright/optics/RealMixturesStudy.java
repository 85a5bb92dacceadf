package tintwright.optics;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tintwright.AccuracySection;
import tintwright.Reference;
import tintwright.colour.Adaptation;
import tintwright.colour.Ciede2000;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.RgbSpace;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;

/**
 * Two paints and one mix of them known, another mix of the same two predicted, and compared with its reading.
 * Geldof and others (2018), Heritage Science 6:17, data CC0; read over the white card, gloss included.
 */
@Tag("study")
class RealMixturesStudy {
    private static final Viewing VIEWING = Viewing.D65_10;
    private static final Geometry GEOMETRY = Geometry.SPECULAR_INCLUDED;

    /** A pair of paints; in each mix the share of the second by mass. */
    private record Ladder(String family, String first, String second, String[] mixes, double[] shares) {}

    private static final List<Ladder> LADDERS = List.of(
            new Ladder(
                    "zinc white + bone black",
                    "07A",
                    "07-black",
                    new String[] {"07C", "07D", "07E", "07F"},
                    new double[] {0.029, 0.096, 0.522, 0.742}),
            new Ladder("zinc white + red lead", "07A", "05A", new String[] {"05B", "05C"}, new double[] {0.092, 0.508}),
            new Ladder(
                    "zinc white + ultramarine", "07A", "11A", new String[] {"11B", "11C"}, new double[] {0.107, 0.51}),
            new Ladder(
                    "zinc white + cobalt blue", "07A", "12A", new String[] {"12B", "12C"}, new double[] {0.10, 0.50}),
            new Ladder("lead white + bone black", "08A", "07-black", new String[] {"08B", "08C"}, new double[] {
                0.009, 0.102
            }));

    private final Map<String, double[]> read = new TreeMap<>();
    private final Map<String, Double> showsThrough = new TreeMap<>();

    @Test
    void predictsOneMixFromAnother() throws IOException {
        load();
        StringBuilder page = new StringBuilder();
        page.append("Two paints and one mix known, the other mix predicted: CIEDE2000 (D65, 10 degrees) between the"
                + " predicted colour and the reading. Oil paints read over a white card, gloss included (Geldof and"
                + " others 2018). The last column says what the ground alone does: CIEDE2000 between the predicted"
                + " mix over the white and over the black card. Bone black was not read pure; it is taken as a paint"
                + " with an internal reflectance of 0.5 % (our assumption). \"Single-constant\" keeps one K/S per tint on"
                + " the white's scattering; \"two-constant\" finds K and S of the tint wavelength by wavelength from the"
                + " known mix and the pure paint.\n\n");
        page.append("Made by `mvn test -Dwanted.groups=study -Dtest=RealMixturesStudy`.\n\n");
        page.append("| family | known mix | predicted mix | averaging RGB | averaging reflectance | single-constant |"
                + " two-constant | ground shows |\n| --- | --- | --- | --- | --- | --- | --- | --- |\n");
        List<double[]> all = new ArrayList<>();
        for (Ladder ladder : LADDERS) {
            for (int known = 0; known < ladder.mixes().length; known++) {
                for (int wanted = 0; wanted < ladder.mixes().length; wanted++) {
                    if (wanted != known) {
                        all.add(line(page, ladder, known, wanted));
                    }
                }
            }
        }
        double[] medians = new double[4];
        for (int k = 0; k < 4; k++) {
            int way = k;
            medians[k] = median(all.stream().mapToDouble(miss -> miss[way]).toArray());
        }
        page.append(String.format(
                Locale.ROOT,
                "| **median of %d** | | | **%.2f** | **%.2f** | **%.2f** | **%.2f** | |%n",
                all.size(),
                medians[0],
                medians[1],
                medians[2],
                medians[3]));
        AccuracySection.write(
                "Films: real mixtures of oil paint", List.of(page.toString().stripTrailing()));
        assertTrue(medians[3] < medians[1] / 3, "the film theory must beat averaging reflectance by far");
    }

    private void load() {
        for (String[] row : Reference.rows("paints/oil-mixtures-geldof-2018.csv")) {
            double[] values = new double[31];
            for (int i = 0; i < 31; i++) {
                values[i] = Double.parseDouble(row[5 + i]);
            }
            if (row[1].equals("paint_over_white")) {
                read.put(row[0], values);
            } else if (row[1].equals("paint_over_black")) {
                read.put(row[0] + " over black", values);
            }
        }
        double[] black = new double[31];
        Arrays.fill(black, Surface.RESIN.measured(0.005, GEOMETRY));
        read.put("07-black", black);
        for (String code : List.copyOf(read.keySet())) {
            if (read.containsKey(code + " over black")) {
                showsThrough.put(code, Ciede2000.between(lab(read.get(code)), lab(read.get(code + " over black"))));
            }
        }
    }

    private double[] line(StringBuilder page, Ladder ladder, int known, int wanted) {
        double[] first = read.get(ladder.first());
        double[] second = read.get(ladder.second());
        double[] mix = read.get(ladder.mixes()[known]);
        double c = ladder.shares()[known];
        double d = ladder.shares()[wanted];
        Lab truth = lab(read.get(ladder.mixes()[wanted]));
        double[] miss = {
            Ciede2000.between(averageRgb(first, second, d), truth),
            Ciede2000.between(lab(average(first, second, d)), truth),
            Ciede2000.between(lab(singleConstant(first, mix, c, d)), truth),
            Ciede2000.between(lab(twoConstant(first, second, mix, c, d)), truth)
        };
        page.append(String.format(
                Locale.ROOT,
                "| %s | %.1f %% | %.1f %% | %.2f | %.2f | %.2f | %.2f | %.2f |%n",
                ladder.family(),
                100 * c,
                100 * d,
                miss[0],
                miss[1],
                miss[2],
                miss[3],
                showsThrough.get(ladder.mixes()[wanted])));
        return miss;
    }

    private static Lab lab(double[] values) {
        return Lab.of(Spectrum.of(Grid.INSIDE, values), VIEWING);
    }

    private static double[] average(double[] first, double[] second, double share) {
        double[] out = new double[31];
        for (int i = 0; i < 31; i++) {
            out[i] = (1 - share) * first[i] + share * second[i];
        }
        return out;
    }

    private static Lab averageRgb(double[] first, double[] second, double share) {
        RgbSpace.Code a = RgbSpace.SRGB.encode(lab(first));
        RgbSpace.Code b = RgbSpace.SRGB.encode(lab(second));
        Lab screen = RgbSpace.SRGB.decode(
                a.red() + share * (b.red() - a.red()),
                a.green() + share * (b.green() - a.green()),
                a.blue() + share * (b.blue() - a.blue()));
        return Lab.of(Adaptation.BRADFORD.adapt(screen.toXyz(), VIEWING));
    }

    private static double ratio(double measured) {
        double internal = Math.max(0.001, Math.min(0.999, Surface.RESIN.internal(measured, GEOMETRY)));
        return KubelkaMunk.ratio(internal);
    }

    private static double measured(double ratio) {
        return Surface.RESIN.measured(KubelkaMunk.reflectance(Math.max(0, ratio)), GEOMETRY);
    }

    /** The tint adds K in proportion and no scattering. */
    private static double[] singleConstant(double[] first, double[] mix, double known, double wanted) {
        double[] out = new double[31];
        for (int i = 0; i < 31; i++) {
            double base = ratio(first[i]);
            out[i] = measured(base + (ratio(mix[i]) - base) / known * (1 - known) * wanted / (1 - wanted));
        }
        return out;
    }

    /**
     * K and S of the tint in units of the first paint's S, at each wavelength alone: in the known mix
     * (1 - c) (qm - q1) = c S (q2 - qm), with q = K/S.
     */
    private static double[] twoConstant(double[] first, double[] second, double[] mix, double known, double wanted) {
        double[] out = new double[31];
        for (int i = 0; i < 31; i++) {
            double left = known * (ratio(second[i]) - ratio(mix[i]));
            double right = (1 - known) * (ratio(mix[i]) - ratio(first[i]));
            double s = Math.abs(left) < 1e-9 ? 0 : Math.max(0, right / left);
            double k = ratio(second[i]) * s;
            out[i] = measured(((1 - wanted) * ratio(first[i]) + wanted * k) / (1 - wanted + wanted * s));
        }
        return out;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
