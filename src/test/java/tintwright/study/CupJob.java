package tintwright.study;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import tintwright.colour.Ciede2000;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.cup.Cup;
import tintwright.cup.CupSight;
import tintwright.cup.Deed;
import tintwright.cup.Dose;
import tintwright.cup.Plan;
import tintwright.reading.ColourReading;
import tintwright.reading.ColourReading.PhotoBias;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.HullFamily;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.shelf.Chip;
import tintwright.shelf.Parts;
import tintwright.shelf.Tint;
import tintwright.shelf.knowledge.Knowledge;

/**
 * One match in a shop whose paints are hidden: what is really in the cup beside what is written down. The scale
 * steps by 0.01 g and is off by one step (one standard deviation); letdowns are weighed on it too. All invented.
 */
final class CupJob {
    static final double STEP = 0.01;
    static final double WANTED = 100;
    /** A photo with a card: what all of it shares, and what each patch adds, on each axis; assumed, no source. */
    static final double PHOTO_SHARED = 1.5;

    static final double PHOTO_PATCH = 0.5;

    /** What a photo with nothing known in it is off by, on each axis; assumed, no source. */
    private static final double[] PLAIN = {6, 3.5, 5};

    final HiddenShop shop;
    final Lab truth;
    final double limit;
    final boolean photo;
    final Knowledge knowledge;
    final PlaceReadings hull;
    private final Random random;
    private final Map<String, Double> letdowns = new HashMap<>();
    private int photos;
    int trials;
    Cup cup;
    Map<String, Double> real = new LinkedHashMap<>();
    double deepest = Double.NEGATIVE_INFINITY;
    double whiteUsed;
    double tintUsed;
    double tintAside;
    /** How many times its dark self the cup has become since it was spoiled, parts poured off not counted. */
    double dilution = 1;

    int doses;
    private long seconds;

    CupJob(long seed, boolean photo) {
        this(seed, photo, HiddenShop.Trouble.NONE);
    }

    CupJob(long seed, boolean photo, HiddenShop.Trouble trouble) {
        this.shop = new HiddenShop(seed, 1, trouble);
        this.photo = photo;
        this.random = new Random(seed * 31 + 5);
        this.truth = shop.hull();
        this.limit = HiddenBest.distance(shop, truth);
        double[] first = bias();
        double[] shelfPhoto = bias();
        this.hull = new PlaceReadings("boat", "hull", List.of(read(truth, first, "photo 0")), "");
        List<Chip> chips = new ArrayList<>();
        chips.add(chip("base", Parts.of(Map.of("white", 20.0)), shelfPhoto));
        for (Tint tint : shop.tints()) {
            chips.add(chip("one-" + tint.id(), Parts.of(Map.of("white", 20.0, tint.id(), 0.2)), shelfPhoto));
        }
        this.knowledge = Knowledge.of(shop.shelf(chips));
        this.cup = Cup.empty("cup", hull, WANTED, STEP, "white");
    }

    /** What somebody without a meter begins with. */
    enum Start {
        /** A photo with nothing in it that is known, off by 6, 3.5 and 5 on the three axes; no chip was ever read. */
        PLAIN_PHOTO,
        /** A photo with the shop's chips in it: off by 1.6 on each axis, 0.7 more for each chip. */
        OWN_CHIPS,
        /** The likest of the drawn hulls; no chip was ever read. */
        PICKED
    }

