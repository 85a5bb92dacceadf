package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.animation.Interpolator;
import javafx.animation.KeyFrame;
import javafx.animation.KeyValue;
import javafx.animation.Timeline;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Stop;
import javafx.scene.shape.Line;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.QuadCurveTo;
import javafx.scene.shape.Rectangle;
import javafx.util.Duration;

/**
 * Lightness as depth: white is the water's surface, the hull a line at its depth, the cup a bucket that sinks with
 * each tint and rises with white. What is still to go in is a dashed way down from it. The tank is divided into a
 * left, a middle and a right part, one for each of the three names, so that no name can lie on another.
 */
public final class DepthGauge extends Picture {
    /** Half the height of the bucket, text sizes. */
    private static final double BUCKET = 1.0;
    /** Height that stays free below the deepest mark, text sizes: the name of the way's end stands there. */
    private static final double GROUND = 3.2;
    /** The least depth that is shown, L*: noise is not blown up to fill the tank. */
    private static final double LEAST_DEPTH = 6;

    /** How long the cup takes to sink or rise to where it lies now; a choice of ours. */
    private static final Duration SINKING = Duration.millis(200);

    private DepthState state;
    /** L* the cup is drawn at: its own, but on the way there while it moves. */
    private final DoubleProperty drawn = new SimpleDoubleProperty();

    private final Timeline sinking = new Timeline();
    private double left;
    private double right;
    private double top;
    private double bottom;
    private double deepest;

    private final Rectangle well = styled(new Rectangle(), "well");
    private final Path surface = styled(new Path(), "surface");
    private final Rectangle band = styled(new Rectangle(), "band");
    private final Line mark = styled(new Line(), "mark");
    private final Path way = styled(new Path(), "stairs");
    private final Polygon arrow = styled(new Polygon(), "sign");
    private final Polygon bucket = styled(new Polygon(), "outlined");
    private final Label whiteName = text("white", "picture-small");
    private final Label hullName = text("hull", "picture-pill", "picture-hull");
    private final Label cupName = text("", "picture-pill", "picture-name");
    private final Label goal = text("", "picture-pill", "picture-small");

    public DepthGauge() {
        super("depth-gauge", new Size(26, 14, 16, 9));
        drawn.addListener((property, before, after) -> requestLayout());
    }

    /** Shows a state; the way is drawn when doses are to come, or white would lift the cup. */
    public void show(DepthState next) {
        show(next, false);
    }

    /**
     * Shows a state.
     *
     * @param moves true to let the cup sink or rise from where it was seen last, false to draw it there at once
     */
    public void show(DepthState next, boolean moves) {
        sinking.stop();
        if (moves && state != null) {
            sinking.getKeyFrames()
                    .setAll(new KeyFrame(SINKING, new KeyValue(drawn, next.cup(), Interpolator.EASE_BOTH)));
            sinking.play();
        } else {
            drawn.set(next.cup());
        }
        state = next;
        cupName.setText(next.cupName().toLowerCase(Locale.ROOT));
        bucket.setFill(paint(next.cupShade()));
        goal.setText(goalWords());
        List<Node> nodes = new ArrayList<>(List.of(well, band, surface, mark, way, arrow, bucket));
        nodes.addAll(List.of(whiteName, hullName, cupName, goal));
        draw(nodes, words());
    }

    private boolean whole() {
        return state.stepsFrom() > state.cup() + 0.05;
    }

    private boolean lifting() {
        return state.steps().isEmpty()
                && state.cup() < state.hull()
                && state.climb().isPresent();
    }

    private String goalWords() {
        if (lifting()) {
            return state.climb().orElseThrow().words().replace('\n', ' ');
        }
        int count = state.steps().size();
        if (whole() || count == 0) {
            return "";
        }
        return count == 1 ? "after " + state.steps().get(0).words() : say("after %d more doses", count);
    }

