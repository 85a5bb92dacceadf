package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.log.GiveOut;
import tintwright.bench.log.ShopLog;
import tintwright.bench.top.BenchTop;
import tintwright.bench.top.BenchTop.Act;
import tintwright.bench.top.BenchTop.Answer;
import tintwright.bench.top.BenchTop.CupNow;
import tintwright.bench.top.BenchTop.DayNow;
import tintwright.bench.top.DayTicks;
import tintwright.cup.Deed;
import tintwright.fill.DayWords;
import tintwright.fill.repair.CountersunkHole;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairLine;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.phone.PhoneBenches;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.EyeVerdict.Hue;
import tintwright.reading.FilmState;
import tintwright.window.frame.Step;

/** The window's job from a phone: one job, two faces, no deed done twice. */
class PhoneAtTheDeskTest {
    private final Desk desk = Desks.demo(Clock.systemUTC());
    private final BenchTop top = new DeskTop(
                    desk.job(),
                    desk.cup(),
                    desk.sheet(),
                    desk.fill(),
                    desk.log(),
                    desk.shell(),
                    desk.chipPhoto(),
                    desk.chipPhoto(),
                    Runnable::run)
            .top();

    private CupNow cup() {
        return top.sight().cup().orElseThrow();
    }

    private long entries() {
        return desk.job().now().cup().orElseThrow().standing().size();
    }

    @Test
    void aCupBegunInTheWindowStandsOnThePhone() {
        assertTrue(top.sight().cup().isEmpty());
        long before = top.version();
        desk.cup().begin();
        assertTrue(top.version() > before);
        assertEquals(desk.cup().inHandProperty().get().orElseThrow().deeds(), cup().deeds());
        assertEquals(desk.shell().jobProperty().get(), top.sight().job());
    }

    @Test
    void aCupBegunOnThePhoneStandsInTheWindowAndIsOne() {
        assertTrue(top.act("", new Act.Begin()).join().done());
        String name = desk.job().now().cup().orElseThrow().name();
        assertEquals(Answer.GONE_ON, top.act("", new Act.Begin()).join());
        assertEquals(name, desk.job().now().cup().orElseThrow().name());
        desk.cup().putAway();
        desk.job().change(job -> job.withPlaces(job.boat(), List.of(), -1));
        assertEquals(Answer.HULL_FIRST, top.act("", new Act.Begin()).join());
    }

    @Test
    void aDoseFromThePhoneIsInTheWindowAndOnce() {
        desk.cup().begin();
        CupNow seen = cup();
        Answer first = top.act(seen.key(), new Act.Weighed("90.5")).join();
        assertTrue(first.done(), first.said());
        assertEquals(
                90.5,
                ((Deed.Weighed) desk.job()
                                .now()
                                .cup()
                                .orElseThrow()
                                .standing()
                                .get(0)
                                .deed())
                        .grams());
        assertEquals(2, entries(), "the white, and what is held back");
        assertEquals(first, top.act(seen.key(), new Act.Weighed("90.5")).join());
        assertEquals(2, entries());
        assertFalse(cup().key().equals(seen.key()));
    }

    @Test
    void aDoseDoneInTheWindowIsNotDoneAgainFromAPageThatIsOld() {
        desk.cup().begin();
        String old = cup().key();
        desk.cup().accept();
        long now = entries();
        assertEquals(Answer.GONE_ON, top.act(old, new Act.Weighed("90")).join());
        assertEquals(now, entries());
    }

    @Test
    void whatIsNoMassIsRefusedAndMayBeSentAgain() {
        desk.cup().begin();
        Answer refused = top.act(cup().key(), new Act.Weighed("much")).join();
        assertFalse(refused.done());
        assertTrue(refused.said().contains("much"), refused.said());
        assertEquals(0, entries());
        assertTrue(top.act(cup().key(), new Act.Weighed("90")).join().done());
    }

    @Test
    void whatWasRefusedBeforeIsNotSaidOfADeedThatIsStillBeingWorkedOut() {
        Deque<Runnable> atWork = new ArrayDeque<>();
        Desk busy = new Desk(
                Desk.demo(),
                atWork::add,
                Runnable::run,
                Clock.systemUTC(),
                () -> ShopLog.demo(Clock.systemUTC()),
                Desks::learn);
        BenchTop seen = new DeskTop(
                        busy.job(),
                        busy.cup(),
                        busy.sheet(),
                        busy.fill(),
                        busy.log(),
                        busy.shell(),
                        busy.chipPhoto(),
                        busy.chipPhoto(),
                        Runnable::run)
                .top();
        busy.cup().begin();
        workThrough(atWork);
        CupNow cup = seen.sight().cup().orElseThrow();
        assertFalse(seen.act(cup.key(), new Act.Weighed("much")).join().done());
        String shown = cup.deeds().now().amount().orElseThrow().shown().replace(" g", "");
        CompletableFuture<Answer> answer = seen.act(cup.key(), new Act.Weighed(shown));
        assertFalse(answer.isDone(), "the deed is not in yet");
        workThrough(atWork);
        assertTrue(answer.join().done(), answer.join().said());
        assertTrue(
                answer.join().said().matches("It is in: [0-9.]+ g plain white\\."),
                answer.join().said());
    }