    /** What a reading without a meter is off by; every second shop breaks the theory on purpose. All invented. */
    CupJob(long seed, Start start) {
        this.shop = new HiddenShop(seed, 1, seed % 2 == 0 ? HiddenShop.Trouble.NONE : HiddenShop.Trouble.ALL);
        this.photo = false;
        this.random = new Random(seed * 31 + 5);
        this.truth = shop.hull();
        this.limit = HiddenBest.distance(shop, truth);
        List<Chip> chips = new ArrayList<>();
        PlaceReadings asRead;
        if (start == Start.PICKED) {
            HullFamily likest = HullFamily.ANY;
            for (HullFamily family : HullFamily.values()) {
                likest = Ciede2000.between(family.middle(), truth) < Ciede2000.between(likest.middle(), truth)
                        ? family
                        : likest;
            }
            asRead = likest.place("boat", "hull");
        } else {
            boolean plain = start == Start.PLAIN_PHOTO;
            double[] off = plain ? PLAIN.clone() : new double[] {1.6, 1.6, 1.6};
            for (int axis = 0; axis < 3; axis++) {
                off[axis] *= random.nextGaussian();
            }
            PhotoBias shared = PhotoBias.along("photo 0", ColourReading.Direction.of(Covariance.same(plain ? 6 : 1.8)));
            asRead = new PlaceReadings("boat", "hull", List.of(seen(truth, off, shared)), "");
            if (!plain) {
                chips.add(known("base", Parts.of(Map.of("white", 20.0)), off, shared));
                for (Tint tint : shop.tints()) {
                    chips.add(known("one-" + tint.id(), Parts.of(Map.of("white", 20.0, tint.id(), 0.2)), off, shared));
                }
            }
        }
        this.knowledge = Knowledge.of(shop.shelf(chips));
        this.hull = new PlaceReadings(
                "boat",
                "hull",
                List.of(knowledge.throughChips((ColourReading) asRead.readings().get(0))),
                "");
        this.cup = Cup.empty("cup", hull, WANTED, STEP, "white");
    }

    private Chip known(String id, Parts wanted, double[] off, PhotoBias shared) {
        Lab lab = shop.colour(shop.weigh(wanted));
        return new Chip(id, wanted, List.of(seen(lab, off, shared)), Optional.empty(), "");
    }

    private ColourReading seen(Lab lab, double[] off, PhotoBias shared) {
        double own = 0.7;
        return new ColourReading(
                new Lab(
                        Math.min(100, lab.lightness() + off[0] + own * random.nextGaussian()),
                        lab.a() + off[1] + own * random.nextGaussian(),
                        lab.b() + off[2] + own * random.nextGaussian(),
                        lab.viewing()),
                Covariance.same(own),
                Geometry.SPECULAR_INCLUDED,
                FilmState.CURED,
                Optional.of(shared));
    }

    /** A cured dab held against the hull: the trial dab where the plan asks for one, else the cup's. */
    void look(HiddenEye eye, Plan plan) {
        if (!(plan instanceof Plan.TryDabs row)) {
            cup = cup.add(now(), new Deed.Seen(eye.look(colour(), truth)));
            return;
        }
        Map<String, Double> whole = real;
        double mass = mass();
        List<Lab> dabs = new ArrayList<>();
        double taken = 0;
        for (Plan.TrialDab dab : row.dabs()) {
            double share = dab.grams() / mass;
            real = new LinkedHashMap<>();
            whole.forEach((id, grams) -> real.put(id, grams * share));
            dab.doses().forEach(dose -> pour(dose.deed()));
            dabs.add(colour());
            taken += share;
            trials++;
        }
        real = whole;
        // The cup's own dab lies beside them.
        dabs.add(0, colour());
        int nearest = eye.nearest(dabs, truth);
        cup = cup.add(now(), row.seen(eye.look(dabs.get(nearest), truth), nearest));
        double left = 1 - taken;
        real.replaceAll((id, grams) -> grams * left);
    }

