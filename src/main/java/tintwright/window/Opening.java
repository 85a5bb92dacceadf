package tintwright.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Function;
import tintwright.bench.job.Job;
import tintwright.bench.job.KeptJob;
import tintwright.bench.job.RecentBoats;
import tintwright.bench.log.ShopLog;
import tintwright.files.Demo;
import tintwright.files.FileProblem;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.shelf.Shelf;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.window.frame.FailureWords;
import tintwright.window.frame.Step;
import tintwright.window.frame.WindowMemory;
import tintwright.window.holes.KeptTimers;

/**
 * One of the two benches, the demo or the person's own, as it was left in the home folder; needs no screen, so that
 * it can be fetched and learned before there is one.
 */
public final class Opening {
    private final Path folder;
    private final boolean own;
    private final KeptJob kept;
    private final Job first;
    private final String said;
    private final Function<Shelf, Knowledge> teacher;
    private final CompletableFuture<Knowledge> known;

    private Opening(
            Path folder, boolean own, KeptJob kept, Job first, String said, Function<Shelf, Knowledge> teacher) {
        this.folder = folder;
        this.own = own;
        this.kept = kept;
        this.first = first;
        this.said = said;
        this.teacher = teacher;
        this.known = CompletableFuture.supplyAsync(() -> teacher.apply(first.shelf()));
    }

    /**
     * Fetches what was left and begins to learn from its chips; what cannot be read is said when the desk stands.
     *
     * @param home    where the window keeps what is in hand
     * @param own     false for the demo
     * @param teacher what the chips of a shelf teach
     */
    public static Opening fetch(Path home, boolean own, Function<Shelf, Knowledge> teacher) {
        Path folder = home.resolve(own ? "bench" : "demo-bench");
        KeptJob kept = new KeptJob(folder);
        Job usual = own ? Desk.own() : Desk.demo();
        try {
            return new Opening(folder, own, kept, kept.fetch().orElse(usual), "", teacher);
        } catch (FileProblem e) {
            return new Opening(folder, own, kept, usual, FailureWords.of(e), teacher);
        }
    }

    /**
     * Puts the desk together as it was left, running clocks and all; from here on every change of the job is kept.
     *
     * @param worker  where the engine runs and the files are written, in order
     * @param screen  where answers are shown
     * @param openLog opens the log, off the screen's thread
     */
    public Desk desk(Executor worker, Executor screen, Clock clock, Callable<ShopLog> openLog) {
        Desk desk = new Desk(
                first,
                worker,
                screen,
                clock,
                openLog,
                shelf -> shelf.equals(first.shelf()) ? known.join() : teacher.apply(shelf));
        if (!said.isEmpty()) {
            desk.shell().warn(said);
        }
        desk.fill().learnFrom(folder.resolve("noted-times.json"));
        desk.fill().keepTimers(new KeptTimers(folder.resolve("cure.json")));
        desk.fill().ticks().keepIn(folder.resolve("day.json"));
        desk.sheet().keepIn(folder.resolve("on-sheet.json"));
        if (!own) {
            demoPhoto(desk);
        }
        desk.recent().keepIn(new RecentBoats(folder.resolve("boats")));
        desk.job()
                .keepWith(job -> worker.execute(() -> {
                    try {
                        kept.keep(job);
                    } catch (FileProblem e) {
                        screen.execute(() -> desk.shell().warn(FailureWords.of(e)));
                    }
                }));
        return desk;
    }

    /** The demo shows the photo that its hull was read from, and what lay on the sheet. */
    private void demoPhoto(Desk desk) {
        Path photo = folder.resolve(Demo.PHOTO);
        try {
            Files.createDirectories(folder);
            if (desk.sheet().contentsProperty().get().equals(SheetContents.PAPER_ALONE)) {
                desk.sheet().lay(Demo.onSheet());
            }
            if (!Files.exists(photo)) {
                Demo.copyPhoto(photo);
            }
            desk.sheet().show(photo);
        } catch (IOException e) {
            desk.shell()
                    .warn("The demo's photo cannot be laid into " + folder + ", so it is not shown; its readings are.");
        }
    }

    /** @return true when something of the person's own stands in the home folder */
    static boolean ownBegun(Path home) {
        return KeptJob.begun(home.resolve("bench"));
    }

    /** @return the bench to open: the one that was in hand last; where nobody knows, one's own when there is one */
    static boolean lastOwn(Path home, WindowMemory memory) {
        return memory.truth("own", ownBegun(home));
    }

    boolean own() {
        return own;
    }

    /** @return where one's own bench opens: where the next thing is to be done */
    Step first() {
        if (first.boat().isBlank()) {
            return Step.BOAT;
        }
        return first.place() < 0 ? Step.HULL : first.shelf().tints().isEmpty() ? Step.SHELF : Step.CUP;
    }
}
