package tintwright.bench.top;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import tintwright.bench.CupBench;
import tintwright.bench.CupStanding;
import tintwright.bench.Cups;
import tintwright.bench.PlanFill;
import tintwright.bench.job.BenchFile;
import tintwright.bench.job.FillOrders;
import tintwright.bench.job.Job;
import tintwright.bench.log.ShopLog;
import tintwright.bench.log.WriteLog;
import tintwright.bench.top.BenchTop.Act;
import tintwright.bench.top.BenchTop.Answer;
import tintwright.bench.top.BenchTop.CupNow;
import tintwright.bench.top.BenchTop.DayNow;
import tintwright.bench.top.BenchTop.Sight;
import tintwright.bench.top.BenchTop.Wanted;
import tintwright.cup.Cup;
import tintwright.cup.CupDeeds;
import tintwright.cup.CupDeeds.Todo;
import tintwright.cup.Deed;
import tintwright.cup.Dose;
import tintwright.cup.Plan;
import tintwright.cup.Way;
import tintwright.files.ClocksFile;
import tintwright.files.FileProblem;
import tintwright.fill.Batch;
import tintwright.fill.catalyst.CureTimer;
import tintwright.logbook.disk.Saved;
import tintwright.match.Aim;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.reading.photo.file.PhotoException;
import tintwright.shelf.Shelf;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.units.Entry;
import tintwright.units.UnitSystem;

/**
 * The job in hand where there is no window: read from its file, shown on the {@link BenchTop}, worked on from there,
 * and written back after every deed. One thread does all of it, in order.
 */
