package tintwright.shelf.knowledge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.shelf.Chip;
import tintwright.shelf.Parts;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.Tint;

/**
 * What is learned from: a shelf with its chips, and what was read beside them, of a cup for instance.
 *
 * @param extra         chips that do not stand on the shelf
 * @param weighedWithin by chip id, then by part: standard deviation of its weighing in grams, where it is not the usual
 * @param sure          ids of chips whose readings count as they stand
 */
record Evidence(Shelf shelf, List<Chip> extra, Map<String, Map<String, Double>> weighedWithin, Set<String> sure) {
    /** Shares this near are of one mix; small beside all that it is held against, a judgement of ours. */
    private static final double SAME_SHARE = 1e-9;

    /** Chance that a tub holds another pigment than its family says; common practice, no source. */
    private static final double ANOTHER_PIGMENT = 0.1;
    /**
     * Squared deviations of a tint from its family, all directions together, above which it is asked whether it is
     * that family at all: below it no looser one can explain the chips so much better.
     */
    private static final double FAR_OFF_ITS_FAMILY = 24;

    Evidence {
        extra = List.copyOf(extra);
        weighedWithin = Map.copyOf(weighedWithin);
        sure = Set.copyOf(sure);
    }

    /** One estimate, with some tints taken for any pigment. */
    record Fit(Set<String> loose, Unknowns unknowns, List<Observation> observations, Learning learning) {
        /** Tints that their family explains badly, or that stand in a chip which counts little, the worst first. */
        List<String> suspects(Shelf shelf) {
            Map<String, Double> found = new LinkedHashMap<>();
            for (Tint tint : shelf.tints()) {
                int part = unknowns.indexOf(tint.id());
                double far = 0;
                for (int i = unknowns.start(part); i < unknowns.end(part); i++) {
                    far += learning.best()[i] * learning.best()[i];
                }
                boolean doubted = false;
                for (int o = 0; o < observations.size(); o++) {
                    doubted |= learning.weight(o) < Learning.DOUBTED
                            && observations.get(o).holds(part);
                }
                if ((doubted || far > FAR_OFF_ITS_FAMILY) && tint.family() != PigmentFamily.UNKNOWN) {
                    found.put(tint.id(), -far);
                }
            }
            return found.entrySet().stream()
                    .sorted(Map.Entry.comparingByValue())
                    .map(Map.Entry::getKey)
                    .toList();
        }
    }

    /** @return the same with more chips, some of them weighed otherwise, some of them sure */
    Evidence with(List<Chip> more, Map<String, Map<String, Double>> within, Set<String> taken) {
        List<Chip> all = new ArrayList<>(extra);
        all.addAll(more);
        Set<String> known = new HashSet<>(sure);
        known.addAll(taken);
        Map<String, Map<String, Double>> both = new LinkedHashMap<>(weighedWithin);
        both.putAll(within);
        return new Evidence(shelf, all, both, known);
    }

    /** @return all chips, in one order whatever order they were given in */
    private List<Chip> chips() {
        List<Chip> chips = new ArrayList<>(shelf.chips());
        chips.addAll(extra);
        chips.sort(Comparator.comparing(Chip::id));
        return chips;
    }

    /** @return the estimate, begun from nothing: tints their family explains too badly are let loose, one by one */
    Fit best() {
        Fit best = fit(Set.of(), null);
        for (String tint : best.suspects(shelf)) {
            Set<String> more = new TreeSet<>(best.loose());
            more.add(tint);
            Fit other = fit(more, best);
            if (other.learning().evidence() + Math.log(ANOTHER_PIGMENT)
                    <= best.learning().evidence() + Math.log(1 - ANOTHER_PIGMENT)) {
                break;
            }
            best = other;
        }
        return best;
    }

    /** @return the estimate, begun from that of nearly the same, with the same tints let loose */
    Fit from(Fit near) {
        return fit(near.loose(), near);
    }

