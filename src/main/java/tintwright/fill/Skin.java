package tintwright.fill;

/**
 * What the surface of a repair is like, which decides what may be done to it next.
 *
 * @param kind what it is like
 * @param grit P grade it was sanded to; 0 for all but {@link Kind#SANDED}
 */
public record Skin(Kind kind, int grit) {
    /** What a surface is like. */
    public enum Kind {
        /** As it was found, opened or plugged: nothing holds on it yet. */
        BARE("bare"),
        /** Sanded, dusted, wiped and dry: gel coat holds on it. */
        PRIMED("primed by sanding"),
        /** Gelled, its top kept sticky by the air: the next coat grows onto it. */
        TACKY("tacky"),
        /** Gelled under its own wax: nothing holds on it until it is sanded. */
        WAXED("waxed"),
        /** Gelled under film, PVA or a pressed pattern. */
        FILMED("filmed"),
        /** Hard through, wax or film rests still on it. */
        CURED("cured"),
        /** Sanded for gloss. */
        SANDED("sanded");

        private final String words;

        Kind(String words) {
            this.words = words;
        }
    }

    /** What everything begins as. */
    public static final Skin BARE = new Skin(Kind.BARE, 0);

    /** @return "waxed", "sanded to P400" */
    public String words() {
        return kind == Kind.SANDED ? "sanded to P" + grit : kind.words;
    }
}
