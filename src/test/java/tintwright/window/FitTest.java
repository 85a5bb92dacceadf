package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import tintwright.HandClock;
import tintwright.fill.repair.CountersunkHole;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairLine;
import tintwright.window.frame.Step;
import tintwright.window.pieces.Cards;
import tintwright.window.pieces.Look;

/** Every station at every size a person may choose: no words cut, nothing on top of another, nothing out of reach. */
class FitTest {
    /** Half a pixel of rounding on either side. */
    private static final double SLACK = 1;

    private record Size(double width, double height, double text) {}

    private static final List<Size> SIZES =
            List.of(new Size(1280, 800, 1), new Size(1024, 700, 1), new Size(1280, 800, 2), new Size(1024, 700, 2));

    @Test
    void noStationCutsItsWordsOrLaysOneThingOnAnother() {
        Set<String> wrong = new LinkedHashSet<>();
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(Clock.systemUTC());
            moreHoles(desk);
            Scene scene = scene(desk);
            for (Size size : SIZES) {
                bring(desk, scene, size);
                for (Step step : Step.values()) {
                    desk.shell().stepProperty().set(step);
                    check(scene, size + " " + step, wrong);
                }
            }
            return null;
        });
        assertEquals("", String.join("\n", wrong));
    }

    @Test
    void aCupThatWentTooDarkAndItsLogFitToo() {
        Set<String> wrong = new LinkedHashSet<>();
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(Clock.systemUTC());
            desk.cup().begin();
            desk.cup().accept();
            desk.cup().alsoWeighed("soot-black", "1.2");
            desk.cup()
                    .read("57.6", "-8.2", "1.5", tintwright.colour.Viewing.D65_10, tintwright.reading.FilmState.CURED);
            desk.log().doneWithCup();
            Scene scene = scene(desk);
            for (Size size : SIZES) {
                bring(desk, scene, size);
                for (Step step : List.of(Step.CUP, Step.FILL, Step.LOG)) {
                    desk.shell().stepProperty().set(step);
                    check(scene, "too dark, " + size + " " + step, wrong);
                }
            }
            return null;
        });
        assertEquals("", String.join("\n", wrong));
    }

    /** Bigger, smaller and bigger again: a page keeps nothing of the size that it had. */
    @Test
    void runningTimesFitAtEveryStation() {
        Set<String> wrong = new LinkedHashSet<>();
        Stagehand.onScreen(() -> {
            HandClock clock = HandClock.standing("2026-05-04T09:00:00Z");
            Desk desk = Desks.demo(clock);
            moreHoles(desk);
            desk.fill().catalysed(1);
            Scene scene = scene(desk);
            for (int minutes : new int[] {0, 10, 20, 60}) {
                clock.move(java.time.Duration.ofMinutes(minutes));
                desk.fill().timers().tick();
                for (Size size : SIZES) {
                    bring(desk, scene, size);
                    for (Step step : List.of(Step.SHELF, Step.CUP, Step.FILL)) {
                        desk.shell().stepProperty().set(step);
                        check(scene, minutes + " min later, " + size + " " + step, wrong);
                    }
                }
            }
            return null;
        });
        assertEquals("", String.join("\n", wrong));
    }

    @Test
    void aPageHasOneScrollBarAtMostAndWhatTheEyeSeesHasNone() {
        Set<String> wrong = new LinkedHashSet<>();
        List<Size> sizes = new ArrayList<>(SIZES);
        sizes.add(1, new Size(1366, 768, 1));
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(Clock.systemUTC());
            moreHoles(desk);
            Scene scene = scene(desk);
            for (Size size : sizes) {
                bring(desk, scene, size);
                for (Step step : Step.values()) {
                    desk.shell().stepProperty().set(step);
                    atMost(1, scene, size + " " + step, wrong);
                }
            }
            desk.cup().begin();
            desk.cup().accept();
            desk.shell().stepProperty().set(Step.CUP);
            for (Size size : sizes) {
                bring(desk, scene, size);
                atMost(1, scene, size + " cup begun", wrong);
            }
            ((javafx.scene.control.Button) scene.getRoot().lookup("#eye-now")).fire();
            for (Size size : sizes) {
                bring(desk, scene, size);
                atMost(size.text() > 1 ? 1 : 0, scene, size + " eye", wrong);
            }
            Desk trying = Desks.trying(Desks.demo(Clock.systemUTC()));
            Scene row = scene(trying);
            trying.shell().stepProperty().set(Step.CUP);
            bars(row);
            ((javafx.scene.control.Button) row.getRoot().lookup("#eye-now")).fire();
            for (Size size : sizes) {
                bring(trying, row, size);
                atMost(size.text() > 1 ? 1 : 0, row, size + " eye, a row of trial dabs", wrong);
                check(row, size + " eye, a row of trial dabs", wrong);
            }
            return null;
        });
        assertEquals("", String.join("\n", wrong));
    }

    private static void moreHoles(Desk desk) {
        desk.job()
                .change(job -> job.filling(job.fill()
                        .plus(new RepairLine("old cleat holes", new CountersunkHole(5, 9, 2, 6, 0), Lie.VERTICAL, 8))));
    }

    /** One desk is brought to each size in turn, as by a person who pulls at the window's edge. */
    private static void bring(Desk desk, Scene scene, Size size) {
        desk.shell().setTextShare(size.text());
        scene.getRoot().resize(size.width(), size.height());
    }

    private static void atMost(int allowed, Scene scene, String where, Set<String> wrong) {
        long bars = bars(scene);
        if (bars > allowed) {
            wrong.add(where + ": " + bars + " scroll bars");
        }
    }

    private static long bars(Scene scene) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        // The bars of a pane come and go with its second look at what is in it.
        scene.getRoot().layout();
        return scene.getRoot().lookupAll(".scroll-bar").stream()
                .filter(bar ->
                        ((javafx.scene.control.ScrollBar) bar).getOrientation() == javafx.geometry.Orientation.VERTICAL)
                .filter(Node::isVisible)
                .count();
    }

    /** The test itself must see what it looks for. */
    @Test
    void cutWordsAreSeenAsCut() {
        Stagehand.onScreen(() -> {
            javafx.scene.control.Label label = new javafx.scene.control.Label("far too long for its room");
            label.setMaxWidth(60);
            HBox box = new HBox(label);
            Scene scene = Stagehand.dressed(box, 300, 100, 1, false);
            Set<String> wrong = new LinkedHashSet<>();
            check(scene, "x", wrong);
            assertTrue(wrong.toString().contains("cut"), wrong.toString());
            return null;
        });
    }

    private static Scene scene(Desk desk) {
        Scene scene = new Scene(desk.view(), 1280, 800);
        Look.dress(scene);
        return scene;
    }

    private static void check(Scene scene, String where, Set<String> wrong) {
        // Sides are stacked only once their width is known, and need another layout then.
        for (int i = 0; i < 3; i++) {
            scene.getRoot().applyCss();
            scene.getRoot().layout();
        }
        look(scene.getRoot(), where, wrong);
    }

    private static void look(Node node, String where, Set<String> wrong) {
        if (!node.isVisible()
                || node.getStyleClass().contains("picture")
                || node.getStyleClass().contains("scroll-bar")) {
            return;
        }
        if (node instanceof Labeled labeled && labeled.getOpacity() > 0) {
            cut(labeled, where, wrong);
        }
        if (node instanceof HBox
                || node instanceof VBox
                || node instanceof GridPane
                || node instanceof FlowPane
                || node instanceof Cards) {
            apart((Parent) node, where, wrong);
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> look(child, where, wrong));
        }
    }

    private static void cut(Labeled labeled, String where, Set<String> wrong) {
        if (labeled.getText() == null || labeled.getText().isBlank()) {
            return;
        }
        for (Node child : labeled.getChildrenUnmodifiable()) {
            if (child instanceof Text text && !text.getText().equals(labeled.getText())) {
                wrong.add(where + ": cut: \"" + labeled.getText() + "\" to \"" + text.getText() + "\"");
            }
        }
        Bounds bounds = labeled.localToScene(labeled.getBoundsInLocal());
        Node frame = labeled.getParent();
        Node below = labeled;
        while (frame != null && !(frame instanceof ScrollPane)) {
            below = frame;
            frame = frame.getParent();
        }
        Node content = frame instanceof ScrollPane pane ? pane.getContent() : below;
        Bounds room = content.localToScene(content.getLayoutBounds());
        double right = frame instanceof ScrollPane pane
                ? pane.localToScene(pane.getLayoutBounds()).getMaxX()
                : room.getMaxX();
        if (bounds.getMinX() < room.getMinX() - SLACK
                || bounds.getMaxX() > right + SLACK
                || bounds.getMinY() < room.getMinY() - SLACK
                || bounds.getMaxY() > room.getMaxY() + SLACK) {
            wrong.add(where + ": out of reach: \"" + labeled.getText() + "\"");
        }
    }

    private static void apart(Parent parent, String where, Set<String> wrong) {
        List<Node> seen = new ArrayList<>();
        for (Node child : parent.getChildrenUnmodifiable()) {
            if (child.isVisible() && child.isManaged()) {
                seen.add(child);
            }
        }
        for (int i = 0; i < seen.size(); i++) {
            for (int j = i + 1; j < seen.size(); j++) {
                Bounds one = room(seen.get(i));
                Bounds other = room(seen.get(j));
                double across = Math.min(one.getMaxX(), other.getMaxX()) - Math.max(one.getMinX(), other.getMinX());
                double down = Math.min(one.getMaxY(), other.getMaxY()) - Math.max(one.getMinY(), other.getMinY());
                if (across > SLACK && down > SLACK) {
                    wrong.add(where + ": on top of one another: " + name(seen.get(i)) + " and " + name(seen.get(j)));
                }
            }
        }
    }

    /** What hangs out of something counts as it; a picture keeps its drawing inside by itself. */
    private static Bounds room(Node node) {
        return node.getStyleClass().contains("picture")
                ? node.localToParent(node.getLayoutBounds())
                : node.getBoundsInParent();
    }

    private static String name(Node node) {
        if (node instanceof Labeled labeled && labeled.getText() != null) {
            return "\"" + labeled.getText() + "\"";
        }
        String said = node.lookupAll(".label").stream()
                .map(label -> ((Labeled) label).getText())
                .filter(text -> text != null && !text.isBlank())
                .findFirst()
                .orElse("");
        return node.getClass().getSimpleName() + node.getStyleClass() + " \"" + said + "\"";
    }
}