    private static void workThrough(Deque<Runnable> atWork) {
        while (!atWork.isEmpty()) {
            atWork.removeFirst().run();
        }
    }

    @Test
    void whatTheEyeSeesOnThePhoneIsWrittenInTheWindowAndOnce() {
        desk.cup().begin();
        EyeVerdict dark = new EyeVerdict(
                Optional.of(Depth.MUCH_TOO_DARK), Optional.of(Hue.TOO_RED), Amount.LITTLE, FilmState.CURED);
        Answer early =
                top.act(cup().key(), new Act.Looked(dark, OptionalInt.empty())).join();
        assertFalse(early.done(), "nothing is in the cup");
        assertTrue(early.said().contains("Nothing is in the cup yet"), early.said());
        desk.cup().accept();
        String key = cup().key();
        Answer seen = top.act(key, new Act.Looked(dark, OptionalInt.empty())).join();
        assertEquals(new Answer(true, "Written down: much too dark and a little too red."), seen);
        assertEquals(
                seen, top.act(key, new Act.Looked(dark, OptionalInt.empty())).join());
        assertEquals(3, entries());
        assertEquals(
                new Deed.Seen(dark),
                desk.job().now().cup().orElseThrow().standing().get(2).deed());
    }

    @Test
    void takingBackInTheWindowNamesTheNextDeedAnew() {
        desk.cup().begin();
        String first = cup().key();
        desk.cup().accept();
        desk.shell().undo();
        assertFalse(cup().key().equals(first), "else the answer to the first press would be given again");
        assertTrue(top.act(cup().key(), new Act.Weighed("90")).join().done());
    }

    @Test
    void aPhotoIsWantedWhereOneWaitsForIt() {
        assertEquals(BenchTop.Wanted.HULL, top.sight().wanted());
        desk.cup().begin();
        desk.shell().stepProperty().set(Step.CUP);
        assertEquals(BenchTop.Wanted.CHIP, top.sight().wanted());
        desk.shell().stepProperty().set(Step.HULL);
        assertEquals(BenchTop.Wanted.HULL, top.sight().wanted());
    }

    @Test
    void theLabelOfACupOpensItsRecipeInTheWindowAndOnThePhone(@TempDir Path folder) throws Exception {
        Path photo = folder.resolve("label.jpg");
        ShopLog log = top.log().orElseThrow();
        Noted<Page.Cup> cup = log.cup(log.boat("Tarrowmere"), Optional.empty());
        Files.write(photo, PhoneBenches.photoOf(new GiveOut(log).labelPdf(cup)));
        Answer answer = top.act("", new Act.Photo(photo)).join();
        assertEquals(Optional.of(cup.id()), answer.recipe(), answer.said());
        assertEquals(Step.LOG, desk.shell().stepProperty().get());
        assertTrue(
                desk.log().againProperty().get().title().contains(cup.page().name()),
                desk.log().againProperty().get().title());
    }

    @Test
    void aTickOnThePhoneIsATickInTheWindowAndTheOtherWay() {
        desk.job()
                .change(job -> job.filling(job.fill()
                        .plus(new RepairLine("old cleat holes", new CountersunkHole(5, 9, 2, 6, 0), Lie.VERTICAL, 8))));
        DayNow day = top.sight().day().orElseThrow();
        String step = DayTicks.name(DayWords.of(day.plan(), day.units()).get(0));
        assertTrue(top.act("", new Act.Ticked(step, true)).join().done());
        assertEquals(Set.of(step), desk.fill().ticks().done());
        long before = top.version();
        desk.fill().ticks().tick(step, false);
        assertTrue(top.version() > before);
        assertEquals(Set.of(), top.sight().day().orElseThrow().ticked());
        assertEquals(
                Answer.GONE_ON,
                top.act("", new Act.Ticked("no such step", true)).join());
    }

    @Test
    void theDoorIsClosedUntilSomebodyPresses() {
        assertEquals("", desk.phone().addressProperty().get());
        desk.phone().close();
        assertEquals("", desk.phone().addressProperty().get());
    }
}
