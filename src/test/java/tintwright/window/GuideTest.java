package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import org.junit.jupiter.api.Test;
import tintwright.bench.job.Job;
import tintwright.bench.log.ShopLog;
import tintwright.colour.Geometry;
import tintwright.colour.Viewing;
import tintwright.cup.Cup;
import tintwright.shelf.PigmentFamily;
import tintwright.units.UnitSystem;
import tintwright.window.cup.PlanModel;
import tintwright.window.frame.Step;

/** What the strip says to do next, from the first reading to the first cup. */
class GuideTest {
    private final Clock clock = Clock.systemUTC();

    private static String now(Desk desk) {
        return desk.shell().nowProperty().get();
    }

    private static String button(Desk desk) {
        return desk.shell().nowButtonProperty().get();
    }

    private static void read(Desk desk, String lightness) {
        assertTrue(desk.hull().type(lightness, "-2.0", "6.5", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
    }

    private static void newPlace(Desk desk, String name) {
        assertTrue(desk.hull().newPlace(name, "80", "-2.0", "6.5", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
    }

    @Test
    void theDemoIsNotNaggedForMoreReadings() {
        Desk desk = Desks.demo(clock);
        for (int i = 0; i < desk.job().now().places().size(); i++) {
            desk.plan().place(i);
            assertEquals("Begin the cup", button(desk), now(desk));
        }
    }

    @Test
    void oneTypedReadingAsksForTwoMoreUntilTheyAreThere() {
        Desk desk = Desks.demo(clock);
        newPlace(desk, "transom");
        desk.shell().stepProperty().set(Step.CUP);
        assertEquals("Read the spot two more times, a hand's breadth apart.", now(desk));
        desk.shell().doNow();
        assertEquals(Step.HULL, desk.shell().stepProperty().get());
        read(desk, "80.2");
        assertEquals("Read the spot once more, a hand's breadth apart.", now(desk));
        read(desk, "79.9");
        assertFalse(now(desk).startsWith("Read the spot"), now(desk));
    }

    @Test
    void whoeverGoesOnWithOneReadingIsNotAskedAgain() {
        Desk desk = Desks.demo(clock);
        newPlace(desk, "transom");
        desk.shell().stepProperty().set(Step.HULL);
        assertEquals("Go on with one", button(desk));
        desk.shell().doNow();
        assertFalse(now(desk).startsWith("Read the spot"), now(desk));
        newPlace(desk, "cabin side");
        assertTrue(now(desk).startsWith("Read the spot"), "another place is another question");
        desk.plan().place(desk.job().now().places().size() - 2);
        assertFalse(now(desk).startsWith("Read the spot"), now(desk));
    }

    @Test
    void tintsThatDoNotReachTheHullAreSaidBeforeAnythingIsWeighed() {
        Desk desk = new Desk(Desk.own(), Runnable::run, Runnable::run, clock, () -> ShopLog.demo(clock), Desks::learn);
        desk.job().change(job -> job.withPlaces("Dunnelquay", List.of(), -1));
        newPlace(desk, "transom");
        read(desk, "80.2");
        read(desk, "79.9");
        desk.shelf().addTint("soot", java.util.Optional.of(PigmentFamily.CARBON_BLACK), "120", UnitSystem.METRIC);
        assertTrue(
                desk.plan().planProperty().get().outOfReach(),
                desk.plan().planProperty().get().reach());
        assertEquals("These tints do not reach it: add a tint.", now(desk));
        assertEquals("To the shelf", button(desk));
        desk.shell().doNow();
        assertEquals(Step.SHELF, desk.shell().stepProperty().get());
        assertEquals("Begin all the same", button(desk), "it must not block");
        desk.shell().doNow();
        assertTrue(desk.job().now().cup().isPresent());
    }

    @Test
    void aMatchThatIsFarFromSureAsksForAChipFirst() {
        Desk desk = new Desk(Desk.own(), Runnable::run, Runnable::run, clock, () -> ShopLog.demo(clock), Desks::learn);
        desk.job().change(job -> job.withPlaces("Dunnelquay", List.of(), -1));
        assertTrue(desk.hull().newPlace("transom", "70", "0", "0", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
        desk.shell().stepProperty().set(Step.HULL);
        desk.shell().doNow();
        desk.shell().stepProperty().set(Step.CUP);
        for (PigmentFamily family : new PigmentFamily[] {
            PigmentFamily.CARBON_BLACK, PigmentFamily.ORANGE, PigmentFamily.ORGANIC_YELLOW, PigmentFamily.PHTHALO_BLUE
        }) {
            desk.shelf().addTint(family.words(), java.util.Optional.of(family), "120", UnitSystem.METRIC);
        }
        PlanModel.Plan plan = desk.plan().planProperty().get();
        assertFalse(plan.outOfReach(), plan.reach());
        assertTrue(plan.within90() > 3 && plan.nextChip().isPresent(), "how sure: " + plan.within90());
        assertTrue(now(desk).startsWith("Make a chip of "), now(desk));
        desk.shell().doNow();
        assertEquals("Begin all the same", button(desk));
    }

    /** At the start the cup is reckoned before it can be shown; nothing must be there to begin a second one with. */
    @Test
    void beforeTheCupComesBackNoOtherCanBeBegun() {
        Stagehand.onScreen(() -> {
            Job demo = Desk.demo();
            Cup cup = Cup.empty(
                    "port bow 1",
                    demo.places().get(0),
                    demo.grams(),
                    demo.scaleStep(),
                    demo.shelf().bases().get(0).id());
            Deque<Runnable> held = new ArrayDeque<>();
            Desk desk = new Desk(
                    demo.mixing(Optional.of(cup)),
                    held::add,
                    Runnable::run,
                    clock,
                    () -> ShopLog.demo(clock),
                    Desks::learn);
            Scene scene = new Scene(desk.view(), 1280, 800);
            for (int i = 0; i < 20; i++) {
                if (desk.cup().inHandProperty().get().isEmpty()) {
                    assertEquals("", button(desk), now(desk));
                    assertFalse(desk.shell().captionProperty(Step.CUP).get().contains("planned"));
                    for (Node node : scene.getRoot().lookupAll(".button")) {
                        assertFalse("Begin the cup".equals(((Button) node).getText()) && !node.isDisabled());
                    }
                }
                if (!held.isEmpty()) {
                    held.poll().run();
                }
            }
            assertTrue(desk.cup().inHandProperty().get().isPresent());
            return null;
        });
    }

    @Test
    void theHeaderNamesTheCupWhicheverPlaceIsLookedAt() {
        Desk desk = Desks.demo(clock);
        assertEquals("Tarrowmere, port bow", desk.shell().jobProperty().get());
        desk.cup().begin();
        desk.plan().place(1);
        String title = desk.shell().jobProperty().get();
        assertTrue(title.startsWith("Tarrowmere, cup port bow"), title);
    }

    @Test
    void whatIsTakenBackIsSaid() {
        Desk desk = Desks.demo(clock);
        newPlace(desk, "transom");
        read(desk, "80.2");
        read(desk, "79.9");
        desk.shell().undo();
        assertEquals(
                "Undone: reading 3 of transom.", desk.shell().noticeProperty().get());
        desk.shell().redo();
        assertEquals(
                "Done again: reading 3 of transom.",
                desk.shell().noticeProperty().get());
        desk.hull().remove(1);
        desk.shell().undo();
        assertEquals(
                "Undone: removing reading 2 of transom.",
                desk.shell().noticeProperty().get());
        desk.plan().place(0);
        desk.cup().begin();
        desk.cup().accept();
        desk.shell().undo();
        assertTrue(
                desk.shell().noticeProperty().get().matches("Undone: [0-9.]+ g .*"),
                desk.shell().noticeProperty().get());
        desk.shell().undo();
        assertTrue(
                desk.shell().noticeProperty().get().startsWith("Undone: the cup port bow"),
                desk.shell().noticeProperty().get());
        desk.plan().use("soot-black", false);
        desk.shell().undo();
        assertTrue(
                desk.shell().noticeProperty().get().startsWith("Undone: leaving out "),
                desk.shell().noticeProperty().get());
    }
}
