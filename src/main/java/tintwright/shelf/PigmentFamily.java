package tintwright.shelf;

import java.util.Locale;

/** The pigment behind a tint: decides what is expected of it before any chip. */
public enum PigmentFamily {
    CARBON_BLACK("carbon black", "soot black"),
    RED_IRON_OXIDE("red iron oxide", "brick"),
    BROWN_OXIDE("brown oxide or umber", "rust brown"),
    YELLOW_IRON_OXIDE("yellow iron oxide", "ochre"),
    ORGANIC_YELLOW("organic yellow", "lemon"),
    ORGANIC_RED("organic red", "berry red"),
    PHTHALO_BLUE("phthalocyanine blue", "ink blue"),
    PHTHALO_GREEN("phthalocyanine green", "bottle green"),
    ULTRAMARINE("ultramarine", "ultramarine"),
    ORANGE("orange", "orange"),
    VIOLET("violet", "violet"),
    UNKNOWN("unknown", "I do not know");

    private final String words;
    private final String plain;

    PigmentFamily(String words, String plain) {
        this.words = words;
        this.plain = plain;
    }

    /** @return the family as a person says it */
    public String words() {
        return words;
    }

    /** @return what a tub of it looks like to somebody who does not know its pigment, such as "brick" */
    public String plain() {
        return plain;
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
