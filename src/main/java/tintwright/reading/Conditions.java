package tintwright.reading;

import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Viewing;

/**
 * What a person knows about a measurement and the instrument's file does not say. What the file does say comes
 * first.
 *
 * @param viewing  light and observer of L*, a*, b*; empty when only the file may say
 * @param geometry with or without gloss; empty when only the file may say
 * @param film     wet or cured
 * @param noise    standard deviation of one reflectance, 0 to 0.2
 * @param sigma    standard deviation of L*, a* and b* when there is no spectrum, 0 or more
 */
public record Conditions(
        Optional<Viewing> viewing, Optional<Geometry> geometry, FilmState film, double noise, double sigma) {
    /** A cured film and a usual instrument; light, observer and geometry must stand in the file. */
    public static final Conditions AS_IN_THE_FILE = new Conditions(
            Optional.empty(),
            Optional.empty(),
            FilmState.CURED,
            SpectralReading.USUAL_NOISE,
            ColourReading.USUAL_NOISE);

    public Conditions {
        if (!(noise >= 0 && noise <= 0.2)) {
            throw new IllegalArgumentException("noise of a reflectance must be 0 to 0.2, was " + noise);
        }
        if (!(sigma >= 0 && sigma <= 20)) {
            throw new IllegalArgumentException("noise of L*, a*, b* must be 0 to 20, was " + sigma);
        }
    }

    /** @return the same, with what a file says put first; whatever is empty there stays as it is */
    public Conditions butFirst(Optional<Viewing> statedViewing, Optional<Geometry> statedGeometry) {
        return new Conditions(statedViewing.or(() -> viewing), statedGeometry.or(() -> geometry), film, noise, sigma);
    }
}
