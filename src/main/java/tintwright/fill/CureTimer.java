package tintwright.fill;

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
    /**
     * The times of a batch. All multiples of the gel time and the hours to sanding are common practice, no source;
     * sanding moves with temperature by a factor of 2 per 10 degrees.
     */
    static List<CureTimer> of(WorkingTime time, double celsius) {
        double least = time.leastMinutes();
        double most = time.mostMinutes();
        double slower = Math.pow(2, (25 - celsius) / 10);
        double sand = Math.max(3 * 60 * slower, 4 * most);
        return List.of(
                new CureTimer("stop spreading", least, most, "the mix pulls strings or lumps: leave it"),
                new CureTimer("tape off", least, 1.5 * most, "a jelly that does not wet the finger of a glove"),
                new CureTimer(
                        "second coat",
                        2 * least,
                        4 * most,
                        "tacky, nothing comes off on the glove; a waxed coat is sanded first"),
                new CureTimer("sand", sand, Math.max(24 * 60 * slower, 2 * sand), "a thumbnail leaves no mark"));
    }

    /** @return "20 to 68 min" or "3 to 24 h" */
    public String words() {
        return WorkingTime.minutes(fromMinutes, toMinutes);
    }
}
