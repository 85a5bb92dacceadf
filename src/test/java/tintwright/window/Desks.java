package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import tintwright.bench.Cups;
import tintwright.bench.job.Job;
import tintwright.bench.log.ShopLog;
import tintwright.cup.CupDeeds;
import tintwright.demo.MeteredShop;
import tintwright.reading.HullFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.window.frame.Shell;

/** Desks for tests: everything happens at once, on the thread that asks. */
public final class Desks {
    private static final Map<Shelf, Knowledge> LEARNED = new ConcurrentHashMap<>();

    private Desks() {}

    /** @return the invented boat as a shop with a meter has her on the bench: for figures that need to be sharp */
    public static Job metered() {
        Job demo = Desk.demo();
        return demo.with(MeteredShop.shelf()).withPlaces(demo.boat(), MeteredShop.places(), 0);
    }

    /** Learning is the same whenever it is done: what one test has learned serves the next. */
    public static Knowledge learn(Shelf shelf) {
        return LEARNED.computeIfAbsent(shelf, Knowledge::of);
    }

    /** @return the same, with a cup that is looked at through this */
    static Desk demo(Clock clock, Cups cups) {
        return new Desk(metered(), Runnable::run, Runnable::run, clock, () -> ShopLog.demo(clock), Desks::learn, cups);
    }

    /** @return a desk on the demo boat and log, and the shelf of a shop with a meter */
    public static Desk demo(Clock clock) {
        return new Desk(metered(), Runnable::run, Runnable::run, clock, () -> ShopLog.demo(clock), Desks::learn);
    }

    /** @return a desk of one's own before anything is on it */
    public static Desk blank(Clock clock) {
        return new Desk(Desk.own(), Runnable::run, Runnable::run, clock, () -> ShopLog.demo(clock), Desks::learn);
    }

    /** @return the window's scene of a bench, the person's own or the demo, with its station in it */
    public static Shell view(Desk desk, boolean own, boolean ownBegun) {
        Shell view = desk.frame(own, ownBegun, () -> {});
        view.showStation();
        return view;
    }

    /** Of the hull nothing is known but that it is like stone: what may not go into the cup is tried in small pots. */
    static Desk trying(Desk desk) {
        desk.job()
                .change(before ->
                        before.withPlaces(before.boat(), List.of(HullFamily.STONE.place(before.boat(), "transom")), 0));
        desk.cup().begin();
        desk.cup().accept();
        while (kind(desk) == CupDeeds.Kind.WEIGH) {
            desk.cup().accept();
        }
        assertEquals(CupDeeds.Kind.TRY_DAB, kind(desk), "no trial dabs are asked for");
        return desk;
    }

    static CupDeeds.Kind kind(Desk desk) {
        return desk.cup().inHandProperty().get().orElseThrow().deeds().now().kind();
    }
}
