package tintwright.shelf;

import java.util.Locale;

/** The pigment behind a tint: decides what is expected of it before any chip. */
public enum PigmentFamily {
    CARBON_BLACK("carbon black"),
    RED_IRON_OXIDE("red iron oxide"),
    BROWN_OXIDE("brown oxide or umber"),
    YELLOW_IRON_OXIDE("yellow iron oxide"),
    ORGANIC_YELLOW("organic yellow"),
    ORGANIC_RED("organic red"),
    PHTHALO_BLUE("phthalocyanine blue"),
    PHTHALO_GREEN("phthalocyanine green"),
    ULTRAMARINE("ultramarine"),
    ORANGE("orange"),
    VIOLET("violet"),
    UNKNOWN("unknown");

    private final String words;

    PigmentFamily(String words) {
        this.words = words;
    }

    /** @return the family as a person says it */
    public String words() {
        return words;
    }

    /** @return the name in files: lower case, words joined by hyphens */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** @throws IllegalArgumentException when no family has this code */
    public static PigmentFamily ofCode(String code) {
        StringBuilder known = new StringBuilder();
        for (PigmentFamily family : values()) {
            if (family.code().equals(code.trim().toLowerCase(Locale.ROOT))) {
                return family;
            }
            known.append(known.length() == 0 ? "" : ", ").append(family.code());
        }
        throw new IllegalArgumentException("pigment family must be one of " + known + ", was \"" + code + "\"");
    }
}
