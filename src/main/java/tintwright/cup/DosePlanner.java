package tintwright.cup;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tintwright.match.Aim;
import tintwright.match.Matcher;
import tintwright.match.Recipe;
import tintwright.match.Wish;

/**
 * From a cup to its next doses. Tint cannot be taken out, so a dose is the largest share of the way that is safe;
 * after each reading the way is looked for anew.
 */
public final class DosePlanner {
    /** Least share of the white to hold back; common practice, no source. */
    public static final double LEAST_RESERVE = 1 / 3.0;
    /** A cup within this share of the mass wanted is full: as much clings to cup and stick; a judgement of ours. */
    private static final double FULL = 0.98;
    /**
     * Part of what the readings can tell that a dose must move the colour by, or the next reading cannot tell what it
     * did; chosen by the study EyeStudy on its choosing half.
     */
    private static final double WORTH = 0.25;
    /** Less white than this share of the batch is not worth a filling up: a gram in a hundred; a judgement of ours. */
    private static final double LEAST_FILL = 0.01;
    /**
     * Below this safe share the rest of the white waits for another reading: white that went in with a
     * small part of its tints leaves the most still to be guessed; a judgement of ours.
     */
    private static final double SAFE_ENOUGH_TO_FILL = 0.75;
    /**
     * White is taken from the reserve only for a cup that tints alone leave farther off by this, CIEDE2000:
     * a third of what is just seen; a judgement of ours.
     */
    private static final double NEEDS_WHITE = 0.3;
    /**
     * A move that an eye can tell beside the hull, CIEDE2000: about a just noticeable difference, see {@link EyeJudge};
     * a judgement of ours.
     */
    private static final double EYE_TELLS = 2;
    /** And one that is worth a dose all the same where more is not safe; a judgement of ours. */
    private static final double EYE_WORTH = 0.3;
    /**
     * While the cup is to be expected farther off than this, CIEDE2000, another photo of the cured dab beside the hull
     * is worth its minute; chosen by the study EyeStudy on its choosing half.
     */
    private static final double WORTH_A_PHOTO = 0.6;
    /**
     * A tint that changes a trial dab by less than this, CIEDE2000, is not worth its weighing: the eye would not tell it
     * from 2 that are there; a judgement of ours.
     */
    private static final double WORTH_TRYING = 0.8;
    /** Enough for a dab of the size of a matchbox, a millimetre thick, and its stick; common practice, no source. */
    private static final double TRIAL_GRAMS = 4;
    /**
     * How far along the way the dabs of a row are: where the hull most likely is, and beyond it; which of them is nearer
     * tells more than one dab can. Chosen by the study EyeStudy on its choosing half.
     */
    private static final double[] ROW = {1, 1.6};
    /** A cup of which this would be a larger share is too small to lose it; a judgement of ours. */
    private static final double MOST_TO_TRY = 0.15;
    /** A dab that so many looks left in doubt will not be told by another; a judgement of ours. */
    private static final int MOST_LOOKS = 3;
    /** Mean length of a normal error in three dimensions, of its root mean square: derived, the root of 8 / (3 pi). */
    private static final double USUAL_OF_SPREAD = 0.92;

    /** Each round asks for less than the one before, and the fourth for hardly anything; a judgement of ours. */
    private static final int MOST_ROUNDS = 4;

    private final CupSight sight;
    private final CupState state;

    private DosePlanner(CupSight sight) {
        this.sight = sight;
        this.state = sight.state();
    }

    /** @return what to do next */
    public static Plan plan(CupSight sight) {
        DosePlanner planner = new DosePlanner(sight);
        if (planner.state.mass() == 0) {
            return planner.start();
        }
        if (planner.state.white() <= 0) {
            return new Plan.NoWhite();
        }
        Plan next = planner.next();
        return next instanceof Plan.Doses doses && !doses.fillUp() ? planner.withAllBeforeALook(doses) : next;
    }

