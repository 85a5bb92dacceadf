package tintwright.reading;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;

/**
 * What a faded hull may look like, for somebody who has no reading of it at all: picked from drawn squares, it says
 * where to begin, and how little that says. Names, middles and widths are invented.
 */
public enum HullFamily {
    WHITE("white", 89, -1, 3),
    CREAM("cream", 85, 1, 13),
    STONE("stone", 78, 0, 8),
    PUTTY("putty", 69, 2, 11),
    GREY("grey", 67, -1, -1),
    DARK_GREY("dark grey", 48, -1, -2),
    PALE_BLUE("pale blue", 74, -5, -9),
    BLUE("blue", 50, -5, -18),
    PALE_GREEN("pale green", 75, -10, 4),
    GREEN("green", 52, -18, 5),
    YELLOW("yellow", 80, 4, 35),
    RED("red", 52, 30, 15),
    /** Like none of these, or nobody picked: the dabs do all of it. */
    ANY("any", 70, 0, 5);

    private final String words;
    private final double lightness;
    private final double a;
    private final double b;

    HullFamily(String words, double lightness, double a, double b) {
        this.words = words;
        this.lightness = lightness;
        this.a = a;
        this.b = b;
    }

    /** @return such as "pale blue" */
    public String words() {
        return words;
    }

    /** @return its middle, to be drawn */
    public Lab middle() {
        return new Lab(lightness, a, b, Viewing.D65_10);
    }

    /** @return this family as a reading of a hull: its middle, off by as much as hulls of one family differ */
    public ColourReading reading() {
        Covariance wide = this == ANY
                ? new Covariance(14 * 14, 0, 0, 8 * 8, 0, 12 * 12)
                : new Covariance(7 * 7, 0, 0, 4 * 4, 0, 6 * 6);
        return new ColourReading(middle(), wide, Geometry.SPECULAR_EXCLUDED, FilmState.CURED, Optional.empty());
    }

    /** @return the family that a reading is nothing but a pick of; empty for a reading */
    public static Optional<HullFamily> of(Reading reading) {
        return Arrays.stream(values())
                .filter(family -> family.reading().equals(reading))
                .findFirst();
    }

    /** @return a place that was only picked, not read */
    public PlaceReadings place(String boat, String place) {
        return new PlaceReadings(boat, place, List.of(reading()), "picked by eye, like " + words + "; not read");
    }
}
