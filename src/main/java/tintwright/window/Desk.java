package tintwright.window;

import java.time.Clock;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;
import tintwright.bench.Cups;
import tintwright.bench.MatchBench;
import tintwright.bench.job.FillDraft;
import tintwright.bench.job.Job;
import tintwright.bench.log.ShopLog;
import tintwright.bench.top.BenchTop;
import tintwright.files.Demo;
import tintwright.match.Aim;
import tintwright.match.Target;
import tintwright.phone.LocalNetwork;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Base;
import tintwright.shelf.Shelf;
import tintwright.shelf.Stock;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.window.boat.BoatPage;
import tintwright.window.boat.BoatsModel;
import tintwright.window.boat.RecentModel;
import tintwright.window.cup.CupModel;
import tintwright.window.cup.CupStation;
import tintwright.window.cup.Matching;
import tintwright.window.cup.PlanModel;
import tintwright.window.frame.LatestAnswer;
import tintwright.window.frame.QueuedWork;
import tintwright.window.frame.Shell;
import tintwright.window.frame.ShellModel;
import tintwright.window.frame.Step;
import tintwright.window.frame.WalkBar;
import tintwright.window.frame.WalkModel;
import tintwright.window.holes.FillClock;
import tintwright.window.holes.FillModel;
import tintwright.window.holes.FillPage;
import tintwright.window.hull.HullModel;
import tintwright.window.hull.HullStation;
import tintwright.window.hull.PhotoModel;
import tintwright.window.hull.PhotoView;
import tintwright.window.hull.SheetModel;
import tintwright.window.job.JobModel;
import tintwright.window.job.OpenLog;
import tintwright.window.log.LogModel;
import tintwright.window.log.LogPage;
import tintwright.window.phone.PhoneCard;
import tintwright.window.phone.PhoneModel;
import tintwright.window.shelf.ShelfModel;
import tintwright.window.shelf.ShelfPage;

/** Everything one window needs, put together: the models, and the stations that can be worked. */
public final class Desk {
    private static final double DEMO_GRAMS = 150;
    private static final double DEMO_SCALE = 0.01;

    private final ShellModel shell = new ShellModel();
    private final JobModel job;
    private final PlanModel plan;
    private final CupModel cup;
    private final HullModel hull;
    private final SheetModel sheet;
    private final PhotoModel photo;
    private final PhotoModel chipPhoto;
    private final ShelfModel shelf;
    private final FillModel fill;
    private final BoatsModel boats;
    private final LogModel log;
    private final WalkModel walk;
    private final RecentModel recent;
    private final PhoneModel phone;
    private boolean ownBench;
    private Runnable otherBench = () -> {};
    private String toTheOther = "";

    /**
     * @param first  the job to open on
     * @param worker where the engine runs
     * @param screen where its answers are shown
     * @param clock  for timers
     * @param openLog opens the log, off the screen's thread
     * @param teacher what the chips of a shelf teach; called off the screen's thread
     */
    public Desk(
            Job first,
            Executor worker,
            Executor screen,
            Clock clock,
            Callable<ShopLog> openLog,
            Function<Shelf, Knowledge> teacher) {
        this(first, worker, screen, clock, openLog, teacher, new Cups());
    }

    /** @param cups the cup that all stations show */
    Desk(
            Job first,
            Executor worker,
            Executor screen,
            Clock clock,
            Callable<ShopLog> openLog,
            Function<Shelf, Knowledge> teacher,
            Cups cups) {
        job = new JobModel(
                first, teacher, new LatestAnswer(worker, screen, shell, "Learning the shelf\u2026"), shell, clock);
        plan = new PlanModel(
                job, shell, engine(), new LatestAnswer(worker, screen, shell, "Working out the mix\u2026"));
        cup = new CupModel(
                job,
                shell,
                cups,
                new LatestAnswer(worker, screen, shell, "Working out the next step\u2026"),
                new QueuedWork(worker, screen),
                clock);
        hull = new HullModel(job, new LatestAnswer(worker, screen, shell, "Taking the readings together\u2026"));
        hull.tell(shell::say);
        sheet = new SheetModel(
                job,
                hull,
                new LatestAnswer(worker, screen, shell, "Reading the photo\u2026"),
                new LatestAnswer(worker, screen, shell, "Looking at the photo\u2026"),
                new QueuedWork(worker, screen));
        photo = new PhotoModel(worker, screen, hull::fromPhoto);
        chipPhoto = PhotoModel.ofChip(worker, screen, cup::read);
        shelf = new ShelfModel(
                job,
                plan.planProperty().map(PlanModel.Plan::nextChip),
                new LatestAnswer(worker, screen, shell, "Finding what chip to make next\u2026"),
                new LatestAnswer(worker, screen, shell, "Reading the file\u2026"),
                clock,
                shell::copy);
        fill = new FillModel(
                job,
                shell,
                cups,
                new LatestAnswer(worker, screen, shell, "Working out the cups\u2026"),
                new QueuedWork(worker, screen),
                clock);
        OpenLog book = new OpenLog(job, shell, new QueuedWork(worker, screen));
        boats = new BoatsModel(job, shell, book, new LatestAnswer(worker, screen, shell, "Looking for boats\u2026"));
        log = new LogModel(job, shell, book, new LatestAnswer(worker, screen, shell, "Looking in the log\u2026"));
        book.open(openLog, log::problem);
        cup.namesInTheLog(log::names);
        walk = new WalkModel(shell);
        BenchTop top = new DeskTop(job, cup, sheet, fill, log, shell, photo, chipPhoto, screen).top();
        phone = new PhoneModel(top, ShopLog.usualHome().resolve("photos"), clock, LocalNetwork::all, screen);
        recent = new RecentModel(job, shell, new QueuedWork(worker, screen));
        new Guide(shell, job, plan, cup, fill);
        job.jobProperty().addListener((property, before, after) -> {
            captions(after);
            if (before.cup().isEmpty() && after.cup().isPresent()) {
                walk.over();
            }
        });
        captions(first);
    }

