package tintwright.fill.catalyst;

/** What a percentage of catalyst is a percentage of. */
public enum Basis {
    /** Grams of catalyst per hundred grams of gel coat and paste. */
    MASS("by mass"),
    /** Millilitres of catalyst per hundred millilitres of gel coat and paste. */
    VOLUME("by volume");

    private final String words;

    Basis(String words) {
        this.words = words;
    }

    /** @return "by mass" or "by volume" */
    public String words() {
        return words;
    }

    /** @throws IllegalArgumentException for anything but mass and volume */
    public static Basis named(String name) {
        for (Basis basis : values()) {
            if (basis.name().equalsIgnoreCase(name.trim()) || basis.words.equalsIgnoreCase(name.trim())) {
                return basis;
            }
        }
        throw new IllegalArgumentException("a catalyst percentage must be by mass or by volume, was \"" + name + "\"");
    }
}
