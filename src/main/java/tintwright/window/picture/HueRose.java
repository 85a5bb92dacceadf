package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Path;
import javafx.scene.shape.Polygon;
import tintwright.window.picture.Room.Box;

/**
 * Which way the cup must swing: the cup in the middle, the hull a diamond where it lies from there, an arrow for the
 * pull of each tint and a dashed outline around what today's tints reach. The scale fits the way from cup to hull.
 * The rim carries the hues it points to, and words.
 */
public final class HueRose extends Picture {
    private static final double[] RING_STEPS = {1, 2, 5, 10, 20, 50, 100};
    /** The rose never shows less than this far around the cup, a*, b* units: noise is not blown up. */
    private static final double LEAST_FAR = 4;

    private RoseState state;

    private final List<Path> rim = Rim.pieces();
    private final Circle[] rings = {
        styled(new Circle(), "ring"), styled(new Circle(), "ring"), styled(new Circle(), "ring")
    };
    private final Label[] ringNames = {
        text("", "picture-small", "picture-clear"),
        text("", "picture-small", "picture-clear"),
        text("", "picture-small", "picture-clear")
    };
    private final Polygon reach = styled(new Polygon(), "reach");
    private final Circle reachClip = new Circle();
    private final Circle unsure = styled(new Circle(), "band-round");
    private final Line swing = styled(new Line(), "swing");
    private final Polygon swingHead = styled(new Polygon(), "climb-head");
    private final Polygon hull = styled(new Polygon(), "outlined");
    private final Circle cup = styled(new Circle(), "outlined");
    private final Line[] threads = {styled(new Line(), "mark-thread"), styled(new Line(), "mark-thread")};
    private final Label hullName = text("Hull", "picture-name", "picture-clear");
    private final Label cupName = text("", "picture-name", "picture-clear");
    private final Label yellower = text("yellower", "picture-small");
    private final Label bluer = text("bluer", "picture-small");
    private final Label reachName = text("", "picture-small");
    private final Label planName = text("", "picture-small");
    private final Label beyond = text("", "picture-small", "picture-name");
    private final Label scale = text("", "picture-small");
    private final Line reachSample = styled(new Line(), "reach");
    private final Line planSample = styled(new Line(), "pull-planned", "pull");
    private final Polygon planHead = styled(new Polygon(), "pull-head");
    private final RosePulls pulls = new RosePulls();

    public HueRose() {
        super("hue-rose");
        reach.setClip(reachClip);
    }

    public void show(RoseState next) {
        state = next;
        List<Node> nodes = new ArrayList<>(rim);
        nodes.addAll(List.of(rings));
        if (next.reach().size() > 2) {
            nodes.addAll(List.of(reach, reachSample, reachName));
        }
        if (next.unsure() > 0) {
            nodes.add(unsure);
        }
        nodes.addAll(List.of(threads));
        nodes.addAll(List.of(swing, swingHead));
        nodes.addAll(pulls.show(next));
        nodes.addAll(List.of(cup, hull, yellower, bluer, planSample, planHead, planName, beyond, scale));
        nodes.addAll(List.of(ringNames));
        nodes.addAll(List.of(hullName, cupName));
        hull.setFill(paint(next.hullShade()));
        cup.setFill(paint(next.cupShade()));
        cupName.setText(next.cupName());
        draw(nodes, RoseWords.of(next));
    }

    @Override
    protected void layoutChildren() {
        if (state == null) {
            return;
        }
        double em = em();
        double outer = getHeight() / 2 - 1.9 * em;
        double names = pulls.longestName() + 0.9 * em;
        outer = Math.max(Math.min(outer, 5 * em), Math.min(outer, getWidth() / 2 - names));
        Rim round = new Rim(Math.round(getWidth() / 2), Math.round(getHeight() / 2), outer - 0.8 * em, outer, em);
        double far = Math.max(LEAST_FAR, Math.max(1.55 * state.apart(), 1.15 * state.unsure()));
        double unit = round.inner() / far;
        round.layout(rim);
        layoutReach(round, unit);
        boolean all = false;
        for (int most = pulls.count(); most >= 0 && !all; most--) {
            Room room = new Room(new Box(0, 0, getWidth(), getHeight()));
            room.round(round.x(), round.y(), round.inner());
            layoutMarks(round, unit, room);
            all = pulls.layout(round, near(round, unit), most, getWidth(), room);
            pulls.keepLeaders(room);
            all &= nameMarks(round, unit, room);
            layoutRings(round, unit, far, room);
        }
        layoutStrips(round);
    }

