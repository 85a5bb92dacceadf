package tintwright.window.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import tintwright.window.picture.Room.Box;

/**
 * The arrows of the tints and their names on both sides of the rose. Tints of the plan have strong arrows and bold
 * names; of the others the weakest give way first when there is no room for all.
 */
final class RosePulls {
    /** Arrows that would lie on each other are turned apart to this angle; the words say the true direction. */
    private static final double LEAST_APART = Math.toRadians(12);
    /** Share of the round that the longest arrow takes: short of the hull, or up to the rim when it is in the cup. */
    private static final double LONGEST = 0.56;

    private static final double LONGEST_NEAR = 0.8;

    private final List<Arm> arms = new ArrayList<>();
    private final Label[] winds = {Picture.text("redder", "picture-small"), Picture.text("greener", "picture-small")};

    /** One tint's arrow, its name and the line between them. */
    private static final class Arm {
        final RoseState.Pull pull;
        final Line shaft;
        final Polygon head;
        final Line leader = Picture.styled(new Line(), "thread");
        final Label name;
        double angle;
        double length;

        Arm(RoseState.Pull pull) {
            this.pull = pull;
            String strength = pull.planned() ? "pull-planned" : "pull-other";
            shaft = Picture.styled(new Line(), "pull", strength);
            head = Picture.styled(new Polygon(), "pull-head", strength);
            name = Picture.text(pull.tint(), "picture-small");
            if (pull.planned()) {
                name.getStyleClass().add("picture-name");
            }
        }

        boolean onTheRight() {
            return Math.cos(angle) >= 0;
        }

        void visible(boolean visible) {
            List.of(shaft, head, leader, name).forEach(node -> node.setVisible(visible));
        }
    }

    List<Node> show(RoseState state) {
        arms.clear();
        List<Node> nodes = new ArrayList<>();
        state.pulls().forEach(pull -> arms.add(new Arm(pull)));
        arms.forEach(arm -> nodes.add(arm.leader));
        arms.forEach(arm -> nodes.addAll(List.of(arm.shaft, arm.head)));
        arms.forEach(arm -> nodes.add(arm.name));
        nodes.addAll(List.of(winds));
        return nodes;
    }

    /** @return width of the longest name in one line */
    double longestName() {
        double longest = 0;
        List<Label> names = new ArrayList<>(List.of(winds));
        arms.forEach(arm -> names.add(arm.name));
        for (Label name : names) {
            name.applyCss();
            longest = Math.max(longest, name.prefWidth(-1));
        }
        return longest;
    }

    /** @return how many arrows there are to show at most */
    int count() {
        return arms.size();
    }

    /**
     * Draws the strongest arrows and names them.
     *
     * @param near  true when hull and cup stand in each other
     * @param most  at most so many arrows
     * @param room  takes what is drawn inside the rim
     * @return false when the names do not fit or a line crosses a name: try with fewer
     */
    boolean layout(Rim rim, boolean near, int most, double width, Room room) {
        double em = rim.em();
        double start = start(rim, near) + 0.8 * em;
        double strongest =
                arms.stream().mapToDouble(arm -> arm.pull.size()).max().orElse(0);
        List<Arm> shown = new ArrayList<>();
        for (Arm arm : arms) {
            // The root keeps weak pulls visible; all begin outside the cup's mark.
            double longest = rim.inner() * (near ? LONGEST_NEAR : LONGEST);
            arm.length = strongest <= 0 ? 0 : start + (longest - start) * Math.sqrt(arm.pull.size() / strongest);
            arm.angle = Math.atan2(arm.pull.b(), arm.pull.a());
            arm.visible(false);
            if (arm.pull.size() > RoseWords.HARDLY * strongest) {
                shown.add(arm);
            }
        }
        shown.sort(Comparator.comparing((Arm arm) -> !arm.pull.planned()).thenComparing(arm -> -arm.pull.size()));
        shown = new ArrayList<>(shown.subList(0, Math.min(most, shown.size())));
        fan(shown);
        shown.forEach(arm -> draw(arm, rim, start(rim, near), room));
        double names = Math.max(2 * em, width / 2 - rim.outer() - 0.8 * em);
        List<Box> boxes = new ArrayList<>();
        boolean fits = side(shown, true, rim, names, boxes) & side(shown, false, rim, names, boxes);
        return fits && clear(shown, boxes, rim);
    }

