package tintwright.colour;

/**
 * What a colour is seen under: a light and an observer. Part of every colour.
 *
 * @param light    the illuminant
 * @param observer the standard observer
 */
public record Viewing(Illuminant light, Observer observer) {
    /** Daylight, large field: what a repair is judged under. */
    public static final Viewing D65_10 = new Viewing(Illuminant.D65, Observer.CIE_1964_10_DEGREE);
    /** Daylight of the graphic arts, small field: what many instruments and cards state. */
    public static final Viewing D50_2 = new Viewing(Illuminant.D50, Observer.CIE_1931_2_DEGREE);
    /** Overcast daylight, small field: what sRGB is defined for. */
    public static final Viewing D65_2 = new Viewing(Illuminant.D65, Observer.CIE_1931_2_DEGREE);
    /** The blue light of a north sky, large field: what some meters are set to. */
    public static final Viewing D75_10 = new Viewing(Illuminant.D75, Observer.CIE_1964_10_DEGREE);
    /** Lamp light, large field. */
    public static final Viewing A_10 = new Viewing(Illuminant.A, Observer.CIE_1964_10_DEGREE);
    /** Workshop fluorescent tube, large field. */
    public static final Viewing FL11_10 = new Viewing(Illuminant.FL11, Observer.CIE_1964_10_DEGREE);
    /** Workshop LED, large field. */
    public static final Viewing LED_B3_10 = new Viewing(Illuminant.LED_B3, Observer.CIE_1964_10_DEGREE);

    public Viewing {
        if (light == null || observer == null) {
            throw new IllegalArgumentException("a colour needs both a light and an observer");
        }
    }

    /** @return the viewing for a CIE illuminant name and 2 or 10 degrees */
    public static Viewing of(String illuminant, int degrees) {
        return new Viewing(Illuminant.named(illuminant), Observer.ofDegrees(degrees));
    }

    /** @return the perfect white under this light, Y = 100 (5 nm sums, 380 to 780 nm) */
    public Xyz white() {
        return TristimulusWeights.of(this, Grid.INSIDE).white();
    }

    /** @throws IllegalArgumentException when the other viewing differs: such colours cannot be compared */
    public void mustEqual(Viewing other) {
        if (!equals(other)) {
            throw new IllegalArgumentException(
                    "colours under different lights cannot be compared: " + this + " and " + other);
        }
    }

    @Override
    public String toString() {
        return light.name() + "/" + observer.degrees() + "\u00b0";
    }
}
