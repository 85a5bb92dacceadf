package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tintwright.bench.log.ShopLog;
import tintwright.colour.Geometry;
import tintwright.colour.Viewing;
import tintwright.cup.CupDeeds;
import tintwright.window.frame.Step;
import tintwright.window.pieces.Look;

/** The focus never falls on another station's key or on a tool, whatever is done and wherever. */
class FocusTest {
    private Desk desk;
    private Stage stage;

    @BeforeEach
    void open() {
        desk = Stagehand.onScreen(() -> Desks.demo(Clock.systemUTC()));
        stage = Stagehand.onScreen(() -> {
            Stage shown = new Stage();
            Scene scene = new Scene(desk.view(), 1280, 800);
            Look.dress(scene);
            shown.setScene(scene);
            shown.show();
            return shown;
        });
        settle();
    }

    @AfterEach
    void close() {
        Stagehand.onScreen(() -> {
            stage.close();
            return null;
        });
    }

    /** The toolkit moves the focus with the next pulse; a page that was just built takes another, or two. */
    private void settle() {
        for (int i = 0; i < 3; i++) {
            CountDownLatch pulse = new CountDownLatch(1);
            Runnable laidOut = pulse::countDown;
            Stagehand.onScreen(() -> {
                stage.getScene().addPostLayoutPulseListener(laidOut);
                Platform.requestNextPulse();
                return null;
            });
            try {
                assertTrue(pulse.await(60, TimeUnit.SECONDS), "the toolkit stands still");
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
            Stagehand.onScreen(() -> {
                stage.getScene().removePostLayoutPulseListener(laidOut);
                return null;
            });
        }
    }

    private void press(KeyCode code) {
        Stagehand.onScreen(() -> {
            Node at = stage.getScene().getFocusOwner() == null
                    ? stage.getScene().getRoot()
                    : stage.getScene().getFocusOwner();
            at.fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, true, false, false));
            return null;
        });
        settle();
    }

    /** Presses what says these words as a hand does that came to it by the keyboard. */
    private void press(String words) {
        Stagehand.onScreen(() -> {
            Node key = stage.getScene().getRoot().lookupAll(".button").stream()
                    .filter(node -> (words.equals(((Button) node).getText()) || words.equals(tip((Button) node)))
                            && shown(node))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no button \"" + words + "\""));
            key.requestFocus();
            assertEquals(key, stage.getScene().getFocusOwner());
            ((Button) key).fire();
            return null;
        });
        settle();
    }

    private static String tip(Button button) {
        return button.getTooltip() == null ? "" : button.getTooltip().getText();
    }

    private static boolean shown(Node node) {
        for (Node up = node; up != null; up = up.getParent()) {
            if (!up.isVisible()) {
                return false;
            }
        }
        return true;
    }

    private Node owner() {
        return Stagehand.onScreen(() -> stage.getScene().getFocusOwner());
    }

    private void check(String after) {
        Node owner = owner();
        assertNotNull(owner, after);
        String what = after + ": " + owner;
        assertTrue(!owner.getStyleClass().contains("station-key") || ((ToggleButton) owner).isSelected(), what);
        for (Node up = owner; up != null; up = up.getParent()) {
            assertTrue(!up.getStyleClass().contains("head-right"), what);
        }
    }

    @Test
    void aChangeOfStationByItsNumberBringsTheFocusThere() {
        for (Step from : Step.values()) {
            for (Step to : Step.values()) {
                press(KeyCode.valueOf("DIGIT" + (from.ordinal() + 1)));
                press(KeyCode.valueOf("DIGIT" + (to.ordinal() + 1)));
                assertEquals(to, desk.shell().stepProperty().get());
                check(from + " to " + to);
            }
        }
    }

    @Test
    void aCupThatIsBegunWaitsForWhatTheScaleShows() {
        press(KeyCode.valueOf("DIGIT" + (Step.CUP.ordinal() + 1)));
        press("Begin the cup");
        settle();
        assertEquals("really", owner().getId());
    }

    /** The answer comes from elsewhere a moment after the page does. */
    @Test
    void whatTheEyeSawIsFollowedByTheFieldForTheNextDose() {
        Queue<Runnable> worker = new ArrayDeque<>();
        Stagehand.onScreen(() -> {
            desk = new Desk(
                    Desk.demo(),
                    worker::add,
                    Runnable::run,
                    Clock.systemUTC(),
                    () -> ShopLog.demo(Clock.systemUTC()),
                    Desks::learn);
            stage.getScene().setRoot(desk.view());
            desk.shell().stepProperty().set(Step.CUP);
            return null;
        });
        work(worker);
        Stagehand.onScreen(() -> {
            desk.cup().begin();
            return null;
        });
        work(worker);
        while (Desks.kind(desk) == CupDeeds.Kind.WEIGH) {
            press("It is in");
            work(worker);
            assertTrue(Desks.kind(desk) != CupDeeds.Kind.WEIGH || "really".equals(owner().getId()), "" + owner());
        }
        assertEquals("do-it", owner().getId());
        press("Say what I see");
        Stagehand.onScreen(() -> {
            for (String answer : new String[] {"#eye-a-little-too-light", "#eye-none"}) {
                ((ToggleButton) stage.getScene().getRoot().lookup(answer)).fire();
            }
            return null;
        });
        press("That is what I see");
        work(worker);
        assertEquals(CupDeeds.Kind.WEIGH, Desks.kind(desk));
        assertEquals("really", owner().getId(), () -> "not " + owner());
    }

    private void work(Queue<Runnable> worker) {
        Stagehand.onScreen(() -> {
            while (!worker.isEmpty()) {
                worker.remove().run();
            }
            return null;
        });
        settle();
    }

    @Test
    void theLastReadingThatIsRemovedHandsTheFocusToItsNeighbour() {
        Stagehand.onScreen(() -> {
            desk.hull().newPlace("transom", "80", "-2.0", "6.5", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED);
            for (String lightness : new String[] {"80.2", "79.9", "80.1"}) {
                desk.hull().type(lightness, "-2.0", "6.5", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED);
            }
            desk.shell().stepProperty().set(Step.HULL);
            return null;
        });
        settle();
        remove(1);
        assertEquals("Remove reading 2", owner().getAccessibleText(), "the one that has moved up");
        remove(2);
        assertEquals("Remove reading 2", owner().getAccessibleText(), "the last one is gone");
    }

    @Test
    void enterGoesToTheNextSizeOfAHoleAndAfterTheLastOntoTheList() {
        press(KeyCode.valueOf("DIGIT" + (Step.FILL.ordinal() + 1)));
        assertEquals("repair-name", owner().getId());
        for (String[] typed : new String[][] {
            {"repair-name", "cleat holes", "size-hole"},
            {"size-hole", "5", "size-top"},
            {"size-top", "9", "size-depth"},
            {"size-depth", "6", "size-countersink"},
            {"size-countersink", "2", "repair-name"}
        }) {
            enter(typed[0], typed[1]);
            assertEquals(typed[2], owner().getId(), "after " + typed[0]);
        }
        assertEquals(1, desk.job().now().fill().lines().size());
    }

    private void enter(String id, String text) {
        Stagehand.onScreen(() -> {
            TextField field = (TextField) stage.getScene().getRoot().lookup("#" + id);
            assertEquals(field, stage.getScene().getFocusOwner());
            field.setText(text);
            field.fireEvent(new ActionEvent());
            return null;
        });
        settle();
    }

    private void remove(int index) {
        Stagehand.onScreen(() -> {
            Button key = (Button) stage.getScene().getRoot().lookupAll(".button").stream()
                    .filter(node -> ("Remove reading " + (index + 1)).equals(node.getAccessibleText()))
                    .findFirst()
                    .orElseThrow();
            key.requestFocus();
            key.fire();
            return null;
        });
        settle();
    }

    @Test
    void deedsAtEveryStationLeaveTheFocusThere() {
        press(KeyCode.DIGIT5);
        press("Begin the cup");
        check("begun by the page");
        press(KeyCode.Z);
        check("begun and taken back");
        press("Do it again after all (Ctrl and Y)");
        check("redone by the tool");
        press("Take back the last step (Ctrl and Z)");
        check("undone by the tool");
        press("Begin the cup");
        press("It is in");
        check("white weighed");
        press(KeyCode.DIGIT2);
        assertEquals("lightness", owner().getId(), () -> "where a reading is typed, not " + owner());
        Stagehand.onScreen(() -> {
            ((ToggleButton) stage.getScene().getRoot().lookup("#way-to-read-0")).fire();
            return null;
        });
        settle();
        press("Mark the spots by hand");
        check("the photo");
        press("Back to the readings");
        check("back from the photo");
        press(KeyCode.DIGIT3);
        Stagehand.onScreen(() -> {
            for (Node node : stage.getScene().getRoot().lookupAll(".button")) {
                if (((Labeled) node).getText() != null
                        && ((Labeled) node).getText().startsWith("Remove")
                        && shown(node)) {
                    node.requestFocus();
                    ((Button) node).fire();
                    break;
                }
            }
            return null;
        });
        settle();
        check("removed from the shelf");
        press(KeyCode.DIGIT1);
        Stagehand.onScreen(() -> {
            ToggleButton place = (ToggleButton) stage.getScene().getRoot().lookup("#place-1");
            place.requestFocus();
            place.fire();
            return null;
        });
        settle();
        check("another place");
        assertEquals("place-1", owner().getId(), "the focus stays on what was pressed");
        press(KeyCode.U);
        check("other units");
    }
}
