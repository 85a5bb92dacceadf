package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.shape.Line;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.QuadCurveTo;
import javafx.scene.shape.Rectangle;
import tintwright.window.picture.Room.Box;

/**
 * Lightness as depth. The tank is filled with the greys it stands for; the hull is a mark with a pennant on the left,
 * the cup a float, doses are stairs from it to the right, and white is an arrow back up.
 */
public final class DepthGauge extends Picture {
    /** Half the height of the float, text sizes. */
    private static final double FLOAT = 0.95;

    private DepthState state;
    private DepthScale scale;
    private double left;
    private double right;

    private final Rectangle well = styled(new Rectangle(), "well");
    private final Path tear = styled(new Path(), "tear");
    private final Path surface = styled(new Path(), "surface");
    private final Rectangle band = styled(new Rectangle(), "band");
    private final Line bandTop = styled(new Line(), "band-edge");
    private final Line bandBottom = styled(new Line(), "band-edge");
    private final Line mark = styled(new Line(), "mark");
    private final Line markHalo = styled(new Line(), "mark-halo");
    private final Polygon pennant = styled(new Polygon(), "outlined");
    private final Polygon cupFloat = styled(new Polygon(), "outlined");
    private final List<Polygon> pointers = List.of(styled(new Polygon(), "pointer"), styled(new Polygon(), "pointer"));
    private final DepthStairs stairs = new DepthStairs();
    private final Line climbShaft = styled(new Line(), "climb");
    private final Polygon climbHead = styled(new Polygon(), "climb-head");
    private final Label whiteName = text("");
    private final Label hullName = text("", "picture-name");
    private final Label climbName = text("", "picture-name");
    private final Label darker = text("darker");

    public DepthGauge() {
        super("depth-gauge");
    }

