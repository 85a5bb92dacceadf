package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Stop;
import javafx.scene.shape.Line;
import javafx.scene.shape.Path;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.QuadCurveTo;
import javafx.scene.shape.Rectangle;

/**
 * Lightness as depth. The well is filled with the greys it stands for; the hull is a mark with a pennant on the left,
 * the cup a float on the right, doses are stairs down, and white is an arrow back up.
 */
public final class DepthGauge extends Picture {
    private DepthState state;
    private double top;
    private double bottom;
    private double highest;
    private double lowest;

    private final Rectangle well = styled(new Rectangle(), "well");
    private final Path surface = styled(new Path(), "surface");
    private final Rectangle band = styled(new Rectangle(), "band");
    private final Line bandTop = styled(new Line(), "band-edge");
    private final Line bandBottom = styled(new Line(), "band-edge");
    private final Line mark = styled(new Line(), "mark");
    private final Line markHalo = styled(new Line(), "mark-halo");
    private final Polygon pennant = styled(new Polygon(), "outlined");
    private final Polygon cupFloat = styled(new Polygon(), "outlined");
    private final List<Polygon> pointers = List.of(styled(new Polygon(), "pointer"),
            styled(new Polygon(), "pointer"));
    private final Polyline stairsHalo = styled(new Polyline(), "stairs-halo");
    private final Polyline stairs = styled(new Polyline(), "stairs");
    private final Line climbShaft = styled(new Line(), "climb");
    private final Polygon climbHead = styled(new Polygon(), "climb-head");
    private final Label whiteName = text("");
    private final Label hullName = text("", "picture-name");
    private final Label cupName = text("", "picture-name");
    private final Label climbName = text("", "picture-name");
    private final Label darker = text("darker");
    private final List<Label> stepNames = new ArrayList<>();
    private final List<Line> leaders = new ArrayList<>();

    public DepthGauge() {
        super("depth-gauge");
    }

    public void show(DepthState next) {
        state = next;
        List<Node> nodes = new ArrayList<>(List.of(well, band, bandTop, bandBottom, surface, markHalo, mark, pennant));
        whiteName.setText(say("White %.0f", next.white()));
        hullName.setText(say("Hull %.1f", next.hull()));
        cupName.setText(next.unsure() > 0 ? say("%s %.1f \u00b1 %.1f", next.cupName(), next.cup(), next.unsure())
                : say("%s %.1f", next.cupName(), next.cup()));
        pennant.setFill(paint(next.hullShade()));
        cupFloat.setFill(paint(next.cupShade()));
        nodes.addAll(List.of(whiteName, hullName, cupName, darker));
        stepNames.clear();
        leaders.clear();
        if (!next.steps().isEmpty()) {
            nodes.add(stairsHalo);
            nodes.add(stairs);
        }
        for (DepthState.Step step : next.steps()) {
            Label name = text(step.words(), "picture-small");
            Line leader = styled(new Line(), "leader");
            stepNames.add(name);
            leaders.add(leader);
            nodes.add(leader);
            nodes.add(name);
        }
        next.climb().ifPresent(climb -> {
            climbName.setText(climb.words());
            nodes.addAll(List.of(climbShaft, climbHead, climbName));
        });
        nodes.addAll(pointers);
        nodes.add(cupFloat);
        draw(nodes, words());
    }

