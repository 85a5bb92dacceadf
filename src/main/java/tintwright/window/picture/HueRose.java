package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Path;
import javafx.scene.shape.ArcTo;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.Polygon;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;

/**
 * Which way the cup must swing: neutral in the middle, the hull a diamond, the cup a ring, an arrow for the pull of
 * each tint and a dashed outline around what today's tints reach. The rim carries the hues it stands for, and words.
 */
public final class HueRose extends Picture {
    private static final int RIM_PIECES = 48;
    private static final double[] RING_STEPS = {1, 2, 5, 10, 20, 50};

    private RoseState state;
    private double middleX;
    private double middleY;
    private double unit;

    private final List<Path> rim = new ArrayList<>();
    private final Circle[] rings = {styled(new Circle(), "ring"), styled(new Circle(), "ring"),
        styled(new Circle(), "ring")};
    private final Label[] ringNames = {text("", "picture-small"), text("", "picture-small"), text("", "picture-small")};
    private final Line across = styled(new Line(), "ring");
    private final Line upright = styled(new Line(), "ring");
    private final Polygon reach = styled(new Polygon(), "reach");
    private final Circle unsure = styled(new Circle(), "band-round");
    private final Line swing = styled(new Line(), "swing");
    private final Polygon swingHead = styled(new Polygon(), "climb-head");
    private final Polygon hull = styled(new Polygon(), "outlined");
    private final Circle cup = styled(new Circle(), "outlined");
    private final Label hullName = text("Hull", "picture-name", "picture-clear");
    private final Label cupName = text("", "picture-name", "picture-clear");
    private final Label[] winds = {wind("redder"), wind("yellower"), wind("greener"), wind("bluer")};
    private final List<Line> shafts = new ArrayList<>();
    private final List<Polygon> heads = new ArrayList<>();
    private final List<Line> leaders = new ArrayList<>();
    private final List<Label> tints = new ArrayList<>();

    public HueRose() {
        super("hue-rose");
        for (int i = 0; i < RIM_PIECES; i++) {
            double hue = Math.toRadians((i + 0.5) * 360.0 / RIM_PIECES);
            Path piece = styled(new Path(), "rim");
            piece.setFill(paint(Shade.of(new Lab(68, 30 * Math.cos(hue), 30 * Math.sin(hue), Viewing.D65_2))));
            rim.add(piece);
        }
    }

    private static Label wind(String word) {
        return text(word, "picture-small", "picture-clear");
    }

    public void show(RoseState next) {
        state = next;
        List<Node> nodes = new ArrayList<>(rim);
        nodes.addAll(List.of(rings));
        nodes.addAll(List.of(across, upright));
        nodes.addAll(List.of(ringNames));
        if (next.reach().size() > 2) {
            nodes.add(reach);
        }
        shafts.clear();
        leaders.clear();
        heads.clear();
        tints.clear();
        for (RoseState.Pull pull : next.pulls()) {
            Line shaft = styled(new Line(), "pull");
            Polygon head = styled(new Polygon(), "pull-head");
            Label name = text(pull.tint(), "picture-small", "picture-clear");
            Line leader = styled(new Line(), "thread");
            leaders.add(leader);
            shafts.add(shaft);
            heads.add(head);
            tints.add(name);
            nodes.addAll(List.of(leader, shaft, head, name));
        }
        if (next.unsure() > 0) {
            nodes.add(unsure);
        }
        nodes.addAll(List.of(winds));
        nodes.addAll(List.of(swing, swingHead, cup, hull, hullName, cupName));
        hull.setFill(paint(next.hullShade()));
        cup.setFill(paint(next.cupShade()));
        cupName.setText(next.cupName());
        draw(nodes, words());
    }

