package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import tintwright.window.picture.Room.Box;

/**
 * The doses as stairs in the tank, each with an arrow down or up and its words on the right. Where there is no room
 * for all the words, the last doses are counted together.
 */
final class DepthStairs {
    /** From the tank's edge to the words, in text sizes. */
    static final double AWAY = 2.3;
    /** A tank this dark needs a light line. */
    private static final double DARK = 50;

    private final Polyline halo = Picture.styled(new Polyline(), "stairs-halo");
    private final Polyline stairs = Picture.styled(new Polyline(), "stairs");
    private final Label cupName = Picture.text("", "picture-name");
    private final Line cupLeader = Picture.styled(new Line(), "leader");
    private final Label rest = Picture.text("", "picture-small");
    private final List<Label> names = new ArrayList<>();
    private final List<Line> treads = new ArrayList<>();
    private final List<Line> leaders = new ArrayList<>();
    private final List<Polygon> signs = new ArrayList<>();
    private final List<Polygon> heads = new ArrayList<>();
    private List<DepthState.Move> moves = List.of();

    /** @return what is drawn, the lowest first */
    List<Node> show(DepthState next) {
        cupName.setText(
                next.unsure() > 0
                        ? Picture.say("%s %.1f \u00b1 %.1f", next.cupName(), next.cup(), next.unsure())
                        : Picture.say("%s %.1f", next.cupName(), next.cup()));
        names.clear();
        treads.clear();
        leaders.clear();
        signs.clear();
        heads.clear();
        List<DepthState.Move> ways = new ArrayList<>();
        List<Node> nodes = new ArrayList<>(List.of(cupLeader, cupName, rest));
        double before = next.stepsFrom();
        for (DepthState.Step step : next.steps()) {
            String number = next.steps().size() > 1 ? (names.size() + 1) + "  " : "";
            names.add(Picture.text(number + step.words(), "picture-small"));
            treads.add(Picture.styled(new Line(), "tread", step.cup() < DARK ? "tread-light" : "tread-dark"));
            leaders.add(Picture.styled(new Line(), "leader"));
            signs.add(Picture.styled(new Polygon(), "sign"));
            heads.add(Picture.styled(new Polygon(), "pointer"));
            ways.add(step.after(before));
            before = step.cup();
        }
        moves = ways;
        nodes.addAll(treads);
        nodes.addAll(leaders);
        if (!names.isEmpty()) {
            nodes.addAll(List.of(halo, stairs));
        }
        nodes.addAll(heads);
        nodes.addAll(signs);
        nodes.addAll(names);
        return nodes;
    }

    /** @return width of the longest words in one line */
    double wantedWidth() {
        Picture.size(cupName);
        double wide = cupName.getWidth();
        for (Label name : names) {
            name.applyCss();
            wide = Math.max(wide, name.prefWidth(-1));
        }
        return wide;
    }

    void layout(
            DepthState state, DepthScale scale, Box tank, double floatMiddle, double width, double height, double em) {
        double right = tank.x() + tank.width();
        layoutStairs(state, scale, tank, floatMiddle, em);
        double x = right + AWAY * em;
        double room = Math.max(2 * em, width - x - 0.4 * em);
        Picture.fit(cupName, room);
        names.forEach(name -> Picture.fit(name, room));
        int shown = names.size();
        double[] middles = stacked(state, scale, shown, height, em);
        while (middles.length == 0 && shown > 0) {
            shown--;
            int left = names.size() - shown;
            rest.setText(
                    shown == 0
                            ? Picture.say("%d %s", left, left == 1 ? "dose" : "doses")
                            : Picture.say("and %d more", left));
            Picture.fit(rest, room);
            middles = stacked(state, scale, shown, height, em);
        }
        boolean merged = shown < names.size();
        rest.setVisible(merged);
        for (int i = 0; i < names.size(); i++) {
            boolean there = i < shown;
            names.get(i).setVisible(there);
            signs.get(i).setVisible(there || i == shown);
            leaders.get(i).setVisible(there || i == shown);
            treads.get(i).setVisible(there || i == shown);
            if (there || i == shown) {
                Label name = there ? names.get(i) : rest;
                double middle = middles[i];
                name.relocate(x, middle - name.getHeight() / 2);
                sign(signs.get(i), moves.get(i), x - 0.75 * em, middle, 0.36 * em);
                line(leaders.get(i), right, scale.y(state.steps().get(i).cup()), x - 1.3 * em, middle);
            }
        }
        double middle = middles.length == 0 ? scale.y(state.cup()) : middles[middles.length - 1];
        cupName.relocate(
                x,
                Math.max(
                        0.3 * em, Math.min(height - cupName.getHeight() - 0.3 * em, middle - cupName.getHeight() / 2)));
        line(cupLeader, right, scale.y(state.cup()), x - 0.3 * em, middle);
    }

