package tintwright.reading.photo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tintwright.colour.Lab;
import tintwright.reading.Covariance;
import tintwright.reading.photo.camera.Correction;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.PatchReader;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.PlacedCard;
import tintwright.reading.photo.card.Region;
import tintwright.reading.photo.card.Sample;
import tintwright.reading.photo.card.Spot;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Rgb;

/**
 * Whether the ground that shows round a card is the ground that a spot lies on. Where it is, the card lies on the hull
 * in the spot's light. Where it is not, paint or light changes between the two, and no picture can tell which.
 */
final class CardGround {
    /** Where the ground is looked at, in patches beyond the outermost: clear of a card's frame; a judgement of ours. */
    private static final double[] BEYOND = {0.8, 1.0, 1.2};
    /** Radius of a look, in patches; a judgement of ours. */
    private static final double LOOK = 0.12;

    /** Radius of the smallest look, in pixels: enough of them to show a colour; a judgement of ours. */
    private static final double LEAST_RADIUS = 2.5;
    /** The same over the longer side, for large photos of which not every pixel is decoded; a judgement of ours. */
    private static final double LEAST_SHARE = 0.0015;
    /** Log light by which the same ground may differ in brightness; chosen by CardBesideHullStudy. */
    private static final double SAME_BRIGHTNESS = 0.13;
    /** And a channel from the mean of the three; chosen by CardBesideHullStudy. */
    private static final double SAME_HUE = 0.05;
    /** A channel noisier than this share of itself tells no hue; a judgement of ours. */
    private static final double TELLS = 0.03;
    /** Share of full light below which nothing is told apart; a judgement of ours. */
    private static final double LEAST_LIGHT = 1e-3;
    /** Of the ground round a card this share must be the spot's; chosen by CardBesideHullStudy. */
    private static final double MOST = 0.5;

    /** L* above which no coat of paint is: whites of gel coat stay below 97, pressed white powder below 99; from memory. */
    private static final double LIGHTEST = 99;
    /** Fewer places than this round a card that show in the picture say nothing; a judgement of ours. */
    private static final int ENOUGH = 4;
    /**
     * Standard deviation, in log light, of a hull's light against a card's that lies elsewhere: as much as is seen to
     * change, within these bounds; chosen by CardBesideHullStudy.
     */
    private static final double[] OTHER_LIGHT = {0.3, 0.6};
    /** The same of its hue, of red against green and of blue against green; chosen by CardBesideHullStudy. */
    private static final double[] OTHER_HUE = {0.05, 0.1};

    private final Map<Spot, Step> steps = new LinkedHashMap<>();
    /** All spots lie in one other light than the card: then the error is one that they share. */
    private boolean shared;

    private CardGround() {}

    /** @return false when there is no card, no hull, or a person said that the card lies on it */
    static boolean matters(Marks marks) {
        return !marks.cards().isEmpty()
                && !marks.cardOnHull()
                && marks.spots().stream().anyMatch(spot -> spot.purpose() == Spot.Purpose.HULL);
    }

    /**
     * @param spots   that can be read
     * @param samples of them, in their order
     * @param answers their colours, in their order
     */
    static CardGround under(
            PhotoFile photo,
            Marks marks,
            PatchReader reader,
            List<Spot> spots,
            List<Sample> samples,
            List<Correction.Answer> answers,
            Correction correction)
            throws PhotoException {
        CardGround all = new CardGround();
        if (!matters(marks)) {
            return all;
        }
        List<Sample> ground = round(photo, reader, marks);
        int hulls = 0;
        for (int i = 0; i < spots.size(); i++) {
            if (spots.get(i).purpose() == Spot.Purpose.HULL) {
                hulls++;
                Optional<Step> step =
                        from(spots.get(i).name(), samples.get(i), answers.get(i).colour(), ground, correction);
                if (step.isPresent()) {
                    all.steps.put(spots.get(i), step.get());
                }
            }
        }
        all.shared = hulls > 0 && all.steps.size() == hulls;
        return all;
    }