    private String words() {
        StringBuilder said = new StringBuilder("Hue rose. ").append(say("The hull lies at %s, %s at %s.",
                place(state.hull()), state.cupName().toLowerCase(Locale.ROOT), place(state.cup())));
        double a = state.hull().a() - state.cup().a();
        double b = state.hull().b() - state.cup().b();
        if (Math.hypot(a, b) >= 0.1) {
            said.append(say(" The cup must swing %.1f %s and %.1f %s.", Math.abs(a), a > 0 ? "redder" : "greener",
                    Math.abs(b), b > 0 ? "yellower" : "bluer"));
        } else {
            said.append(" The hue agrees.");
        }
        for (RoseState.Pull pull : state.pulls()) {
            said.append(say(" %s pulls %s.", pull.tint(), direction(pull.a(), pull.b())));
        }
        return said.toString();
    }

    private static String place(RoseState.Point point) {
        return say("a* %.1f, b* %.1f", point.a(), point.b());
    }

    private static String direction(double a, double b) {
        String first = a > 0 ? "redder" : "greener";
        String second = b > 0 ? "yellower" : "bluer";
        if (Math.abs(a) > 2.4 * Math.abs(b)) {
            return first;
        }
        return Math.abs(b) > 2.4 * Math.abs(a) ? second : first + " and " + second;
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    @Override
    protected void layoutChildren() {
        if (state == null) {
            return;
        }
        double em = em();
        middleX = Math.round(getWidth() / 2);
        middleY = Math.round(getHeight() / 2);
        double outer = Math.max(4 * em, Math.min(getWidth() / 2 - 6.0 * em, getHeight() / 2 - 0.8 * em));
        double inner = outer - 0.9 * em;
        double far = 1;
        far = Math.max(far, Math.max(state.hull().chroma(), state.cup().chroma() + state.unsure()));
        for (RoseState.Point point : state.reach()) {
            far = Math.max(far, Math.min(point.chroma(), 3 * Math.max(4, state.hull().chroma())));
        }
        unit = inner / (1.18 * far);
        layoutRim(inner, outer);
        layoutRings(inner, far, em);
        layoutReach(inner);
        layoutMarks(em);
        layoutPulls(inner, em);
        nameTints(outer, em);
        rightAt(winds[0], middleX + inner - 0.2 * em, middleY);
        middleAt(winds[1], middleX, middleY - inner + 0.8 * em);
        leftAt(winds[2], middleX - inner + 0.2 * em, middleY);
        middleAt(winds[3], middleX, middleY + inner - 0.8 * em);
        for (int i = 0; i < winds.length; i++) {
            stepAside(winds[i], i % 2 == 1 ? 1 : 0, i % 2 == 0 ? 1 : 0, 1.3 * em);
        }
    }

    /** A word the hull or the cup would cover moves along the rim until it can be read. */
    private void stepAside(Label wind, int sideways, int upright, double step) {
        double x = wind.getLayoutX();
        double y = wind.getLayoutY();
        for (int steps : new int[] {0, 1, -1, 2, -2}) {
            wind.relocate(x + sideways * steps * step, y + upright * steps * step);
            if (Stream.of(hull, cup, hullName, cupName).noneMatch(mark ->
                    mark.getBoundsInParent().intersects(wind.getBoundsInParent()))) {
                return;
            }
        }
        wind.relocate(x, y);
    }

    private void layoutRim(double inner, double outer) {
        for (int i = 0; i < RIM_PIECES; i++) {
            double from = Math.toRadians(i * 360.0 / RIM_PIECES);
            double to = Math.toRadians((i + 1) * 360.0 / RIM_PIECES);
            rim.get(i).getElements().setAll(
                    new MoveTo(middleX + outer * Math.cos(from), middleY - outer * Math.sin(from)),
                    new ArcTo(outer, outer, 0, middleX + outer * Math.cos(to), middleY - outer * Math.sin(to), false,
                            false),
                    new LineTo(middleX + inner * Math.cos(to), middleY - inner * Math.sin(to)),
                    new ArcTo(inner, inner, 0, middleX + inner * Math.cos(from), middleY - inner * Math.sin(from),
                            false, true),
                    new ClosePath());
        }
    }

    private void layoutRings(double inner, double far, double em) {
        double step = RING_STEPS[RING_STEPS.length - 1];
        for (double wanted : RING_STEPS) {
            if (wanted * 3.2 >= far) {
                step = wanted;
                break;
            }
        }
        for (int i = 0; i < rings.length; i++) {
            double radius = step * (i + 1) * unit;
            rings[i].setCenterX(middleX);
            rings[i].setCenterY(middleY);
            rings[i].setRadius(radius);
            boolean fits = radius < inner;
            rings[i].setVisible(fits);
            ringNames[i].setText(say("%.0f", step * (i + 1)));
            ringNames[i].setVisible(fits);
            middleAt(ringNames[i], middleX + radius * 0.7071, middleY + radius * 0.7071);
        }
        across.setStartX(middleX - inner);
        across.setEndX(middleX + inner);
        across.setStartY(middleY);
        across.setEndY(middleY);
        upright.setStartX(middleX);
        upright.setEndX(middleX);
        upright.setStartY(middleY - inner);
        upright.setEndY(middleY + inner);
    }

    private void layoutReach(double inner) {
        List<Double> corners = new ArrayList<>();
        for (RoseState.Point point : state.reach()) {
            double chroma = point.chroma();
            double keep = chroma * unit > inner ? inner / (chroma * unit) : 1;
            corners.add(x(point.a() * keep));
            corners.add(y(point.b() * keep));
        }
        reach.getPoints().setAll(corners);
    }

    private void layoutMarks(double em) {
        double hullX = x(state.hull().a());
        double hullY = y(state.hull().b());
        double cupX = x(state.cup().a());
        double cupY = y(state.cup().b());
        double size = 0.85 * em;
        hull.getPoints().setAll(hullX, hullY - size, hullX + size, hullY, hullX, hullY + size, hullX - size, hullY);
        cup.setCenterX(cupX);
        cup.setCenterY(cupY);
        cup.setRadius(0.7 * em);
        unsure.setCenterX(cupX);
        unsure.setCenterY(cupY);
        unsure.setRadius(state.unsure() * unit);
        double apart = Math.hypot(hullX - cupX, hullY - cupY);
        boolean far = apart > 2.2 * em;
        swing.setVisible(far);
        swingHead.setVisible(far);
        if (far) {
            double ux = (hullX - cupX) / apart;
            double uy = (hullY - cupY) / apart;
            swing.setStartX(cupX + ux * 0.7 * em);
            swing.setStartY(cupY + uy * 0.7 * em);
            swing.setEndX(hullX - ux * 1.5 * em);
            swing.setEndY(hullY - uy * 1.5 * em);
            head(swingHead, hullX - ux * 0.95 * em, hullY - uy * 0.95 * em, ux, uy, 0.75 * em);
        }
        double toCup = Math.atan2(cupY - hullY, cupX - hullX);
        beside(hullName, hullX, hullY, apart < 1 ? -Math.PI / 2 : toCup + Math.PI, 1.0 * em, em);
        List<Double> taken = new ArrayList<>();
        if (apart > 1) {
            taken.add(toCup + Math.PI);
        }
        for (RoseState.Pull pull : state.pulls()) {
            taken.add(Math.atan2(-pull.b(), pull.a()));
        }
        beside(cupName, cupX, cupY, widestGap(taken), 0.9 * em, em);
    }

    /** Puts a name beside a mark, on the side an angle points to. */
    private void beside(Label name, double x, double y, double angle, double radius, double em) {
        size(name);
        double away = radius + 0.45 * em;
        middleAt(name, x + Math.cos(angle) * (away + name.getWidth() / 2), y + Math.sin(angle) * (away + 0.4 * em));
    }

    /** @return the middle of the widest gap between angles; straight up when there is none */
    private static double widestGap(List<Double> angles) {
        if (angles.isEmpty()) {
            return -Math.PI / 2;
        }
        List<Double> sorted = new ArrayList<>();
        angles.forEach(angle -> sorted.add(Math.IEEEremainder(angle, 2 * Math.PI)));
        sorted.sort(null);
        double best = 0;
        double middle = 0;
        for (int i = 0; i < sorted.size(); i++) {
            double next = i + 1 < sorted.size() ? sorted.get(i + 1) : sorted.get(0) + 2 * Math.PI;
            if (next - sorted.get(i) > best) {
                best = next - sorted.get(i);
                middle = sorted.get(i) + best / 2;
            }
        }
        return middle;
    }

    private void layoutPulls(double inner, double em) {
        double strongest = 1e-9;
        for (RoseState.Pull pull : state.pulls()) {
            strongest = Math.max(strongest, Math.hypot(pull.a(), pull.b()));
        }
        double cupX = x(state.cup().a());
        double cupY = y(state.cup().b());
        for (int i = 0; i < shafts.size(); i++) {
            RoseState.Pull pull = state.pulls().get(i);
            double size = Math.hypot(pull.a(), pull.b());
            double ux = size < 1e-9 ? 0 : pull.a() / size;
            double uy = size < 1e-9 ? 0 : -pull.b() / size;
            // The root keeps weak pulls visible; the words carry the strength.
            double length = inner * 0.52 * Math.sqrt(size / strongest);
            double endX = cupX + ux * length;
            double endY = cupY + uy * length;
            shafts.get(i).setStartX(cupX + ux * 0.75 * em);
            shafts.get(i).setStartY(cupY + uy * 0.75 * em);
            shafts.get(i).setEndX(endX - ux * 0.4 * em);
            shafts.get(i).setEndY(endY - uy * 0.4 * em);
            head(heads.get(i), endX, endY, ux, uy, 0.55 * em);
            boolean visible = length > 1.2 * em;
            shafts.get(i).setVisible(visible);
            heads.get(i).setVisible(visible);
            tints.get(i).setVisible(visible);
            leaders.get(i).setVisible(visible);
            leaders.get(i).setStartX(endX);
            leaders.get(i).setStartY(endY);
        }
    }

    /** Puts the tints' names beside the rim, each on the side its arrow points to, with a line from its arrow. */
    private void nameTints(double outer, double em) {
        for (boolean onTheRight : new boolean[] {true, false}) {
            List<Integer> side = new ArrayList<>();
            for (int i = 0; i < tints.size(); i++) {
                if (tints.get(i).isVisible() && state.pulls().get(i).a() >= 0 == onTheRight) {
                    side.add(i);
                }
            }
            double[] middles = new double[side.size()];
            for (int k = 0; k < middles.length; k++) {
                RoseState.Pull pull = state.pulls().get(side.get(k));
                middles[k] = middleY - outer * pull.b() / Math.hypot(pull.a(), pull.b());
            }
            spread(middles, 1.35 * em, middleY - outer, middleY + outer);
            for (int k = 0; k < middles.length; k++) {
                nameTint(side.get(k), middles[k], onTheRight, outer, em);
            }
        }
    }

    private void nameTint(int index, double level, boolean onTheRight, double outer, double em) {
        Label name = tints.get(index);
        double up = Math.min(outer, Math.abs(level - middleY));
        double out = Math.sqrt(Math.max(0, outer * outer - up * up)) + 0.4 * em;
        if (onTheRight) {
            leftAt(name, middleX + out, level);
        } else {
            rightAt(name, middleX - out, level);
        }
        leaders.get(index).setEndX(onTheRight ? name.getLayoutX() : name.getLayoutX() + name.getWidth());
        leaders.get(index).setEndY(level);
    }

    private static void head(Polygon head, double tipX, double tipY, double ux, double uy, double size) {
        head.getPoints().setAll(tipX, tipY,
                tipX - ux * size * 1.4 - uy * size * 0.7, tipY - uy * size * 1.4 + ux * size * 0.7,
                tipX - ux * size * 1.4 + uy * size * 0.7, tipY - uy * size * 1.4 - ux * size * 0.7);
    }

    private double x(double a) {
        return middleX + a * unit;
    }

    private double y(double b) {
        return middleY - b * unit;
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
        return 16 * em();
    }

    @Override
    protected double computeMinWidth(double height) {
        return 22 * em();
    }
}