    /**
     * @param from the unknowns to start from, as {@code near} numbers them
     * @return the estimate with one more error that is shared: of what dabs are held beside
     */
    Fit beside(SharedError error, Fit near, double[] from) {
        Map<String, SharedError> photos = photos();
        photos.merge(error.name(), error, SharedError::larger);
        Unknowns all = new Unknowns(shelf, photos.values(), near.loose(), true);
        List<Observation> seen = observations(all);
        return new Fit(near.loose(), all, seen, new Learning(all, seen).run(all.carried(near.unknowns(), from)));
    }

    /** @param near an estimate to start from, with other chips or other tints let loose; null for none */
    private Fit fit(Set<String> any, Fit near) {
        Unknowns all = new Unknowns(shelf, photos().values(), any, !extra.isEmpty());
        List<Observation> seen = observations(all);
        double[] start = near == null
                ? null
                : all.carried(near.unknowns(), near.learning().best());
        return new Fit(any, all, seen, new Learning(all, seen).run(start));
    }

    private Map<String, SharedError> photos() {
        Map<String, SharedError> named = new LinkedHashMap<>();
        for (Chip chip : chips()) {
            for (Reading reading : chip.readings()) {
                SharedError.of(reading).ifPresent(one -> named.merge(one.name(), one, SharedError::larger));
            }
        }
        return named;
    }

    private List<Observation> observations(Unknowns unknowns) {
        List<Observation> list = new ArrayList<>();
        for (Chip chip : chips()) {
            Map<Integer, Double> grams = grams(chip.parts(), unknowns);
            double[] off = new double[grams.size()];
            Map<String, Double> stated = weighedWithin.getOrDefault(chip.id(), Map.of());
            int place = 0;
            for (int part : grams.keySet()) {
                off[place++] = stated.getOrDefault(unknowns.ids().get(part), Knowledge.WEIGHING_GRAMS);
            }
            for (Reading reading : chip.readings()) {
                Observation one = new Observation(chip.id(), grams, off, reading, unknowns, extra.contains(chip));
                list.add(sure.contains(chip.id()) ? one.sure() : one);
            }
        }
        return list;
    }

    /** @return grams by the place of a part, of bases and tints alone: a leftover counts as what is in it */
    Map<Integer, Double> grams(Parts parts, Unknowns unknowns) {
        Map<Integer, Double> grams = new LinkedHashMap<>();
        spread(parts, 1, grams, unknowns);
        return grams;
    }

    private void spread(Parts parts, double factor, Map<Integer, Double> grams, Unknowns unknowns) {
        parts.grams().forEach((id, mass) -> {
            if (shelf.leftover(id).isPresent()) {
                Parts inside = shelf.leftover(id).get().parts();
                spread(inside, factor * mass / inside.total(), grams, unknowns);
            } else if (shelf.base(id).isPresent() || shelf.tint(id).isPresent()) {
                grams.merge(unknowns.indexOf(id), mass * factor, Double::sum);
            } else {
                throw new IllegalArgumentException("\"" + id + "\" is not a base, tint or leftover of this shelf");
            }
        });
    }

    /** @return true when some mix was read both wet and cured */
    boolean hasWetPair() {
        List<Chip> all = chips();
        return all.stream()
                .anyMatch(wet -> read(wet, FilmState.WET)
                        && all.stream()
                                .anyMatch(
                                        cured -> read(cured, FilmState.CURED) && sameMix(wet.parts(), cured.parts())));
    }

    private static boolean read(Chip chip, FilmState film) {
        return chip.readings().stream().anyMatch(reading -> reading.film() == film);
    }

    private static boolean sameMix(Parts one, Parts other) {
        return one.grams().keySet().equals(other.grams().keySet())
                && one.grams().keySet().stream().allMatch(id -> Math.abs(one.share(id) - other.share(id)) < SAME_SHARE);
    }
}
