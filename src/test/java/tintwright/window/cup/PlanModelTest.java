package tintwright.window.cup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import org.junit.jupiter.api.Test;
import tintwright.bench.job.Job;
import tintwright.window.Desk;
import tintwright.window.Desks;

/** The plan without a window: match the demo, switch a tint off, another batch, another place, and back. */
class PlanModelTest {
    /** The scale of the demo rounds every weighing to it. */
    private static final double SCALE = 0.01;

    private final Desk desk = Desks.demo(Clock.systemUTC());
    private final PlanModel plan = desk.plan();

    private PlanModel.Pictures drawn() {
        return now().mix().orElseThrow().pictures();
    }

    private PlanModel.Plan now() {
        return plan.planProperty().get();
    }

    @Test
    void theDemoIsMatchedOnOpening() {
        assertTrue(
                now().recipe().orElseThrow().deltaE() < 0.3,
                "apart by " + now().recipe().get().deltaE());
        assertEquals(150, now().recipe().get().weighed().total(), 5 * SCALE);
        assertEquals(now().close(), desk.shell().closeProperty().get());
        assertFalse(desk.shell().nowProperty().get().isEmpty());
        assertEquals(4, drawn().swatch().lights().size());
        assertTrue(drawn().depth().white() > drawn().depth().hull());
        assertTrue(drawn().rose().reach().size() >= 3);
    }

    @Test
    void theStairsOfTheGaugeEndAtTheMix() {
        var depth = drawn().depth();
        assertEquals(depth.cup(), depth.steps().get(depth.steps().size() - 1).cup(), 1e-6);
        assertEquals(depth.white(), depth.stepsFrom(), 0);
        double before = depth.white();
        for (var step : depth.steps()) {
            assertTrue(step.cup() < before + 0.5, step.words() + " lifts a mix that was at " + before);
            before = step.cup();
        }
    }

    @Test
    void theClimbOfTheGaugeLiftsByWhatItSays() {
        var depth = drawn().depth();
        var climb = depth.climb().orElseThrow();
        assertEquals(1, climb.to() - climb.from(), 1e-9);
        assertTrue(climb.words().matches("(?s)[0-9.]+ g white.*"), climb.words());
    }

    @Test
    void aTintSwitchedOffLeavesTheMixAndComesBackByUndo() {
        String tint = now().lines().stream()
                .filter(line -> line.isTint() && !line.grams().isEmpty())
                .findFirst()
                .orElseThrow()
                .id();
        var before = now().lines();
        plan.use(tint, false);
        assertTrue(now().lines().stream()
                .filter(line -> line.id().equals(tint))
                .findFirst()
                .orElseThrow()
                .grams()
                .isEmpty());
        assertEquals(0, now().recipe().orElseThrow().weighed().grams(tint));
        desk.shell().undo();
        assertEquals(before, now().lines());
        desk.shell().redo();
        assertNotEquals(before, now().lines());
    }

    @Test
    void anotherBatchScalesAndTypingIsOneUndo() {
        plan.batch("3");
        plan.batch("30");
        plan.batch("300");
        assertEquals(300, now().recipe().orElseThrow().weighed().total(), 5 * SCALE);
        desk.shell().undo();
        assertEquals(150, now().recipe().orElseThrow().weighed().total(), 5 * SCALE);
    }

    @Test
    void aBatchThatCannotBeIsRefusedInOneSentenceAndChangesNothing() {
        plan.batch("-5");
        assertTrue(
                plan.problemProperty().get().contains("How much must be 1"),
                plan.problemProperty().get());
        assertEquals(150, desk.job().now().grams());
        plan.batch("200");
        assertEquals("", plan.problemProperty().get());
    }

    @Test
    void whatTheScaleCannotWeighStraightIsSaid() {
        assertEquals("", plan.planProperty().get().reach());
        desk.job()
                .change(job -> new Job(
                        job.boat(),
                        job.places(),
                        job.place(),
                        job.shelf(),
                        80,
                        0.1,
                        job.off(),
                        job.fill(),
                        job.cup(),
                        job.ahead()));
        assertTrue(
                plan.planProperty().get().reach().contains("too little for this scale"),
                plan.planProperty().get().reach());
    }

    @Test
    void anotherPlaceIsAnotherTarget() {
        var port = now().target().orElseThrow().colour();
        plan.place(1);
        assertNotEquals(port, now().target().orElseThrow().colour());
        assertTrue(desk.shell().jobProperty().get().contains("stern quarter"));
    }

    @Test
    void thePlanCanBeCopiedAsText() {
        String text = plan.asText();
        for (PlanModel.Line line : now().lines()) {
            if (!line.grams().isEmpty()) {
                assertTrue(text.contains(line.grams()) && text.contains(line.name()), text);
            }
        }
    }
}
