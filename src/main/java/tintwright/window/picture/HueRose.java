package tintwright.window.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;

/**
 * Which way the cup must swing: the cup in the middle, the hull where it lies from there, an arrow between them. At
 * the rim stand the tints of the plan, each where it pulls to. The scale fits the way from cup to hull.
 */
public final class HueRose extends Picture {
    /** The rose never shows less than this far around the cup, a*, b* units: noise is not blown up. */
    private static final double LEAST_FAR = 3;

    /** Radius that the round keeps beside long names, text sizes: they are broken into two lines first. */
    private static final double LEAST_ROUND = 4.6;
    /** Room for a word of a name, text sizes. */
    private static final double LEAST_NAME = 3.4;

    private RoseState state;
    private double x;
    private double y;
    private double radius;

    private final Circle round = styled(new Circle(), "rose");
    private final Circle unsure = styled(new Circle(), "band-round");
    private final Line swing = styled(new Line(), "swing");
    private final Polygon head = styled(new Polygon(), "sign");
    private final Circle hull = styled(new Circle(), "hull-mark");
    private final Circle cup = styled(new Circle(), "outlined");
    private final Label hullName = text("hull", "picture-pill", "picture-hull");
    private final Label cupName = text("", "picture-pill", "picture-name");
    private final Label beyond = text("", "picture-small");
    private final List<Label> hues = List.of(
            text("yellower", "picture-small"),
            text("bluer", "picture-small"),
            text("greener", "picture-small"),
            text("redder", "picture-small"));
    private final List<Pulled> pulls = new ArrayList<>();

    /** A tint of the plan at the rim. */
    private record Pulled(RoseState.Pull pull, Label name, Line tick, Line leader) {
        double angle() {
            return Math.atan2(pull.b(), pull.a());
        }
    }

    public HueRose() {
        super("hue-rose", new Size(26, 14, 16, 9));
    }

    /** Shows a state; only tints in the plan are named. */
    public void show(RoseState next) {
        state = next;
        hull.setFill(paint(next.hullShade()));
        cup.setFill(paint(next.cupShade()));
        cupName.setText(next.cupName().toLowerCase(Locale.ROOT));
        beyond.setText(next.hullInReach() ? "" : "the hull lies outside the reach");
        pulls.clear();
        double strongest =
                next.pulls().stream().mapToDouble(RoseState.Pull::size).max().orElse(0);
        List<Node> nodes = new ArrayList<>(List.of(round));
        for (RoseState.Pull pull : next.pulls()) {
            if (pull.planned() && pull.size() > RoseWords.HARDLY * strongest) {
                Pulled planned = new Pulled(
                        pull,
                        text(pull.tint(), "picture-small"),
                        styled(new Line(), "pull"),
                        styled(new Line(), "leader"));
                pulls.add(planned);
                nodes.addAll(List.of(planned.leader(), planned.tick(), planned.name()));
            }
        }
        nodes.addAll(hues);
        nodes.addAll(List.of(unsure, swing, head, hull, cup, hullName, cupName));
        if (!beyond.getText().isEmpty()) {
            nodes.add(beyond);
        }
        draw(nodes, RoseWords.of(next));
    }

    @Override
    protected void layoutChildren() {
        if (state == null) {
            return;
        }
        double em = em();
        double longest = 0;
        for (Pulled each : pulls) {
            fit(each.name(), Math.max(LEAST_NAME * em, getWidth() / 2 - (LEAST_ROUND + 1.2) * em));
            longest = Math.max(longest, each.name().getWidth() + 1.2 * em);
        }
        size(beyond);
        double foot = beyond.getText().isEmpty() ? 0 : beyond.getHeight() + 0.2 * em;
        x = Math.round(getWidth() / 2);
        y = Math.round((getHeight() - foot) / 2);
        radius = Math.min(y - 0.5 * em, getWidth() / 2 - Math.max(longest, 0.5 * em));
        radius = Math.max(radius, Math.min(LEAST_ROUND * em, y - 0.5 * em));
        circle(round, x, y, radius);
        double far = Math.max(LEAST_FAR, Math.max(2.5 * state.apart(), 1.1 * state.unsure()));
        double unit = (radius - 1.2 * em) / far;
        circle(unsure, x, y, state.unsure() * unit);
        unsure.setVisible(state.unsure() > 0);
        layoutPulls(getHeight() - foot, em);
        layoutMarks(unit, em);
        beyond.relocate(Math.max(0, x - beyond.getWidth() / 2), getHeight() - foot);
    }

    private static void circle(Circle circle, double x, double y, double radius) {
        circle.setCenterX(x);
        circle.setCenterY(y);
        circle.setRadius(radius);
    }

