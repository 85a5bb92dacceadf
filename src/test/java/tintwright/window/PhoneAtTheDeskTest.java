package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import org.junit.jupiter.api.Test;
import tintwright.bench.BenchTop;
import tintwright.bench.BenchTop.Act;
import tintwright.bench.BenchTop.Answer;
import tintwright.bench.BenchTop.CupNow;
import tintwright.cup.Deed;
import tintwright.window.frame.Step;

/** The window's job from a phone: one job, two faces, no deed done twice. */
class PhoneAtTheDeskTest {
    private final Desk desk = Desks.demo(Clock.systemUTC());
    private final BenchTop top = new DeskTop(
                    desk.job(),
                    desk.cup(),
                    desk.hull(),
                    desk.fill(),
                    desk.shell(),
                    desk.chipPhoto(),
                    desk.chipPhoto(),
                    Runnable::run,
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
    void theDoorIsClosedUntilSomebodyPresses() {
        assertEquals("", desk.phone().addressProperty().get());
        desk.phone().close();
        assertEquals("", desk.phone().addressProperty().get());
    }
}
