package tintwright.reading.photo.sheet;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tintwright.AccuracySection;

/** How often the printed sheet is found in made-up scenes, and how near its places are. */
@Tag("study")
class SheetFinderStudy {
    private static final int SCENES = Integer.getInteger("scenes", 14);

    private record Kind(
            String name,
            double leastFill,
            double mostFill,
            double tilt,
            double radius,
            int size,
            MadeUpGreys.Taken taken) {}

    @Test
    void findsTheSheet() throws IOException {
        MadeUpGreys.Taken well = new MadeUpGreys.Taken(0.8, 0.15, 0, 0.012, 0.8, 0.85f, Integer.MAX_VALUE);
        MadeUpGreys.Taken shade = new MadeUpGreys.Taken(0.12, 0.3, 0, 0.03, 1.0, 0.8f, Integer.MAX_VALUE);
        MadeUpGreys.Taken edge = new MadeUpGreys.Taken(0.9, 0.1, 0.6, 0.012, 0.8, 0.85f, Integer.MAX_VALUE);
        MadeUpGreys.Taken chat = new MadeUpGreys.Taken(0.8, 0.15, 0, 0.012, 1.0, 0.6f, 640);
        List<Kind> kinds = List.of(
                new Kind("plane, to 20 degrees", 0.10, 0.5, 20, Double.POSITIVE_INFINITY, 2000, well),
                new Kind("plane, to 40 degrees", 0.10, 0.4, 40, Double.POSITIVE_INFINITY, 2000, well),
                new Kind(
                        "12 megapixels, a tenth of the picture, 40 degrees",
                        0.10,
                        0.10,
                        40,
                        Double.POSITIVE_INFINITY,
                        4000,
                        well),
                new Kind("bent round 0.5 to 3 m, to 30 degrees", 0.10, 0.4, 30, 500, 2000, well),
                new Kind("deep shade", 0.10, 0.4, 30, Double.POSITIVE_INFINITY, 2000, shade),
                new Kind("a shadow's edge over it", 0.10, 0.4, 30, Double.POSITIVE_INFINITY, 2000, edge),
                new Kind("640-pixel copy, a quarter to half of it", 0.25, 0.5, 25, 1500, 2000, chat),
                new Kind("640-pixel copy, a tenth to a quarter of it", 0.10, 0.25, 25, 1500, 2000, chat));
        List<String> rows = new ArrayList<>();
        int whole = 0;
        int found = 0;
        for (Kind kind : kinds) {
            int seen = 0;
            int got = 0;
            int all = 0;
            List<Double> off = new ArrayList<>();
            List<Double> time = new ArrayList<>();
            for (int seed = 0; seed < SCENES; seed++) {
                Random random = new Random(seed * 97L + kind.name().hashCode());
                SheetLayout layout = SheetLayout.ALL.get(seed % 2);
                MadeUpView view = view(kind, layout, random);
                if (!view.whole()) {
                    continue;
                }
                all++;
                GreyPicture photo = MadeUpGreys.photo(view, layout, "K7QD", seed % 3, kind.taken(), seed);
                long start = System.nanoTime();
                SheetSearch search = SheetFinder.find(photo, Optional.empty());
                time.add((System.nanoTime() - start) / 1e6);
                if (search instanceof SheetSearch.Found one) {
                    got++;
                    seen += one.codes() == 4 ? 1 : 0;
                    off.add(SheetFinderTest.missed(one.pose(), view, photo.width() / (double) view.width));
                }
            }
            off.sort(null);
            time.sort(null);
            whole += all;
            found += got;
            rows.add(String.format(
                    Locale.ROOT,
                    "| %s | %d | %.0f %% | %.0f %% | %s | %s |",
                    kind.name(),
                    all,
                    100.0 * got / all,
                    100.0 * seen / all,
                    off.isEmpty() ? "-" : String.format(Locale.ROOT, "%.1f", off.get(off.size() / 2)),
                    off.isEmpty() ? "-" : String.format(Locale.ROOT, "%.1f", off.get(off.size() - 1))));
            System.out.println(rows.get(rows.size() - 1) + " ms " + time.get(time.size() / 2));
        }
        if (SCENES >= 14) {
            List<String> lines = new ArrayList<>(List.of(
                    "The sheet's own PDF, drawn and laid into made-up scenes of 3 megapixels, one row of 12 (own ray casting; smooth hull,"
                            + " planks, clutter; any turn; uneven light, noise, blur, JPEG), where it lies wholly in the picture."
                            + " \"Off\" is how far the worst place on the sheet is from where it truly is, mm; a chip is 30"
                            + " mm wide and read in its middle 18.",
                    "",
                    "Made by `mvn test -Dwanted.groups=study -Dtest=SheetFinderStudy`.",
                    "",
                    "| scenes | number | found | all four codes | off, median | worst |",
                    "| --- | --- | --- | --- | --- | --- |"));
            lines.addAll(rows);
            lines.add("");
            lines.add(
                    "In a 640-pixel copy a module of the codes is 0.9 pixels wide where the sheet fills a tenth of the picture,"
                            + " 1.4 where it fills a quarter and 2 where it fills half; some 1.6 can be read. Below that the"
                            + " person is told that the picture is a small copy and to send the photo itself.");
            AccuracySection.write("The sheet: found in made-up scenes", lines);
        }
        assertTrue(found > 0.5 * whole);
    }

    private static MadeUpView view(Kind kind, SheetLayout layout, Random random) {
        double fill = kind.leastFill() + (kind.mostFill() - kind.leastFill()) * random.nextDouble();
        double tilt = kind.leastFill() == kind.mostFill() ? kind.tilt() : kind.tilt() * Math.sqrt(random.nextDouble());
        double radius = Double.isInfinite(kind.radius())
                ? kind.radius()
                : kind.radius() * Math.exp(Math.log(6) * random.nextDouble());
        boolean tall = random.nextBoolean();
        double roam = 0.5 * Math.max(0, 1 - Math.sqrt(fill) * 1.6);
        return new MadeUpView(
                layout,
                tall ? kind.size() * 3 / 4 : kind.size(),
                tall ? kind.size() : kind.size() * 3 / 4,
                fill,
                2 * Math.PI * random.nextDouble(),
                Math.toRadians(tilt),
                2 * Math.PI * random.nextDouble(),
                roam * (2 * random.nextDouble() - 1),
                roam * (2 * random.nextDouble() - 1),
                radius,
                Math.PI * random.nextDouble());
    }
}