    /** @return an empty bench: no boat, a white and nothing else */
    public static Job own() {
        Base white = new Base("white", "White", Base.USUAL_DENSITY, false, Stock.UNKNOWN);
        Shelf shelf = new Shelf("My shelf", List.of(white), List.of());
        return new Job(
                "",
                List.of(),
                -1,
                shelf,
                DEMO_GRAMS,
                DEMO_SCALE,
                Set.of(),
                FillDraft.NONE,
                Optional.empty(),
                List.of());
    }

    /** @return the demo boat and shelf, ready to match */
    static Job demo() {
        var places = Demo.places();
        return new Job(
                places.get(0).boat(),
                places,
                0,
                Demo.shelf(),
                DEMO_GRAMS,
                DEMO_SCALE,
                Set.of(),
                FillDraft.NONE,
                Optional.empty(),
                List.of());
    }

    private static Matching engine() {
        return new Matching() {
            private MatchBench bench;

            @Override
            public Target target(PlaceReadings place, Knowledge knowledge) {
                return Aim.of(place).through(knowledge).target();
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
        shell.captionProperty(Step.SHELF).set(tints == 1 ? "1 tint" : tints + " tints");
        shell.captionProperty(Step.BOAT).set(now.boat().isBlank() ? Step.BOAT.meaning() : now.boat());
        shell.doneProperty(Step.BOAT).set(!now.boat().isBlank());
        shell.doneProperty(Step.HULL).set(now.place() >= 0);
        shell.doneProperty(Step.SHELF).set(tints > 0);
        shell.doneProperty(Step.FILL).set(!now.fill().lines().isEmpty());
        shell.captionProperty(Step.HULL)
                .set(job.place().map(PlaceReadings::place).orElse(Step.HULL.meaning()));
    }

    /** @return the stations that can be worked */
    Set<Step> stations() {
        return pages().keySet();
    }

    /**
     * @param own      true when this is the person's own bench, false for the demo
     * @param ownBegun true when something stands on the person's own bench already
     * @param other    goes over to the other of the two
     * @return what stands around the stations, none of which is shown yet
     */
    Shell frame(boolean own, boolean ownBegun, Runnable other) {
        ownBench = own;
        otherBench = other;
        toTheOther = own ? "Back to the demo boat" : ownBegun ? "Back to my own bench" : "Start my own shelf";
        Shell view = new Shell(shell, pages());
        if (!own) {
            view.aside(new WalkBar(walk, toTheOther, other));
        }
        FillClock.runWith(view, fill.timers());
        return view;
    }

    /** @return the demo as it stands in the window */
    public Shell view() {
        Shell view = frame(false, false, () -> {});
        view.showStation();
        return view;
    }

    private Map<Step, Supplier<Node>> pages() {
        Map<Step, Supplier<Node>> stations = new EnumMap<>(Step.class);
        stations.put(
                Step.BOAT,
                () -> new BoatPage(
                                boats,
                                log::writeReadings,
                                job,
                                recent,
                                () -> shell.stepProperty().set(Step.HULL),
                                ownBench,
                                toTheOther,
                                otherBench)
                        .build());
        stations.put(Step.HULL, () -> new HullStation(hull, sheet, photo, new PhoneCard(phone).build()));
        stations.put(
                Step.SHELF, () -> new ShelfPage(shelf, shell.unitsProperty().get()).build());
        stations.put(
                Step.CUP, () -> new CupStation(plan, cup, () -> new PhotoView(chipPhoto), chipPhoto.previewProperty()));
        stations.put(Step.FILL, () -> new FillPage(fill, shell.unitsProperty().get()).build());
        stations.put(Step.LOG, () -> new LogPage(log).build());
        return stations;
    }

    /** @return the door for a phone */
    PhoneModel phone() {
        return phone;
    }

    public ShellModel shell() {
        return shell;
    }

    public JobModel job() {
        return job;
    }

    public PlanModel plan() {
        return plan;
    }

    public ShelfModel shelf() {
        return shelf;
    }

    WalkModel walk() {
        return walk;
    }

    public RecentModel recent() {
        return recent;
    }

    public LogModel log() {
        return log;
    }

    public FillModel fill() {
        return fill;
    }

    public CupModel cup() {
        return cup;
    }

    public HullModel hull() {
        return hull;
    }

    /** @return the sheet that is laid on the hull */
    public SheetModel sheet() {
        return sheet;
    }

    /** @return the photo that a chip of the cup is read from */
    public PhotoModel chipPhoto() {
        return chipPhoto;
    }
}
