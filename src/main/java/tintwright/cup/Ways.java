package tintwright.cup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the ways on from a cup that was read.
 */
public final class Ways {
    /** From this chance on of being within 1.0 it is as close as eyes can tell: nine times in ten, a judgement of ours. */
    public static final double SURE = 0.9;
    /** Below this expected CIEDE2000 nobody sees a difference edge to edge; common practice, no source. */
    private static final double UNSEEN = 0.5;
    /**
     * More than this share beyond the mass wanted is worth a word and a split: more than clings to cup
     * and stick; a judgement of ours.
     */
    private static final double MORE = 0.03;
    /** A split to less than this share of what is wanted helps nobody: it is nearly the fresh mix; a judgement of ours. */
    private static final double LEAST_SPLIT = 0.3;

    /**
     * Farther off than this, CIEDE2000, nobody stops for want of certainty: half as far again as is seen edge to
     * edge; a judgement of ours.
     */
    private static final double HOPELESS = 1.5;
    /** A split within the reserve leaves a fifth of it for the trims to come; chosen by the study CupStudy. */
    private static final double USE_OF_RESERVE = 0.8;

    private final CupSight sight;
    private final CupState state;
    private final double wanted;

    private Ways(CupSight sight) {
        this.sight = sight;
        this.state = sight.state();
        this.wanted = sight.cup().wantedGrams();
    }

    /**
     * @return at least one way, the one that asks least of the person first
     * @throws IllegalArgumentException when nothing is in the cup, or no white
     */
    public static List<Way> of(CupSight sight) {
        if (sight.state().white() <= 0) {
            throw new IllegalArgumentException(
                    "the cup has no white in it: weigh white in before looking for a way back");
        }
        return new Ways(sight).all();
    }

    private List<Way> all() {
        Outlook now = sight.outlook().orElseThrow();
        List<Way> ways = new ArrayList<>();
        Way.StopHere stop = new Way.StopHere(now, state.mass());
        if (now.expected() <= UNSEEN || now.chanceWithin1() >= SURE) {
            ways.add(stop);
            return ways;
        }
        sight.versions().play(Map.of(), 1);
        double tell = sight.versions().spread();
        TintSearch search = new TintSearch(sight, List.of());
        TintSearch.Found without = search.best(0);
        TintSearch.Found way = Climb.least(search, state.mass(), without, tell);
        if (way.white() == 0 && without.safely() > HOPELESS) {
            way = Climb.leastOnTheWhole(search, state.mass(), without, tell);
        }
        Way.Climb climb = climb(way);
        if (climb.doses().isEmpty() || climb.after().expected() > now.expected() - 0.05) {
            ways.add(stop);
            return ways;
        }
        boolean tooMuch = climb.finalMass() > wanted * (1 + MORE);
        if (!tooMuch) {
            withinReserve(way, climb).ifPresent(ways::add);
            ways.add(climb);
            return ways;
        }
        double toWanted = wanted / climb.finalMass();
        if (toWanted < 1) {
            Way.Split split = split(way, toWanted);
            if (split.beyondReserve() > 0) {
                withinReserve(way, climb).ifPresent(ways::add);
            }
            ways.add(split);
            ways.add(fresh(way, toWanted));
        }
        ways.add(climb.beyondReserve() == 0 ? 0 : ways.size(), climb);
        return ways;
    }

    /** The same climb of as much of the cup as the reserve is enough for; empty where that helps nobody. */
    private Optional<Way.Split> withinReserve(TintSearch.Found way, Way.Climb climb) {
        if (climb.beyondReserve() <= 0 || state.reserve() <= 0) {
            return Optional.empty();
        }
        double within = USE_OF_RESERVE * state.reserve() / climb.white();
        return climb.finalMass() * within >= LEAST_SPLIT * wanted && within * climb.finalMass() < wanted
                ? Optional.of(split(way, within))
                : Optional.empty();
    }

    private Way.Climb climb(TintSearch.Found way) {
        double share = SafeShare.of(sight, way, 1);
        List<Dose> doses = Dose.of(sight, way, share, 1);
        Map<String, Double> added = Dose.sum(sight, doses);
        double mass = state.mass() + total(added);
        double white = added.getOrDefault(sight.cup().base(), 0.0);
        return new Way.Climb(doses, sight.outlook(added, 1), mass, white, beyond(white), Math.max(0, mass - wanted));
    }

    /** The same climb in a cup of which only this share is kept. */
    private Way.Split split(TintSearch.Found way, double most) {
        double step = sight.cup().scaleStep();
        double away = Math.ceil((1 - most) * state.mass() / step) * step;
        double kept = 1 - away / state.mass();
        TintSearch.Found small = scaled(way, kept);
        double share = SafeShare.of(sight, small, kept);
        List<Dose> doses = Dose.of(sight, small, share, kept);
        Map<String, Double> added = Dose.sum(sight, doses);
        double keep = kept * state.mass();
        double mass = keep + total(added);
        double white = added.getOrDefault(sight.cup().base(), 0.0);
        double missing = wanted - mass;
        return new Way.Split(
                keep,
                Dose.clean(away),
                leftoverName(),
                doses,
                sight.outlook(added, kept),
                mass,
                white,
                beyond(white),
                Math.max(0, mass - wanted),
                missing > MORE * wanted ? missing : 0);
    }

    private Way.Fresh fresh(TintSearch.Found way, double kept) {
        TintSearch.Found small = scaled(way, kept);
        double share = SafeShare.of(sight, small, kept);
        List<Dose> doses = Dose.of(sight, small, share, kept).stream()
                .filter(dose -> !dose.part().equals(sight.cup().base()))
                .toList();
        Map<String, Double> added = small.all(sight.cup().base(), share);
        double dark = kept * state.mass();
        double white = small.white();
        double mass = dark + total(added);
        return new Way.Fresh(
                safeDark(white, dark),
                dark,
                leftoverName(),
                doses,
                sight.outlook(added, kept),
                mass,
                white,
                beyond(white),
                Math.max(0, mass - wanted));
    }

    /** The most of the dark cup that the white takes without becoming too dark, by all that is not known. */
    private double safeDark(double white, double most) {
        double low = 0;
        double high = most;
        for (int i = 0; i < 12; i++) {
            double middle = (low + high) / 2;
            sight.versions().play(Map.of(sight.cup().base(), white), middle / state.mass());
            if (sight.versions().chanceDarker() <= SafeShare.TOO_DARK) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static TintSearch.Found scaled(TintSearch.Found way, double factor) {
        Map<String, Double> tints = new LinkedHashMap<>();
        way.tints().forEach((id, grams) -> tints.put(id, grams * factor));
        return new TintSearch.Found(way.white() * factor, tints, way.distance(), way.safely());
    }

    private double beyond(double white) {
        double over = white - state.reserve();
        return over > sight.cup().scaleStep() ? over : 0;
    }

    /** Short enough to write on a pot with a marker. */
    private String leftoverName() {
        int number = state.aside().size() + 1;
        return sight.cup().name() + " rest" + (number == 1 ? "" : " " + number);
    }

    private static double total(Map<String, Double> grams) {
        return grams.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
