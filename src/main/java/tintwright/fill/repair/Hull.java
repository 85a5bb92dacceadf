package tintwright.fill.repair;

import java.util.OptionalDouble;

/**
 * What is known of the hull around the repairs.
 *
 * @param gelCoatMm   thickness of the old gel coat, mm, as the edge of a hole shows it; empty when not measured
 * @param thicknessMm thickness of the whole hull there, gel coat and laminate, mm; empty when not measured
 */
public record Hull(OptionalDouble gelCoatMm, OptionalDouble thicknessMm) {
    /** Nobody looked. */
    public static final Hull UNKNOWN = new Hull(OptionalDouble.empty(), OptionalDouble.empty());

    public Hull {
        gelCoatMm.ifPresent(mm -> Sizes.aboveZero("old gel coat", mm, 10, "mm"));
        thicknessMm.ifPresent(mm -> Sizes.aboveZero("thickness of the hull", mm, 200, "mm"));
        if (gelCoatMm.isPresent() && thicknessMm.isPresent() && gelCoatMm.getAsDouble() > thicknessMm.getAsDouble()) {
            throw new IllegalArgumentException("the old gel coat must be thinner than the hull of "
                    + Sizes.plain(thicknessMm.getAsDouble()) + " mm, was " + Sizes.plain(gelCoatMm.getAsDouble())
                    + " mm");
        }
    }

    /** @return the gel coat measured, else the one a guide calls usual, mm */
    double gelCoatOrUsualMm() {
        return gelCoatMm.orElse(Published.GUIDE_FILM_MM.low());
    }
}
