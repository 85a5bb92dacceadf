package tintwright.window;

import java.time.Clock;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.scene.Node;
import tintwright.bench.Aim;
import tintwright.bench.MatchBench;
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
    private final HullModel hull;
    private final ShelfModel shelf;
    private final FillModel fill;

    /**
     * @param first  the job to open on
     * @param worker where the engine runs
     * @param screen where its answers are shown
     * @param clock  for timers
     */
    Desk(Job first, Executor worker, Executor screen, Clock clock) {
        job = new JobModel(first, new Latest(worker, screen), shell);
        plan = new PlanModel(job, shell, engine(), new Latest(worker, screen));
        hull = new HullModel(job, new Latest(worker, screen));
        shelf = new ShelfModel(job, plan, new Latest(worker, screen), new Latest(worker, screen), clock);
        fill = new FillModel(job, shell, new Latest(worker, screen), clock);
        plan.planProperty().addListener((property, before, after) -> guide());
        guide();
        job.jobProperty().addListener((property, before, after) -> captions(after));
        captions(first);
    }

    /** @return the demo boat and shelf, ready to match */
    static Job demo() {
        var places = Demo.places();
        return new Job(places.get(0).boat(), places, 0, Demo.shelf(), DEMO_GRAMS, DEMO_SCALE, Set.of(),
                FillDraft.NONE);
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
        shell.captionProperty(Step.HULL).set(job.place().map(PlaceReadings::place).orElse(Step.HULL.meaning()));
        shell.captionProperty(Step.FILL).set(repairs == 0 ? Step.FILL.meaning()
                : repairs == 1 ? "1 repair" : repairs + " repairs");
    }

    private void guide() {
        plan.planProperty().get().lines().stream().filter(line -> !line.isTint()).findFirst().ifPresent(base ->
                shell.next("Weigh " + base.grams() + " of " + base.name() + ", then the tints, least of all first.",
                        "Copy the list", plan::copy));
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
        stations.put(Step.HULL, () -> new HullPage(hull).build());
        stations.put(Step.SHELF, () -> new ShelfPage(shelf).build());
        stations.put(Step.CUP, () -> new PlanPage(plan).build());
        stations.put(Step.FILL, () -> new FillPage(fill, UnitSystem.METRIC).build());
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

    FillModel fill() {
        return fill;
    }

    HullModel hull() {
        return hull;
    }
}