    /** @return what every reading of the photo is unsure of together, at a colour */
    Covariance shared(Lab colour) {
        return shared ? widest(colour) : Covariance.same(0);
    }

    /** @return what one reading is unsure of by itself: a chip lies beside some hull, and nothing says beside which */
    Covariance own(Spot spot, Lab colour) {
        if (shared || steps.isEmpty()) {
            return Covariance.same(0);
        }
        if (spot.purpose() == Spot.Purpose.CHIP) {
            return widest(colour);
        }
        return steps.containsKey(spot) ? unsure(colour, steps.get(spot)) : Covariance.same(0);
    }

    private Covariance widest(Lab colour) {
        return steps.values().stream()
                .map(step -> unsure(colour, step))
                .max(Comparator.comparingDouble(one -> one.ll() + one.aa() + one.bb()))
                .orElseThrow();
    }

    /** @return what a person should know, one for each spot on other ground than the card */
    List<Flag> flags() {
        List<Flag> flags = new ArrayList<>();
        steps.forEach((spot, step) -> flags.add(new Flag(Flag.Kind.OTHER_GROUND, spot.name(), step.message())));
        return flags;
    }

    /**
     * Why a spot may lie in other light than the card.
     *
     * @param log     log of the ground's brightness over the spot's, then of red, green and blue beyond that; empty when
     *                it is not seen
     * @param message what is said of it, one sentence or two
     */
    private record Step(double[] log, String message) {
        static Step unseen(String why) {
            return new Step(new double[0], why + ", so the range is wide.");
        }

        static Step seen(double[] log, String spot) {
            List<String> words = new ArrayList<>();
            if (Math.abs(log[0]) > SAME_BRIGHTNESS) {
                words.add(String.format(
                        Locale.ROOT,
                        log[0] > 0 ? "%.0f %% brighter" : "%.0f %% darker",
                        100 * Math.abs(Math.expm1(log[0]))));
            }
            if (CardGround.hue(log) > SAME_HUE) {
                words.add(log[1] > log[3] ? "warmer in hue" : "cooler in hue");
            }
            return new Step(
                    log,
                    "Round the card the picture is " + (words.isEmpty() ? "other" : String.join(" and ", words))
                            + " than at \"" + spot
                            + "\". That can be paint or other light on the card, so the range is wide.");
        }

        double light() {
            return within(OTHER_LIGHT, log.length == 0 ? OTHER_LIGHT[1] : Math.abs(log[0]));
        }

        double hue() {
            return within(OTHER_HUE, log.length == 0 ? OTHER_HUE[1] : CardGround.hue(log));
        }

        private static double within(double[] bounds, double seen) {
            return Math.max(bounds[0], Math.min(bounds[1], seen));
        }
    }

    /** @return the places round a card at which the ground is looked at, those in the picture alone */
    static List<Region> looks(PhotoFile photo, PlacedCard placed) {
        double least = Math.max(LEAST_RADIUS, LEAST_SHARE * Math.max(photo.width(), photo.height()));
        List<Region> looks = new ArrayList<>();
        for (double beyond : BEYOND) {
            for (Region.Disc look : placed.round(beyond, LOOK, least)) {
                PixelPoint at = look.centre();
                double clear = look.radius();
                if (Math.min(at.x(), photo.width() - at.x()) > clear
                        && Math.min(at.y(), photo.height() - at.y()) > clear) {
                    looks.add(look);
                }
            }
        }
        return looks;
    }

    /** @return what the camera recorded of the ground round the cards, clear of cards and chips */
    private static List<Sample> round(PhotoFile photo, PatchReader reader, Marks marks) throws PhotoException {
        List<Sample> ground = new ArrayList<>();
        for (PlacedCard placed : marks.cards()) {
            for (Region look : looks(photo, placed)) {
                if (marks.cards().stream().noneMatch(one -> one.holds(look.centre()))
                        && marks.spots().stream().noneMatch(one -> isOnChip(one, look))) {
                    ground.add(reader.read("the ground round the card", look).sample());
                }
            }
        }
        return ground;
    }

