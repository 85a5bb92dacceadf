package tintwright.reading.photo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import tintwright.colour.Ciede2000;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.SmoothReflectance;
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

/** A card of 24 patches and one spot of a hull before a simulated phone: what lies where, and in which light. */
final class CardBesideHull {
    private static final int WIDTH = 900;
    private static final int HEIGHT = 600;
    private static final int COLUMNS = 6;
    private static final int ROWS = 4;
    /** The printed frame beyond the outer patches, in patches. */
    private static final double FRAME = 0.2;

    /** Reflectance of the card's patches, row by row. */
    private final List<Spectrum> chart;

    private final Function<Random, Spectrum> hulls;

    /** @param hulls a hull's reflectance, and that of any other paint in the picture */
    private CardBesideHull(List<Spectrum> chart, Function<Random, Spectrum> hulls) {
        this.chart = chart;
        this.hulls = hulls;
    }

    /** The published 24-patch chart, and hulls mixed of published pigments. */
    static CardBesideHull published() {
        return new CardBesideHull(new SimulatedScene().chart, new PaintedHulls()::random);
    }

    /** A card and hulls of smooth invented curves, most hulls light: made of no pigment, and of no table from outside. */
    static CardBesideHull invented() {
        List<Spectrum> chart = new ArrayList<>();
        for (int i = 0; i < (ROWS - 1) * COLUMNS; i++) {
            double hue = 2 * Math.PI * i / ((ROWS - 1) * COLUMNS);
            chart.add(smooth(40 + 15 * (i % 3), 38 * Math.cos(hue), 38 * Math.sin(hue)));
        }
        for (int i = 0; i < COLUMNS; i++) {
            chart.add(smooth(95 - 15 * i, 0, 0));
        }
        return new CardBesideHull(
                chart,
                random -> smooth(
                        92 - 45 * Math.pow(random.nextDouble(), 2),
                        12 * random.nextGaussian(),
                        14 * random.nextGaussian()));
    }

    private static Spectrum smooth(double lightness, double a, double b) {
        return SmoothReflectance.of(new Lab(lightness, a, b, Viewing.D65_10));
    }

    /** What lies round card and spot, and how it is lit. */
    enum Kind {
        CARD_ON_HULL(false, "card on the hull"),
        HULL_IN_SHADE(true, "spot in shade, card in sun, both on the hull"),
        CARD_IN_SHADE(true, "card in shade, spot in sun, both on the hull"),
        OTHER_HUE_OF_LIGHT(true, "light of another hue on the card"),
        CARD_ON_SUNNY_BENCH(true, "card on a bench in sun, hull in shade"),
        CARD_ON_SHADY_BENCH(true, "card on a bench in shade, hull in sun"),
        CARD_BEFORE_THE_HULL(true, "card held before the hull, in shade"),
        STRIPE_BETWEEN(false, "even light, a painted stripe between"),
        WATERLINE_BETWEEN(false, "even light, card below the waterline"),
        GREY_TABLE(false, "even light, card on a grey table"),
        TRAILER(false, "even light, card on the hull, a trailer behind and between"),
        SHEEN_ON_CARD(false, "card on the hull, a reflection over a third of it");

        final boolean otherLight;
        final String words;

        Kind(boolean otherLight, String words) {
            this.otherLight = otherLight;
            this.words = words;
        }
    }

    /** What came of one photo: CIEDE2000 off, CIEDE2000 stated for nine in ten, and what was said. */
    record Outcome(double off, double stated, List<Flag> flags) {
        boolean said(Flag.Kind kind) {
            return flags.stream().anyMatch(flag -> flag.kind() == kind);
        }
    }