    private void layoutReach(Rim round, double unit) {
        List<Double> corners = new ArrayList<>();
        for (RoseState.Point point : state.reach()) {
            corners.add(round.x() + (point.a() - state.cup().a()) * unit);
            corners.add(round.y() - (point.b() - state.cup().b()) * unit);
        }
        reach.getPoints().setAll(corners);
        reachClip.setCenterX(round.x());
        reachClip.setCenterY(round.y());
        reachClip.setRadius(round.inner());
    }

    private void layoutMarks(Rim round, double unit, Room room) {
        double em = round.em();
        double hullX = hullX(round, unit);
        double hullY = hullY(round, unit);
        double apart = state.apart() * unit;
        // Near each other the cup is a wide ring around the hull, so that both are seen.
        double size = (near(round, unit) ? 0.6 : 0.85) * em;
        cup.setRadius((near(round, unit) ? 1.25 : 0.7) * em);
        hull.getPoints().setAll(hullX, hullY - size, hullX + size, hullY, hullX, hullY + size, hullX - size, hullY);
        cup.setCenterX(round.x());
        cup.setCenterY(round.y());
        unsure.setCenterX(round.x());
        unsure.setCenterY(round.y());
        unsure.setRadius(state.unsure() * unit);
        double wide = cup.getRadius() + 0.15 * em;
        room.take(Box.around(round.x(), round.y(), 2 * wide, 2 * wide));
        room.take(Box.around(hullX, hullY, 2 * size + 0.3 * em, 2 * size + 0.3 * em));
        boolean far = apart > 2.6 * em;
        swing.setVisible(far);
        swingHead.setVisible(far);
        if (far) {
            double ux = (hullX - round.x()) / apart;
            double uy = (hullY - round.y()) / apart;
            RosePulls.set(
                    swing,
                    round.x() + ux * 0.8 * em,
                    round.y() + uy * 0.8 * em,
                    hullX - ux * 1.7 * em,
                    hullY - uy * 1.7 * em);
            Rim.head(swingHead, hullX - ux * 0.95 * em, hullY - uy * 0.95 * em, ux, uy, 0.7 * em);
            room.line(round.x(), round.y(), hullX, hullY);
            room.take(Box.around(hullX - ux * 1.5 * em, hullY - uy * 1.5 * em, 1.2 * em, 1.2 * em));
        }
    }

    private boolean near(Rim round, double unit) {
        return state.apart() * unit < 1.8 * round.em();
    }

    private boolean nameMarks(Rim round, double unit, Room room) {
        double em = round.em();
        double hullX = hullX(round, unit);
        double hullY = hullY(round, unit);
        double away = Math.atan2(round.y() - hullY, hullX - round.x());
        Optional<Box> hullBox = name(hullName, threads[0], hullX, hullY, 0.9 * em, away, round, room, Optional.empty());
        Optional<Box> cupBox = name(
                cupName,
                threads[1],
                round.x(),
                round.y(),
                cup.getRadius() + 0.1 * em,
                away + Math.PI,
                round,
                room,
                hullBox);
        return hullBox.isPresent() && cupBox.isPresent();
    }

    /** @param other words that a line from the mark to its name must not cross */
    private static Optional<Box> name(
            Label label,
            Line thread,
            double x,
            double y,
            double from,
            double prefer,
            Rim round,
            Room room,
            Optional<Box> other) {
        size(label);
        Optional<Box> found = room.near(x, y, label.getWidth(), label.getHeight(), from, 2 * round.inner(), prefer);
        put(label, found);
        thread.setVisible(false);
        found.ifPresent(box -> {
            double toX = Math.max(box.x(), Math.min(box.x() + box.width(), x));
            double toY = Math.max(box.y(), Math.min(box.y() + box.height(), y));
            double length = Math.hypot(toX - x, toY - y);
            boolean crosses = other.isPresent() && other.get().crossedBy(x, y, toX, toY);
            if (length > from + 0.7 * round.em() && !crosses) {
                double share = from / length;
                RosePulls.set(
                        thread,
                        x + (toX - x) * share,
                        y + (toY - y) * share,
                        x + (toX - x) * 0.97,
                        y + (toY - y) * 0.97);
                thread.setVisible(true);
                room.line(x, y, x + (toX - x) * 0.97, y + (toY - y) * 0.97);
            }
        });
        return found;
    }

