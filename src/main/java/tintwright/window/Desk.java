package tintwright.window;

import java.time.Clock;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.scene.Node;
import tintwright.bench.Aim;
import tintwright.bench.MatchBench;
import tintwright.bench.ShopLog;
import tintwright.files.Demo;
import tintwright.match.Target;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Knowledge;
import tintwright.units.UnitSystem;

/** Everything one window needs, put together: the models, and the stations that can be worked. */
final class Desk {
    private static final double DEMO_GRAMS = 150;
    private static final double DEMO_SCALE = 0.01;

    private final ShellModel shell = new ShellModel();
    private final JobModel job;
    private final PlanModel plan;
    private final CupModel cup;
    private final HullModel hull;
    private final ShelfModel shelf;
    private final FillModel fill;
    private final LogModel log;

    /**
     * @param first  the job to open on
     * @param worker where the engine runs
     * @param screen where its answers are shown
     * @param clock  for timers
     * @param openLog opens the log, off the screen's thread
     */
    Desk(Job first, Executor worker, Executor screen, Clock clock, Callable<ShopLog> openLog) {
        job = new JobModel(first, new Latest(worker, screen), shell, clock);
        plan = new PlanModel(job, shell, engine(), new Latest(worker, screen));
        cup = new CupModel(job, shell, new Latest(worker, screen), new InOrder(worker, screen), clock);
        hull = new HullModel(job, new Latest(worker, screen));
        shelf = new ShelfModel(job, plan, new Latest(worker, screen), new Latest(worker, screen), clock);
        fill = new FillModel(job, shell, new InOrder(worker, screen), clock);
        log = new LogModel(job, shell, new Latest(worker, screen), new InOrder(worker, screen), openLog);
        plan.planProperty().addListener((property, before, after) -> guide());
        cup.inHandProperty().addListener((property, before, after) -> guide());
        guide();
        job.jobProperty().addListener((property, before, after) -> captions(after));
        captions(first);
    }

    /** @return the demo boat and shelf, ready to match */
    static Job demo() {
        var places = Demo.places();
        return new Job(places.get(0).boat(), places, 0, Demo.shelf(), DEMO_GRAMS, DEMO_SCALE, Set.of(),
                FillDraft.NONE, Optional.empty(), List.of());
    }

    private static Matching engine() {
        return new Matching() {
            private MatchBench bench;

            @Override
            public Target target(PlaceReadings place) {
                return Aim.of(place).target();
            }

            @Override
            public synchronized MatchBench on(Knowledge knowledge) {
                if (bench == null || bench.knowledge() != knowledge) {
                    bench = MatchBench.of(knowledge);
                }
                return bench;
            }
        };
    }

    private void captions(Job now) {
        int tints = now.shelf().tints().size();
        int repairs = now.fill().lines().size();
        shell.captionProperty(Step.SHELF).set(tints == 1 ? "1 tint" : tints + " tints");
        shell.captionProperty(Step.BOAT).set(now.boat().isBlank() ? Step.BOAT.meaning() : now.boat());
        shell.captionProperty(Step.HULL).set(job.place().map(PlaceReadings::place).orElse(Step.HULL.meaning()));
        shell.captionProperty(Step.FILL).set(repairs == 0 ? Step.FILL.meaning()
                : repairs == 1 ? "1 repair" : repairs + " repairs");
    }

    /** Puts the three answers into the strip: from the cup in hand, else from the plan. */
    private void guide() {
        Optional<CupModel.InHand> mixing = cup.inHandProperty().get();
        if (mixing.isPresent()) {
            CupModel.InHand seen = mixing.get();
            shell.answer(seen.close(), seen.closeWords(), seen.sure(), seen.sureWords());
            shell.next(seen.next().sentence(), seen.next().button(), () -> follow(seen.next()));
            shell.captionProperty(Step.CUP).set(seen.cup().state().mass() == 0 ? "begun"
                    : Drawn.grams(seen.cup().state().mass()) + " in it");
            return;
        }
        plan.answerStrip();
        PlanModel.Plan planned = plan.planProperty().get();
        planned.lines().stream().filter(line -> !line.isTint()).findFirst().ifPresent(base -> shell.next(
                "Begin a cup: white first, then small safe doses, one at a time.", "Begin the cup", () -> {
                    cup.begin();
                    shell.stepProperty().set(Step.CUP);
                }));
    }

    private void follow(CupModel.Next next) {
        boolean atTheCup = shell.stepProperty().get() == Step.CUP;
        if (next.deed().isEmpty() && next.button().startsWith("On to")) {
            shell.stepProperty().set(Step.FILL);
        } else if (!atTheCup) {
            shell.stepProperty().set(Step.CUP);
        } else if (next.deed().isPresent()) {
            cup.accept();
        }
    }

    /** @return the stations that can be worked */
    Set<Step> stations() {
        return pages().keySet();
    }

    Shell view() {
        return new Shell(shell, pages());
    }

    private Map<Step, Supplier<Node>> pages() {
        Map<Step, Supplier<Node>> stations = new EnumMap<>(Step.class);
        stations.put(Step.BOAT, () -> new BoatPage(log, job, () -> shell.stepProperty().set(Step.HULL)).build());
        stations.put(Step.HULL, () -> new HullPage(hull).build());
        stations.put(Step.SHELF, () -> new ShelfPage(shelf).build());
        stations.put(Step.CUP, () -> new CupStation(plan, cup));
        stations.put(Step.FILL, () -> new FillPage(fill, UnitSystem.METRIC).build());
        stations.put(Step.LOG, () -> new LogPage(log).build());
        return stations;
    }

    ShellModel shell() {
        return shell;
    }

    JobModel job() {
        return job;
    }

    PlanModel plan() {
        return plan;
    }

    ShelfModel shelf() {
        return shelf;
    }

    LogModel log() {
        return log;
    }

    FillModel fill() {
        return fill;
    }

    CupModel cup() {
        return cup;
    }

    HullModel hull() {
        return hull;
    }
}