    private void layoutMarks(double unit, double em) {
        double dx = (state.hull().a() - state.cup().a()) * unit;
        double dy = -(state.hull().b() - state.cup().b()) * unit;
        double apart = Math.hypot(dx, dy);
        boolean near = apart < 2.2 * em;
        circle(hull, x + dx, y + dy, (near ? 1.15 : 0.8) * em);
        circle(cup, x, y, (near ? 0.6 : 0.75) * em);
        double ux = apart > 0.1 * em ? dx / apart : 1;
        double uy = apart > 0.1 * em ? dy / apart : 0;
        boolean far = apart > 2.8 * em;
        swing.setVisible(far);
        head.setVisible(far);
        if (far) {
            double to = apart - hull.getRadius() - 0.8 * em;
            swing.setStartX(x + ux * (cup.getRadius() + 0.2 * em));
            swing.setStartY(y + uy * (cup.getRadius() + 0.2 * em));
            swing.setEndX(x + ux * to);
            swing.setEndY(y + uy * to);
            double tip = to + 0.7 * em;
            head.getPoints()
                    .setAll(
                            x + ux * tip,
                            y + uy * tip,
                            x + ux * to - uy * 0.4 * em,
                            y + uy * to + ux * 0.4 * em,
                            x + ux * to + uy * 0.4 * em,
                            y + uy * to - ux * 0.4 * em);
        }
        // Each name above or below its mark, on the side that looks away from the other mark.
        boolean hullUp = uy <= 0;
        name(
                hullName,
                hull.getCenterX(),
                hullUp ? hull.getCenterY() - hull.getRadius() : hull.getCenterY() + hull.getRadius(),
                hullUp,
                em);
        double edge = near ? Math.max(cup.getRadius(), hull.getRadius() - (hullUp ? dy : -dy)) : cup.getRadius();
        name(cupName, x, hullUp ? y + edge : y - edge, !hullUp, em);
        double[][] at = {
            {x, y - radius + 1.1 * em},
            {x, y + radius - 1.1 * em},
            {x - radius + 0.6 * em, y},
            {x + radius - 0.6 * em, y}
        };
        for (int i = 0; i < 4; i++) {
            Label hue = hues.get(i);
            size(hue);
            double at0 = i == 2 ? at[i][0] : i == 3 ? at[i][0] - hue.getWidth() : at[i][0] - hue.getWidth() / 2;
            hue.relocate(at0, at[i][1] - hue.getHeight() / 2);
            hue.setVisible(free(hue));
        }
    }

    /** A word of the hue gives way to marks, their names and the arrow. */
    private boolean free(Label hue) {
        if (swing.isVisible() && hue.getBoundsInParent().intersects(swing.getBoundsInParent())) {
            return false;
        }
        List<Node> taken = new ArrayList<>(List.of(hull, cup, hullName, cupName));
        pulls.forEach(each -> taken.add(each.tick()));
        return taken.stream().noneMatch(node -> hue.getBoundsInParent().intersects(node.getBoundsInParent()));
    }

    private static void name(Label name, double middle, double edge, boolean above, double em) {
        size(name);
        double gap = 0.25 * em;
        name.relocate(middle - name.getWidth() / 2, above ? edge - gap - name.getHeight() : edge + gap);
    }

    /** The names of the plan's tints in two columns beside the round, moved apart as little as needed. */
    private void layoutPulls(double under, double em) {
        for (boolean rightSide : new boolean[] {true, false}) {
            List<Pulled> side = pulls.stream()
                    .filter(each -> each.pull().a() >= 0 == rightSide)
                    .sorted(Comparator.comparingDouble(each -> -Math.sin(each.angle())))
                    .toList();
            double[] middles = side.stream()
                    .mapToDouble(each -> y - Math.sin(each.angle()) * radius)
                    .toArray();
            double gap = Math.max(
                    1.35 * em,
                    side.stream()
                            .mapToDouble(each -> each.name().getHeight())
                            .max()
                            .orElse(0));
            boolean fits = stack(middles, gap, 0.7 * em, under - 0.7 * em);
            for (int i = 0; i < side.size(); i++) {
                place(side.get(i), middles[i], rightSide, fits, em);
            }
        }
    }

    private void place(Pulled each, double middle, boolean rightSide, boolean fits, double em) {
        double cos = Math.cos(each.angle());
        double sin = Math.sin(each.angle());
        line(
                each.tick(),
                x + cos * (radius - 0.8 * em),
                y - sin * (radius - 0.8 * em),
                x + cos * radius,
                y - sin * radius);
        // The round is widest where the name comes nearest to its middle.
        double dy = Math.max(0, Math.abs(middle - y) - each.name().getHeight() / 2);
        double edge = Math.sqrt(Math.max(0, (radius + 0.7 * em) * (radius + 0.7 * em) - dy * dy));
        double room = (rightSide ? getWidth() - x : x) - edge - 0.4 * em;
        double wide = Math.min(each.name().getWidth(), Math.max(em, room));
        double startX = rightSide ? x + edge + 0.2 * em : x - edge - 0.2 * em - wide;
        each.name()
                .resizeRelocate(
                        startX,
                        middle - each.name().getHeight() / 2,
                        wide,
                        each.name().getHeight());
        each.name().setVisible(fits);
        each.leader().setVisible(fits && Math.abs(middle - (y - sin * radius)) > 0.7 * em);
        line(each.leader(), x + cos * radius, y - sin * radius, rightSide ? startX : startX + wide, middle);
    }

    /**
     * Moves sorted middles apart as little as needed, between two ends.
     *
     * @return false when there is too little room for all
     */
    static boolean stack(double[] middles, double gap, double from, double to) {
        int count = middles.length;
        if ((count - 1) * gap > to - from) {
            return false;
        }
        for (int i = 0; i < count; i++) {
            middles[i] = Math.max(middles[i], i == 0 ? from : middles[i - 1] + gap);
        }
        for (int i = count - 1; i >= 0; i--) {
            middles[i] = Math.min(middles[i], i == count - 1 ? to : middles[i + 1] - gap);
        }
        return true;
    }
}