    private String words() {
        double apart = state.cup() - state.hull();
        StringBuilder said = new StringBuilder(say(
                "Depth gauge of lightness. White is at %.1f, the hull at %.1f, %s at " + "%.1f",
                state.white(), state.hull(), state.cupName().toLowerCase(Locale.ROOT), state.cup()));
        if (state.unsure() > 0) {
            said.append(say(" give or take %.1f", state.unsure()));
        }
        said.append(
                Math.abs(apart) < 0.05
                        ? ", level with the hull."
                        : say(", %.1f %s than the hull.", Math.abs(apart), apart > 0 ? "lighter" : "darker"));
        double before = state.stepsFrom();
        for (DepthState.Step step : state.steps()) {
            said.append(say(
                    " Then %s, %s to %.1f.",
                    step.words(),
                    switch (step.after(before)) {
                        case UP -> "up";
                        case DOWN -> "down";
                        case LEVEL -> "hardly moving,";
                    },
                    step.cup()));
            before = step.cup();
        }
        state.climb()
                .ifPresent(climb -> said.append(say(
                        " Way back up: %s, from %.1f to %.1f.",
                        climb.words().replace('\n', ' '), climb.from(), climb.to())));
        return said.toString();
    }

    private double y(double lightness) {
        double share = (state.white() - lightness) / (state.white() - deepest);
        return top + Math.max(0, Math.min(1, share)) * (bottom - top);
    }

    private void measure(double em) {
        left = Math.round(0.8 * em);
        right = Math.round(getWidth() - 0.8 * em);
        top = Math.round(2.2 * em);
        bottom = Math.round(getHeight() - 0.8 * em);
        double low = Math.min(state.hull(), state.cup() - state.unsure());
        for (DepthState.Step step : state.steps()) {
            low = Math.min(low, step.cup());
        }
        double depth = Math.max(LEAST_DEPTH, state.white() - low);
        deepest = state.white() - depth * (1 + GROUND * em / Math.max(em, bottom - top - GROUND * em));
    }

    @Override
    protected void layoutChildren() {
        if (state == null) {
            return;
        }
        double em = em();
        measure(em);
        SplitSwatch.box(well, left, top, right - left, bottom - top);
        double hullShare = (y(state.hull()) - top) / (bottom - top);
        well.setFill(new LinearGradient(
                0,
                0,
                0,
                1,
                true,
                CycleMethod.NO_CYCLE,
                new Stop(0, paint(Shade.grey(state.white()))),
                new Stop(hullShare, paint(state.hullShade())),
                new Stop(1, paint(state.hullShade()).deriveColor(0, 1, 0.8, 1))));
        surface.getElements().setAll(waves(top, left, right, 0.3 * em));
        leftAt(whiteName, left, 0.8 * em);
        double level = Math.round(y(state.hull()));
        mark.setStartX(left);
        mark.setEndX(right);
        mark.setStartY(level);
        mark.setEndY(level);
        size(hullName);
        double tall = hullName.getHeight();
        boolean under = level - tall - 0.2 * em < top + 0.5 * em && level + tall + 0.3 * em < getHeight();
        hullName.relocate(left + 0.4 * em, under ? level + 0.25 * em : level - tall - 0.25 * em);
        layoutBucket(em, level);
        layoutWay(em, level);
    }

    private double middle() {
        return left + (whole() ? 0.62 : 0.5) * (right - left);
    }

    private void layoutBucket(double em, double hullLevel) {
        double x = middle();
        double level = y(drawn.get());
        double rim = 1.25 * em;
        double foot = 0.95 * em;
        double tall = BUCKET * em;
        bucket.getPoints()
                .setAll(x - rim, level - tall, x + rim, level - tall, x + foot, level + tall, x - foot, level + tall);
        boolean unsure = state.unsure() > 0;
        band.setVisible(unsure);
        if (unsure) {
            double over = y(state.cup() + state.unsure());
            SplitSwatch.box(band, x - 2.4 * em, over, 4.8 * em, y(state.cup() - state.unsure()) - over);
        }
        if (whole()) {
            size(cupName);
            double room = right - x - rim - 0.5 * em;
            fit(cupName, room);
            offLine(cupName, x + rim + 0.4 * em, level, hullLevel, em);
        } else {
            double room = x - rim - 0.4 * em - (hullName.getLayoutX() + hullName.getWidth() + 0.3 * em);
            fit(cupName, room);
            offLine(cupName, x - rim - 0.4 * em - cupName.getWidth(), level, hullLevel, em);
        }
    }