    /** @return middles of the words shown, then of the rest when there is one, then of the cup's; empty if too many */
    private double[] stacked(DepthState state, DepthScale scale, int shown, double height, double em) {
        boolean merged = shown < names.size();
        int count = shown + (merged ? 1 : 0) + 1;
        double[] middles = new double[count];
        double[] heights = new double[count];
        for (int i = 0; i < shown; i++) {
            middles[i] = scale.y(state.steps().get(i).cup());
            // Doses at nearly one depth are named in the order they go in.
            if (i > 0 && Math.abs(middles[i] - middles[i - 1]) < em) {
                middles[i] = middles[i - 1] + 0.01;
            }
            heights[i] = names.get(i).getHeight();
        }
        if (merged) {
            middles[shown] = scale.y(state.steps().get(shown).cup());
            heights[shown] = rest.getHeight();
        }
        middles[count - 1] = scale.y(state.cup());
        heights[count - 1] = cupName.getHeight();
        return Room.stack(middles, heights, 0.2 * em, 0.3 * em, height - 0.3 * em) ? middles : new double[0];
    }

    private void layoutStairs(DepthState state, DepthScale scale, Box tank, double floatMiddle, double em) {
        int count = names.size();
        if (count == 0) {
            return;
        }
        double right = tank.x() + tank.width();
        double start = floatMiddle + 1.9 * em;
        double stride = (right - 0.5 * em - start) / count;
        double level = scale.y(state.stepsFrom());
        boolean fromCup = Math.abs(state.stepsFrom() - state.cup()) < 1e-6;
        List<Double> corners = new ArrayList<>(List.of(fromCup ? floatMiddle + em : tank.x(), level));
        for (int i = 0; i < count; i++) {
            double at = start + i * stride;
            double next = scale.y(state.steps().get(i).cup());
            corners.addAll(List.of(at, level, at, next));
            boolean room = Math.abs(next - level) > 1.1 * em;
            heads.get(i).setVisible(room);
            sign(heads.get(i), moves.get(i), at, next + (next > level ? -0.4 : 0.4) * em, 0.4 * em);
            line(treads.get(i), at + stride, next, right, next);
            level = next;
        }
        corners.addAll(List.of(right - 0.5 * em, level));
        stairs.getPoints().setAll(corners);
        halo.getPoints().setAll(corners);
    }

    private static void sign(Polygon sign, DepthState.Move move, double x, double y, double size) {
        switch (move) {
            case DOWN -> sign.getPoints().setAll(x - size, y - size, x + size, y - size, x, y + size);
            case UP -> sign.getPoints().setAll(x - size, y + size, x + size, y + size, x, y - size);
            case LEVEL ->
                sign.getPoints()
                        .setAll(
                                x - size,
                                y - size / 4,
                                x + size,
                                y - size / 4,
                                x + size,
                                y + size / 4,
                                x - size,
                                y + size / 4);
        }
    }

    private static void line(Line line, double x1, double y1, double x2, double y2) {
        line.setStartX(x1);
        line.setStartY(y1);
        line.setEndX(x2);
        line.setEndY(y2);
    }
}
