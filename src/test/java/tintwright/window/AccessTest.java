package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import org.junit.jupiter.api.Test;
import tintwright.bench.log.ShopLog;
import tintwright.fill.repair.CountersunkHole;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairLine;
import tintwright.window.frame.Step;
import tintwright.window.pieces.Look;

/**
 * Every station, every door of it: whatever can be pressed or typed into has a name that a screen reader says, and is
 * large enough for a glove (44 by 44, WCAG 2.1, 2.5.5) at the usual text.
 */
class AccessTest {
    private static final double TARGET = 44;
    /** A window's pixels are whole, an em is not. */
    private static final double SLACK = 0.5;

    @Test
    void everythingHasANameAndRoomForAGlove() {
        Set<String> wrong = new LinkedHashSet<>();
        Set<String> met = new LinkedHashSet<>();
        Stagehand.onScreen(() -> {
            Clock clock = Clock.systemUTC();
            Desk own =
                    new Desk(Desk.own(), Runnable::run, Runnable::run, clock, () -> ShopLog.demo(clock), Desks::learn);
            Desk demo = Desks.demo(clock);
            demo.job()
                    .change(job -> job.filling(job.fill()
                            .plus(new RepairLine("cleat holes", new CountersunkHole(5, 9, 2, 6, 0), Lie.VERTICAL, 8))));
            for (Desk desk : List.of(own, demo)) {
                Scene scene = new Scene(desk.view(), 1366, 768);
                Look.dress(scene);
                for (Step step : Step.values()) {
                    desk.shell().stepProperty().set(step);
                    laidOut(scene);
                    look(scene, step.title(), wrong, met);
                    for (Node door : scene.getRoot().lookupAll(".door-key")) {
                        ((ToggleButton) door).fire();
                        laidOut(scene);
                        look(scene, step.title() + ", " + ((ToggleButton) door).getText(), wrong, met);
                    }
                }
            }
            demo.cup().begin();
            demo.shell().stepProperty().set(Step.CUP);
            Scene scene = new Scene(demo.view(), 1366, 768);
            Look.dress(scene);
            laidOut(scene);
            look(scene, "Cup begun", wrong, met);
            return null;
        });
        assertTrue(met.size() > 60, "so many different things were looked at: " + met.size());
        assertEquals("", String.join("\n", wrong));
    }

    private static void laidOut(Scene scene) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
    }

    private static void look(Scene scene, String where, Set<String> wrong, Set<String> met) {
        for (Node node : all(scene)) {
            if (!(node instanceof ButtonBase || node instanceof TextField || node instanceof ComboBox)
                    || !inSight(node)) {
                continue;
            }
            Control control = (Control) node;
            String name = name(control);
            String which = where + ": " + control.getClass().getSimpleName() + " \"" + name + "\" " + control.getId();
            met.add(control.getClass().getSimpleName() + name);
            if (name.isBlank()) {
                wrong.add(which + " has no name");
            }
            // A box to tick is as wide as its words; its height is that of the line it stands in.
            boolean narrow = control.getWidth() < TARGET - SLACK && !(control instanceof CheckBox);
            if (control.getHeight() < TARGET - SLACK || narrow) {
                wrong.add(which + " is " + control.getWidth() + " by " + control.getHeight());
            }
        }
    }

    private static Set<Node> all(Scene scene) {
        Set<Node> nodes = new LinkedHashSet<>(scene.getRoot().lookupAll(".button"));
        for (String style : List.of(
                ".text-field",
                ".combo-box",
                ".check-box",
                ".choice-key",
                ".door-key",
                ".station-key",
                ".tool",
                ".eye-key")) {
            nodes.addAll(scene.getRoot().lookupAll(style));
        }
        return nodes;
    }

    private static String name(Control control) {
        String said = control.getAccessibleText();
        if (said != null && !said.isBlank()) {
            return said;
        }
        return control instanceof ButtonBase button && button.getText() != null ? button.getText() : "";
    }

    private static boolean inSight(Node node) {
        for (Node each = node; each != null; each = each.getParent()) {
            if (!each.isVisible()) {
                return false;
            }
        }
        return true;
    }
}
