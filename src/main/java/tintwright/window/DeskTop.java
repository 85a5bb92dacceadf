package tintwright.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import javafx.beans.value.ChangeListener;
import tintwright.bench.log.ShopLog;
import tintwright.bench.top.BenchTop;
import tintwright.bench.top.BenchTop.Act;
import tintwright.bench.top.BenchTop.Answer;
import tintwright.bench.top.BenchTop.CupNow;
import tintwright.bench.top.BenchTop.DayNow;
import tintwright.bench.top.BenchTop.Sight;
import tintwright.bench.top.BenchTop.Wanted;
import tintwright.bench.top.PhonePhoto;
import tintwright.cup.CupDeeds;
import tintwright.match.Aim;
import tintwright.reading.photo.file.PhotoException;
import tintwright.shelf.Shelf;
import tintwright.window.cup.CupModel;
import tintwright.window.frame.ShellModel;
import tintwright.window.frame.Step;
import tintwright.window.holes.FillModel;
import tintwright.window.hull.PhotoModel;
import tintwright.window.hull.SheetModel;
import tintwright.window.job.JobModel;
import tintwright.window.log.LogModel;

/**
 * The window's job as other faces see and change it. All of it happens on the screen's thread, so that a press here and
 * a press on a phone never meet half-way.
 */
final class DeskTop implements BenchTop.Hands {
    private final JobModel job;
    private final CupModel cup;
    private final SheetModel sheet;
    private final FillModel fill;
    private final LogModel log;
    private final ShellModel shell;
    private final PhotoModel hullPhoto;
    private final PhotoModel chipPhoto;
    /** For the threads that read photos. */
    private volatile Shelf shelf;

    private final Executor screen;
    private final List<Waiting> waiting = new ArrayList<>();
    private final BenchTop top;

    /** A deed at the cup that is being worked out. */
    private record Waiting(String key, CompletableFuture<Answer> answer, Function<List<CupDeeds.Done>, Answer> said) {}

    /**
     * @param hullPhoto where a photo of the hull is marked by hand
     * @param chipPhoto where a photo of a chip of the cup is
     * @param screen    the screen's thread
     */
    DeskTop(
            JobModel job,
            CupModel cup,
            SheetModel sheet,
            FillModel fill,
            LogModel log,
            ShellModel shell,
            PhotoModel hullPhoto,
            PhotoModel chipPhoto,
            Executor screen) {
        this.job = job;
        this.sheet = sheet;
        this.cup = cup;
        this.fill = fill;
        this.log = log;
        this.shell = shell;
        this.hullPhoto = hullPhoto;
        this.chipPhoto = chipPhoto;
        this.screen = screen;
        this.top = new BenchTop(look(), this);
        ChangeListener<Object> changed = (property, before, after) -> show();
        cup.inHandProperty().addListener(changed);
        cup.problemProperty().addListener(changed);
        fill.planProperty().addListener(changed);
        fill.timers().runningProperty().addListener(changed);
        fill.ticks().doneProperty().addListener(changed);
        shell.stepProperty().addListener(changed);
        shell.jobProperty().addListener(changed);
        shell.unitsProperty().addListener(changed);
    }

    /** @return where the window's job is seen and worked on */
    BenchTop top() {
        return top;
    }

    private Sight look() {
        Optional<CupNow> now = cup.inHandProperty()
                .get()
                .map(seen -> new CupNow(
                        key(seen),
                        Aim.of(seen.cup().hull()).readings().mean(),
                        seen.deeds(),
                        seen.ways(),
                        cup.problemProperty().get()));
        shelf = job.now().shelf();
        return new Sight(
                job.now().boat(),
                shell.jobProperty().get(),
                now.isPresent() && shell.stepProperty().get() != Step.HULL ? Wanted.CHIP : Wanted.HULL,
                now,
                fill.planProperty()
                        .get()
                        .map(made -> new DayNow(
                                made.plan(),
                                shell.unitsProperty().get(),
                                fill.ticks().done(),
                                fill.timers().clocks(),
                                fill.hold())));
    }

    /** Every deed is an entry more, also one that takes another back; what comes next may change without one. */
    private static String key(CupModel.InHand seen) {
        return seen.cup().name() + "/" + seen.cup().entries().size() + "/"
                + Integer.toHexString(seen.deeds().now().sentence().hashCode());
    }

    private void show() {
        Sight now = look();
        top.show(now);
        List<Waiting> ready = new ArrayList<>();
        waiting.removeIf(one -> over(one, now) && ready.add(one));
        ready.forEach(one -> one.answer().complete(answer(now, one)));
    }

    private static boolean over(Waiting one, Sight now) {
        if (one.key().isEmpty()) {
            return now.cup().isPresent();
        }
        return now.cup().isEmpty()
                || !now.cup().get().key().equals(one.key())
                || !now.cup().get().wrong().isEmpty();
    }

    private static Answer answer(Sight now, Waiting one) {
        if (now.cup().isPresent() && !now.cup().get().wrong().isEmpty()) {
            return new Answer(false, now.cup().get().wrong());
        }
        return one.said().apply(now.cup().map(seen -> seen.deeds().done()).orElse(List.of()));
    }

    @Override
    public CompletableFuture<Answer> act(String key, Act act) {
        if (act instanceof Act.Photo photo) {
            return photo(photo.file());
        }
        CompletableFuture<Answer> answer = new CompletableFuture<>();
        screen.execute(() -> {
            try {
                begin(key, act, answer);
            } catch (RuntimeException e) {
                answer.completeExceptionally(e);
            }
        });
        return answer;
    }