public final class KeptBench implements BenchTop.Hands, AutoCloseable {
    private final Path file;
    private final Clock clock;
    private final Knowledge knowledge;
    private final Optional<ShopLog> log;
    private String notLogged = "";
    private final Cups cups = new Cups();
    private final DayTicks ticks = new DayTicks();
    private final Path clocks;
    private List<ClocksFile.Catalysed> kept = List.of();
    private final Map<Integer, CureClock> running = new TreeMap<>();
    private final ExecutorService hand = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "bench");
        thread.setDaemon(true);
        return thread;
    });
    private final BenchTop top;
    private Job job;
    private Optional<PlanFill> plan = Optional.empty();

    private KeptBench(Path file, Job job, Clock clock, Function<Shelf, Knowledge> teacher, Optional<ShopLog> log)
            throws FileProblem {
        this.log = log;
        this.file = file;
        this.clock = clock;
        this.job = job;
        this.knowledge = teacher.apply(job.shelf());
        ticks.keepIn(file.resolveSibling("day.json"));
        clocks = file.resolveSibling("cure.json");
        if (Files.exists(clocks)) {
            kept = ClocksFile.read(clocks);
            kept.stream()
                    .filter(this::isOfThisPlace)
                    .forEach(one -> running.put(one.batch(), new CureClock(one.catalysed(), one.timers())));
        }
        this.top = new BenchTop(look(), this);
    }

    /**
     * @param file    the job as the window keeps it
     * @param teacher what the chips of a shelf teach
     * @param log     where the cup is written down dose by dose; empty to write nothing down
     * @throws FileProblem when the job is missing or cannot be read
     */
    public static KeptBench open(Path file, Clock clock, Function<Shelf, Knowledge> teacher, Optional<ShopLog> log)
            throws FileProblem {
        return new KeptBench(file, BenchFile.read(file), clock, teacher, log);
    }

    /** @return where the job is seen and worked on */
    public BenchTop top() {
        return top;
    }

    @Override
    public void close() {
        hand.shutdown();
    }

    private Sight look() {
        Optional<CupNow> cup = job.cup().map(this::cup);
        plan = job.fill().lines().isEmpty()
                ? Optional.empty()
                : Optional.of(PlanFill.of(
                        FillOrders.typed(job),
                        job.cup().flatMap(one -> cups.at(knowledge, one).standing()),
                        LocalDate.now(clock)));
        return new Sight(
                job.boat(),
                title(),
                cup.isPresent() ? Wanted.CHIP : Wanted.HULL,
                cup,
                plan.map(made -> new DayNow(
                        made.plan(), UnitSystem.METRIC, ticks.of(jobName()), new TreeMap<>(running), hold(made))));
    }

    /** As the window calls it, whose ticks these are too. */
    private String jobName() {
        return job.boat() + ", "
                + (job.place() < 0 ? "" : job.places().get(job.place()).place());
    }

    private String title() {
        String place = job.place() < 0 ? "" : job.places().get(job.place()).place();
        return job.cup()
                .map(cup -> job.boat() + ", cup " + cup.name())
                .orElse(place.isEmpty() ? job.boat() : job.boat() + ", " + place);
    }

    private CupNow cup(Cup cup) {
        CupBench bench = cups.at(knowledge, cup);
        boolean back = job.ahead().isEmpty() && bench.plan() instanceof Plan.WayBack;
        return new CupNow(
                key(cup),
                bench.hull(),
                bench.deeds(job.ahead(), bench.contradiction().isPresent()),
                back ? bench.waysSaid() : List.of(),
                notLogged);
    }

    /** Every deed is an entry more, also one that takes another back. */
    private String key(Cup cup) {
        return cup.name() + "/" + cup.entries().size() + "/" + job.ahead().size();
    }

    /** @return why no catalyst may go in; empty when it may */
    static String hold(PlanFill made) {
        return made.plan().forbidden()
                ? made.plan().before(UnitSystem.METRIC).get(0)
                : made.standing()
                        .filter(CupStanding::another)
                        .map(seen -> seen.sentence() + " " + seen.first())
                        .orElse("");
    }

    @Override
    public CompletableFuture<Answer> act(String key, Act act) {
        return CompletableFuture.supplyAsync(() -> done(key, act), hand);
    }

    private Answer done(String key, Act act) {
        try {
            Answer answer = changed(key, act);
            top.show(look());
            return answer;
        } catch (IllegalArgumentException | FileProblem e) {
            String said = String.valueOf(e.getMessage());
            return new Answer(false, said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1) + ".");
        }
    }

    private Answer changed(String key, Act act) throws FileProblem {
        if (act instanceof Act.Weighed weighed) {
            return gone(key) ? Answer.GONE_ON : weigh(weighed.typed());
        } else if (act instanceof Act.Begin) {
            return begin();
        } else if (act instanceof Act.Looked looked) {
            return gone(key) ? Answer.GONE_ON : looked(looked);
        } else if (act instanceof Act.Follow follow) {
            return gone(key) ? Answer.GONE_ON : follow(follow.way());
        } else if (act instanceof Act.Catalysed catalysed) {
            return catalysed(catalysed.batch());
        } else if (act instanceof Act.Ticked ticked) {
            if (top.sight().day().filter(day -> day.has(ticked.step())).isEmpty()) {
                return Answer.GONE_ON;
            }
            ticks.tick(jobName(), ticked.step(), ticked.done());
            return new Answer(true, "");
        } else if (act instanceof Act.Seen seen) {
            running.computeIfPresent(seen.batch(), (batch, clock) -> without(clock, seen.cue()));
            keepClocks();
            return new Answer(true, "");
        }
        return photo(((Act.Photo) act).file());
    }

    private boolean gone(String key) {
        return job.cup().isEmpty() || !key(job.cup().get()).equals(key);
    }

    private Answer weigh(String typed) throws FileProblem {
        CupBench bench = cups.at(knowledge, job.cup().orElseThrow());
        CupDeeds deeds = bench.deeds(job.ahead(), bench.contradiction().isPresent());
        Todo now = deeds.now();
        Deed advised = now.deed().orElseThrow(() -> new IllegalArgumentException("there is nothing to weigh now"));
        boolean exactly = now.amount().orElseThrow().shown().equals(typed.strip() + " g");
        Deed deed = exactly ? advised : CupDeeds.instead(advised, Entry.grams("the grams", typed, UnitSystem.METRIC));
        CupBench.Added added = bench.add(clock.instant(), deed);
        CupBench after =
                added instanceof CupBench.Added.Done done ? done.bench() : ((CupBench.Added.SameAgain) added).ifMeant();
        for (Deed with : now.writes().subList(1, now.writes().size())) {
            after = after.also(clock.instant(), with);
        }
        // Weighed exactly, the doses of one plan follow one another; weighed otherwise, the rest is planned anew.
        List<Deed> ahead = !job.ahead().isEmpty()
                ? job.ahead().subList(1, job.ahead().size())
                : exactly
                        ? deeds.next().stream()
                                .flatMap(todo -> todo.deed().stream())
                                .toList()
                        : List.of();
        keep(after, ahead);
        return new Answer(true, "It is in: " + CupDeeds.words(deed, job.shelf()) + ".");
    }

    private Answer begin() throws FileProblem {
        if (job.cup().isPresent()) {
            return Answer.GONE_ON;
        }
        if (job.place() < 0) {
            return Answer.HULL_FIRST;
        }
        PlaceReadings place = job.places().get(job.place());
        Set<String> used = log.map(open -> open.cupNames(job.boat())).orElse(Set.of());
        String white = job.shelf().bases().get(0).id();
        keep(
                CupBench.open(
                        knowledge,
                        Cup.empty(CupNames.next(place.place(), used), place, job.grams(), job.scaleStep(), white)),
                List.of());
        return new Answer(true, "");
    }

    private Answer looked(Act.Looked look) throws FileProblem {
        CupBench after =
                cups.at(knowledge, job.cup().orElseThrow()).seen(clock.instant(), look.verdict(), look.nearest());
        keep(after, after.still(job.ahead()));
        return Answer.seen(look.verdict());
    }

    private Answer follow(int number) throws FileProblem {
        CupBench bench = cups.at(knowledge, job.cup().orElseThrow());
        List<Way> ways = bench.ways();
        if (number >= ways.size()) {
            return Answer.GONE_ON;
        }
        List<Deed> ahead = new ArrayList<>();
        if (ways.get(number) instanceof Way.Climb climb) {
            climb.doses().stream().map(Dose::deed).forEach(ahead::add);
        } else if (ways.get(number) instanceof Way.Split split) {
            ahead.add(new Deed.SetAside(split.setAside(), split.name()));
            split.doses().stream().map(Dose::deed).forEach(ahead::add);
        } else {
            return new Answer(false, "That way needs a clean cup: begin it at the bench, then go on here.");
        }
        keep(bench, ahead);
        return new Answer(true, "");
    }

    private void keep(CupBench changed, List<Deed> ahead) throws FileProblem {
        write(job.after(changed.cup(), ahead));
        cups.now(changed);
        log.filter(open -> !job.boat().isBlank() && changed.state().mass() > 0)
                .ifPresent(open -> notLogged = new WriteLog(open).inHand(job.boat(), changed.cup(), job.shelf())
                                instanceof Saved.Waiting waiting
                        ? waiting.sentence()
                        : "");
    }

    @Override
    public Optional<ShopLog> log() {
        return log;
    }

    private Answer catalysed(int number) throws FileProblem {
        if (plan.isEmpty() || number < 1 || number > plan.get().plan().batches().size()) {
            return Answer.GONE_ON;
        }
        String hold = hold(plan.get());
        if (!hold.isEmpty()) {
            return new Answer(false, hold);
        }
        List<CureTimer> timers = plan.get().plan().timers();
        Batch batch = plan.get().plan().batches().get(number - 1);
        running.computeIfAbsent(number, none -> new CureClock(clock.instant(), timers));
        keepClocks();
        return new Answer(true, "The clock of batch " + batch.number() + " runs.");
    }

    /** In the window's own file, so that a cup goes on curing whoever looks next. */
    private void keepClocks() throws FileProblem {
        List<Batch> batches = plan.map(made -> made.plan().batches()).orElse(List.of());
        List<ClocksFile.Catalysed> now =
                new ArrayList<>(kept.stream().filter(one -> !isOfThisPlace(one)).toList());
        running.entrySet().stream()
                .map(one -> new ClocksFile.Catalysed(
                        Optional.of(jobName()),
                        one.getKey(),
                        one.getKey() <= batches.size()
                                ? batches.get(one.getKey() - 1).stage().words()
                                : "",
                        one.getValue().catalysed(),
                        one.getValue().timers()))
                .forEach(now::add);
        ClocksFile.keep(clocks, kept, now);
        kept = now;
    }

    /** Cups that were kept before places were told apart are of the one in hand. */
    private boolean isOfThisPlace(ClocksFile.Catalysed cup) {
        return cup.job().orElseGet(this::jobName).equals(jobName());
    }

    private static CureClock without(CureClock clocks, String cue) {
        List<CureTimer> left = clocks.timers().stream()
                .filter(timer -> !timer.cue().equals(cue))
                .toList();
        return left.isEmpty() ? null : new CureClock(clocks.catalysed(), left);
    }

    private Answer photo(Path photo) throws FileProblem {
        PhonePhoto.Colours read;
        try {
            PhonePhoto seen = PhonePhoto.read(photo, top.sight().wanted(), job.shelf());
            if (seen instanceof PhonePhoto.Label label) {
                return Answer.label(label.cup(), log);
            }
            read = (PhonePhoto.Colours) seen;
        } catch (PhotoException e) {
            return new Answer(false, e.getMessage());
        }
        if (read.chip().isPresent()) {
            CupBench after = cups.at(knowledge, job.cup().orElseThrow())
                    .read(clock.instant(), read.chip().get(), Optional.of(read.hull()))
                    .bench();
            keep(after, after.still(job.ahead()));
            return new Answer(true, read.words());
        }
        if (job.place() < 0) {
            return new Answer(false, "There is no place yet to read: name one at the bench first.");
        }
        PlaceReadings place = job.places().get(job.place());
        List<Reading> all = new ArrayList<>(place.readings());
        all.add(read.hull());
        PlaceReadings more = new PlaceReadings(place.boat(), place.place(), all, place.note());
        // What cannot be combined never gets onto the place.
        Aim.of(more);
        List<PlaceReadings> places = new ArrayList<>(job.places());
        places.set(job.place(), more);
        write(job.withPlaces(job.boat(), places, job.place()));
        return new Answer(true, read.words());
    }

    private void write(Job after) throws FileProblem {
        BenchFile.keep(file, Optional.of(job), after);
        job = after;
    }
}