    private String words() {
        double apart = state.cup() - state.hull();
        StringBuilder said = new StringBuilder(say("Depth gauge of lightness. White is at %.1f, the hull at %.1f, %s at "
                + "%.1f", state.white(), state.hull(), state.cupName().toLowerCase(Locale.ROOT), state.cup()));
        if (state.unsure() > 0) {
            said.append(say(" give or take %.1f", state.unsure()));
        }
        said.append(Math.abs(apart) < 0.05 ? ", level with the hull."
                : say(", %.1f %s than the hull.", Math.abs(apart), apart > 0 ? "lighter" : "darker"));
        for (DepthState.Step step : state.steps()) {
            said.append(say(" Then %s, down to %.1f.", step.words(), step.cup()));
        }
        state.climb().ifPresent(climb -> said.append(say(" Way back up: %s, from %.1f to %.1f.", climb.words(),
                climb.from(), climb.to())));
        return said.toString();
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    private double y(double lightness) {
        double share = (highest - lightness) / (highest - lowest);
        return top + Math.max(0, Math.min(1, share)) * (bottom - top);
    }

    @Override
    protected void layoutChildren() {
        if (state == null) {
            return;
        }
        double em = em();
        top = 1.9 * em;
        bottom = getHeight() - 1.6 * em;
        highest = state.white();
        lowest = Math.min(state.hull(), state.cup() - state.unsure());
        for (DepthState.Step step : state.steps()) {
            lowest = Math.min(lowest, step.cup());
        }
        if (state.climb().isPresent()) {
            lowest = Math.min(lowest, state.climb().get().from());
        }
        highest = Math.max(highest, Math.max(state.hull(), state.cup()));
        // Room below the deepest mark: the well never looks as if it ended at the hull.
        lowest = Math.max(0, Math.min(lowest - 0.18 * (highest - lowest), highest - 10));
        double left = Math.round(Math.max(10.2 * em, getWidth() * 0.36));
        double right = left + Math.round(Math.max(5 * em, Math.min(11 * em, getWidth() * 0.22)));
        layoutWell(left, right);
        layoutSurface(left, right, em);
        layoutMark(left, right, em);
        layoutFloat(left, right, em);
        layoutSteps(left, right, em);
        layoutLeft(left, em);
    }

    private void layoutWell(double left, double right) {
        well.setX(left);
        well.setY(top);
        well.setWidth(right - left);
        well.setHeight(bottom - top);
        List<Stop> greys = new ArrayList<>();
        for (int i = 0; i <= 12; i++) {
            double lightness = highest - (highest - lowest) * i / 12;
            greys.add(new Stop(i / 12.0, paint(Shade.grey(lightness))));
        }
        well.setFill(new LinearGradient(0, 0, 0, 1, true, CycleMethod.NO_CYCLE, greys));
    }

    private void layoutSurface(double left, double right, double em) {
        surface.getElements().clear();
        double start = left - 1.2 * em;
        double wave = (right - left + 2.4 * em) / 6;
        double level = y(state.white());
        surface.getElements().add(new MoveTo(start, level));
        for (int i = 0; i < 6; i++) {
            double lift = i % 2 == 0 ? -0.35 * em : 0.35 * em;
            surface.getElements().add(new QuadCurveTo(start + (i + 0.5) * wave, level + lift, start + (i + 1) * wave,
                    level));
        }
        rightAt(whiteName, left - 1.6 * em, level);
        middleAt(darker, (left + right) / 2, bottom + 0.8 * em);
    }

    private void layoutMark(double left, double right, double em) {
        double level = Math.round(y(state.hull()));
        for (Line line : List.of(markHalo, mark)) {
            line.setStartX(pole(left, em));
            line.setEndX(right);
            line.setStartY(level);
            line.setEndY(level);
        }
        double fly = pole(left, em);
        pennant.getPoints().setAll(fly, level - 1.8 * em, fly + 2.2 * em, level - 0.95 * em, fly, level - 0.1 * em);
    }

    /** Where the hull's pennant is planted. */
    private static double pole(double left, double em) {
        return left - 9.6 * em;
    }

    private void layoutFloat(double left, double right, double em) {
        double middle = (left + right) / 2;
        double level = y(state.cup());
        double rim = 1.5 * em;
        double foot = 1.05 * em;
        double tall = 1.05 * em;
        // A cup seen from the side; its middle stands at its lightness, where the two pointers are.
        cupFloat.getPoints().setAll(middle - rim, level - tall, middle + rim, level - tall, middle + foot,
                level + tall, middle - foot, level + tall);
        pointers.get(0).getPoints().setAll(left, level - 0.5 * em, left + 0.8 * em, level, left, level + 0.5 * em);
        pointers.get(1).getPoints().setAll(right, level - 0.5 * em, right - 0.8 * em, level, right, level + 0.5 * em);
        double over = y(state.cup() + state.unsure());
        double under = y(state.cup() - state.unsure());
        band.setX(left);
        band.setWidth(right - left);
        band.setY(over);
        band.setHeight(Math.max(0, under - over));
        edge(bandTop, left, right, over);
        edge(bandBottom, left, right, under);
        boolean unsure = state.unsure() > 0;
        band.setVisible(unsure);
        bandTop.setVisible(unsure);
        bandBottom.setVisible(unsure);
    }

    private static void edge(Line line, double left, double right, double level) {
        line.setStartX(left);
        line.setEndX(right);
        line.setStartY(level);
        line.setEndY(level);
    }

    private void layoutSteps(double left, double right, double em) {
        int count = stepNames.size();
        double[] middles = new double[count + 1];
        middles[count] = y(state.cup());
        double x = left + 0.6 * em;
        double stride = ((left + right) / 2 - x) / Math.max(1, count);
        double level = y(state.stepsFrom());
        List<Double> corners = new ArrayList<>(List.of(left, level));
        for (int i = 0; i < count; i++) {
            double next = y(state.steps().get(i).cup());
            corners.addAll(List.of(x + i * stride, level, x + i * stride, next));
            level = next;
            middles[i] = next;
        }
        if (count > 0) {
            corners.addAll(List.of(x + count * stride, level));
        }
        stairs.getPoints().setAll(corners);
        stairsHalo.getPoints().setAll(corners);
        spread(middles, 1.5 * em, top + 0.4 * em, bottom - 0.4 * em);
        double names = right + 1.3 * em;
        leftAt(cupName, names, middles[count]);
        for (int i = 0; i < count; i++) {
            leftAt(stepNames.get(i), names, middles[i]);
            Line leader = leaders.get(i);
            leader.setStartX(right);
            leader.setStartY(y(state.steps().get(i).cup()));
            leader.setEndX(names - 0.2 * em);
            leader.setEndY(middles[i]);
        }
    }

    private void layoutLeft(double left, double em) {
        double level = y(state.hull());
        leftAt(hullName, pole(left, em) + 2.5 * em, level - 0.95 * em);
        if (state.climb().isEmpty()) {
            return;
        }
        DepthState.Climb climb = state.climb().get();
        double from = y(climb.from());
        // A short climb still needs an arrow that can be seen.
        double to = Math.min(y(climb.to()), from - 1.4 * em);
        double x = left - 0.8 * em;
        climbShaft.setStartX(x);
        climbShaft.setEndX(x);
        climbShaft.setStartY(from);
        climbShaft.setEndY(to + 0.6 * em);
        climbHead.getPoints().setAll(x, to, x - 0.5 * em, to + 0.9 * em, x + 0.5 * em, to + 0.9 * em);
        size(climbName);
        double half = climbName.getHeight() / 2;
        double below = Math.max(level + half + 0.3 * em, (from + to) / 2);
        rightAt(climbName, x - 0.9 * em, below + half < getHeight() - 0.3 * em ? below : level - 2 * em - half);
    }

    @Override
    protected double computePrefWidth(double height) {
        return 30 * em();
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
        return 22 * em();
    }

    /** The colour of a grey at a depth, for tests and keys beside the gauge. */
    static Color greyAt(double lightness) {
        return paint(Shade.grey(lightness));
    }
}
