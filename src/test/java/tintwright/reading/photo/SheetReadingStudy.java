package tintwright.reading.photo;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.AccuracySection;
import tintwright.bench.SheetBench;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.colour.RgbSpace;
import tintwright.colour.Spectrum;
import tintwright.colour.Xyz;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.Progress;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.shelf.Shelf;

/** Hidden shops, made-up phones, real pigments as hulls: what a photo with the sheet reads, against rivals. */
@Tag("study")
class SheetReadingStudy {
    private static final int JOBS = Integer.getInteger("jobs", 200);

    @TempDir
    Path folder;

    /** What one way of reading came to. */
    private static final class Way {
        private final List<Double> errors = new ArrayList<>();
        private final List<Double> stated = new ArrayList<>();
        private int within;

        void add(Lab truth, Lab read, double goodTo) {
            double error = Ciede2000.between(truth, read);
            errors.add(error);
            if (!Double.isNaN(goodTo)) {
                stated.add(goodTo);
                within += error <= goodTo ? 1 : 0;
            }
        }

        String row(String name) {
            errors.sort(null);
            stated.sort(null);
            String held = stated.isEmpty()
                    ? "- | -"
                    : String.format(
                            Locale.ROOT,
                            "%.1f | %.0f %%",
                            stated.get(stated.size() / 2),
                            100.0 * within / stated.size());
            return String.format(
                    Locale.ROOT,
                    "| %s | %d | %.2f | %.2f | %s |",
                    name,
                    errors.size(),
                    errors.get(errors.size() / 2),
                    errors.get((int) (0.95 * errors.size())),
                    held);
        }
    }

    @Test
    void readsTheHull() throws IOException {
        SimulatedScene chart = new SimulatedScene();
        PaintedHulls hulls = new PaintedHulls();
        Map<String, Way> ways = new LinkedHashMap<>();
        for (String name : List.of(
                "plain sRGB",
                "the base chip taken as white",
                "3 by 3 with a measured chart of 24",
                "root-polynomial with a measured chart of 24",
                "sheet: paper alone",
                "sheet: paper and white chip",
                "sheet: paper and tape",
                "sheet: seven own chips",
                "sheet: seven own chips and tape")) {
            ways.put(name, new Way());
        }
        int refused = 0;
        for (int job = 0; job < JOBS; job++) {
            SheetScene scene = new SheetScene(job, chart.chart, hulls);
            Shelf shelf = scene.shop.shelf(List.of());
            Path photo = folder.resolve("job-" + job + ".jpg");
            scene.shoot(photo, SheetBench.signOf(shelf), 0, Math.toRadians(25 * scene.random.nextDouble()));
            Lab truth = scene.truth();
            rivals(scene, chart.chart, truth, ways);
            try {
                read(photo, SheetContents.PAPER_ALONE, Optional.empty(), truth, ways.get("sheet: paper alone"));
                read(
                        photo,
                        scene.contents(1, false),
                        Optional.of(shelf),
                        truth,
                        ways.get("sheet: paper and white chip"));
                read(photo, scene.contents(0, true), Optional.of(shelf), truth, ways.get("sheet: paper and tape"));
                read(photo, scene.contents(7, false), Optional.of(shelf), truth, ways.get("sheet: seven own chips"));
                read(
                        photo,
                        scene.contents(7, true),
                        Optional.of(shelf),
                        truth,
                        ways.get("sheet: seven own chips and tape"));
            } catch (PhotoException e) {
                refused++;
                System.out.println("job " + job + ": " + e.getMessage());
            }
            Files.delete(photo);
        }
        List<String> lines = new ArrayList<>(List.of(
                JOBS
                        + " jobs, each with a phone, a shop and a hull of its own. Phones are made up (sensitivities, maker's"
                        + " mix, tone curve, white balance, uneven light, noise, JPEG; between CIE daylights D50 and D65), so"
                        + " are the shops, whose curves share nothing with the program's priors, and the paper (L\\* 91 to 94,"
                        + " with brightener); hulls are mixed of published pigments. CIEDE2000 for D65 and 10 degrees. \"In"
                        + " range\" is the share within the stated nine-in-ten range. The rivals are given the same phone, the"
                        + " hull and a chart of 24 published patches without any unevenness of light; "
                        + refused + " photos were refused as burnt out or not found.",
                "",
                "Made by `mvn test -Dwanted.groups=study -Dtest=SheetReadingStudy`.",
                "",
                "| way | jobs | median | 95 % | stated, median | in range |",
                "| --- | --- | --- | --- | --- | --- |"));
        ways.forEach((name, way) -> lines.add(way.row(name)));
        lines.add("");
        lines.add(
                "Wanted: paper alone 1.7 and 3.5, chips and tape 1.5 and 3.0, 85 to 95 % in range. Not reached on these phones,"
                        + " where a measured chart does not reach it either; a range for paper alone that is narrower does not hold on"
                        + " real photos (see there).");
        lines.forEach(System.out::println);
        if (JOBS >= 200) {
            AccuracySection.write("The sheet: a hull read by hidden shops and made-up phones", lines);
        }
        assertTrue(refused < JOBS / 2);
    }

