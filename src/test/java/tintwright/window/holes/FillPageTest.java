package tintwright.window.holes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import tintwright.fill.catalyst.CatalystShare;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairKind;
import tintwright.units.UnitSystem;
import tintwright.window.Desk;
import tintwright.window.Desks;
import tintwright.window.Stagehand;
import tintwright.window.frame.Step;
import tintwright.window.pieces.Look;

/** The fill as it is drawn. */
class FillPageTest {
    private Instant now = Instant.parse("2026-05-04T09:00:00Z");
    private final Clock clock = new Clock() {
        @Override
        public java.time.ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(java.time.ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    };

    @Test
    void aShareOutsideTheLimitIsRefusedBesideItsFieldWithLimitAndCaution() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(clock);
            Scene scene = page(desk);
            door(scene, "catalyst");
            ((ComboBox<?>) scene.lookup("#catalyst-from")).getSelectionModel().select(2);
            ((TextField) scene.lookup("#catalyst-share")).setText("4");
            press(scene, "Use this share");
            String all = words(scene);
            assertTrue(all.contains("was 4 % by mass") && all.contains("brittle"), all);
            assertTrue(all.contains(CatalystModel.ALWAYS) && CatalystModel.ALWAYS.contains(CatalystShare.CAUTION));
            ((TextField) scene.lookup("#catalyst-share")).setText("1.5");
            press(scene, "Use this share");
            assertTrue(words(scene).contains("(1.5 % by mass, limit 1.2 to 3 %"), words(scene));
            return null;
        });
    }

    @Test
    void theKeyThatIsDueStaysInPlaceWhileTheSecondsRun() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(clock);
            Scene scene = page(desk);
            press(scene, "Catalysed now: start its times");
            double first = desk.fill()
                    .planProperty()
                    .get()
                    .orElseThrow()
                    .plan()
                    .timers()
                    .get(0)
                    .fromMinutes();
            now = now.plusMillis((long) (first * 60_000) + 1000);
            desk.fill().timers().tick();
            Button done = button(scene, "Done");
            now = now.plus(Duration.ofSeconds(1));
            desk.fill().timers().tick();
            assertSame(done, button(scene, "Done"));
            done.fire();
            assertTrue(words(scene).contains("tape off") && !words(scene).contains("stop spreading"), words(scene));
            return null;
        });
    }

    /** Said three times on one page a caution is read by nobody: once, at the cup the catalyst goes into. */
    @Test
    void theCautionOfTheCatalystStandsAtTheBatchAndNowhereElse() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(clock);
            Scene scene = page(desk);
            long said = words(scene)
                    .lines()
                    .filter(line -> line.contains(CatalystShare.CAUTION))
                    .count();
            assertEquals(
                    desk.fill()
                            .planProperty()
                            .get()
                            .orElseThrow()
                            .plan()
                            .batches()
                            .size(),
                    said,
                    words(scene));
            return null;
        });
    }

    @Test
    void afterTheCatalystOnlyItsTimesCount() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(clock);
            Scene scene = page(desk);
            assertTrue(words(scene).contains("needed to spread it"), words(scene));
            int batches = desk.fill()
                    .planProperty()
                    .get()
                    .orElseThrow()
                    .plan()
                    .batches()
                    .size();
            for (int batch = 1; batch <= batches; batch++) {
                desk.fill().catalysed(batch);
            }
            String all = words(scene);
            assertTrue(!all.contains("needed to spread it") && !all.contains("Catalyst, last of all"), all);
            assertTrue(all.contains(" s left") && all.contains("until 09:"), all);
            return null;
        });
    }

    /** A cup that is plainly another colour: the figure comes before the grams, the catalyst only when insisted on. */
    @Test
    void aCupThatIsNotTheColourIsNotCatalysedUnasked() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(clock);
            desk.cup().begin();
            desk.cup().accept();
            desk.cup().alsoWeighed("soot-black", "2.5");
            Scene scene = page(desk);
            String all = words(scene);
            assertTrue(all.contains("it is not the colour yet") && all.contains("Read a chip of it first."), all);
            assertTrue(all.lines().noneMatch(line -> line.startsWith("The cup is enough")), all);
            assertTrue(
                    buttons(scene).stream().noneMatch("Catalysed now: start its times"::equals),
                    buttons(scene).toString());
            assertEquals("To the cup", desk.fill().nextProperty().get().button());
            String sheet = String.join(
                    "\n", desk.fill().planProperty().get().orElseThrow().lines(UnitSystem.METRIC));
            assertTrue(
                    sheet.contains("Read a chip of it first.")
                            && sheet.contains("off the hull by")
                            && !sheet.contains("Recipe of the colour"),
                    sheet);
            press(scene, "Fill with it all the same");
            press(scene, "Catalysed now: start its times");
            desk.fill().stopTimers(desk.fill().timers().inHand(1));
            desk.cup().alsoWeighed("soot-black", "0.5");
            assertTrue(
                    buttons(scene).stream().noneMatch("Catalysed now: start its times"::equals),
                    "another cup is asked about anew");
            return null;
        });
    }

    @Test
    void inUsUnitsNothingIsLeftInMetricAlone() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(clock);
            desk.shell().unitsProperty().set(UnitSystem.US);
            Scene scene = page(desk);
            door(scene, "hull");
            assertEquals("68", ((TextField) scene.lookup("#temperature")).getText());
            String all = words(scene);
            assertTrue(all.contains(" mil"), all);
            door(scene, "hole");
            all += words(scene);
            assertTrue(all.contains("Hole across, in"), all);
            assertTrue(!all.contains(" mm") && all.lines().noneMatch(line -> line.endsWith(" g")), all);
            return null;
        });
    }

    private static Scene atTwiceTheText(Desk desk) {
        page(desk);
        desk.shell().setTextShare(2);
        desk.shell().stepProperty().set(Step.FILL);
        Scene scene = new Scene(desk.view(), 1280, 800);
        Look.dress(scene);
        // The sides are put one below the other once it is known how little room they have.
        words(scene);
        scene.snapshot(null);
        words(scene);
        return scene;
    }

    @Test
    void atTwiceTheTextTheLastCautionIsStillWithinReach() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(clock);
            Scene scene = atTwiceTheText(desk);
            Region frame = (Region) scene.lookup(".station-page");
            double lowest =
                    frame.getChildrenUnmodifiable().get(0).getBoundsInParent().getMaxY();
            assertTrue(lowest > 2000 && lowest <= frame.getHeight(), lowest + " in " + frame.getHeight());
            return null;
        });
    }

    @Test
    void whyACupIsRaisedStandsInTheSumWithTheWayOut() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(clock);
            desk.fill().hull().measureWith(CatalystTool.SYRINGE);
            Scene scene = page(desk);
            double before =
                    desk.fill().planProperty().get().orElseThrow().plan().gelCoatGrams();
            assertTrue(words(scene).contains("Raised by"), words(scene));
            press(scene, "I have a scale to 0.01 g: mix less");
            double after = desk.fill().planProperty().get().orElseThrow().plan().gelCoatGrams();
            assertTrue(after < before / 2, before + " g to " + after + " g");
            assertEquals(CatalystTool.SCALE, desk.fill().hull().measuredWith());
            assertFalse(desk.fill().hull().measureWith(CatalystTool.DROPS), "nobody counted them");
            assertTrue(desk.fill()
                    .hull()
                    .know(
                            new AtTheHullModel.Known("", "", "", "", java.util.Optional.empty(), "25", ""),
                            UnitSystem.METRIC));
            assertEquals(CatalystTool.DROPS, desk.fill().hull().measuredWith(), "counted");
            return null;
        });
    }

    /** What could not be put on the list is said at the sizes; the key at the foot stays where the finger is. */
    @Test
    void aRefusalDoesNotMoveTheKeyThatWasPressed() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(clock);
            desk.shell().stepProperty().set(Step.FILL);
            Scene scene = new Scene(desk.view(), 1280, 800);
            Look.dress(scene);
            scene.getRoot().applyCss();
            scene.getRoot().layout();
            ((TextField) scene.lookup("#size-hole")).setText("5");
            Button key = button(scene, "Put it on the list");
            double before = key.localToScene(0, 0).getY();
            key.fire();
            assertTrue(words(scene).contains("needs how deep the countersink is"), words(scene));
            assertEquals(before, key.localToScene(0, 0).getY(), 0.5);
            return null;
        });
    }

    @Test
    void atTwiceTheTextTheSumStandsRightUnderTheList() {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(clock);
            Scene scene = atTwiceTheText(desk);
            java.util.List<String> headings = scene.getRoot().lookupAll(".heading").stream()
                    .sorted(java.util.Comparator.comparingDouble(
                            node -> node.localToScene(0, 0).getY()))
                    .map(node -> ((Labeled) node).getText())
                    .toList();
            assertEquals(headings.indexOf("What needs filling") + 1, headings.indexOf("In all"), headings.toString());
            return null;
        });
    }

    private static Scene page(Desk desk) {
        assertTrue(desk.fill()
                .add(
                        "cleat holes",
                        RepairKind.COUNTERSUNK,
                        Map.of("hole", "5", "top", "9", "countersink", "2", "depth", "6"),
                        Lie.VERTICAL,
                        "8",
                        UnitSystem.METRIC));
        Region page = new FillPage(desk.fill(), desk.shell().unitsProperty().get()).build();
        Scene scene = Stagehand.dressed(page, 1280, 800, 1, false);
        page.applyCss();
        page.layout();
        return scene;
    }

    private static void door(Scene scene, String name) {
        ((javafx.scene.control.ToggleButton) scene.lookup("#holes-" + name)).fire();
        scene.getRoot().applyCss();
        scene.getRoot().layout();
    }

    /** What is ticked stays ticked when the window is opened again, and another boat begins with nothing ticked. */
    @Test
    void aTickIsKept(@org.junit.jupiter.api.io.TempDir java.nio.file.Path folder) {
        Stagehand.onScreen(() -> {
            Desk desk = Desks.demo(clock);
            desk.fill().ticks().keepIn(folder.resolve("day.json"));
            Scene scene = page(desk);
            javafx.scene.control.CheckBox first =
                    (javafx.scene.control.CheckBox) scene.getRoot().lookup("#day .check-box");
            first.setSelected(true);
            Desk again = Desks.demo(clock);
            again.fill().ticks().keepIn(folder.resolve("day.json"));
            Scene later = page(again);
            assertTrue(((javafx.scene.control.CheckBox) later.getRoot().lookup("#day .check-box")).isSelected());
            again.job().change(before -> before.withPlaces("Quillmarrow", java.util.List.of(), -1));
            assertTrue(again.job().now().fill().lines().isEmpty(), "no hole of the last boat comes along");
            javafx.scene.control.CheckBox other =
                    (javafx.scene.control.CheckBox) page(again).getRoot().lookup("#day .check-box");
            assertFalse(other.isSelected());
            return null;
        });
    }

    private static String words(Scene scene) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        return scene.getRoot().lookupAll(".label").stream()
                .filter(FillPageTest::seen)
                .map(node -> ((Labeled) node).getText())
                .collect(Collectors.joining("\n"));
    }

    private static boolean seen(Node node) {
        return node.isVisible() && (node.getParent() == null || seen(node.getParent()));
    }

    private static Button button(Scene scene, String words) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        return scene.getRoot().lookupAll(".button").stream()
                .map(Button.class::cast)
                .filter(FillPageTest::seen)
                .filter(key -> key.getText().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private static java.util.List<String> buttons(Scene scene) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        return scene.getRoot().lookupAll(".button").stream()
                .filter(FillPageTest::seen)
                .map(node -> ((Button) node).getText())
                .toList();
    }

    private static void press(Scene scene, String words) {
        button(scene, words).fire();
    }
}
