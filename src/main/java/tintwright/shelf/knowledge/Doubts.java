package tintwright.shelf.knowledge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.shelf.Chip;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;

/**
 * Looks again at chips that fit badly: learns without each, and asks what the others say about it.
 */
final class Doubts {
    /** Squared misfit for each value read, above which a chip contradicts the rest: about four deviations. */
    private static final double CONTRADICTS = 4.0;

    /** How far a wet chip strays from what its cured film would read, on each axis; common practice, no source. */
    private static final double WET = 2.5;

    /** A bound on work, a judgement of ours. */
    private static final int MOST_SUSPECTS = 8;

    /** A bound on work, a judgement of ours. */
    private static final int MANY_CHIPS = 8000;

    private static final double[] FACTORS = factors();

    private final Knowledge knowledge;
    private final List<Chip> extra;

    Doubts(Knowledge knowledge, List<Chip> extra) {
        this.knowledge = knowledge;
        this.extra = extra;
    }

    private static double[] factors() {
        double[] list = new double[81];
        for (int i = 0; i < list.length; i++) {
            list[i] = Math.exp((i - 40) / 40.0 * Math.log(12));
        }
        return list;
    }

    List<Doubt> about(Collection<String> suspects) {
        List<Doubt> doubts = new ArrayList<>();
        // Each suspect is learned without; on a shelf of thousands of chips one such look takes seconds.
        int chips = knowledge.shelf().chips().size() + extra.size();
        int most = Math.max(1, Math.min(MOST_SUSPECTS, MANY_CHIPS / Math.max(1, chips)));
        suspects.stream().limit(most).forEach(id -> doubt(id).ifPresent(doubts::add));
        doubts.sort(Comparator.comparingDouble(Doubt::misfit).reversed());
        return List.copyOf(doubts);
    }

    private Optional<Doubt> doubt(String chipId) {
        Shelf shelf = knowledge.shelf();
        List<Chip> others = new ArrayList<>(shelf.chips());
        others.addAll(extra);
        Chip chip =
                others.stream().filter(c -> c.id().equals(chipId)).findFirst().orElseThrow();
        others.remove(chip);
        Knowledge rest = knowledge.near(shelf.withChips(others));
        double misfit = misfit(rest, chip, chip.parts());
        if (misfit < CONTRADICTS) {
            return Optional.empty();
        }
        String suspect = "";
        double bestFactor = 1;
        double least = misfit;
        for (String id : chip.parts().grams().keySet()) {
            if (shelf.tint(id).isEmpty()) {
                continue;
            }
            for (double factor : FACTORS) {
                double now = misfit(rest, chip, scaled(chip.parts(), id, factor));
                if (now < least) {
                    least = now;
                    bestFactor = factor;
                    suspect = id;
                }
            }
        }
        String tint = suspect;
        int count = (int) others.stream()
                .filter(c -> !tint.isEmpty() && c.parts().grams(tint) > 0)
                .count();
        return Optional.of(new Doubt(
                chipId, suspect, bestFactor, Math.sqrt(misfit), count, words(chipId, suspect, bestFactor, count)));
    }

    private static Parts scaled(Parts parts, String id, double factor) {
        Map<String, Double> grams = new LinkedHashMap<>(parts.grams());
        grams.computeIfPresent(id, (key, mass) -> mass * factor);
        return Parts.of(grams);
    }

    /** Mean squared misfit of a chip against what the rest foretells, how sure the rest is counted in. */
    private static double misfit(Knowledge rest, Chip chip, Parts parts) {
        double worst = 0;
        for (Reading reading : chip.readings()) {
            Viewing viewing = reading.judgedUnder();
            Lab read = reading.colour(viewing).orElseThrow();
            Prediction foretold = rest.predict(parts, viewing, reading.geometry());
            double[][] covariance = foretold.covariance()
                    .plus(reading.doubt(viewing))
                    .plus(Covariance.same(reading.film() == FilmState.WET ? WET : 0))
                    .toArray();
            for (int i = 0; i < 3; i++) {
                covariance[i][i] += 0.25 * 0.25;
            }
            double[] miss = {
                read.lightness() - foretold.lab().lightness(),
                read.a() - foretold.lab().a(),
                read.b() - foretold.lab().b()
            };
            Factor.of(covariance).forward(miss);
            worst = Math.max(worst, (miss[0] * miss[0] + miss[1] * miss[1] + miss[2] * miss[2]) / 3);
        }
        return worst;
    }

    private String words(String chipId, String tint, double factor, int others) {
        if (tint.isEmpty()) {
            return "Chip " + chipId + " does not fit the others, and no error of one tint explains it. "
                    + "Was it read on a clean, flat spot?";
        }
        String name = knowledge.shelf().nameOf(tint);
        double times = factor < 1 ? 1 / factor : factor;
        String amount = times >= 1.95
                ? String.format(Locale.ROOT, "%.0f times ", times)
                : String.format(Locale.ROOT, "%.1f times ", times);
        String side = factor < 1 ? "weaker" : "stronger";
        String rest = others == 0
                ? "than tints of its kind are"
                : others == 1 ? "than the other chip does" : "than the other " + others + " do";
        return "Chip " + chipId + " says " + name + " is " + amount + side + " " + rest + ". Was it weighed right?";
    }
}