    /** A name beside its mark, moved up or down just enough that the hull's line stays to be seen. */
    private void offLine(Label name, double x, double wanted, double hullLevel, double em) {
        double tall = name.getHeight();
        double y = wanted - tall / 2;
        double gap = 0.25 * em;
        if (y < hullLevel + gap && y + tall > hullLevel - gap) {
            boolean above = wanted <= hullLevel && hullLevel - gap - tall > 0 || hullLevel + gap + tall > getHeight();
            y = above ? hullLevel - gap - tall : hullLevel + gap;
        }
        name.relocate(x, Math.max(0.2 * em, Math.min(getHeight() - tall - 0.2 * em, y)));
    }

    /** The way the cup came or will go: down with tints, up with white. */
    private void layoutWay(double em, double hullLevel) {
        boolean moves = lifting() || !state.steps().isEmpty();
        way.setVisible(moves);
        arrow.setVisible(moves);
        goal.setVisible(moves && !goal.getText().isEmpty());
        if (!moves) {
            return;
        }
        List<Double> depths = new ArrayList<>();
        if (lifting()) {
            depths.add(state.climb().orElseThrow().to());
        } else {
            state.steps().forEach(step -> depths.add(step.cup()));
        }
        double from = whole() ? left + 0.28 * (right - left) : middle() + 1.7 * em;
        double to = whole() ? middle() - 1.7 * em : right - 1.6 * em;
        double x = from;
        double y = y(whole() ? state.stepsFrom() : state.cup());
        List<PathElement> drawn = new ArrayList<>(List.of(new MoveTo(x, y)));
        for (double depth : depths) {
            if (!whole()) {
                x += (to - from) / depths.size();
                drawn.add(new LineTo(x, y));
            }
            y = y(depth);
            drawn.add(new LineTo(x, y));
            if (whole()) {
                x += (to - from) / depths.size();
                drawn.add(new LineTo(x, y));
            }
        }
        way.getElements().setAll(drawn);
        double head = 0.45 * em;
        if (whole()) {
            arrow.getPoints().setAll(x, y - head, x, y + head, x + 1.6 * head, y);
        } else {
            double before = y(depths.size() == 1 ? state.cup() : depths.get(depths.size() - 2));
            double tip = y >= before ? 1.6 * head : -1.6 * head;
            arrow.getPoints().setAll(x - head, y, x + head, y, x, y + tip);
        }
        if (goal.isVisible()) {
            fit(goal, Math.max(4 * em, right - middle() - 1.9 * em));
            // Beyond all of the way, so that it never lies on a part of it.
            double start = y(state.cup());
            double lowest =
                    Math.max(start, depths.stream().mapToDouble(this::y).max().orElseThrow());
            double highest =
                    Math.min(start, depths.stream().mapToDouble(this::y).min().orElseThrow());
            double half = goal.getHeight() / 2;
            double under = lowest + half + em;
            double over = highest - half - em;
            boolean down = over - half < 0.2 * em || y >= start && under + half < getHeight() - 0.2 * em;
            offLine(goal, right - goal.getWidth() - 0.3 * em, down ? under : over, hullLevel, em);
        }
    }

    private static List<PathElement> waves(double level, double from, double to, double lift) {
        List<PathElement> elements = new ArrayList<>(List.of(new MoveTo(from, level)));
        double wave = (to - from) / 8;
        for (int i = 0; i < 8; i++) {
            elements.add(new QuadCurveTo(
                    from + (i + 0.5) * wave, level + (i % 2 == 0 ? -lift : lift), from + (i + 1) * wave, level));
        }
        return elements;
    }
}