    /** Turns arrows that point nearly the same way apart. */
    private static void fan(List<Arm> shown) {
        List<Arm> round = new ArrayList<>(shown);
        round.sort(Comparator.comparingDouble(arm -> arm.angle));
        for (int pass = 0; pass < 12; pass++) {
            for (int i = 0; i < round.size() && round.size() > 1; i++) {
                Arm one = round.get(i);
                Arm next = round.get((i + 1) % round.size());
                double gap = next.angle - one.angle + (i + 1 == round.size() ? 2 * Math.PI : 0);
                if (gap < LEAST_APART) {
                    one.angle -= (LEAST_APART - gap) / 2;
                    next.angle += (LEAST_APART - gap) / 2;
                }
            }
        }
    }

    private static double start(Rim rim, boolean near) {
        return (near ? 1.3 : 0.75) * rim.em();
    }

    private static void draw(Arm arm, Rim rim, double start, Room room) {
        double em = rim.em();
        double ux = Math.cos(arm.angle);
        double uy = -Math.sin(arm.angle);
        double tipX = rim.x() + ux * arm.length;
        double tipY = rim.y() + uy * arm.length;
        double size = (arm.pull.planned() ? 0.7 : 0.5) * em;
        set(arm.shaft, rim.x() + ux * start, rim.y() + uy * start, tipX - ux * size, tipY - uy * size);
        Rim.head(arm.head, tipX, tipY, ux, uy, size);
        arm.visible(true);
        room.line(arm.shaft.getStartX(), arm.shaft.getStartY(), tipX, tipY);
        double backX = tipX - ux * size * 1.4;
        double backY = tipY - uy * size * 1.4;
        double half = size * 0.75;
        room.take(new Box(
                Math.min(tipX, backX - half * Math.abs(uy)),
                Math.min(tipY, backY - half * Math.abs(ux)),
                Math.max(tipX, backX + half * Math.abs(uy)) - Math.min(tipX, backX - half * Math.abs(uy)),
                Math.max(tipY, backY + half * Math.abs(ux)) - Math.min(tipY, backY - half * Math.abs(ux))));
    }

    /** Puts the names of one side and its direction beside the rim. */
    private boolean side(List<Arm> shown, boolean right, Rim rim, double names, List<Box> boxes) {
        List<Arm> side = shown.stream().filter(arm -> arm.onTheRight() == right).toList();
        List<Label> labels = new ArrayList<>(side.stream().map(arm -> arm.name).toList());
        labels.add(winds[right ? 0 : 1]);
        double[] middles = new double[labels.size()];
        double[] heights = new double[labels.size()];
        for (int i = 0; i < labels.size(); i++) {
            Picture.fit(labels.get(i), names);
            heights[i] = labels.get(i).getHeight();
            middles[i] = rim.y() - (i < side.size() ? rim.outer() * Math.sin(side.get(i).angle) : 0);
        }
        boolean fits = Room.stack(middles, heights, 0.15 * rim.em(), rim.y() - rim.outer(), rim.y() + rim.outer());
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            double up = Math.max(0, Math.abs(middles[i] - rim.y()) - heights[i] / 2);
            double out = Math.sqrt(Math.max(0, rim.outer() * rim.outer() - up * up)) + 0.35 * rim.em();
            double x = right ? rim.x() + out : rim.x() - out - label.getWidth();
            label.relocate(x, middles[i] - heights[i] / 2);
            boxes.add(new Box(x, middles[i] - heights[i] / 2, label.getWidth(), heights[i]));
            if (i < side.size()) {
                Arm arm = side.get(i);
                set(
                        arm.leader,
                        rim.x() + Math.cos(arm.angle) * arm.length,
                        rim.y() - Math.sin(arm.angle) * arm.length,
                        right ? x - 0.12 * rim.em() : x + label.getWidth() + 0.12 * rim.em(),
                        middles[i]);
            }
        }
        return fits;
    }

    private static boolean clear(List<Arm> shown, List<Box> boxes, Rim rim) {
        return shown.stream()
                .map(arm -> arm.leader)
                .noneMatch(line -> boxes.stream()
                        .anyMatch(box ->
                                box.crossedBy(line.getStartX(), line.getStartY(), line.getEndX(), line.getEndY())));
    }

    /** Keeps the lines to the names free of other words. */
    void keepLeaders(Room room) {
        for (Arm arm : arms) {
            if (arm.leader.isVisible()) {
                room.line(arm.leader.getStartX(), arm.leader.getStartY(), arm.leader.getEndX(), arm.leader.getEndY());
            }
        }
    }

    static void set(Line line, double x1, double y1, double x2, double y2) {
        line.setStartX(x1);
        line.setStartY(y1);
        line.setEndX(x2);
        line.setEndY(y2);
    }
}
