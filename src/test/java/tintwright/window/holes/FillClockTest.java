package tintwright.window.holes;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import tintwright.HandClock;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairLine;
import tintwright.fill.repair.ScratchGroove;
import tintwright.window.Desk;
import tintwright.window.Desks;
import tintwright.window.Stagehand;
import tintwright.window.frame.Step;

/** The clocks of catalysed cups move on by themselves while the window stands, at whichever station. */
class FillClockTest {
    private static final long LIMIT_NANOS = 20_000_000_000L;

    @Test
    void aSecondPressOfTheSameKeyCatalysesNoOtherBatch() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(HandClock.standing("2026-05-04T09:00:00Z"));
            desk.job()
                    .change(job -> job.filling(job.fill()
                            .plus(new RepairLine("fender scratch", new ScratchGroove(900, 8, 0.6), Lie.VERTICAL, 3))));
            desk.shell().stepProperty().set(Step.FILL);
            Scene scene = new Scene(desk.view(), 1280, 800);
            scene.getRoot().applyCss();
            scene.getRoot().layout();
            assertTrue(
                    desk.fill()
                                    .planProperty()
                                    .get()
                                    .orElseThrow()
                                    .plan()
                                    .batches()
                                    .size()
                            > 1,
                    "there is another");
            Button first = scene.getRoot().lookupAll(".button").stream()
                    .filter(Button.class::isInstance)
                    .map(Button.class::cast)
                    .filter(key -> key.getText().startsWith("Catalysed now"))
                    .findFirst()
                    .orElseThrow();
            first.requestFocus();
            first.fire();
            scene.getRoot().applyCss();
            scene.getRoot().layout();
            assertTrue(
                    scene.getFocusOwner() != null && !(scene.getFocusOwner() instanceof Button),
                    "the focus is on " + scene.getFocusOwner());
            return null;
        });
    }

    @Test
    void aRunningTimeMovesOnWithoutAnybodyAsking() throws Exception {
        HandClock clock = HandClock.standing("2026-05-04T09:00:00Z");
        Desk[] desk = new Desk[1];
        Stage[] stage = new Stage[1];
        Stagehand.onScreen(() -> {
            desk[0] = Desks.demo(clock);
            desk[0].job()
                    .change(job -> job.filling(job.fill()
                            .plus(new RepairLine("fender scratch", new ScratchGroove(300, 2, 0.6), Lie.VERTICAL, 1))));
            desk[0].fill().catalysed(1);
            desk[0].shell().stepProperty().set(Step.LOG);
            stage[0] = new Stage();
            stage[0].setScene(new Scene(desk[0].view(), 1280, 800));
            stage[0].show();
            return null;
        });
        List<FillTimers.Running> first = Stagehand.onScreen(
                () -> desk[0].fill().timers().runningProperty().get());
        assertTrue(!first.isEmpty(), "a cup is catalysed");
        clock.move(Duration.ofMinutes(1));
        List<FillTimers.Running> later = first;
        for (long start = System.nanoTime(); later.equals(first) && System.nanoTime() - start < LIMIT_NANOS; ) {
            Thread.sleep(50);
            later = Stagehand.onScreen(
                    () -> desk[0].fill().timers().runningProperty().get());
        }
        Stagehand.onScreen(() -> {
            stage[0].close();
            return null;
        });
        assertNotEquals(first, later, "the clock of the catalysed cup stands still");
    }
}