    /** A cured dab photographed beside the hull with nothing known in the picture: what all of it is off by cancels. */
    void photographDab() {
        double[] off = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            off[axis] = PLAIN[axis] * random.nextGaussian();
        }
        PhotoBias shared = new PhotoBias("photo " + ++photos, Covariance.same(6));
        cup = cup.add(now(), new Deed.Read(seen(colour(), off, shared), Optional.of(seen(truth, off, shared)), true));
    }

    private Chip chip(String id, Parts wanted, double[] bias) {
        Lab lab = shop.colour(shop.weigh(wanted));
        return new Chip(id, wanted, List.of(read(lab, bias, "shelf photo")), Optional.empty(), "");
    }

    private double[] bias() {
        double[] out = new double[3];
        for (int axis = 0; axis < 3 && photo; axis++) {
            out[axis] = PHOTO_SHARED * random.nextGaussian();
        }
        return out;
    }

    private ColourReading read(Lab lab, double[] bias, String name) {
        if (!photo) {
            return shop.read(lab);
        }
        Lab seen = new Lab(
                lab.lightness() + bias[0] + PHOTO_PATCH * random.nextGaussian(),
                lab.a() + bias[1] + PHOTO_PATCH * random.nextGaussian(),
                lab.b() + bias[2] + PHOTO_PATCH * random.nextGaussian(),
                lab.viewing());
        return new ColourReading(
                seen,
                Covariance.same(PHOTO_PATCH),
                Geometry.SPECULAR_INCLUDED,
                FilmState.CURED,
                Optional.of(new PhotoBias(name, Covariance.same(PHOTO_SHARED))));
    }

    /** Whether the cup is as near to the hull as is said of nine in ten. */
    boolean inRange() {
        double said = CupSight.of(knowledge, cup).outlook().orElseThrow().within90();
        return Ciede2000.between(colour(), truth) <= said;
    }

    private Instant now() {
        return Instant.EPOCH.plusSeconds(seconds += 60);
    }

    double mass() {
        return real.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    private double tint() {
        return mass() - real.getOrDefault("white", 0.0);
    }

    /** Tint that ends outside the hundred grams wanted: in what is made too much and in what was set aside. */
    double tintWasted() {
        return tintAside + tint() * Math.max(0, 1 - WANTED / mass());
    }

    private void put(String id, double grams) {
        real.merge(id, Math.max(0, grams), Double::sum);
        if (id.equals("white")) {
            whiteUsed += grams;
        } else {
            tintUsed += grams;
        }
    }

    private void pour(Deed deed) {
        if (deed instanceof Deed.Weighed weighed) {
            put(weighed.part(), weighed.grams() + STEP * random.nextGaussian());
        } else if (deed instanceof Deed.LetDown down) {
            double strength = letdowns.computeIfAbsent(down.part() + down.oneIn(), key -> mixLetDown(down.oneIn()));
            double grams = down.grams() + STEP * random.nextGaussian();
            put(down.part(), grams * strength);
            put("white", grams * (1 - strength));
        } else if (deed instanceof Deed.SetAside away) {
            double kept = 1 - away.grams() / mass();
            tintAside += (1 - kept) * tint();
            real.replaceAll((id, grams) -> grams * kept);
        }
    }

    /** Does what the deed says, with the errors of a real hand. */
    void act(Deed deed) {
        double before = mass();
        pour(deed);
        if (!(deed instanceof Deed.Held) && !(deed instanceof Deed.SetAside)) {
            doses++;
        }
        if (before > 0 && !(deed instanceof Deed.SetAside)) {
            dilution *= mass() / before;
        }
        cup = cup.add(now(), deed);
        if (!real.isEmpty()) {
            deepest = Math.max(deepest, truth.lightness() - colour().lightness());
        }
    }

    /** Half a gram of tint and its white, each weighed on the same scale. */
    private double mixLetDown(int oneIn) {
        double tint = 0.5 + STEP * random.nextGaussian();
        double base = 0.5 * (oneIn - 1) + STEP * random.nextGaussian();
        return tint / (tint + base);
    }

    void act(List<Dose> doses) {
        doses.forEach(dose -> act(dose.deed()));
    }

    Lab colour() {
        return shop.colour(Parts.of(real));
    }

    /** CIEDE2000 to the true hull, above what these tints could reach. */
    double above() {
        return Ciede2000.between(colour(), truth) - limit;
    }

    /**
     * A cured chip from the cup, read; in a photo the hull stands beside it.
     *
     * @param hullAgain whether the meter reads the hull once more
     */
    void readChip(boolean hullAgain) {
        double[] bias = bias();
        String name = "photo " + ++photos;
        Reading chip = read(colour(), bias, name);
        Optional<ColourReading> beside = photo || hullAgain ? Optional.of(read(truth, bias, name)) : Optional.empty();
        cup = cup.add(now(), new Deed.Read(chip, beside, true));
    }
}