    /** Rings at round distances from the cup; each number stands on its ring where that is free. */
    private void layoutRings(Rim round, double unit, double far, Room room) {
        double step = RING_STEPS[RING_STEPS.length - 1];
        for (int i = RING_STEPS.length - 1; i >= 0 && RING_STEPS[i] * 3.2 >= far; i--) {
            step = RING_STEPS[i];
        }
        for (int i = 0; i < rings.length; i++) {
            double radius = step * (i + 1) * unit;
            rings[i].setCenterX(round.x());
            rings[i].setCenterY(round.y());
            rings[i].setRadius(radius);
            rings[i].setVisible(radius < round.inner());
            ringNames[i].setText(say("%.0f", step * (i + 1)));
            size(ringNames[i]);
            List<Box> places = new ArrayList<>();
            for (int k = 0; k < 32 && rings[i].isVisible(); k++) {
                double angle = Math.PI / 4 + 2 * Math.PI * k / 32;
                places.add(Box.around(
                        round.x() + radius * Math.cos(angle),
                        round.y() + radius * Math.sin(angle),
                        ringNames[i].getWidth(),
                        ringNames[i].getHeight()));
            }
            put(ringNames[i], room.first(places));
        }
        scale.setText(say("rings %.0f steps apart", step));
    }

    /** Above and below the round: two directions in the middle, and what the lines mean in the corners. */
    private void layoutStrips(Rim round) {
        double em = round.em();
        double above = round.y() - round.outer() - 0.85 * em;
        double below = round.y() + round.outer() + 0.85 * em;
        middleAt(yellower, round.x(), above);
        middleAt(bluer, round.x(), below);
        double side = round.x() - yellower.getWidth() / 2 - 1.2 * em;
        // An outline that lies all around what is shown is said, not drawn.
        boolean drawn = outlineInSight(round);
        boolean reaches = drawn
                ? words(reachName, side - 2.2 * em, "reach of today's tints", "today's reach", "reach")
                : state.hullInReach() && words(reachName, side, "all within today's reach", "all in reach");
        reachName.setVisible(reaches);
        leftAt(reachName, (drawn ? 2.6 : 0.6) * em, below);
        reachSample.setVisible(reaches && drawn);
        RosePulls.set(reachSample, 0.6 * em, below, 2.2 * em, below);
        boolean planned = state.pulls().stream().anyMatch(RoseState.Pull::planned)
                && words(planName, side - 2.2 * em, "tint in the plan", "in the plan", "plan");
        planName.setVisible(planned);
        planSample.setVisible(planned);
        planHead.setVisible(planned);
        rightAt(planName, getWidth() - 0.6 * em, below);
        double start = planName.getLayoutX() - 2.1 * em;
        RosePulls.set(planSample, start, below, start + 1.1 * em, below);
        Rim.head(planHead, start + 1.8 * em, below, 1, 0, 0.6 * em);
        boolean outside = !state.hullInReach();
        beyond.setVisible(
                outside && words(beyond, side, "the hull lies outside the reach", "hull out of reach", "out of reach"));
        leftAt(beyond, 0.6 * em, above);
        scale.setVisible(words(scale, side, scale.getText()));
        rightAt(scale, getWidth() - 0.6 * em, above);
    }

    private boolean outlineInSight(Rim round) {
        List<Double> corners = reach.getPoints();
        for (int i = 0; i < corners.size(); i += 2) {
            int next = (i + 2) % corners.size();
            double x = corners.get(i) - round.x();
            double y = corners.get(i + 1) - round.y();
            double dx = corners.get(next) - round.x() - x;
            double dy = corners.get(next + 1) - round.y() - y;
            double square = dx * dx + dy * dy;
            double at = square == 0 ? 0 : Math.max(0, Math.min(1, -(x * dx + y * dy) / square));
            if (Math.hypot(x + at * dx, y + at * dy) < round.inner()) {
                return true;
            }
        }
        return false;
    }

    /** Gives a label the first words that fit; none when none do. */
    private static boolean words(Label label, double width, String... choices) {
        for (String choice : choices) {
            label.setText(choice);
            size(label);
            if (label.getWidth() <= width) {
                label.setVisible(true);
                return true;
            }
        }
        label.setVisible(false);
        return false;
    }

    private static void put(Label label, Optional<Box> box) {
        label.setVisible(box.isPresent());
        box.ifPresent(found -> label.relocate(found.x(), found.y()));
    }

    private double hullX(Rim round, double unit) {
        return round.x() + (state.hull().a() - state.cup().a()) * unit;
    }

    private double hullY(Rim round, double unit) {
        return round.y() - (state.hull().b() - state.cup().b()) * unit;
    }

    @Override
    protected double computePrefWidth(double height) {
        return 28 * em();
    }

    @Override
    protected double computePrefHeight(double width) {
        return 16 * em();
    }

    @Override
    protected double computeMinHeight(double width) {
        return 15 * em();
    }

    @Override
    protected double computeMinWidth(double height) {
        return 20 * em();
    }
}
