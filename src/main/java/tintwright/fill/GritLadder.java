package tintwright.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Sandpaper from coarse to fine and polish at the end. The ladder is common practice, no source.
 *
 * <p>What it takes off the gel coat around a repair: each grit must cut down to the bottom of the scratches before it
 * and then leaves its own, so the scratch depths add up. A scratch is taken as a quarter to a half as deep as the
 * abrasive grain is wide: our assumption, no source. Grain sizes are those of the FEPA P grades (ISO 6344), from
 * memory.
 *
 * @param steps       in order
 * @param takesLeastMm gel coat taken off, at least, mm
 * @param takesMostMm  gel coat taken off, at most, mm, when nobody lingers
 */
public record GritLadder(List<Step> steps, double takesLeastMm, double takesMostMm) {
    /** What the surface looks like before the first grit. */
    public enum Surface {
        /** Fill stands proud and must come down. */
        PROUD("fill stands proud", 150),
        /** Fill is nearly level. */
        NEARLY_LEVEL("fill nearly level", 220),
        /** Sprayed, with orange peel. */
        SPRAYED("sprayed, orange peel", 400),
        /** Level, with fine scratches. */
        SCRATCHED("level, fine scratches", 600),
        /** Level and dull. */
        DULL("level and dull", 1000);

        private final String words;
        private final int from;

        Surface(String words, int from) {
            this.words = words;
            this.from = from;
        }

        /** @return the surface in words */
        public String words() {
            return words;
        }

        /** @throws IllegalArgumentException when no surface has this name; "nearly level" and NEARLY_LEVEL are one */
        public static Surface named(String name) {
            String plain = name.trim().replace('-', '_').replace(' ', '_');
            List<String> known = new ArrayList<>();
            for (Surface surface : values()) {
                if (surface.name().equalsIgnoreCase(plain)) {
                    return surface;
                }
                known.add(surface.name().toLowerCase(Locale.ROOT).replace('_', ' '));
            }
            throw new IllegalArgumentException(
                    "the surface must be one of " + String.join(", ", known) + ", was \"" + name + "\"");
        }
    }

    /**
     * One step.
     *
     * @param grit P grade, 0 for polish
     * @param wet  true when it is sanded wet
     */
    public record Step(int grit, boolean wet) {
        /** @return "P400 wet", "P150 dry" or "compound and polish" */
        public String words() {
            return grit == 0 ? "compound and polish" : "P" + grit + (wet ? " wet" : " dry");
        }
    }

    private static final int[] GRITS = {150, 220, 400, 600, 800, 1000};
    /** Median grain of each grit, mm. */
    private static final double[] GRAIN_MM = {0.100, 0.068, 0.035, 0.0258, 0.0218, 0.0183};

    private static final int WET_FROM = 400;

    public GritLadder {
        steps = List.copyOf(steps);
    }

    /** @return the finest grit before the polish */
    int finest() {
        return steps.stream().mapToInt(Step::grit).max().orElseThrow();
    }

    /** @return the steps in one line: "P150, P220 dry; P400 wet; compound and polish" */
    public String words() {
        String dry = String.join(
                ", ",
                steps.stream()
                        .filter(step -> step.grit() > 0 && !step.wet())
                        .map(step -> "P" + step.grit())
                        .toList());
        String wet = String.join(
                ", ",
                steps.stream().filter(Step::wet).map(step -> "P" + step.grit()).toList());
        return (dry.isEmpty() ? "" : dry + " dry; ") + wet + " wet; compound and polish";
    }

    /** @return the ladder that starts where this surface needs it */
    public static GritLadder from(Surface surface) {
        List<Step> steps = new ArrayList<>();
        double grains = 0;
        for (int i = 0; i < GRITS.length; i++) {
            if (GRITS[i] >= surface.from) {
                steps.add(new Step(GRITS[i], GRITS[i] >= WET_FROM));
                grains += GRAIN_MM[i];
            }
        }
        steps.add(new Step(0, false));
        return new GritLadder(steps, grains / 4, grains / 2);
    }
}
