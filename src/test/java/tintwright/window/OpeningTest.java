package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.job.FillDraft;
import tintwright.bench.log.ShopLog;
import tintwright.cup.Deed;
import tintwright.fill.catalyst.Basis;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairKind;
import tintwright.reading.HullFamily;
import tintwright.units.UnitSystem;
import tintwright.window.frame.Step;
import tintwright.window.frame.WindowMemory;
import tintwright.window.holes.AtTheHullModel;

/** A window that is closed, or killed, and opened again on the same home folder; without a stage. */
class OpeningTest {
    private static final Instant NOON = Instant.parse("2026-05-09T12:00:00Z");

    private static final String MIXED = "the first mix";
    private static final String LOOKING = "Looking at the photo\u2026";

    @TempDir
    Path home;

    private Desk open(boolean own, Instant now) {
        Clock clock = Clock.fixed(now, ZoneOffset.UTC);
        return Opening.fetch(home, own, Desks::learn)
                .desk(Runnable::run, Runnable::run, clock, () -> ShopLog.demo(clock));
    }

    @Test
    void theDemosPhotoIsLookedAtWhenTheHullIsAndAfterTheFirstMix() {
        ArrayDeque<Runnable> work = new ArrayDeque<>();
        List<String> done = new ArrayList<>();
        Stagehand.onScreen(() -> {
            Desk desk = open(work, done);
            desk.view();
            work(work);
            assertTrue(done.contains(MIXED), done.toString());
            assertFalse(done.contains(LOOKING), done.toString());
            desk.shell().stepProperty().set(Step.HULL);
            work(work);
            assertTrue(done.contains(LOOKING), done.toString());

            done.clear();
            Desk atTheHull = open(work, done);
            atTheHull.shell().stepProperty().set(Step.HULL);
            atTheHull.view();
            work(work);
            assertTrue(done.contains(LOOKING), done.toString());
            assertTrue(done.indexOf(MIXED) < done.indexOf(LOOKING), done.toString());
            return null;
        });
    }

    private Desk open(ArrayDeque<Runnable> work, List<String> done) {
        Clock clock = Clock.fixed(NOON, ZoneOffset.UTC);
        Desk desk = Opening.fetch(home, false, Desks::learn)
                .desk(work::add, Runnable::run, clock, () -> ShopLog.demo(clock));
        desk.shell().doingProperty().addListener((property, before, after) -> done.add(after));
        desk.plan().planProperty().addListener((property, before, after) -> done.add(MIXED));
        return desk;
    }

    private static void work(ArrayDeque<Runnable> work) {
        while (!work.isEmpty()) {
            work.poll().run();
        }
    }

    @Test
    void onesOwnBenchOpensWhereSomethingIsToBeDone() {
        assertEquals(Step.BOAT, Opening.fetch(home, true, Desks::learn).first());
        Desk desk = open(true, NOON);
        desk.job().change(job -> job.withPlaces("Quillmarrow", List.of(), -1));
        assertEquals(Step.HULL, Opening.fetch(home, true, Desks::learn).first());
        desk.job()
                .change(job ->
                        job.withPlaces("Quillmarrow", List.of(HullFamily.STONE.place("Quillmarrow", "transom")), 0));
        assertEquals(Step.SHELF, Opening.fetch(home, true, Desks::learn).first());
        desk.job().change(job -> job.with(Desk.demo().shelf()));
        assertEquals(Step.CUP, Opening.fetch(home, true, Desks::learn).first());
    }

    @Test
    void theClocksOfCatalysedCupsRunOn() {
        Desk before = open(false, NOON);
        assertTrue(
                before.fill()
                        .add(
                                "holes",
                                RepairKind.HOLE,
                                Map.of("hole", "6", "depth", "6"),
                                Lie.VERTICAL,
                                "4",
                                UnitSystem.METRIC),
                before.fill().problemProperty().get());
        before.fill().catalysed(1);
        assertFalse(before.fill().timers().runningProperty().get().isEmpty());

        Desk after = open(false, NOON.plus(Duration.ofMinutes(7)));
        assertTrue(after.fill().timers().clocks().containsKey(1), "the cup cures whether the window is open or not");
        assertTrue(after.fill().nextProperty().get().running());
        before.fill().timers().tick();
        assertEquals(
                before.fill().timers().runningProperty().get().get(0).words(),
                after.fill().timers().runningProperty().get().get(0).words());

        after.fill().stopTimers(after.fill().timers().inHand(1));
        assertFalse(
                open(false, NOON.plus(Duration.ofMinutes(9)))
                        .fill()
                        .timers()
                        .clocks()
                        .containsKey(1),
                "what was stopped stays stopped");
    }

    @Test
    void theTwoBenchesDoNotTouchEachOther() {
        Desk demo = open(false, NOON);
        demo.plan().scaleStep(0.1);
        Desk own = open(true, NOON);
        assertEquals("", own.job().now().boat());
        own.job().change(before -> before.of(77));
        assertEquals(0.1, open(false, NOON).job().now().scaleStep());
        assertEquals(150, open(false, NOON).job().now().grams());
        assertEquals(77, open(true, NOON).job().now().grams());
    }

