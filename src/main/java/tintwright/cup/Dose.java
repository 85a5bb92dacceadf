package tintwright.cup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.shelf.Parts;
import tintwright.shelf.Tint;

/**
 * One thing to put in, as the scale can weigh it.
 *
 * @param part    id of the white or tint
 * @param grams   of the white or tint itself, without what a letdown brings along
 * @param deed    what will be written when it is done as advised
 * @param letDown how to mix the letdown; empty when it is weighed straight
 * @param drops   the same dose as drops, when it is a tint; empty when under one drop
 */
public record Dose(String part, double grams, Deed deed, Optional<LetDownMix> letDown, Optional<Drops> drops) {
    /** A dose that changes the colour by less than this, CIEDE2000, is not worth stirring; common practice, no source. */
    private static final double WORTH_STIRRING = 0.15;
    /** A dose under so many steps of the scale is not weighed straight; common practice, no source. */
    public static final int FEWEST_STEPS = 20;
    /** A letdown of fewer steps than this is too little to be worth a dose: one step more or less is a fifth of it; a judgement of ours. */
    private static final int LEAST_STEPS = 5;
    /**
     * Tint in a letdown, in steps of the scale: its own weighing is then good to about 2 per cent; derived
     * from one step of 50.
     */
    private static final int STEPS_IN_A_LETDOWN = 50;

    /** Grams of letdown that hold one of tint: round numbers to weigh; common practice, no source. */
    private static final int[] LETDOWNS = {10, 20, 50};

    /**
     * How to mix a letdown: well more than the dose needs, the rest keeps in a closed jar.
     *
     * @param oneIn     one gram of tint in so many grams
     * @param tintGrams grams of tint to weigh
     * @param baseGrams grams of white to weigh to it
     */
    public record LetDownMix(int oneIn, double tintGrams, double baseGrams) {
        /** @return how to stir enough for a dose that is weighed from it */
        public static LetDownMix of(Deed.LetDown dose) {
            double needed = 1.5 * dose.grams() / dose.oneIn();
            double tint =
                    Math.max(STEPS_IN_A_LETDOWN * dose.step(), Math.ceil(needed / dose.step() - 1e-9) * dose.step());
            return new LetDownMix(dose.oneIn(), clean(tint), clean(tint * (dose.oneIn() - 1)));
        }
    }

    /**
     * A dose counted instead of weighed.
     *
     * @param count     drops
     * @param grams     what they weigh together
     * @param within    standard deviation of that, grams
     */
    public record Drops(int count, double grams, double within) {}

    /** @return so much white, to the nearest step that is worth watching: a tenth of a gram from 50 g on */
    static Optional<Dose> white(String base, double grams, double step) {
        double watched = grams >= 50 ? Math.max(step, 0.1) : step;
        double shown = Math.round(grams / watched) * watched;
        return shown < step / 2
                ? Optional.empty()
                : Optional.of(new Dose(
                        base, shown, new Deed.Weighed(base, clean(shown), step), Optional.empty(), Optional.empty()));
    }

    /** @param stirred letdowns of this tint that stand on the bench, 1 in so many: these before any other */
    static Optional<Dose> tint(String id, double grams, double step, double dropGrams, Set<Integer> stirred) {
        int count = (int) Math.floor(grams / dropGrams + 1e-9);
        Optional<Drops> drops = count < 1
                ? Optional.empty()
                : Optional.of(new Drops(count, count * dropGrams, dropGrams * Deed.Dropped.SPREAD * Math.sqrt(count)));
        if (grams >= FEWEST_STEPS * step) {
            double shown = clean(Math.floor(grams / step + 1e-9) * step);
            return Optional.of(new Dose(id, shown, new Deed.Weighed(id, shown, step), Optional.empty(), drops));
        }
        for (int oneIn : LETDOWNS) {
            double shown = clean(Math.floor(grams * oneIn / step + 1e-9) * step);
            // What is stirred already is good for a coarser dose: the next one makes up for it.
            boolean last = stirred.contains(oneIn) || oneIn == LETDOWNS[LETDOWNS.length - 1];
            if (shown >= (last ? LEAST_STEPS : FEWEST_STEPS) * step - 1e-12) {
                Deed.LetDown deed = new Deed.LetDown(id, oneIn, shown, step);
                return Optional.of(new Dose(id, shown / oneIn, deed, Optional.of(LetDownMix.of(deed)), drops));
            }
        }
        return Optional.empty();
    }

    /** Steps of a scale have no tail of nines. */
    static double clean(double grams) {
        return Math.round(grams * 1e6) / 1e6;
    }

    /**
     * @param kept share of the cup that is kept
     * @return a way as the scale can weigh it: all its white, then this share of those tints that change something
     */
    static List<Dose> of(CupSight sight, TintSearch.Found way, double share, double kept) {
        return of(sight, way, share, kept, WORTH_STIRRING);
    }

    /** @param worth CIEDE2000 that a tint must change, or it is left out */
    static List<Dose> of(CupSight sight, TintSearch.Found way, double share, double kept, double worth) {
        Map<String, Double> tints = new LinkedHashMap<>(way.tints());
        while (true) {
            List<Dose> doses =
                    weighable(sight, new TintSearch.Found(way.white(), tints, way.distance(), way.safely()), share);
            Lab all = after(sight, doses, kept);
            Dose idle = null;
            double least = worth;
            for (Dose dose : doses) {
                if (!dose.part().equals(sight.cup().base())) {
                    double effect = Ciede2000.between(all, after(sight, without(doses, dose), kept));
                    idle = effect < least ? dose : idle;
                    least = Math.min(effect, least);
                }
            }
            if (idle == null) {
                return doses;
            }
            tints.remove(idle.part());
        }
    }

    private static List<Dose> without(List<Dose> doses, Dose dose) {
        return doses.stream().filter(other -> other != dose).toList();
    }

    private static Lab after(CupSight sight, List<Dose> doses, double kept) {
        Map<String, Double> grams = sum(sight, doses);
        sight.state().grams().forEach((id, mass) -> grams.merge(id, mass * kept, Double::sum));
        return sight.colourOf(Parts.of(grams));
    }

    static List<Dose> weighable(CupSight sight, TintSearch.Found way, double share) {
        List<Dose> doses = new ArrayList<>();
        double step = sight.cup().scaleStep();
        for (Map.Entry<String, Double> tint : way.tints().entrySet()) {
            double drop = sight.knowledge()
                    .shelf()
                    .tint(tint.getKey())
                    .map(Tint::dropGrams)
                    .orElse(Tint.USUAL_DROP_GRAMS);
            tint(tint.getKey(), tint.getValue() * share, step, drop, sight.cup().stirred(tint.getKey()))
                    .ifPresent(doses::add);
        }
        double brought = 0;
        for (Dose dose : doses) {
            brought += dose.deed() instanceof Deed.LetDown down ? down.grams() - dose.grams() : 0;
        }
        white(sight.cup().base(), way.white() - brought, step).ifPresent(dose -> doses.add(0, dose));
        return doses;
    }

    /** What doses put in, by part, the base of letdowns counted. */
    static Map<String, Double> sum(CupSight sight, List<Dose> doses) {
        Map<String, Double> added = new LinkedHashMap<>();
        for (Dose dose : doses) {
            added.merge(dose.part(), dose.grams(), Double::sum);
            if (dose.deed() instanceof Deed.LetDown down) {
                added.merge(sight.cup().base(), down.grams() - dose.grams(), Double::sum);
            }
        }
        return added;
    }
}
