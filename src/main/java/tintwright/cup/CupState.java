package tintwright.cup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tintwright.reading.EyeVerdict;
import tintwright.shelf.Parts;

/**
 * What is in a cup, worked out from everything that was really done to it.
 *
 * @param grams   grams by part, in the order they first went in; empty for an empty cup
 * @param off     standard deviation of each of these masses in grams: errors of scale, letdown and drops
 * @param unread  the same, of what went in since the last reading that counts
 * @param seen    true when nothing went in since a dab told something to the eye, which judges no single weighing
 * @param reserve grams of white held back
 * @param base    id of the white
 * @param samples chips read from the cup, first to last
 * @param looks   dabs of the cup that were held against the hull, first to last
 * @param aside   what was poured off, first to last
 */
public record CupState(
        Map<String, Double> grams,
        Map<String, Double> off,
        Map<String, Double> unread,
        boolean seen,
        double reserve,
        String base,
        List<Sample> samples,
        List<Look> looks,
        List<Aside> aside) {
    /**
     * A chip read from the cup.
     *
     * @param entry id of its entry
     * @param read  what was read
     * @param parts what was in the cup then; empty when nothing known was in it
     * @param off   standard deviation of those masses, grams
     */
    public record Sample(String entry, Deed.Read read, Optional<Parts> parts, Map<String, Double> off) {}

    /**
     * A dab that was held against the hull.
     *
     * @param entry   id of its entry
     * @param verdict what was seen
     * @param dab     what it was made of
     * @param farther what lay in a row with it and looked farther off
     */
    public record Look(String entry, EyeVerdict verdict, Dab dab, List<Dab> farther) {
        public Look {
            farther = List.copyOf(farther);
        }

        /** @return grams by part of the dab, or of the cup it was taken from */
        public Parts parts() {
            return dab.parts();
        }
    }

    /**
     * What a dab is made of.
     *
     * @param parts what was in the cup then, or in the small pot of a trial dab
     * @param off   standard deviation of those masses, grams
     */
    public record Dab(Parts parts, Map<String, Double> off) {}

    /**
     * What was poured off.
     *
     * @param name  what is written on it
     * @param parts grams by part
     */
    public record Aside(String name, Parts parts) {}

    public CupState {
        grams = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(grams));
        off = Map.copyOf(off);
        unread = Map.copyOf(unread);
        samples = List.copyOf(samples);
        looks = List.copyOf(looks);
        aside = List.copyOf(aside);
    }

    static CupState of(Cup cup) {
        Fold fold = new Fold(cup.base());
        cup.standing().forEach(fold::take);
        return fold.state();
    }

    /** @return grams of everything in the cup */
    public double mass() {
        return grams.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** @return grams of white in the cup */
    public double white() {
        return grams.getOrDefault(base, 0.0);
    }

    /** @return what is in it; empty for an empty cup */
    public Optional<Parts> parts() {
        return mass() > 0 ? Optional.of(Parts.of(grams)) : Optional.empty();
    }

    /** @return the last reading that counts */
    public Optional<Sample> lastSample() {
        return samples.stream()
                .filter(s -> s.read().counts() && s.parts().isPresent())
                .reduce((a, b) -> b);
    }

    /** @return true when what went in last was neither read nor seen */
    public boolean unjudged() {
        return !unread.isEmpty() && !seen;
    }

    /** @return true once a chip that counts was read, or a dab told something to the eye */
    public boolean judged() {
        return lastSample().isPresent()
                || looks.stream().anyMatch(look -> look.verdict().tells());
    }

    /** @return how many of the last looks that told something were at the cup as it is */
    public int looksAtThis() {
        int count = 0;
        for (int i = looks.size() - 1; i >= 0 && looks.get(i).parts().grams().equals(grams); i--) {
            count += looks.get(i).verdict().tells() ? 1 : 0;
        }
        return count;
    }

    /** @return how many photos show the cup as it is beside the hull */
    public long photosOfThis() {
        return samples.stream()
                .filter(sample -> sample.read().counts()
                        && sample.read().hull().isPresent()
                        && !sample.read().hullByMeter())
                .filter(sample -> sample.parts().equals(parts()))
                .count();
    }

    /** @return true once that was so of more than the white alone */
    public boolean tintWasJudged() {
        Stream<Parts> read = samples.stream().filter(s -> s.read().counts()).flatMap(s -> s.parts().stream());
        Stream<Parts> seen =
                looks.stream().filter(look -> look.verdict().tells()).map(Look::parts);
        return Stream.concat(read, seen).anyMatch(parts -> parts.grams(base) < parts.total());
    }

    /** Goes through the deeds and keeps the sums; variances while it runs. */
    private static final class Fold {
        private final String base;
        private final Map<String, Double> grams = new LinkedHashMap<>();
        private final Map<String, Double> variance = new LinkedHashMap<>();
        private final Map<String, Double> unread = new LinkedHashMap<>();
        private final List<Sample> samples = new ArrayList<>();
        private final List<Look> looks = new ArrayList<>();
        private final List<Aside> aside = new ArrayList<>();
        private double reserve;
        private boolean dabSeen;

        Fold(String base) {
            this.base = base;
        }

        /** Less than half a step of the scale is what its rounding leaves: nothing that could be weighed. */
        private double left(double taken, double step) {
            double left = reserve - taken;
            return left < step / 2 ? 0 : left;
        }

        void take(CupEntry entry) {
            Deed deed = entry.deed();
            if (deed instanceof Deed.Weighed weighed) {
                put(weighed.part(), weighed.grams(), weighed.step());
                if (weighed.part().equals(base)) {
                    reserve = left(weighed.grams(), weighed.step());
                }
            } else if (deed instanceof Deed.LetDown down) {
                double tint = down.grams() / down.oneIn();
                put(down.part(), tint, Math.hypot(down.step() / down.oneIn(), Deed.LetDown.OFF * tint));
                put(base, down.grams() - tint, down.step());
                reserve = left(down.grams() - tint, down.step());
            } else if (deed instanceof Deed.Dropped drops) {
                put(
                        drops.part(),
                        drops.count() * drops.dropGrams(),
                        drops.dropGrams() * Deed.Dropped.SPREAD * Math.sqrt(drops.count()));
            } else if (deed instanceof Deed.Held held) {
                reserve = held.grams();
            } else if (deed instanceof Deed.Found found) {
                found.parts().grams().forEach((id, mass) -> put(id, mass, mass * found.off()));
            } else if (deed instanceof Deed.SetAside away) {
                pour(away);
            } else if (deed instanceof Deed.Read read) {
                samples.add(new Sample(
                        entry.id(),
                        read,
                        grams.isEmpty() ? Optional.empty() : Optional.of(Parts.of(grams)),
                        roots(variance)));
                if (read.counts()) {
                    unread.clear();
                }
            } else if (deed instanceof Deed.Seen seen && !grams.isEmpty()) {
                look(entry, seen);
            }
        }

        private void look(CupEntry entry, Deed.Seen seen) {
            List<Dab> dabs = new ArrayList<>();
            for (Deed.Trial trial : seen.trials()) {
                dabs.add(pot(entry, trial).dab());
            }
            Dab nearest = seen.trial().isPresent() ? dabs.remove(0) : dab();
            looks.add(new Look(entry.id(), seen.verdict(), nearest, dabs));
            dabSeen |= seen.verdict().tells();
        }

        private Dab dab() {
            return new Dab(Parts.of(grams), roots(variance));
        }

        /** The small pot of a trial dab, taken from the cup. */
        private Fold pot(CupEntry entry, Deed.Trial trial) {
            double share = Math.min(1, trial.grams() / mass());
            Fold pot = new Fold(base);
            for (Map.Entry<String, Double> part : grams.entrySet()) {
                pot.put(
                        part.getKey(),
                        share * part.getValue(),
                        share * Math.sqrt(variance.getOrDefault(part.getKey(), 0.0)));
            }
            for (Deed deed : trial.doses()) {
                pot.take(new CupEntry(entry.id(), entry.at(), deed));
            }
            shrink(share);
            return pot;
        }

        private double mass() {
            return grams.values().stream().mapToDouble(Double::doubleValue).sum();
        }

        /** So large a share is gone; all of it is an empty cup. */
        private void shrink(double share) {
            if (share == 1) {
                grams.clear();
                variance.clear();
                unread.clear();
                return;
            }
            grams.replaceAll((id, m) -> m * (1 - share));
            variance.replaceAll((id, v) -> v * (1 - share) * (1 - share));
            unread.replaceAll((id, v) -> v * (1 - share) * (1 - share));
        }

        private void put(String part, double mass, double deviation) {
            grams.merge(part, mass, Double::sum);
            variance.merge(part, deviation * deviation, Double::sum);
            unread.merge(part, deviation * deviation, Double::sum);
            dabSeen = false;
        }

        private void pour(Deed.SetAside away) {
            double mass = mass();
            // Everything poured off is an empty cup; more than there is cannot be, and counts as everything.
            double share = mass > 0 ? Math.min(1, away.grams() / mass) : 0;
            if (share > 0) {
                aside.add(new Aside(away.name(), Parts.of(grams).times(share)));
            }
            shrink(share);
        }

        private static Map<String, Double> roots(Map<String, Double> variance) {
            Map<String, Double> out = new LinkedHashMap<>();
            variance.forEach((id, v) -> out.put(id, Math.sqrt(v)));
            return out;
        }

        CupState state() {
            return new CupState(grams, roots(variance), roots(unread), dabSeen, reserve, base, samples, looks, aside);
        }
    }
}
