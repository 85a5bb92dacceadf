package tintwright.reading.photo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import tintwright.Reference;
import tintwright.colour.Ciede2000;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.reading.photo.card.CardPatch;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.PlacedCard;
import tintwright.reading.photo.card.ReferenceCard;
import tintwright.reading.photo.card.Spot;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Progress;
import tintwright.study.Held;

/**
 * A card and six hulls before a simulated phone, and how far the readings come out. The card has the reflectances of
 * the published 24-patch chart, each copy printed a little differently, and states what was published.
 */
final class SimulatedScene {
    static final int WIDTH = 900;
    static final int HEIGHT = 600;
    static final int HULLS = 6;
    /** How far a copy of a card is from the one that was measured, standard deviation of L*, a*, b*. */
    private static final double COPY = 0.4;

    private static final int PITCH = 80;
    private static final int LEFT = 80;
    private static final int TOP = 200;

    final List<Spectrum> chart = new ArrayList<>();
    private final PaintedHulls paints = new PaintedHulls();
    private final int columns = 6;

    SimulatedScene() {
        for (String[] row : Reference.rows("charts/chart24-reflectance.csv")) {
            double[] values = new double[Grid.INSIDE.count()];
            for (int i = 0; i < values.length; i++) {
                values[i] = Double.parseDouble(row[3 + i]); // the third value is that of 400 nm
            }
            chart.add(Spectrum.of(Grid.INSIDE, values));
        }
    }

    /** What came of one photo. */
    record Outcome(List<Double> errors, List<Boolean> within, PhotoReadings readings) {}

    /** Reads a photo that shows the card from the first to the last row: 0 to 3 for all, 3 to 3 for the greys. */
    Outcome read(long seed, int firstRow, int lastRow, Path folder) throws IOException, PhotoException {
        Random random = new Random(seed * 31 + 7);
        SimulatedPhone phone = new SimulatedPhone(seed, chart);
        List<Spectrum> surfaces = new ArrayList<>();
        surfaces.add(flat(0.04)); // the card's black border
        surfaces.add(flat(0.30)); // what the card lies on
        List<CardPatch> patches = new ArrayList<>();
        for (int i = firstRow * columns; i < (lastRow + 1) * columns; i++) {
            patches.add(CardPatch.of("patch " + (i + 1), chart.get(i)));
            surfaces.add(printed(chart.get(i), random));
        }
        int firstHull = surfaces.size();
        for (int i = 0; i < HULLS; i++) {
            surfaces.add(paints.random(random));
        }
        int rows = lastRow - firstRow + 1;
        double[] codes = phone.shoot(WIDTH, HEIGHT, surfaces, (x, y) -> at(x, y, rows, firstHull));
        Path file = folder.resolve("phone-" + seed + ".jpg");
        phone.save(codes, WIDTH, HEIGHT, file);
        ReferenceCard card = new ReferenceCard("card", rows, columns, patches, 0.85, 0.5);
        double half = 0.85 * PITCH / 2;
        double left = LEFT + PITCH / 2.0 - half;
        double top = TOP + PITCH / 2.0 - half;
        double right = LEFT + (columns - 0.5) * PITCH + half;
        double bottom = TOP + (rows - 0.5) * PITCH + half;
        PlacedCard placed = new PlacedCard(
                card,
                List.of(
                        new PixelPoint(left, top),
                        new PixelPoint(right, top),
                        new PixelPoint(right, bottom),
                        new PixelPoint(left, bottom)));
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < HULLS; i++) {
            spots.add(Spot.hull("hull " + i, hullX(i), hullY(i), 30));
        }
        PhotoReadings readings = PhotoReader.read(
                PhotoFile.open(file),
                new Marks(List.of(placed), List.of(), spots, false, true),
                Viewing.D65_10,
                Progress.NONE);
        Files.delete(file);
        List<Double> errors = new ArrayList<>();
        List<Boolean> within = new ArrayList<>();
        for (int i = 0; i < HULLS; i++) {
            Lab truth = Lab.of(surfaces.get(firstHull + i), Viewing.D65_10);
            var one = readings.spot("hull " + i);
            if (one.isPresent()) {
                double error = Ciede2000.between(truth, one.get().reading().lab());
                errors.add(error);
                within.add(error <= one.get().goodTo());
            }
        }
        return new Outcome(errors, within, readings);
    }

    private static int hullX(int i) {
        return 640 + 100 * (i % 2);
    }

    private static int hullY(int i) {
        return 150 + 120 * (i / 2);
    }

    private int at(int x, int y, int rows, int firstHull) {
        int column = Math.floorDiv(x - LEFT, PITCH);
        int row = Math.floorDiv(y - TOP, PITCH);
        if (column >= 0 && row >= 0 && column < columns && row < rows) {
            double inX = Math.abs((x - LEFT) % PITCH - PITCH / 2.0);
            double inY = Math.abs((y - TOP) % PITCH - PITCH / 2.0);
            boolean inside = Math.max(inX, inY) < 0.85 * PITCH / 2;
            return inside ? 2 + row * columns + column : 0;
        }
        for (int i = 0; i < HULLS; i++) {
            if (Math.abs(x - hullX(i)) < 45 && Math.abs(y - hullY(i)) < 45) {
                return firstHull + i;
            }
        }
        return 1;
    }

    private static Spectrum flat(double level) {
        double[] values = new double[Grid.INSIDE.count()];
        Arrays.fill(values, level);
        return Spectrum.of(Grid.INSIDE, values);
    }

    /** The same patch of another copy: a little lighter or darker, a little turned in colour. */
    private static Spectrum printed(Spectrum patch, Random random) {
        double light = COPY / 40 * random.nextGaussian();
        double tilt = COPY / 60 * random.nextGaussian();
        double bow = COPY / 60 * random.nextGaussian();
        double[] values = patch.toArray();
        for (int i = 0; i < values.length; i++) {
            double along = 2.0 * i / (values.length - 1) - 1;
            values[i] *= Math.exp(light + tilt * along + bow * (2 * along * along - 1));
        }
        return Spectrum.of(Grid.INSIDE, values);
    }

    /** Many photos, one after the other. */
    static Summary many(int photos, int firstRow, int lastRow, Path folder) throws IOException, PhotoException {
        SimulatedScene scene = new SimulatedScene();
        List<Double> errors = new ArrayList<>();
        Held held = new Held("made-up phones, rows " + (firstRow + 1) + " to " + (lastRow + 1) + " of the card");
        double stated = 0;
        for (int seed = 0; seed < photos; seed++) {
            Outcome one = scene.read(seed, firstRow, lastRow, folder);
            errors.addAll(one.errors());
            for (boolean in : one.within()) {
                held.add(in);
            }
            for (SpotReading spot : one.readings().spots()) {
                stated += spot.goodTo();
            }
        }
        errors.sort(null);
        return new Summary(
                errors.size(),
                errors.get(errors.size() / 2),
                errors.get((int) (0.95 * errors.size())),
                errors.get(errors.size() - 1),
                held,
                stated / errors.size());
    }

    /** Errors in CIEDE2000; held: inside the stated nine-in-ten range; stated: its mean size. */
    record Summary(int readings, double median, double most95, double worst, Held held, double stated) {
        String row(String name) {
            return String.format(
                    Locale.ROOT,
                    "| %s | %d | %.2f | %.2f | %.2f | %.0f %% | %.2f |",
                    name,
                    readings,
                    median,
                    most95,
                    worst,
                    held.percent(),
                    stated);
        }
    }
}
