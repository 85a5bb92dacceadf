package tintwright.fill.repair;

/** How a surface lies, which decides how stiff the fill must be. The ratios are common practice, no source. */
public enum Lie {
    /** Flat or nearly, facing up: 2 to 1, runs level. */
    FACING_UP("facing up", new Mix(2, 1)),
    /** Upright: 1 to 1, stays where it is put. */
    VERTICAL("vertical", new Mix(1, 1)),
    /** Facing down: 1 to 1. */
    OVERHEAD("overhead", new Mix(1, 1)),
    /** Facing down and deep: 4 to 5, a little stiffer still. */
    DEEP_OVERHEAD("deep overhead", new Mix(4, 5));

    private final String words;
    private final Mix mix;

    Lie(String words, Mix mix) {
        this.words = words;
        this.mix = mix;
    }

    /** @return the lie as a person says it */
    public String words() {
        return words;
    }

    /** @return what to fill a surface that lies like this with */
    public Mix mix() {
        return mix;
    }

    /** @throws IllegalArgumentException when no lie has this name; "facing up", "facing-up" and "FACING_UP" are one */
    public static Lie named(String name) {
        String plain = name.trim().replace('_', ' ').replace('-', ' ');
        for (Lie lie : values()) {
            if (lie.words.equalsIgnoreCase(plain)) {
                return lie;
            }
        }
        throw new IllegalArgumentException("how the surface lies must be facing up, vertical, overhead or deep overhead"
                + ", was \"" + name + "\"");
    }
}
