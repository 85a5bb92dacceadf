package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import org.junit.jupiter.api.Test;
import tintwright.HandClock;
import tintwright.bench.log.ShopLog;
import tintwright.cup.CupDeeds;
import tintwright.window.frame.Step;
import tintwright.window.pieces.Look;

/**
 * Three jobs of somebody who knows only the README, through the window as it is drawn: whatever is pressed or typed into
 * is in sight, the presses are counted, a field typed into as one, and the time is reckoned from them ({@link
 * FirstTime}); each test prints what it came to.
 */
class NewcomerTest {
    private final Clock clock = new HandClock("2026-05-04T09:00:00Z", Duration.ofMinutes(1));
    private Desk desk;
    private Scene scene;
    private FirstTime time;

    private void open(Desk first) {
        desk = first;
        scene = new Scene(desk.view(), 1366, 768);
        Look.dress(scene);
        time = new FirstTime();
        lay();
    }

    private void lay() {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        time.look(scene);
    }

    private void press(String id) {
        lay();
        Node node = scene.getRoot().lookup("#" + id);
        assertTrue(node instanceof ButtonBase && node.isVisible() && !node.isDisabled(), "there is no key " + id);
        if (node instanceof ToggleButton toggle) {
            toggle.setSelected(true);
        }
        ((ButtonBase) node).fire();
        if (node instanceof ToggleButton toggle) {
            toggle.setSelected(true);
        }
        time.press();
    }

    private void pressWords(String words) {
        lay();
        scene.getRoot().lookupAll(".button").stream()
                .filter(node -> node.isVisible() && words.equals(((ButtonBase) node).getText()))
                .findFirst()
                .map(ButtonBase.class::cast)
                .orElseThrow(() -> new AssertionError("no key says \"" + words + "\""))
                .fire();
        time.press();
    }

    private void type(String id, String text) {
        lay();
        TextField field = (TextField) scene.getRoot().lookup("#" + id);
        assertTrue(field != null && field.isVisible(), "there is no field " + id);
        field.setText(text);
        time.type(field.getAccessibleText(), text);
    }

    private CupDeeds.Kind kind() {
        return desk.cup().inHandProperty().get().orElseThrow().deeds().now().kind();
    }

    private void weighAllThatIsAsked() {
        while (kind() == CupDeeds.Kind.WEIGH) {
            press("it-is-in");
        }
    }

    /** The dab and the hull look alike. */
    private void seeNoDifference() {
        press("do-it");
        press("eye-no-difference");
    }

    /**
     * @param seconds of who reads what there is to do now; without the scale, the cure and the program's own waits
     * @param all     seconds of who reads every word
     */
    private void atMost(int presses, int seconds, int all) {
        lay();
        System.out.println("A newcomer's job, " + time);
        assertTrue(
                time.presses() <= presses && time.seconds() <= seconds && time.secondsOfWhoReadsAll() <= all,
                time.toString());
    }

    @Test
    void theDemoWithItsWalkTakesEightPresses() {
        Stagehand.onScreen(() -> {
            Desk demo =
                    new Desk(Desk.demo(), Runnable::run, Runnable::run, clock, () -> ShopLog.demo(clock), Desks::learn);
            demo.walk().begin();
            open(demo);
            while (desk.shell().stepProperty().get() != Step.CUP) {
                press("walk-next");
            }
            pressWords("Begin the cup");
            assertFalse(demo.walk().walkingProperty().get(), "who has begun walks no more");
            weighAllThatIsAsked();
            assertEquals(CupDeeds.Kind.READ_CHIP, kind());
            atMost(8, 90, 240);
            return null;
        });
    }

    @Test
    void theDemoReachesItsFirstDabInFivePresses() {
        Stagehand.onScreen(() -> {
            open(new Desk(Desk.demo(), Runnable::run, Runnable::run, clock, () -> ShopLog.demo(clock), Desks::learn));
            press("now-button");
            assertEquals(Step.CUP, desk.shell().stepProperty().get());
            weighAllThatIsAsked();
            assertEquals(CupDeeds.Kind.READ_CHIP, kind());
            atMost(5, 40, 110);
            return null;
        });
    }

