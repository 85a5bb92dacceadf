package tintwright.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.shelf.Base;
import tintwright.shelf.Chip;
import tintwright.shelf.Parts;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.Stock;
import tintwright.shelf.StockItem;
import tintwright.shelf.Tint;

/**
 * A shop whose paints nobody knows: hidden K and S drawn at random, a scale and an instrument that err. Its curves
 * are made of logistic edges and bell bands in linear absorption, with their own film model; they share nothing
 * with the priors of the shelf. All numbers are invented, plausible.
 */
public final class HiddenShop {
    static final int N = 31;
    /** Internal reflectance of the card under thin films. */
    private static final double CARD = 0.8;

    private final Random random;
    private final Map<String, double[]> k = new LinkedHashMap<>();
    private final Map<String, double[]> s = new LinkedHashMap<>();
    private final List<Tint> tints = new ArrayList<>();
    private final Base base = new Base("white", "White", 1.3, false, Stock.UNKNOWN);
    /** Standard deviation of an instrument on each Lab axis. */
    public double noise = 0.3;
    /** Standard deviation of a weighing, grams. */
    public double scaleNoise = 0.005;

    /** How far this shop departs from the theory. */
    private final Trouble trouble;
    /** Error of the instrument that every reading shares, on each Lab axis. */
    private final double[] bias = new double[3];
    /** What the scale shows of a true gram. */
    private final double drift;
    /** By how much a tint's strength for each gram changes with its share: the power of the share. */
    private final Map<String, Double> power = new LinkedHashMap<>();

    private final double outside;
    private final double inside;
    /** Optical depth S X of a film of the white; infinite for films that hide. */
    private final double depth;

    /**
     * How far a shop departs from the theory on purpose; standard deviations but for the last. All invented.
     *
     * @param power    of a tint's share, by which its strength changes
     * @param shiftNm  of its edges, beside the usual
     * @param wobble   of its curve, in ln
     * @param surface  of the share of light that the surface throws back
     * @param bias     of the instrument
     * @param drift    of the scale, as a share
     * @param paste    a paste is up to so many times as strong or as weak as usual
     * @param thin     whether films let a light card show through
     */
    record Trouble(
            double power,
            double shiftNm,
            double wobble,
            double surface,
            double bias,
            double drift,
            double paste,
            boolean thin) {
        static final Trouble NONE = new Trouble(0, 0, 0, 0, 0, 0, 1, false);
        static final Trouble ALL = new Trouble(0.12, 10, 0.3, 0.004, 0.25, 0.01, 3, true);
    }

    public HiddenShop(long seed) {
        this(seed, 1);
    }

    /** @param strength how many times stronger its pastes are, all of them, than a shop is taken to have */
    public HiddenShop(long seed, double strength) {
        this(seed, strength, Trouble.NONE);
    }

    HiddenShop(long seed, double strength, Trouble trouble) {
        this.trouble = trouble;
        Random wrong = new Random(7919 * seed + 3);
        random = new Random(seed);
        for (int axis = 0; axis < 3; axis++) {
            bias[axis] = trouble.bias * wrong.nextGaussian();
        }
        drift = 1 + trouble.drift * wrong.nextGaussian();
        outside = 0.04 + trouble.surface * wrong.nextGaussian();
        inside = 0.6 + 8 * trouble.surface * wrong.nextGaussian();
        depth = trouble.thin ? 7 + 10 * wrong.nextDouble() : Double.POSITIVE_INFINITY;
        double[] whiteK = new double[N];
        double[] whiteS = new double[N];
        double violet = 0.05 + 0.1 * random.nextDouble();
        double clear = 0.001 + 0.002 * random.nextDouble();
        for (int i = 0; i < N; i++) {
            whiteK[i] = clear + violet / (1 + Math.exp((nm(i) - 405) / 5));
            whiteS[i] = Math.pow(nm(i) / 560, -0.15 * random(1));
        }
        double tilt = 0.2 * random.nextDouble();
        for (int i = 0; i < N; i++) {
            whiteS[i] = Math.pow(nm(i) / 560, -tilt);
        }
        k.put("white", whiteK);
        s.put("white", whiteS);
        double shop = strength * 4.5 * Math.exp(0.3 * random.nextGaussian());
        List<PigmentFamily> families = new ArrayList<>(List.of(
                PigmentFamily.CARBON_BLACK,
                PigmentFamily.RED_IRON_OXIDE,
                PigmentFamily.YELLOW_IRON_OXIDE,
                PigmentFamily.PHTHALO_BLUE,
                PigmentFamily.PHTHALO_GREEN,
                PigmentFamily.BROWN_OXIDE,
                PigmentFamily.ORGANIC_YELLOW,
                PigmentFamily.ORGANIC_RED));
        for (PigmentFamily family : families) {
            double other = Math.exp((2 * wrong.nextDouble() - 1) * Math.log(trouble.paste));
            add(family, shop * other * Math.exp(0.4 * random.nextGaussian()), wrong);
            power.put(family.code(), trouble.power * wrong.nextGaussian());
        }
    }

