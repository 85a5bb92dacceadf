package tintwright.window.picture;

import java.util.Locale;

/** The hue rose in words, for those who do not see it. */
final class RoseWords {
    /** A tint that pulls less than this share of the strongest hardly changes the hue. */
    static final double HARDLY = 0.03;

    private RoseWords() {}

    static String of(RoseState state) {
        String cup = state.cupName().toLowerCase(Locale.ROOT);
        StringBuilder said = new StringBuilder(Picture.say(
                "Hue rose, %s in the middle. The hull lies at %s, %s at %s.",
                cup, place(state.hull()), cup, place(state.cup())));
        double a = state.hull().a() - state.cup().a();
        double b = state.hull().b() - state.cup().b();
        if (state.apart() >= 0.1) {
            said.append(Picture.say(
                    " The %s must swing %.1f %s and %.1f %s.",
                    cup, Math.abs(a), a > 0 ? "redder" : "greener", Math.abs(b), b > 0 ? "yellower" : "bluer"));
        } else {
            said.append(" The hue agrees.");
        }
        double strongest =
                state.pulls().stream().mapToDouble(RoseState.Pull::size).max().orElse(0);
        for (RoseState.Pull pull : state.pulls()) {
            said.append(Picture.say(
                    " %s%s %s.",
                    pull.tint(),
                    pull.planned() ? ", in the plan," : "",
                    pull.size() <= HARDLY * strongest
                            ? "hardly changes the hue"
                            : "pulls " + direction(pull.a(), pull.b())));
        }
        if (state.reach().size() > 2) {
            said.append(
                    state.hullInReach()
                            ? " The hull lies inside the reach of today's tints."
                            : " The hull lies outside the reach of today's tints.");
        }
        return said.toString();
    }

    private static String place(RoseState.Point point) {
        return Picture.say("a* %.1f, b* %.1f", point.a(), point.b());
    }

    private static String direction(double a, double b) {
        String first = a > 0 ? "redder" : "greener";
        String second = b > 0 ? "yellower" : "bluer";
        if (Math.abs(a) > 2.4 * Math.abs(b)) {
            return first;
        }
        return Math.abs(b) > 2.4 * Math.abs(a) ? second : first + " and " + second;
    }
}
