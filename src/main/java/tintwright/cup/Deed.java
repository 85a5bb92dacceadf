package tintwright.cup;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tintwright.reading.ColourReading;
import tintwright.reading.EyeVerdict;
import tintwright.reading.Reading;
import tintwright.shelf.Parts;

/** One thing that was done to a cup, or to what was written about it. */
public sealed interface Deed {
    /**
     * Something was weighed straight into the cup.
     *
     * @param part  id of a base, tint or leftover
     * @param grams what the scale showed, above 0
     * @param step  smallest step of that scale in grams, 0.0001 to 10
     */
    record Weighed(String part, double grams, double step) implements Deed {
        public Weighed {
            Checks.mass("weighing", grams);
            Checks.step(step);
        }
    }

    /**
     * A tint was weighed in as a letdown: one gram of tint in every {@code oneIn} grams, the rest the cup's base.
     *
     * @param part  id of the tint
     * @param oneIn 2 to 1000
     * @param grams of the letdown, tint and base together
     * @param step  smallest step of the scale in grams
     */
    record LetDown(String part, int oneIn, double grams, double step) implements Deed {
        /** How far the strength of a letdown may be off, as a share: its own two weighings; common practice, no source. */
        public static final double OFF = 0.02;

        public LetDown {
            Checks.mass("letdown", grams);
            Checks.step(step);
            if (oneIn < 2 || oneIn > 1000) {
                throw new IllegalArgumentException("a letdown is 1 in 2 to 1 in 1000, was 1 in " + oneIn);
            }
        }
    }

    /**
     * A tint was dropped in.
     *
     * @param part      id of the tint
     * @param count     drops, 1 to 1000
     * @param dropGrams mass of one drop, above 0, below 1 g
     */
    record Dropped(String part, int count, double dropGrams) implements Deed {
        /** How far one drop strays from the mean, as a share; common practice, no source. */
        public static final double SPREAD = 0.15;

        public Dropped {
            if (count < 1 || count > 1000) {
                throw new IllegalArgumentException("drops must be 1 to 1000, were " + count);
            }
            if (!(dropGrams > 0 && dropGrams < 1)) {
                throw new IllegalArgumentException("a drop must weigh above 0 and below 1 g, was " + dropGrams + " g");
            }
        }
    }

    /**
     * So much white is held back from now on.
     *
     * @param grams 0 or more
     */
    record Held(double grams) implements Deed {
        public Held {
            if (!(grams >= 0 && grams <= Checks.MOST)) {
                throw new IllegalArgumentException("the reserve must be 0 to 100000 g, was " + grams + " g");
            }
        }
    }

    /**
     * A chip taken from the cup was read.
     *
     * @param reading what was read
     * @param hull    the hull as it stands in the same photo, when it does: then the photo's own error cancels; or as
     *     the same meter read it once more
     * @param counts  false for a reading that cannot be this cup: it is kept, but nothing is learned from it
     */
    record Read(Reading reading, Optional<ColourReading> hull, boolean counts) implements Deed {
        public Read {
            if (hull.isPresent() && !(reading instanceof ColourReading)) {
                throw new IllegalArgumentException(
                        "only a photo shows chip and hull together: leave the hull out of" + " a spectrum's entry");
            }
        }

        /** @return true when a meter read the hull once more: that counts for the hull, not for the difference */
        boolean hullByMeter() {
            return counts && hull.isPresent() && hull.get().photo().isEmpty();
        }
    }

    /**
     * A dab was held against the hull and looked at.
     *
     * @param verdict what was seen
     * @param trial   what the dab had that the cup has not; empty for a dab of the cup itself
     * @param farther the trial dabs that lay in a row with it and looked farther off; mostly none
     */
    record Seen(EyeVerdict verdict, Optional<Trial> trial, List<Trial> farther) implements Deed {
        public Seen {
            farther = List.copyOf(farther);
        }

        /** A dab of the cup as it is. */
        public Seen(EyeVerdict verdict) {
            this(verdict, Optional.empty(), List.of());
        }

        /** @return all trial dabs that were taken from the cup for this look, the nearest first */
        public List<Trial> trials() {
            return Stream.concat(trial.stream(), farther.stream()).toList();
        }
    }

    /**
     * A few grams of the cup that alone got more tint: what is seen of them may be too dark and spoils nothing.
     *
     * @param grams taken from the cup, not given back
     * @param doses what these grams got, in order: {@link Weighed} or {@link LetDown}, one at least
     */
    record Trial(double grams, List<Deed> doses) {
        public Trial {
            Checks.mass("a trial dab", grams);
            doses = List.copyOf(doses);
            if (doses.isEmpty()
                    || !doses.stream().allMatch(deed -> deed instanceof Weighed || deed instanceof LetDown)) {
                throw new IllegalArgumentException("a trial dab gets at least one tint more than the cup, weighed"
                        + " straight or as a letdown: without one it is a dab of the cup");
            }
        }
    }

    /**
     * Part of the cup was poured off and kept.
     *
     * @param grams how much was poured off
     * @param name  what is written on it
     */
    record SetAside(double grams, String name) implements Deed {
        public SetAside {
            Checks.mass("what is set aside", grams);
            if (name == null || name.isBlank()) {
                throw new IllegalArgumentException("what is set aside needs a name to be found by");
            }
        }
    }

    /**
     * Contents nobody wrote down were worked out from a reading.
     *
     * @param parts grams by id
     * @param off   how far each mass may be off, as a share of it, 0 to 2
     */
    record Found(Parts parts, double off) implements Deed {
        public Found {
            if (!(off >= 0 && off <= 2)) {
                throw new IllegalArgumentException("how far the contents may be off must be 0 to 2, was " + off);
            }
        }
    }

    /** An earlier entry does not hold; taking back this one makes it hold again. */
    record Undone(String entry) implements Deed {}

    /**
     * An earlier entry was written down wrongly; this is what really happened then.
     *
     * @param entry id of the earlier entry
     * @param deed  what it should have said; not itself an undoing or a correction
     */
    record Corrected(String entry, Deed deed) implements Deed {
        public Corrected {
            if (deed instanceof Undone || deed instanceof Corrected) {
                throw new IllegalArgumentException("an entry is corrected to what was really done to the cup");
            }
        }
    }
}