    private void aNewBoatAtHerHull() {
        open(Desks.blank(clock));
        if (desk.shell().stepProperty().get() != Step.BOAT) {
            press("now-button");
        }
        type("boat-name", "Quillmarrow");
        pressWords("Take her on");
        assertEquals(Step.HULL, desk.shell().stepProperty().get(), "a new boat has nothing else to do");
        type("new-place", "transom");
    }

    private void fourTintsAndAFirstDose() {
        assertEquals(Step.SHELF, desk.shell().stepProperty().get());
        for (String family : List.of("carbon-black", "yellow-iron-oxide", "phthalo-green", "red-iron-oxide")) {
            press("family-" + family);
            press("tint-add");
        }
        assertEquals(4, desk.job().now().shelf().tints().size());
        // Chips would make it surer; it can be begun all the same.
        press("now-button");
        assertEquals(Step.CUP, desk.shell().stepProperty().get());
        press("it-is-in");
        press("it-is-in");
        assertTrue(desk.job().now().cup().orElseThrow().state().mass() > 0);
    }

    @Test
    void aFirstShelfAHullAndAFirstDoseTakeTwentyTwoPresses() {
        Stagehand.onScreen(() -> {
            aNewBoatAtHerHull();
            press("way-to-read-1");
            type("lightness", "74");
            type("red-green", "-3");
            type("yellow-blue", "9");
            pressWords("Add the reading");
            press("now-button");
            press("now-button");
            fourTintsAndAFirstDose();
            atMost(22, 140, 260);
            return null;
        });
    }

    @Test
    void byEyeTheSameTakesEighteen() {
        Stagehand.onScreen(() -> {
            aNewBoatAtHerHull();
            press("way-to-read-2");
            press("hull-like-pale-green");
            press("now-button");
            fourTintsAndAFirstDose();
            atMost(18, 120, 240);
            return null;
        });
    }

    @Test
    void aFillWithItsCupTakesTwentyTwoPresses() {
        Stagehand.onScreen(() -> {
            open(Desks.demo(clock));
            desk.shell().stepProperty().set(Step.FILL);
            type("repair-name", "old cleat holes");
            type("repair-count", "8");
            type("size-hole", "5");
            type("size-top", "9");
            type("size-countersink", "2");
            assertTrue(desk.shell().nowProperty().get().contains("depth"), "it says what is missing");
            type("size-depth", "6");
            assertEquals("Put it on the list", desk.shell().nowButtonProperty().get());
            press("now-button");
            assertEquals("Make the colour", desk.shell().nowButtonProperty().get());
            double wanted = desk.fill().planProperty().get().orElseThrow().gramsForTheCup();
            press("now-button");
            assertEquals(Step.CUP, desk.shell().stepProperty().get());
            double asked = desk.job().now().grams();
            assertTrue(asked >= wanted && asked <= 10, "as much as the holes take, or as can be weighed: " + asked);
            for (int look = 0; look < 3 && kind() != CupDeeds.Kind.STOP; look++) {
                weighAllThatIsAsked();
                if (kind() == CupDeeds.Kind.READ_CHIP) {
                    seeNoDifference();
                }
            }
            assertEquals(CupDeeds.Kind.STOP, kind());
            CupDeeds done = desk.cup().inHandProperty().get().orElseThrow().deeds();
            assertTrue(
                    done.now().why().startsWith("You saw no difference"),
                    done.now().why());
            assertEquals(0, done.heldBack(), "what the rounding of the scale leaves is nothing held back");
            press("do-it");
            assertEquals(Step.FILL, desk.shell().stepProperty().get());
            assertTrue(
                    ((ToggleButton) scene.getRoot().lookup("#holes-day")).isSelected(), "no hole is left to measure");
            assertTrue(desk.shell().nowProperty().get().contains("limit"), "how much catalyst, and its limit");
            press("now-button");
            atMost(22, 220, 460);
            assertEquals(1, desk.fill().timers().clocks().size(), "the catalyst is in and its time runs");
            return null;
        });
    }
}