    private static boolean isOnChip(Spot spot, Region look) {
        return spot.purpose() == Spot.Purpose.CHIP && look.centre().distance(spot.centre()) < 2 * spot.radius();
    }

    /** @return how the ground round the card differs from the spot; empty when most of it is the spot's own */
    private static Optional<Step> from(
            String name, Sample spot, Lab colour, List<Sample> ground, Correction correction) {
        if (colour.lightness() > LIGHTEST) {
            return Optional.of(Step.unseen("\"" + name
                    + "\" reads lighter than paint can be, as if more light fell on it" + " than on the card"));
        }
        if (ground.size() < ENOUGH) {
            return Optional.of(Step.unseen("Too little of what the card lies on is in the picture to tell whether \""
                    + name + "\" lies in the card's light"));
        }
        List<double[]> other = new ArrayList<>();
        double here = correction.lightAt(spot.x(), spot.y());
        for (Sample look : ground) {
            double[] log = change(spot, look);
            // A card under a reflection makes believe that the light falls off: the bare pixels count as well.
            double fallOff = correction.lightAt(look.x(), look.y()) - here;
            double bright = Math.min(Math.abs(log[0]), Math.abs(log[0] + fallOff));
            if (bright > SAME_BRIGHTNESS || hue(log) > SAME_HUE) {
                other.add(log);
            }
        }
        if (ground.size() - other.size() >= MOST * ground.size()) {
            return Optional.empty();
        }
        double[] middle = new double[4];
        for (int k = 0; k < middle.length; k++) {
            int at = k;
            double[] sorted =
                    other.stream().mapToDouble(log -> log[at]).sorted().toArray();
            middle[k] = sorted[sorted.length / 2];
        }
        return Optional.of(Step.seen(middle, name));
    }

    /** @return log of the brightness over the spot's, then of red, green and blue beyond that; 0 for one too dark to tell */
    private static double[] change(Sample spot, Sample look) {
        double[] log = {Math.log(brightness(look) / brightness(spot)), 0, 0, 0};
        for (int k = 0; k < 3; k++) {
            double seen = Math.max(look.light().at(k), LEAST_LIGHT);
            double wanted = Math.max(spot.light().at(k), LEAST_LIGHT);
            if (Math.hypot(look.noise().at(k) / seen, spot.noise().at(k) / wanted) < TELLS) {
                log[k + 1] = Math.log(seen / wanted) - log[0];
            }
        }
        return log;
    }

    private static double brightness(Sample sample) {
        Rgb light = sample.light();
        return Math.max(0.3 * light.red() + 0.6 * light.green() + 0.1 * light.blue(), LEAST_LIGHT);
    }

    /** @return how far the channel that turns most is from the brightness, in log light */
    private static double hue(double[] log) {
        return Math.max(Math.abs(log[1]), Math.max(Math.abs(log[2]), Math.abs(log[3])));
    }

    /** @return how far a colour may be off when the light on it may be other than on the card */
    private static Covariance unsure(Lab colour, Step step) {
        double f = (colour.lightness() + 16) / 116;
        // L* = 116 f(Y) - 16, a* = 500 (f(X) - f(Y)), b* = 200 (f(Y) - f(Z)) (CIE 15:2004, 8.2.1.1); f grows by a third
        // of itself for each unit of log light.
        double x = (f + colour.a() / 500) / 3;
        double y = f / 3;
        double z = (f - colour.b() / 200) / 3;
        double light = step.light();
        double hue = step.hue();
        double[][] ways = {{light, light, light}, {hue, 0, 0}, {0, 0, hue}};
        Covariance sum = Covariance.same(0);
        for (double[] way : ways) {
            double l = 116 * y * way[1];
            double a = 500 * (x * way[0] - y * way[1]);
            double b = 200 * (y * way[1] - z * way[2]);
            sum = sum.plus(new Covariance(l * l, l * a, l * b, a * a, a * b, b * b));
        }
        return sum;
    }
}