    public void show(DepthState next) {
        state = next;
        whiteName.setText(say("White %.0f", next.white()));
        hullName.setText(say("Hull %.1f", next.hull()));
        pennant.setFill(paint(next.hullShade()));
        cupFloat.setFill(paint(next.cupShade()));
        List<Node> nodes = new ArrayList<>(List.of(
                well, tear, band, bandTop, bandBottom, surface, markHalo, mark, pennant, whiteName, hullName, darker));
        nodes.addAll(stairs.show(next));
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

    @Override
    protected void layoutChildren() {
        if (state == null) {
            return;
        }
        double em = em();
        double top = Math.round(1.9 * em);
        double bottom = getHeight() - 1.6 * em;
        scale = new DepthScale(state, top, bottom);
        if (scale.y(state.cup()) - FLOAT * em < top - 0.45 * em) {
            // A cup that still floats in the surface needs room below the white's name.
            top = Math.round(2.8 * em);
            scale = new DepthScale(state, top, bottom);
        }
        size(hullName);
        boolean beside = divide(em);
        layoutWell(top, bottom, em);
        layoutMark(em);
        layoutFloat(em);
        layoutLeft(beside, em);
        stairs.layout(
                state,
                scale,
                new Box(left, top, right - left, bottom - top),
                floatMiddle(em),
                getWidth(),
                getHeight(),
                em);
    }

    /**
     * Divides the width between the names on the left, the tank and the names on the right.
     *
     * @return true when the hull's name has room beside its pennant
     */
    private boolean divide(double em) {
        boolean stepped = !state.steps().isEmpty();
        double least = (stepped ? 6 : 4.4) * em;
        double usual = (stepped ? 8.5 : 6) * em;
        double most = (stepped ? 15 : 9) * em;
        double names = stairs.wantedWidth() + DepthStairs.AWAY * em + 0.5 * em;
        double bare = 0.6 * em + Math.max(2.3 * em, hullName.getWidth()) + 1.9 * em;
        climbName.applyCss();
        double climb = state.climb().isPresent() ? Math.min(7 * em, climbName.prefWidth(-1) + 0.4 * em) : 0;
        // The climb's words may stand in more lines; those of the doses come first.
        double slim = Math.max(bare, Math.min(climb + 2.5 * em, getWidth() - least - Math.min(names, 11 * em)));
        double ample = Math.max(slim, hullName.getWidth() + 4.9 * em);
        boolean beside = ample + usual + names <= getWidth();
        double side = beside ? ample : slim;
        double tank = Math.max(least, Math.min(most, getWidth() - side - names));
        double spare = Math.max(0, getWidth() - side - names - tank);
        left = Math.round(side + spare / 2);
        right = left + Math.round(tank);
        return beside;
    }

    private void layoutWell(double top, double bottom, double em) {
        well.setX(left);
        well.setY(top);
        well.setWidth(right - left);
        well.setHeight(bottom - top);
        well.setFill(scale.greys());
        surface.getElements().setAll(waves(scale.y(state.white()), left - 1.2 * em, right + 1.2 * em, 0.35 * em));
        tear.setVisible(scale.folds());
        double fold = scale.foldY() - 0.7 * em;
        tear.getElements().setAll(waves(fold, left - 0.2 * em, right + 0.2 * em, 0.5 * em));
        List<javafx.scene.shape.PathElement> back =
                waves(fold + 0.45 * em, left - 0.2 * em, right + 0.2 * em, 0.5 * em);
        tear.getElements().add(new LineTo(right + 0.2 * em, fold + 0.45 * em));
        for (int i = back.size() - 1; i > 0; i--) {
            QuadCurveTo curve = (QuadCurveTo) back.get(i);
            MoveTo start = (MoveTo) back.get(0);
            double toX = i == 1 ? start.getX() : ((QuadCurveTo) back.get(i - 1)).getX();
            tear.getElements().add(new QuadCurveTo(curve.getControlX(), curve.getControlY(), toX, start.getY()));
        }
        middleAt(whiteName, (left + right) / 2, Math.min(top - 1.05 * em, 0.9 * em));
        middleAt(darker, (left + right) / 2, bottom + 0.8 * em);
    }

    private static List<javafx.scene.shape.PathElement> waves(double level, double from, double to, double lift) {
        List<javafx.scene.shape.PathElement> elements = new ArrayList<>(List.of(new MoveTo(from, level)));
        double wave = (to - from) / 6;
        for (int i = 0; i < 6; i++) {
            elements.add(new QuadCurveTo(
                    from + (i + 0.5) * wave, level + (i % 2 == 0 ? -lift : lift), from + (i + 1) * wave, level));
        }
        return elements;
    }

    private void layoutMark(double em) {
        double level = Math.round(scale.y(state.hull()));
        for (Line line : List.of(markHalo, mark)) {
            line.setStartX(0.6 * em);
            line.setEndX(right);
            line.setStartY(level);
            line.setEndY(level);
        }
        double pole = 0.6 * em;
        pennant.getPoints().setAll(pole, level - 1.7 * em, pole + 2.1 * em, level - 0.9 * em, pole, level - 0.1 * em);
    }

    /** The float stands where the stairs start, or in the middle when there are none. */
    private double floatMiddle(double em) {
        return state.steps().isEmpty() ? (left + right) / 2 : left + 2.2 * em;
    }

    private void layoutFloat(double em) {
        double middle = floatMiddle(em);
        double level = scale.y(state.cup());
        double rim = 1.35 * em;
        double foot = 0.95 * em;
        double tall = FLOAT * em;
        // A cup seen from the side; its middle stands at its lightness, where the two pointers are.
        cupFloat.getPoints()
                .setAll(
                        middle - rim,
                        level - tall,
                        middle + rim,
                        level - tall,
                        middle + foot,
                        level + tall,
                        middle - foot,
                        level + tall);
        pointers.get(0).getPoints().setAll(left, level - 0.5 * em, left + 0.8 * em, level, left, level + 0.5 * em);
        pointers.get(1).getPoints().setAll(right, level - 0.5 * em, right - 0.8 * em, level, right, level + 0.5 * em);
        double over = scale.y(state.cup() + state.unsure());
        double under = scale.y(state.cup() - state.unsure());
        band.setX(left);
        band.setWidth(right - left);
        band.setY(over);
        band.setHeight(Math.max(0, under - over));
        edge(bandTop, over);
        edge(bandBottom, under);
        boolean unsure = state.unsure() > 0;
        band.setVisible(unsure);
        bandTop.setVisible(unsure);
        bandBottom.setVisible(unsure);
    }

    private void edge(Line line, double level) {
        line.setStartX(left);
        line.setEndX(right);
        line.setStartY(level);
        line.setEndY(level);
    }

    /** The hull's name by its pennant, and the words of the climb where they are free of it. */
    private void layoutLeft(boolean beside, double em) {
        double level = mark.getStartY();
        double edge = 0.3 * em;
        double climbX = left - 0.9 * em;
        Room room = new Room(new Box(edge, edge, climbX - 0.6 * em - edge, getHeight() - 2 * edge));
        room.take(new Box(0, level - 0.25 * em, left, 0.5 * em));
        room.take(new Box(0.4 * em, level - 1.85 * em, 2.5 * em, 1.8 * em));
        double wide = hullName.getWidth();
        double tall = hullName.getHeight();
        List<Box> places = new ArrayList<>();
        if (beside) {
            places.add(new Box(3.1 * em, level - 0.3 * em - tall, wide, tall));
        }
        places.add(new Box(0.6 * em, level + 0.3 * em, wide, tall));
        places.add(new Box(0.6 * em, level - 1.9 * em - tall, wide, tall));
        put(hullName, room.first(places));
        state.climb().ifPresent(climb -> layoutClimb(climb, climbX, room, em));
    }

    private void layoutClimb(DepthState.Climb climb, double x, Room room, double em) {
        double from = scale.y(climb.from());
        // A short climb still needs an arrow that can be seen.
        double to = Math.min(scale.y(climb.to()), from - 1.4 * em);
        climbShaft.setStartX(x);
        climbShaft.setEndX(x);
        climbShaft.setStartY(from);
        climbShaft.setEndY(to + 0.6 * em);
        climbHead.getPoints().setAll(x, to, x - 0.5 * em, to + 0.9 * em, x + 0.5 * em, to + 0.9 * em);
        fit(climbName, x - 1.2 * em);
        double wide = climbName.getWidth();
        double tall = climbName.getHeight();
        List<Box> places = new ArrayList<>();
        for (double away = 0; away < getHeight(); away += 0.3 * em) {
            for (int side : new int[] {1, -1}) {
                places.add(new Box(x - 0.7 * em - wide, (from + to) / 2 + side * away - tall / 2, wide, tall));
            }
        }
        put(climbName, room.first(places));
    }

    private static void put(Label label, Optional<Box> box) {
        label.setVisible(box.isPresent());
        box.ifPresent(found -> label.relocate(found.x(), found.y()));
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
        return 20 * em();
    }
}