    /**
     * What would be asked for once these doses are in, and before anything is looked at, goes in with them: one larger
     * dose of a tint is weighed straight where its parts would each be thinned.
     */
    private Plan withAllBeforeALook(Plan.Doses first) {
        Plan.Doses all = first;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Plan then = new DosePlanner(sight.dosed(all.doses())).next();
            if (!(then instanceof Plan.Doses more) || more.fillUp()) {
                return all;
            }
            Map<String, Double> tints = new LinkedHashMap<>();
            double white = 0;
            for (Dose dose :
                    Stream.concat(all.doses().stream(), more.doses().stream()).toList()) {
                if (dose.part().equals(sight.cup().base())) {
                    white += dose.grams();
                } else {
                    tints.merge(dose.part(), dose.grams(), Double::sum);
                }
            }
            List<Dose> doses = Dose.weighable(sight, new TintSearch.Found(white, tints, 0, 0), 1);
            double share = 1 - (1 - all.share()) * (1 - more.share());
            all = new Plan.Doses(doses, sight.outlook(Dose.sum(sight, doses), 1), share, false);
        }
        return all;
    }

    /** @return white to hold back of a cup that is to be started with this much, by how far doses may overshoot */
    private Plan start() {
        Recipe recipe = recipe();
        double white = 0;
        for (Map.Entry<String, Double> part : recipe.exact().grams().entrySet()) {
            white += part.getKey().equals(sight.cup().base()) ? part.getValue() : 0;
        }
        double held = white * LEAST_RESERVE;
        double climb = 0;
        for (int round = 0; round < 2; round++) {
            climb = climbOfFirstDoses(white - held);
            held = Math.min(0.8 * white, Math.max(white * LEAST_RESERVE, climb));
        }
        double step = sight.cup().scaleStep();
        double shown = Math.round((white - held) / step) * step;
        Outlook after = new Outlook(
                recipe.prediction().lab(),
                recipe.deltaE(),
                recipe.expected(),
                recipe.chanceWithin1(),
                recipe.chanceWithin2(),
                recipe.within90(),
                0);
        return new Plan.Start(
                Dose.clean(shown), Dose.clean(Math.ceil((white - shown) / step - 1e-9) * step), climb, after);
    }

    /** White that brings the cup back after its first doses in the worst of a hundred cases. */
    private double climbOfFirstDoses(double white) {
        Cup begun = sight.cup()
                .add(
                        Instant.EPOCH,
                        new Deed.Weighed(sight.cup().base(), white, sight.cup().scaleStep()));
        CupSight ahead = CupSight.of(sight.shelfAlone(), begun);
        DosePlanner planner = new DosePlanner(ahead);
        TintSearch.Found way = new TintSearch(ahead, planner.firstTints()).best(0);
        double share = SafeShare.of(ahead, way, 1);
        CupVersions versions = ahead.versions();
        versions.play(Map.of(), 1);
        // Where the hull may be lighter than the white itself, no white brings that back.
        double allowed = Math.max(0, versions.darkness(0.01) + 0.2);
        double low = 0;
        double high = 4 * white;
        for (int i = 0; i < 14; i++) {
            double middle = (low + high) / 2;
            Map<String, Double> added = way.all(sight.cup().base(), share);
            added.merge(sight.cup().base(), middle, Double::sum);
            versions.play(added, 1);
            if (versions.darkness(0.01) > allowed) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high < 0.01 * white ? 0 : high;
    }

    private Recipe recipe() {
        return new Matcher(sight.knowledge())
                .match(new Wish(
                        Aim.of(sight.cup().hullAsRead())
                                .through(sight.knowledge())
                                .target(),
                        sight.cup().wantedGrams(),
                        sight.cup().scaleStep(),
                        Set.of(),
                        Optional.of(sight.cup().base()),
                        Optional.empty()))
                .best();
    }

    /** Before any reading the tints of the best recipe, and those already in. */
    private List<String> firstTints() {
        List<String> tints = new ArrayList<>();
        for (String id : recipe().exact().grams().keySet()) {
            if (sight.knowledge().shelf().tint(id).isPresent()) {
                tints.add(id);
            }
        }
        state.grams().keySet().stream().filter(id -> !tints.contains(id)).forEach(tints::add);
        return tints;
    }

    private Plan next() {
        Outlook now = sight.outlook().orElseThrow();
        boolean read = state.judged();
        boolean unread = state.unjudged();
        sight.versions().play(Map.of(), 1);
        double tell = tell();
        TintSearch search = new TintSearch(sight, read ? List.of() : firstTints());
        TintSearch.Found way = search.best(0);
        if (read && !unread) {
            TintSearch.Found lifted = lifted(search, way, tell);
            if (lifted.white() > Math.max(state.reserve(), room())) {
                return new Plan.WayBack(now, lifted.white());
            }
            way = lifted;
            // A reading of the white alone says nothing about the tints: the reserve waits for one that does.
            if (!full() && state.tintWasJudged()) {
                Optional<Plan> full = fillUp(search, way, SAFE_ENOUGH_TO_FILL);
                if (full.isPresent()) {
                    return full.get();
                }
            }
        }
        double share = SafeShare.of(sight, way, 1);
        List<Dose> doses = Dose.of(sight, way, share, 1);
        Map<String, Double> added = Dose.sum(sight, doses);
        if (!added.isEmpty()) {
            double move = moveTo(added);
            Outlook after = sight.outlook(added, 1);
            boolean told = move >= (sight.byEye() ? EYE_WORTH : WORTH * tell);
            if (told && after.expected() < now.expected()) {
                return new Plan.Doses(doses, after, share, false);
            }
        }
        if (sight.byEye()) {
            Optional<Plan> trial = tryDabs(way, now);
            if (trial.isPresent()) {
                return trial.get();
            }
        }
        if (unread || lookAgain(now)) {
            return new Plan.TakeChip(
                    now, !read && sight.hullIsDoubtful() || sight.cup().hullReadOnce());
        }
        if (!full()) {
            Optional<Plan> full = fillUp(search, way, 0);
            if (full.isPresent()) {
                return full.get();
            }
        }
        return new Plan.Stop(
                now,
                added.isEmpty() ? 0 : now.expected() - sight.outlook(added, 1).expected());
    }

    /** What all of the way would come to, in a few grams: an eye tells most where the hull most likely is. */
    private Optional<Plan> tryDabs(TintSearch.Found way, Outlook now) {
        if (way.white() > 0 || TRIAL_GRAMS > MOST_TO_TRY * state.mass()) {
            return Optional.empty();
        }
        List<Plan.TrialDab> row = new ArrayList<>();
        for (double part : ROW) {
            dab(way, part).ifPresent(row::add);
        }
        return row.isEmpty() ? Optional.empty() : Optional.of(new Plan.TryDabs(now, row));
    }

    /** @param part of the way that a dab is to go, from 0; 1 is all of it */
    private Optional<Plan.TrialDab> dab(TintSearch.Found way, double part) {
        double share = TRIAL_GRAMS / state.mass();
        List<Dose> doses = Dose.of(sight, way, part * share, share, WORTH_TRYING);
        Map<String, Double> added = Dose.sum(sight, doses);
        if (doses.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Double> inTheCup = new LinkedHashMap<>();
        added.forEach((id, grams) -> inTheCup.put(id, grams / share));
        return moveTo(inTheCup) < part * EYE_TELLS
                ? Optional.empty()
                : Optional.of(new Plan.TrialDab(TRIAL_GRAMS, doses, sight.outlook(added, share)));
    }

    /** Where something is left to gain and no dose is safe, another look or photo of the same dab tells more. */
    private boolean lookAgain(Outlook now) {
        if (state.photosOfThis() > 0 && now.expected() > WORTH_A_PHOTO) {
            return state.photosOfThis() < MOST_LOOKS;
        }
        return sight.byEye() && now.expected() > EYE_TELLS && state.looksAtThis() < MOST_LOOKS;
    }

    /** How small a move can be told, CIEDE2000: to the eye, however little is known so far. */
    private double tell() {
        double spread = sight.versions().spread();
        return sight.byEye() ? Math.min(spread, EYE_TELLS) : spread;
    }

    /** The way with the least white, when without white the tints that may safely go in leave something to wish. */
    private TintSearch.Found lifted(TintSearch search, TintSearch.Found way, double tell) {
        double without = expected(way);
        if (without < USUAL_OF_SPREAD * tell + NEEDS_WHITE) {
            return way;
        }
        TintSearch.Found lifted = Climb.least(search, state.mass(), way, tell);
        if (lifted.white() == 0 && sight.byEye() && darkerThanNot()) {
            // No white makes it surely light enough while so much is unknown: as much as the best estimate asks.
            lifted = Climb.leastOnTheWhole(search, state.mass(), way, tell);
        }
        return lifted.white() > 0 && expected(lifted) < without - NEEDS_WHITE / 2 ? lifted : way;
    }

    private boolean darkerThanNot() {
        sight.versions().play(Map.of(), 1);
        return sight.versions().chanceDarker() > 0.5;
    }

    private double expected(TintSearch.Found way) {
        return sight.outlook(way.all(sight.cup().base(), SafeShare.of(sight, way, 1)), 1)
                .expected();
    }

    private boolean full() {
        return state.mass() >= FULL * sight.cup().wantedGrams();
    }

    /** Grams that still fit under the mass wanted. */
    private double room() {
        return Math.max(0, sight.cup().wantedGrams() - state.mass());
    }

    /** When the rest of the white can go in with its tints, as far as the reserve goes, and the whole is safe. */
    private Optional<Plan> fillUp(TintSearch search, TintSearch.Found way, double leastShare) {
        double most = Math.max(way.white(), state.reserve());
        double white = Math.min(most, Math.max(way.white(), room()));
        if (white < LEAST_FILL * sight.cup().wantedGrams()) {
            return Optional.empty();
        }
        TintSearch.Found full = search.best(white);
        for (int i = 0; i < 3; i++) {
            double tints = full.tints().values().stream()
                    .mapToDouble(Double::doubleValue)
                    .sum();
            white = Math.min(most, Math.max(way.white(), room() - tints));
            full = search.best(white);
        }
        if (way.distance() > NEEDS_WHITE && full.distance() > way.distance() + 0.1) {
            return Optional.empty();
        }
        double share = SafeShare.of(sight, full, 1);
        if (share < leastShare) {
            return Optional.empty();
        }
        List<Dose> doses = Dose.of(sight, full, share, 1);
        return Optional.of(new Plan.Doses(doses, sight.outlook(Dose.sum(sight, doses), 1), share, true));
    }

    private double moveTo(Map<String, Double> added) {
        sight.versions().play(Map.of(), 1);
        double[] before = sight.versions().meanMiss();
        sight.versions().play(added, 1);
        double[] after = sight.versions().meanMiss();
        return sight.versions().length(new double[] {after[0] - before[0], after[1] - before[1], after[2] - before[2]});
    }
}