    @Test
    void aBenchThatCannotBeReadIsSaidAndLeftAsItIs() throws Exception {
        open(true, NOON).job().change(before -> before.of(77));
        Path kept = home.resolve("bench").resolve("bench.json");
        Files.writeString(kept, "{");
        Desk desk = open(true, NOON);
        assertTrue(
                desk.shell().noticeProperty().get().contains("bench.json"),
                desk.shell().noticeProperty().get());
        assertEquals("{", Files.readString(kept));
        desk.job().change(before -> before.of(78));
        try (Stream<Path> files = Files.walk(home.resolve("bench"))) {
            assertTrue(
                    files.filter(file -> file.endsWith("bench.json"))
                            .anyMatch(file -> read(file).equals("{")),
                    "what could not be read was written over");
        }
        assertEquals(78, open(true, NOON).job().now().grams());
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void whatWasTypedAtTheFillComesBackBeforeThereIsAnyRepair() {
        Desk before = open(false, NOON);
        assertTrue(before.fill().hull().weather("24", "", "", "60", UnitSystem.METRIC));
        assertTrue(before.fill()
                .hull()
                .know(new AtTheHullModel.Known("0.5", "0.6", "", "80", Optional.empty(), "22", ""), UnitSystem.METRIC));
        assertTrue(before.fill().catalyst().row("Grey tin", "18", "2", Basis.MASS, "18", "24", UnitSystem.METRIC));
        FillDraft typed = before.job().now().fill();

        open(true, NOON).job().change(job -> job.of(60));
        Desk own = open(false, NOON);
        assertEquals(typed, own.job().now().fill());
        assertTrue(own.job().now().fill().lines().isEmpty());
        assertTrue(own.fill().catalyst().share("1.8", Basis.MASS));
        assertEquals(own.job().now().fill(), open(false, NOON).job().now().fill(), "a share typed by hand");

        own.fill()
                .add("holes", RepairKind.HOLE, Map.of("hole", "6", "depth", "6"), Lie.OVERHEAD, "4", UnitSystem.METRIC);
        assertEquals(1, open(false, NOON).job().now().fill().lines().size());
        own.fill().remove(0);
        assertEquals(own.job().now().fill(), open(false, NOON).job().now().fill(), "the list is empty again");
    }

    @Test
    void theRestOfAChosenWayBackComesBack() {
        Desk before = open(false, NOON);
        before.cup().begin();
        List<Deed> way = List.of(
                new Deed.SetAside(61.5, "port bow 1, dark: rest"),
                new Deed.Weighed("white", 40.25, 0.01),
                new Deed.LetDown("soot", 10, 0.8, 0.01));
        before.job().change(job -> job.after(job.cup().orElseThrow(), way));
        Desk after = open(false, NOON);
        assertEquals(way, after.job().now().ahead());
        after.job().change(job -> job.after(job.cup().orElseThrow(), way.subList(1, 3)));
        assertEquals(way.subList(1, 3), open(false, NOON).job().now().ahead());
    }

    /** What is said of the bench in hand is written at the change-over, not when the window is closed in good order. */
    @Test
    void aWindowThatWasKilledOpensOnTheBenchThatWasInHand() {
        Path file = home.resolve("window.json");
        WindowMemory killed = new WindowMemory(file);
        killed.keepAtOnce("own", true);
        assertTrue(Opening.lastOwn(home, new WindowMemory(file)));
        killed.keepAtOnce("own", false);
        open(true, NOON).job().change(before -> before.of(77));
        assertFalse(Opening.lastOwn(home, new WindowMemory(file)), "the demo was in hand");
        assertTrue(
                Opening.lastOwn(home, new WindowMemory(home.resolve("lost.json"))),
                "where nothing is known, one's own");
    }

    @Test
    void theWayToTheOwnBenchSaysWhetherThereIsOne() {
        assertFalse(Opening.ownBegun(home));
        open(false, NOON).plan().scaleStep(0.1);
        assertFalse(Opening.ownBegun(home), "the demo is not one's own");
        open(true, NOON).job().change(before -> before.of(77));
        assertTrue(Opening.ownBegun(home));
        Stagehand.onScreen(() -> {
            for (boolean begun : new boolean[] {false, true}) {
                Desk desk = open(false, NOON);
                desk.shell().stepProperty().set(Step.BOAT);
                javafx.scene.Scene scene = new javafx.scene.Scene(Desks.view(desk, false, begun), 1280, 800);
                scene.getRoot().applyCss();
                assertEquals(
                        begun ? "Back to my own bench" : "Start my own shelf",
                        ((javafx.scene.control.Button) scene.getRoot().lookup("#other-bench")).getText());
            }
            return null;
        });
    }
}