    private static void read(Path photo, SheetContents contents, Optional<Shelf> shelf, Lab truth, Way way)
            throws PhotoException {
        SheetBench.Read read = SheetBench.read(photo, contents, shelf, SheetScene.VIEWING, Progress.NONE);
        SpotReading hull = read.readings().spot(SheetContents.HULL).orElseThrow();
        way.add(truth, hull.reading().lab(), hull.goodTo());
    }

    /** The usual ways, by their own arithmetic, on flat fields of the same phone. */
    private static void rivals(SheetScene scene, List<Spectrum> chart, Lab truth, Map<String, Way> ways) {
        List<Spectrum> all = new ArrayList<>(chart);
        all.add(scene.chips.get(0).truly());
        all.add(scene.hull);
        int side = 8;
        double[] codes = scene.phone.shoot(side * all.size(), side, all, (x, y) -> x / side);
        double[][] light = new double[all.size()][3];
        for (int i = 0; i < light.length; i++) {
            for (int k = 0; k < 3; k++) {
                for (int p = 0; p < side * side; p++) {
                    int at = p / side * side * all.size() + i * side + p % side;
                    double code = Math.rint(255 * Math.min(1, codes[3 * at + k])) / 255;
                    light[i][k] += linear(code) / (side * side);
                }
            }
        }
        double[] hull = light[all.size() - 1];
        ways.get("plain sRGB").add(truth, screen(hull), Double.NaN);
        double[] white = light[all.size() - 2];
        ways.get("the base chip taken as white")
                .add(
                        truth,
                        screen(new double[] {
                            0.87 * hull[0] / white[0], 0.87 * hull[1] / white[1], 0.87 * hull[2] / white[2]
                        }),
                        Double.NaN);
        ways.get("3 by 3 with a measured chart of 24").add(truth, fitted(light, chart, hull, false), Double.NaN);
        ways.get("root-polynomial with a measured chart of 24")
                .add(truth, fitted(light, chart, hull, true), Double.NaN);
    }

    private static double linear(double code) {
        return code <= 0.04045 ? code / 12.92 : Math.pow((code + 0.055) / 1.055, 2.4);
    }

    private static Lab screen(double[] light) {
        double[][] m = RgbSpace.SRGB.matrixToXyz();
        Xyz white = SheetScene.VIEWING.white();
        double[] xyz = new double[3];
        double[] row = new double[3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                xyz[i] += m[i][j] * Math.min(1, light[j]);
                row[i] += m[i][j];
            }
        }
        return Lab.of(new Xyz(
                xyz[0] / row[0] * white.x(),
                xyz[1] / row[1] * white.y(),
                xyz[2] / row[2] * white.z(),
                SheetScene.VIEWING));
    }

    /** Least squares from camera to XYZ over the chart: linear, or with the roots of Finlayson and others (2015). */
    private static Lab fitted(double[][] light, List<Spectrum> chart, double[] hull, boolean roots) {
        SimpleMatrix a = new SimpleMatrix(chart.size(), roots ? 6 : 3);
        SimpleMatrix b = new SimpleMatrix(chart.size(), 3);
        for (int i = 0; i < chart.size(); i++) {
            Xyz xyz = Lab.of(chart.get(i), SheetScene.VIEWING).toXyz();
            double weight = 1 / Math.max(xyz.y(), 3);
            double[] terms = terms(light[i], roots);
            for (int k = 0; k < terms.length; k++) {
                a.set(i, k, weight * terms[k]);
            }
            b.set(i, 0, weight * xyz.x());
            b.set(i, 1, weight * xyz.y());
            b.set(i, 2, weight * xyz.z());
        }
        SimpleMatrix solved = a.pseudoInverse().mult(b);
        double[] terms = terms(hull, roots);
        double[] xyz = new double[3];
        for (int c = 0; c < 3; c++) {
            for (int k = 0; k < terms.length; k++) {
                xyz[c] += terms[k] * solved.get(k, c);
            }
        }
        return Lab.of(
                new Xyz(Math.max(0.01, xyz[0]), Math.max(0.01, xyz[1]), Math.max(0.01, xyz[2]), SheetScene.VIEWING));
    }

    private static double[] terms(double[] c, boolean roots) {
        return roots
                ? new double[] {c[0], c[1], c[2], Math.sqrt(c[0] * c[1]), Math.sqrt(c[1] * c[2]), Math.sqrt(c[0] * c[2])
                }
                : c;
    }
}
