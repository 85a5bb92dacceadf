package tintwright.shelf.knowledge;

import java.util.List;
import java.util.Map;
import tintwright.reading.FilmState;
import tintwright.shelf.Parts;

/**
 * A mix that was held against something whose colour is not sure.
 *
 * @param parts what is in it
 * @param off   by part: standard deviation of its weighing in grams
 * @param film  whether it had cured
 */
public record Compared(Parts parts, Map<String, Double> off, FilmState film) {
    public Compared {
        off = Map.copyOf(off);
    }

    /** How likely it is to see what was seen. */
    public interface Likelihood {
        /**
         * @param lab  of each mix in turn: L*, a*, b* of it and of what the other's reading shows too high, together
         * @param more the caller's own unknowns, unit normals before anything was seen
         * @return natural logarithm of the likelihood, up to a constant
         */
        double ln(double[][] lab, double[] more);
    }

    /**
     * One equally likely version of all this.
     *
     * @param lab  as {@link Likelihood#ln} takes it
     * @param more the caller's own unknowns
     */
    public record Version(double[][] lab, double[] more) {}

    /**
     * What was learned.
     *
     * @param knowledge whose versions make what was seen likely
     * @param versions  of what was compared
     */
    public record Seen(Knowledge knowledge, List<Version> versions) {
        public Seen {
            versions = List.copyOf(versions);
        }
    }
}