    private double random(double most) {
        return most * random.nextDouble();
    }

    private static double nm(int i) {
        return 400 + 10.0 * i;
    }

    private static double falls(double nm, double at, double width) {
        return 1 / (1 + Math.exp((nm - at) / width));
    }

    private static double bell(double nm, double at, double width) {
        return Math.exp(-(nm - at) * (nm - at) / (2 * width * width));
    }

    private void add(PigmentFamily family, double strength, Random wrong) {
        double shift = 6 * random.nextGaussian() + trouble.shiftNm * wrong.nextGaussian();
        double scatterStrength = Math.exp(0.4 * random.nextGaussian());
        double[] wobble = wobble(random, 0.2);
        double[] more = wobble(wrong, trouble.wobble);
        double[] absorb = new double[N];
        double[] scatter = new double[N];
        for (int i = 0; i < N; i++) {
            double at = nm(i) - shift;
            double a;
            double sc;
            switch (family) {
                case CARBON_BLACK -> {
                    a = 6.5 * Math.pow(at / 550, 0.8);
                    sc = 0.6;
                }
                case RED_IRON_OXIDE -> {
                    a = 0.85 * falls(at, 578, 11) + 0.06;
                    sc = 0.06 + 0.2 * (1 - falls(at, 575, 12));
                }
                case YELLOW_IRON_OXIDE -> {
                    a = 0.7 * falls(at, 490, 18) + 0.25 * falls(at, 420, 15) + 0.025;
                    sc = 0.12;
                }
                case PHTHALO_BLUE -> {
                    a = 5.6 * bell(at, 660, 55) + 2.2 * bell(at, 605, 25) + 0.35 * falls(at, 420, 12) + 0.05;
                    sc = 0.04 + 0.4 * bell(at, 690, 50);
                }
                case PHTHALO_GREEN -> {
                    a = 5 * bell(at, 645, 38) + 1.25 * falls(at, 455, 14) + 0.06;
                    sc = 0.04 + 0.4 * bell(at, 670, 45);
                }
                case BROWN_OXIDE -> {
                    a = 0.5 * falls(at, 560, 60) + 0.4;
                    sc = 0.04;
                }
                case ORGANIC_YELLOW -> {
                    a = 2.1 * falls(at, 507, 6) + 0.006;
                    sc = 0.2 + 0.25 * (1 - falls(at, 510, 12));
                }
                default -> {
                    a = (0.6 + 1.6 * bell(at, 560, 60)) * falls(at, 597, 6) + 0.008;
                    sc = 0.06 + 0.15 * bell(at, 610, 25);
                }
            }
            absorb[i] = strength * a * Math.exp(wobble[i] + more[i]);
            scatter[i] = strength * scatterStrength * sc;
        }
        String id = family.code();
        k.put(id, absorb);
        s.put(id, scatter);
        tints.add(Tint.of(id, family.words(), family));
    }

    /** Slow random waves over the spectrum. */
    private static double[] wobble(Random random, double size) {
        double[] out = new double[N];
        for (int wave = 1; wave <= 4; wave++) {
            double amount = size * random.nextGaussian() / wave;
            double phase = 2 * Math.PI * random.nextDouble();
            for (int i = 0; i < N; i++) {
                out[i] += amount * Math.cos(wave * Math.PI * i / N + phase);
            }
        }
        return out;
    }

