package tintwright.fill;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tintwright.fill.repair.Sizes;

/**
 * The steps of the job in order, each with the time when it may begin. There is no day with a step that the surface of
 * one of its repairs forbids.
 *
 * @param steps in order
 */
public record Day(List<Step> steps) {
    /**
     * One step, to be ticked off.
     *
     * @param deed        what is done
     * @param on          names of the lines of repairs it is done to; empty for what concerns none
     * @param stage       the coat it belongs to, for a batch; batches of one coat lie side by side, not on each other
     * @param batch       number of the batch that is used; 0 for none
     * @param grit        P grade it ends with, for sanding; 0 for none
     * @param sitting     from 0; a wait of many hours begins the next
     * @param fromMinutes earliest begin, minutes after the first step of this sitting
     * @param toMinutes   latest begin, minutes after the first step of this sitting
     */
    public record Step(
            Deed deed,
            List<String> on,
            Optional<Stage> stage,
            int batch,
            int grit,
            int sitting,
            double fromMinutes,
            double toMinutes) {
        public Step {
            on = List.copyOf(on);
            if (!(fromMinutes >= 0 && fromMinutes <= toMinutes)) {
                throw new IllegalArgumentException("a step begins at 0 minutes or later and its latest begin is not "
                        + "before its earliest, was " + Sizes.plain(fromMinutes) + " to " + Sizes.plain(toMinutes));
            }
        }

        /** @return when it begins: "now", "+45 to 70 min"; "later" begins a later sitting, which counts anew */
        public String when() {
            if (toMinutes < 2.5) {
                return sitting == 0 ? "now" : "later";
            }
            boolean hours = fromMinutes >= 120;
            int unit = hours ? 60 : 5;
            long from = (long) Math.floor(fromMinutes / unit) * (hours ? 1 : unit);
            long to = (long) Math.ceil(toMinutes / unit) * (hours ? 1 : unit);
            return "+" + (from == 0 || from == to ? "" + to : from + " to " + to) + (hours ? " h" : " min");
        }
    }

    public Day {
        steps = List.copyOf(steps);
        Map<String, Skin> now = new HashMap<>();
        Map<String, Skin> beforeCoat = new HashMap<>();
        Map<String, Stage> coats = new HashMap<>();
        for (Step step : steps) {
            for (String line : step.on()) {
                Skin skin = now.getOrDefault(line, Skin.BARE);
                Stage coat = step.stage().orElse(null);
                // The next batch of the coat that is going on lies beside the last one, not on it.
                if (coat != null && coat.equals(coats.get(line))) {
                    skin = beforeCoat.get(line);
                }
                beforeCoat.put(line, skin);
                coats.put(line, coat);
                Skin found = skin;
                now.put(
                        line,
                        step.deed()
                                .on(skin, step.grit())
                                .orElseThrow(() -> new IllegalArgumentException(
                                        "\"" + step.deed().words() + "\" needs a surface that is "
                                                + step.deed().needsWords() + ", " + line + " is " + found.words())));
            }
        }
    }
}