    private void begin(String key, Act act, CompletableFuture<Answer> answer) {
        if (act instanceof Act.Weighed weighed) {
            int before = cup.inHandProperty()
                    .get()
                    .map(seen -> seen.deeds().done().size())
                    .orElse(0);
            atTheCup(new Waiting(key, answer, done -> weighed(done, before)), () -> weigh(weighed.typed()));
        } else if (act instanceof Act.Begin) {
            beginCup(answer);
        } else if (act instanceof Act.Looked looked) {
            atTheCup(new Waiting(key, answer, done -> Answer.seen(looked.verdict())), () -> {
                cup.seen(looked.verdict(), looked.nearest());
                return true;
            });
        } else if (act instanceof Act.Follow follow) {
            atTheCup(new Waiting(key, answer, done -> new Answer(true, "")), () -> {
                cup.choose(follow.way());
                return true;
            });
        } else if (act instanceof Act.Catalysed catalysed) {
            answer.complete(catalysed(catalysed.batch()));
        } else if (act instanceof Act.Ticked ticked) {
            boolean there = look().day().filter(day -> day.has(ticked.step())).isPresent();
            if (there) {
                fill.ticks().tick(ticked.step(), ticked.done());
            }
            answer.complete(there ? new Answer(true, "") : Answer.GONE_ON);
        } else if (act instanceof Act.Seen seen) {
            fill.timers().done(seen.batch(), seen.cue());
            answer.complete(new Answer(true, ""));
        }
    }

    /** The cup has no name before it is begun: one that stands there already is the answer to a second press. */
    private void beginCup(CompletableFuture<Answer> answer) {
        if (job.now().cup().isPresent()) {
            answer.complete(Answer.GONE_ON);
        } else if (job.place().isEmpty()) {
            answer.complete(Answer.HULL_FIRST);
        } else {
            waiting.add(new Waiting("", answer, done -> new Answer(true, "")));
            cup.begin();
            show();
        }
    }

    /** @param before how much stood in the cup: what was weighed comes next, then what goes with it */
    private static Answer weighed(List<CupDeeds.Done> done, int before) {
        return new Answer(
                true,
                done.size() <= before ? "" : "It is in: " + done.get(before).words() + ".");
    }

    private void atTheCup(Waiting mine, BooleanSupplier deed) {
        // While a change is being worked out the cup that is shown is not the cup in hand any more.
        boolean same = cup.inHandProperty()
                        .get()
                        .filter(seen -> key(seen).equals(mine.key()))
                        .isPresent()
                && cup.settled();
        if (!same) {
            mine.answer().complete(Answer.GONE_ON);
            return;
        }
        waiting.add(mine);
        if (deed.getAsBoolean()) {
            show();
        } else {
            waiting.remove(mine);
            mine.answer().complete(new Answer(false, cup.problemProperty().get()));
        }
    }

    private boolean weigh(String typed) {
        boolean exactly = cup.inHandProperty()
                .get()
                .flatMap(seen -> seen.deeds().now().amount())
                .filter(amount -> amount.shown().equals(typed.strip() + " g"))
                .isPresent();
        if (exactly) {
            cup.accept();
            return true;
        }
        return cup.really(typed);
    }

    private Answer catalysed(int batch) {
        if (!fill.hold().isEmpty()) {
            return new Answer(false, fill.hold());
        }
        if (!fill.timers().clocks().containsKey(batch)) {
            fill.catalysed(batch);
        }
        return new Answer(true, "The clock of batch " + batch + " runs.");
    }

    /**
     * Read on the thread that asks, which waits for the answer anyway: a phone's photo never stands before the window's
     * own work.
     */
    private CompletableFuture<Answer> photo(Path file) {
        Wanted wanted = top.sight().wanted();
        try {
            PhonePhoto read = PhonePhoto.read(file, wanted, shelf);
            return CompletableFuture.supplyAsync(
                    () -> read instanceof PhonePhoto.Colours colours
                            ? taken(file, colours)
                            : label(((PhonePhoto.Label) read).cup()),
                    screen);
        } catch (PhotoException e) {
            return CompletableFuture.supplyAsync(() -> open(file, wanted, e), screen);
        } catch (RuntimeException e) {
            return CompletableFuture.failedFuture(e);
        }
    }

    private Answer taken(Path file, PhonePhoto.Colours read) {
        if (read.chip().isPresent()) {
            cup.read(read.chip().get(), Optional.of(read.hull()));
        } else {
            // As if it had been opened here: with what lies on the sheet, and shown.
            sheet.read(file, "");
        }
        shell.say(read.words());
        return new Answer(true, read.words());
    }

    private Answer label(UUID labelled) {
        Answer answer = Answer.label(labelled, log());
        if (answer.done()) {
            shell.stepProperty().set(Step.LOG);
            log.recipe(labelled);
        }
        return answer;
    }

    @Override
    public Optional<ShopLog> log() {
        return log.open();
    }

    /** What cannot be read by the sheet in it is opened where it was wanted, for a hand to mark it. */
    private Answer open(Path file, Wanted wanted, PhotoException failure) {
        shell.stepProperty().set(wanted == Wanted.CHIP ? Step.CUP : Step.HULL);
        (wanted == Wanted.CHIP ? chipPhoto : hullPhoto).open(file);
        return new Answer(
                false, failure.getMessage() + " It is open at the bench too, where it can be marked by hand.");
    }
}
