package tintwright.fill;

import static tintwright.fill.Skin.Kind.BARE;
import static tintwright.fill.Skin.Kind.CURED;
import static tintwright.fill.Skin.Kind.FILMED;
import static tintwright.fill.Skin.Kind.PRIMED;
import static tintwright.fill.Skin.Kind.SANDED;
import static tintwright.fill.Skin.Kind.TACKY;
import static tintwright.fill.Skin.Kind.WAXED;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is done to a repair: the surface it needs, the one it leaves, why, and who says so. This is the one table of the
 * order of work; a {@link Day} cannot hold a deed that its surface forbids.
 */
public enum Deed {
    STAIN_OUT(
            "Draw the stains out of the hull around with oxalic acid gel, rinse, let it dry",
            "a stained hull is matched too dark",
            EnumSet.of(BARE),
            BARE,
            Deed.PRACTICE),
    WASH(
            "Wash with soap and water, then wipe with wax remover, one way, clean rag",
            "sanding drives wax and silicone in",
            EnumSet.of(BARE),
            BARE,
            Deed.PRACTICE),
    OPEN(
            "Clean out, drill or burr until no crack shows",
            "a crack left below comes through again",
            EnumSet.of(BARE),
            BARE,
            Deed.PRACTICE),
    FLARE(
            "Flare every edge to a shallow slope",
            "a sharp edge chips and shows as a ring",
            EnumSet.of(BARE),
            BARE,
            Deed.PRACTICE),
    LAMINATE(
            "Have the laminate mended with glass and resin to below the colour",
            "gel coat carries nothing; cut glass is work for a trained person",
            EnumSet.of(BARE),
            BARE,
            Deed.PRACTICE),
    PUTTY(
            "Putty up to below the colour, let it set",
            "thick gel coat is brittle and cracks",
            EnumSet.of(BARE),
            BARE,
            Deed.PRACTICE),
    PLUG(
            "Plug the bottoms with epoxy putty, let them set hard, wash the plugs with water",
            "a fill sinks into an open hole; gel coat holds on epoxy only when it is hard through, washed and sanded",
            EnumSet.of(BARE),
            BARE,
            Deed.PRACTICE),
    PRIME(
            "Sand where the colour goes, P80 to P120, dust off, wipe, let it dry",
            "gel coat holds on by scratches; wax of a cured coat must be off",
            EnumSet.of(BARE, CURED, SANDED),
            PRIMED,
            "fibreglass suppliers' guides, from memory"),
    TAPE(
            "Tape a frame of straight cuts round each",
            "level on the tape, and the old gel coat around is spared",
            EnumSet.of(PRIMED),
            PRIMED,
            Deed.PRACTICE),
    CHIP(
            "Dab a chip of the mix with its paste and give it its own line on the shelf",
            "paste changes the colour",
            EnumSet.allOf(Skin.Kind.class),
            null,
            Deed.PRACTICE),
    COAT(
            "press in, dab the air out, level on the tape",
            "tacky it takes the next coat as it is",
            EnumSet.of(PRIMED, TACKY),
            TACKY,
            "fibreglass suppliers' guides, from memory"),
    LAST_COAT(
            "press in, dab the air out, level on the tape, leave it uncovered",
            "its wax keeps the air off; nothing holds on it until it is sanded",
            EnumSet.of(PRIMED, TACKY),
            WAXED,
            "gel coat manufacturer's application page; chemical distributor's page"),
    TAPE_OFF(
            "Tape off, pulled back over itself",
            "cured tape tears the edge",
            EnumSet.of(TACKY, WAXED),
            null,
            Deed.PRACTICE),
    WIPE_EDGE(
            "Wipe the edge with a barely damp rag",
            "what hardens there has to be sanded off the old gel coat",
            EnumSet.of(TACKY, WAXED),
            null,
            Deed.PRACTICE),
    PRESS_PATTERN(
            "Press the pattern: a released mould of it, or film over a stipple",
            "a smooth spot in non-skid is slippery and shows",
            EnumSet.of(TACKY, WAXED),
            FILMED,
            Deed.PRACTICE),
    FILM_OVER(
            "Lay film over without a bubble, or spray PVA",
            "air keeps gel coat sticky for good",
            EnumSet.of(TACKY),
            FILMED,
            Deed.PRACTICE),
    CURE(
            "Leave it until a thumbnail leaves no mark",
            "soft gel coat clogs the paper and sinks later",
            EnumSet.of(WAXED, FILMED),
            CURED,
            Deed.PRACTICE),
    SAND("Sand", "each grit until the scratches before it are gone", EnumSet.of(CURED, SANDED), SANDED, Deed.PRACTICE),
    POLISH("Compound and polish", "gloss comes from the last scratch", EnumSet.of(SANDED), SANDED, Deed.PRACTICE),
    CLEAR_UP(
            "Write down gel and tape-off time and how it came out; let leftovers cure in a thin layer outdoors",
            "your own times teach the next plan",
            EnumSet.allOf(Skin.Kind.class),
            null,
            Deed.PRACTICE);

    private static final String PRACTICE = "common practice, no source";
    /** Compound works on scratches of this grit and finer; common practice, no source. */
    private static final int POLISH_FROM = 1000;

    private final String words;
    private final String why;
    private final Set<Skin.Kind> needs;
    private final Skin.Kind leaves;
    private final String source;

    Deed(String words, String why, Set<Skin.Kind> needs, Skin.Kind leaves, String source) {
        this.words = words;
        this.why = why;
        this.needs = needs;
        this.leaves = leaves;
        this.source = source;
    }

    /** @return what to do, in plain words */
    public String words() {
        return words;
    }

    /** @return why, in a few words */
    public String why() {
        return why;
    }

    /** @return who says so */
    public String source() {
        return source;
    }

    /** @return the surface after it; empty when this surface forbids it */
    Optional<Skin> on(Skin skin, int grit) {
        boolean allowed = needs.contains(skin.kind())
                && !(this == SAND && grit <= skin.grit())
                && !(this == POLISH && skin.grit() < POLISH_FROM);
        if (!allowed) {
            return Optional.empty();
        }
        if (leaves == null || this == POLISH) {
            return Optional.of(skin);
        }
        return Optional.of(new Skin(leaves, leaves == SANDED ? grit : 0));
    }

    String needsWords() {
        return needs.stream().map(kind -> new Skin(kind, POLISH_FROM).words()).collect(Collectors.joining(" or "));
    }
}
