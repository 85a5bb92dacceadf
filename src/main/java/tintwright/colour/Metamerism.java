package tintwright.colour;

/**
 * How far a pair that matches under one light comes apart under another.
 *
 * <p>Source: CIE 15:2018, the special metamerism index for a change in illuminant, here with CIEDE2000. A pair that
 * does not quite match under the first light is corrected first, so that the index holds only what the change
 * of light does.
 */
public final class Metamerism {
    /** What is done about a mismatch under the first light. */
    public enum Correction {
        /** X, Y, Z of the sample are scaled by the pair's ratio under the first light: the usual way. */
        MULTIPLICATIVE,
        /** X, Y, Z of the sample are moved by the pair's distance under the first light, in shares of the white. */
        ADDITIVE,
        /** Nothing: the mismatch stays in the index. */
        NONE
    }

    /**
     * The index and the pair it was taken from.
     *
     * @param index      CIEDE2000 under the second light, after the correction
     * @param underFirst CIEDE2000 under the first light, before any correction
     * @param standard   the standard under the second light
     * @param sample     the corrected sample under the second light
     */
    public record Shift(double index, double underFirst, Lab standard, Lab sample) {}

    private Metamerism() {}

    /** @return the index with the multiplicative correction, 0 or more; under 0.5 hardly anyone sees it */
    public static double index(Spectrum standard, Spectrum sample, Viewing first, Viewing second) {
        return shift(standard, sample, first, second, Correction.MULTIPLICATIVE).index();
    }

    /**
     * @param standard the target's reflectance
     * @param sample   the mix's reflectance
     * @param first    the light under which they were matched
     * @param second   the other light, with the same observer
     */
    public static Shift shift(
            Spectrum standard, Spectrum sample, Viewing first, Viewing second, Correction correction) {
        if (first.observer() != second.observer()) {
            throw new IllegalArgumentException(
                    "a change of light must keep the observer, was " + first + " and " + second);
        }
        Xyz standardFirst = Xyz.of(standard, first);
        Xyz sampleFirst = Xyz.of(sample, first);
        Lab standardSecond = Lab.of(Xyz.of(standard, second));
        Lab sampleSecond = Lab.of(corrected(Xyz.of(sample, second), standardFirst, sampleFirst, correction));
        return new Shift(
                Ciede2000.between(standardSecond, sampleSecond),
                Ciede2000.between(Lab.of(standardFirst), Lab.of(sampleFirst)),
                standardSecond,
                sampleSecond);
    }

    private static Xyz corrected(Xyz sample, Xyz standardFirst, Xyz sampleFirst, Correction correction) {
        Xyz from = standardFirst.viewing().white();
        Xyz to = sample.viewing().white();
        return switch (correction) {
            case NONE -> sample;
            case ADDITIVE ->
                new Xyz(
                        sample.x() + (standardFirst.x() - sampleFirst.x()) * to.x() / from.x(),
                        sample.y() + standardFirst.y() - sampleFirst.y(),
                        sample.z() + (standardFirst.z() - sampleFirst.z()) * to.z() / from.z(),
                        sample.viewing());
            case MULTIPLICATIVE -> {
                if (!(Math.min(sampleFirst.x(), Math.min(sampleFirst.y(), sampleFirst.z())) > 0)) {
                    throw new IllegalArgumentException("X, Y, Z of the sample must be above 0, were " + sampleFirst.x()
                            + ", " + sampleFirst.y() + ", " + sampleFirst.z());
                }
                yield new Xyz(
                        sample.x() * standardFirst.x() / sampleFirst.x(),
                        sample.y() * standardFirst.y() / sampleFirst.y(),
                        sample.z() * standardFirst.z() / sampleFirst.z(),
                        sample.viewing());
            }
        };
    }
}