    public List<Tint> tints() {
        return tints;
    }

    public double[] k(String id) {
        return k.get(id);
    }

    public double[] s(String id) {
        return s.get(id);
    }

    /** True reflectance of a mix, its own arithmetic: hyperbolic form of a layer, over a light card where it is thin. */
    public Spectrum reflectance(Parts parts) {
        double[] r = new double[N];
        double total = parts.total();
        for (int i = 0; i < N; i++) {
            double sumK = 0;
            double sumS = 0;
            for (Map.Entry<String, Double> part : parts.grams().entrySet()) {
                double share = part.getValue() / total;
                double times = share * Math.pow(share / 0.01, power.getOrDefault(part.getKey(), 0.0));
                sumK += times * k.get(part.getKey())[i];
                sumS += times * s.get(part.getKey())[i];
            }
            double a = 1 + sumK / sumS;
            double b = Math.sqrt(a * a - 1);
            double film = a - b;
            if (depth < Double.POSITIVE_INFINITY) {
                double coth = 1 / Math.tanh(b * sumS * depth);
                film = (1 - CARD * (a - b * coth)) / (a - CARD + b * coth);
            }
            r[i] = outside + (1 - outside) * (1 - inside) * film / (1 - inside * film);
        }
        return Spectrum.of(Grid.INSIDE, r);
    }

    public Lab colour(Parts parts) {
        return Lab.of(reflectance(parts), Viewing.D65_10);
    }

    /** What the instrument says of a true colour. */
    public ColourReading read(Lab truth) {
        return new ColourReading(
                new Lab(
                        truth.lightness() + bias[0] + noise * random.nextGaussian(),
                        truth.a() + bias[1] + noise * random.nextGaussian(),
                        truth.b() + bias[2] + noise * random.nextGaussian(),
                        truth.viewing()),
                Covariance.same(Math.max(noise, 0.02)),
                Geometry.SPECULAR_INCLUDED,
                FilmState.CURED,
                Optional.empty());
    }

    /** What is really in the cup when the scale is trusted. */
    public Parts weigh(Parts wanted) {
        Map<String, Double> real = new LinkedHashMap<>();
        wanted.grams()
                .forEach((id, grams) -> real.put(id, Math.max(0, drift * grams + scaleNoise * random.nextGaussian())));
        return Parts.of(real);
    }

    public Chip chip(String id, Parts wanted) {
        Parts real = weigh(wanted);
        return new Chip(id, wanted, List.of(read(colour(real))), Optional.empty(), "");
    }

    /** A colour of a faded hull: a hidden mix of two to four tints, then read. */
    public Lab hull() {
        while (true) {
            Map<String, Double> parts = new LinkedHashMap<>();
            parts.put("white", 100.0);
            int count = 2 + random.nextInt(3);
            for (int i = 0; i < count; i++) {
                Tint tint = tints.get(random.nextInt(tints.size()));
                parts.put(tint.id(), 0.1 * Math.exp(1.1 * random.nextGaussian()));
            }
            Lab lab = colour(Parts.of(parts));
            if (lab.lightness() > 40 && lab.lightness() < 92) {
                return lab;
            }
        }
    }

    /** Grams of somebody's mix of two to three of these tints in white. */
    public Map<String, Double> mixture(long seed, double grams) {
        Random chance = new Random(seed);
        while (true) {
            Map<String, Double> parts = new LinkedHashMap<>();
            parts.put("white", 100.0);
            int count = 2 + chance.nextInt(2);
            while (parts.size() < count + 1) {
                parts.put(tints.get(chance.nextInt(tints.size())).id(), 0.15 * Math.exp(chance.nextGaussian()));
            }
            double lightness = colour(Parts.of(parts)).lightness();
            if (lightness > 40 && lightness < 90) {
                return new LinkedHashMap<>(
                        Parts.of(parts).times(grams / Parts.of(parts).total()).grams());
            }
        }
    }

    public Shelf shelf(List<Chip> chips) {
        List<StockItem> items = new ArrayList<>(tints);
        items.add(base);
        return new Shelf("hidden", items, chips);
    }

    public Random random() {
        return random;
    }
}
