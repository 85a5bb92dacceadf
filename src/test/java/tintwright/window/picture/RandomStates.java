package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import tintwright.colour.JudgedLight;

/** Invented states of the pictures, the crowded and the awkward ones among them. */
final class RandomStates {
    private static final String[] TINTS = {
        "black",
        "lemon yellow",
        "red oxide",
        "umber",
        "phthalo blue",
        "green",
        "organic red",
        "warm ochre",
        "violet",
        "deep orange",
        "iron yellow",
        "soot black"
    };

    private RandomStates() {}

    private static double between(Random random, double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    private static boolean oneIn(Random random, int many) {
        return random.nextInt(many) == 0;
    }

    static DepthState depth(Random random) {
        double white = between(random, 90, 97);
        double hull = oneIn(random, 6) ? white - random.nextDouble() : between(random, 20, 92);
        double cup = switch (random.nextInt(4)) {
            case 0 -> hull + between(random, -0.5, 0.5);
            case 1 -> hull - between(random, 0, 15);
            default -> between(random, hull, white);
        };
        boolean whole = oneIn(random, 3);
        double from = whole ? white : cup;
        double to = whole ? cup : hull;
        int count = random.nextInt(8);
        List<DepthState.Step> steps = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double share = count == 1 ? 1 : oneIn(random, 3) ? 0.97 + 0.03 * i / count : (i + 1.0) / count;
            String form = oneIn(random, 3) ? ", 1 in 10" : "";
            steps.add(new DepthState.Step(
                    String.format("%.2f g %s%s", between(random, 0.01, 300), TINTS[random.nextInt(TINTS.length)], form),
                    from + share * (to - from)));
        }
        Optional<DepthState.Climb> climb = oneIn(random, 3)
                ? Optional.empty()
                : cup < hull - 0.3
                        ? Optional.of(new DepthState.Climb(cup, hull, "138 g white\nlifts it back"))
                        : Optional.of(new DepthState.Climb(cup, cup + 1, "4.25 g white\nlifts it by 1"));
        return new DepthState(
                white,
                hull,
                Samples.shade(hull, -3, 5),
                cup,
                Samples.shade(cup, -2, 4),
                oneIn(random, 2) ? "Cup" : "This recipe",
                oneIn(random, 4) ? 0 : between(random, 0.1, 6),
                from,
                steps,
                climb);
    }

    static RoseState rose(Random random) {
        double far = oneIn(random, 2) ? 6 : 40;
        RoseState.Point hull = new RoseState.Point(between(random, -far, far), between(random, -far, far));
        double apart = oneIn(random, 3) ? 0.3 : oneIn(random, 2) ? 3 : 30;
        RoseState.Point cup = new RoseState.Point(
                hull.a() + between(random, -apart, apart), hull.b() + between(random, -apart, apart));
        int count = random.nextInt(TINTS.length + 1);
        List<RoseState.Pull> pulls = new ArrayList<>();
        double lean = between(random, -Math.PI, Math.PI);
        for (int i = 0; i < count; i++) {
            double angle = oneIn(random, 3) ? lean + between(random, -0.1, 0.1) : between(random, -Math.PI, Math.PI);
            double size = oneIn(random, 5) ? 0.001 : between(random, 0.05, 2);
            pulls.add(new RoseState.Pull(TINTS[i], size * Math.cos(angle), size * Math.sin(angle), oneIn(random, 3)));
        }
        List<RoseState.Point> reach = new ArrayList<>();
        if (!oneIn(random, 4)) {
            for (int i = 0; i < 7; i++) {
                double angle = 2 * Math.PI * i / 7;
                double size = between(random, 3, 60);
                reach.add(new RoseState.Point(size * Math.cos(angle), size * Math.sin(angle)));
            }
        }
        return new RoseState(
                hull,
                Samples.shade(60, hull.a(), hull.b()),
                cup,
                Samples.shade(62, cup.a(), cup.b()),
                oneIn(random, 2) ? "Cup" : "Mix",
                oneIn(random, 4) ? 0 : between(random, 0.1, 6),
                pulls,
                reach);
    }

    static SwatchState swatch(Random random) {
        boolean chip = oneIn(random, 2);
        boolean wild = oneIn(random, 3);
        return new SwatchState(
                "Hull",
                oneIn(random, 2) ? "Cup, as computed" : "White, to go in first",
                "Chip, as read",
                "Hull and cup",
                JudgedLight.each(light -> new SwatchState.UnderLight(
                        Samples.shade(between(random, 15, 95), wild ? -90 : -2, 8),
                        Samples.shade(between(random, 15, 95), 0, wild && oneIn(random, 2) ? -95 : 3),
                        chip ? Optional.of(Samples.shade(50, 1, 1)) : Optional.empty(),
                        oneIn(random, 3) ? between(random, 0, 60) : between(random, 0, 6),
                        "much too dark, too dirty, a touch green and a touch blue",
                        oneIn(random, 2) ? OptionalDouble.of(4.4) : OptionalDouble.empty())));
    }

    static List<Patches.Patch> patches(Random random) {
        List<Patches.Patch> patches = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(9); i++) {
            patches.add(new Patches.Patch(
                    Samples.shade(between(random, 20, 90), between(random, -90, 60), 10),
                    oneIn(random, 3) ? "reading " + (i + 1) : "2026-04-12, below the rail",
                    !oneIn(random, 4)));
        }
        return patches;
    }
}