    Outcome read(Kind kind, long seed, boolean vouched, Path folder) throws IOException, PhotoException {
        Random random = new Random(31 * seed + kind.ordinal());
        SimulatedPhone phone = new SimulatedPhone(seed, chart);
        double pitch = 48 + 12 * random.nextDouble();
        double left = 90 + 40 * random.nextDouble();
        double top = 130 + 60 * random.nextDouble();
        double spotX = left + COLUMNS * pitch + (1.6 + 1.5 * random.nextDouble()) * pitch + 30;
        double spotY = top + (0.5 + 3 * random.nextDouble()) * pitch;
        double edge = between(left + (COLUMNS + FRAME) * pitch, spotX - 26, random.nextDouble());
        double lean = 0.3 * random.nextGaussian();
        double middleY = top + ROWS * pitch / 2;

        List<Spectrum> plain = new ArrayList<>();
        plain.add(hulls.apply(random)); // 0: the hull
        plain.add(flat(0.05)); // 1: the card's frame
        plain.add(other(kind, random)); // 2: stripe, antifouling, table, trailer, bench
        List<CardPatch> patches = new ArrayList<>();
        for (int i = 0; i < ROWS * COLUMNS; i++) {
            patches.add(CardPatch.of("patch " + (i + 1), chart.get(i)));
            plain.add(chart.get(i)); // 3 and on
        }
        double ratio = Math.exp(-between(0.3, 1.0, random.nextDouble()));
        double tilt = kind == Kind.OTHER_HUE_OF_LIGHT
                ? (random.nextBoolean() ? 1 : -1) * between(0.15, 0.35, random.nextDouble())
                : -between(0.05, 0.3, random.nextDouble());
        double shadeLevel = kind == Kind.OTHER_HUE_OF_LIGHT ? 1 : ratio;
        double veil = between(0.05, 0.12, random.nextDouble());
        boolean sheenLeft = random.nextBoolean();
        List<Spectrum> surfaces = new ArrayList<>(plain);
        for (Spectrum one : plain) {
            surfaces.add(kind == Kind.SHEEN_ON_CARD ? veiled(one, veil) : inShade(one, shadeLevel, tilt));
        }
        int shade = plain.size();
        double bar = left - 70 + 30 * random.nextDouble();
        double bar2 = edge;
        SimulatedPhone.Scene what = (x, y) -> {
            double column = (x - left) / pitch;
            double row = (y - top) / pitch;
            boolean onCard = column > -FRAME && row > -FRAME && column < COLUMNS + FRAME && row < ROWS + FRAME;
            boolean nearSpot = x > edge + lean * (y - middleY);
            int surface;
            if (onCard) {
                boolean inside = column >= 0
                        && row >= 0
                        && column < COLUMNS
                        && row < ROWS
                        && Math.abs(column % 1 - 0.5) < 0.425
                        && Math.abs(row % 1 - 0.5) < 0.425;
                surface = inside ? 3 + ((int) row) * COLUMNS + (int) column : 1;
            } else {
                surface = switch (kind) {
                    case STRIPE_BETWEEN -> Math.abs(x - edge - lean * (y - middleY)) < 12 ? 2 : 0;
                    case WATERLINE_BETWEEN, GREY_TABLE, CARD_ON_SUNNY_BENCH, CARD_ON_SHADY_BENCH -> nearSpot ? 0 : 2;
                    case TRAILER -> Math.abs(x - bar) < 25 || Math.abs(x - bar2) < 14 || y > top + 5.2 * pitch ? 2 : 0;
                    default -> 0;
                };
            }
            boolean dim = switch (kind) {
                case HULL_IN_SHADE, CARD_ON_SUNNY_BENCH -> nearSpot;
                case CARD_IN_SHADE, OTHER_HUE_OF_LIGHT, CARD_ON_SHADY_BENCH -> !nearSpot;
                case CARD_BEFORE_THE_HULL -> onCard;
                case SHEEN_ON_CARD -> onCard && (sheenLeft ? column < 2 : column >= 4);
                default -> false;
            };
            return surface + (dim ? shade : 0);
        };
        Path file = folder.resolve("beside-" + kind + seed + ".jpg");
        phone.save(phone.shoot(WIDTH, HEIGHT, surfaces, what), WIDTH, HEIGHT, file);
        double in = 0.075 * pitch;
        PlacedCard placed = new PlacedCard(
                new ReferenceCard("card", ROWS, COLUMNS, patches, 0.85, 0.5),
                List.of(
                        new PixelPoint(left + in, top + in),
                        new PixelPoint(left + COLUMNS * pitch - in, top + in),
                        new PixelPoint(left + COLUMNS * pitch - in, top + ROWS * pitch - in),
                        new PixelPoint(left + in, top + ROWS * pitch - in)));
        PhotoReadings read = PhotoReader.read(
                PhotoFile.open(file),
                new Marks(List.of(placed), List.of(), List.of(Spot.hull("bow", spotX, spotY, 20)), false, vouched),
                Viewing.D65_10,
                Progress.NONE);
        Files.delete(file);
        SpotReading spot = read.spot("bow").orElseThrow();
        double off = Ciede2000.between(
                Lab.of(plain.get(0), Viewing.D65_10), spot.reading().lab());
        return new Outcome(off, spot.goodTo(), read.flags());
    }

    private static double between(double least, double most, double at) {
        return least + (most - least) * at;
    }

    private Spectrum other(Kind kind, Random random) {
        return switch (kind) {
            case GREY_TABLE -> flat(between(0.2, 0.4, random.nextDouble()));
            case TRAILER -> flat(between(0.04, 0.3, random.nextDouble()));
            // Wood, concrete, cardboard: anything up to a light bench.
            case CARD_ON_SUNNY_BENCH, CARD_ON_SHADY_BENCH ->
                inShade(flat(between(0.1, 0.7, random.nextDouble())), 1, between(0, 0.4, random.nextDouble()));
            default -> hulls.apply(random);
        };
    }

    private static Spectrum flat(double level) {
        double[] values = new double[Grid.INSIDE.count()];
        Arrays.fill(values, level);
        return Spectrum.of(Grid.INSIDE, values);
    }

    /** The surface as it looks in less light, or in light tilted to blue (negative) or red. */
    private static Spectrum inShade(Spectrum surface, double level, double tilt) {
        double[] values = surface.toArray();
        for (int i = 0; i < values.length; i++) {
            values[i] *= level * Math.exp(tilt * (2.0 * i / (values.length - 1) - 1));
        }
        return Spectrum.of(Grid.INSIDE, values);
    }

    /** The surface under a reflection of the sky. */
    private static Spectrum veiled(Spectrum surface, double veil) {
        double[] values = surface.toArray();
        for (int i = 0; i < values.length; i++) {
            values[i] += veil;
        }
        return Spectrum.of(Grid.INSIDE, values);
    }
}
