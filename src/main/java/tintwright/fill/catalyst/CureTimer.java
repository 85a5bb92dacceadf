package tintwright.fill.catalyst;

import java.util.List;

/**
 * A time that runs from "catalysed now". The engine has no clock: a face adds these minutes to the moment the catalyst
 * went in.
 *
 * @param cue         what it is time for
 * @param fromMinutes not before, minutes
 * @param toMinutes   expected by then, minutes
 * @param test        what to look for, which counts more than the clock
 */
public record CureTimer(String cue, double fromMinutes, double toMinutes, String test) {
    /** When the cup is gelling: its moment is the gel time. */
    public static final String GEL = "stop spreading";
    /** When the tape comes off. */
    public static final String TAPE_OFF = "tape off";

    public static final String SECOND_COAT = "second coat";
    public static final String SAND = "sand";

    /**
     * The times of a batch. The cup's warmth rules the first, the hull's the others. How long after the tape the second
     * coat goes on, and the hours to sanding, are common practice, no source; sanding moves with temperature by a factor
     * of 2 per 10 degrees.
     *
     * @param cup  how long the cup can be worked
     * @param hull how long it could be at the hull's temperature
     * @param tape when the tape comes off
     */
    public static List<CureTimer> of(WorkingTime cup, WorkingTime hull, WorkingTime tape, double hullCelsius) {
        double slower = Math.pow(2, (25 - hullCelsius) / 10);
        double sand = Math.max(3 * 60 * slower, tape.mostMinutes() + 3 * hull.mostMinutes());
        return List.of(
                new CureTimer(GEL, cup.leastMinutes(), cup.mostMinutes(), "the mix pulls strings or lumps: leave it"),
                new CureTimer(
                        TAPE_OFF,
                        tape.leastMinutes(),
                        tape.mostMinutes(),
                        "a jelly that does not wet the finger of a glove"),
                new CureTimer(
                        SECOND_COAT,
                        tape.leastMinutes() + hull.leastMinutes() / 2,
                        tape.mostMinutes() + 2.5 * hull.mostMinutes(),
                        "tacky, nothing comes off on the glove; a waxed coat is sanded first"),
                new CureTimer(SAND, sand, Math.max(24 * 60 * slower, 2 * sand), "a thumbnail leaves no mark"));
    }

    /** @return "20 to 68 min" or "3 to 24 h" */
    public String words() {
        return WorkingTime.minutes(fromMinutes, toMinutes);
    }
}
