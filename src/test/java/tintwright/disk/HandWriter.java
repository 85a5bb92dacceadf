package tintwright.disk;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import tintwright.bench.job.BenchFile;
import tintwright.bench.job.FillDraft;
import tintwright.bench.job.Job;
import tintwright.cup.Deed;
import tintwright.demo.MeteredShop;
import tintwright.files.CupFile;
import tintwright.files.FileProblem;
import tintwright.files.SettingsFile;
import tintwright.files.SharedFile;
import tintwright.files.ShelfFile;
import tintwright.logbook.LogBook;
import tintwright.logbook.Page;
import tintwright.logbook.disk.LogFailure;
import tintwright.logbook.disk.Saved;
import tintwright.logbook.disk.ThisBench;
import tintwright.shelf.Chip;
import tintwright.shelf.Shelf;

/**
 * One hand of several: {@code FOLDER HAND TIMES} adds so many doses to a cup, chips to a shelf and remarks to a log, keeps
 * a job of its own as often,
 * and prints the name of each once it was told that it is kept. {@code FOLDER HAND TIMES STEP} dies at that step on the
 * disk ({@link KillingFiles}).
 */
public final class HandWriter {
    static final int FIRST_GRAMS = 10;

    private HandWriter() {}

    public static void main(String[] args) throws Exception {
        Path folder = args.length > 3 ? KillingFiles.at(Path.of(args[0]), Long.parseLong(args[3])) : Path.of(args[0]);
        work(folder, Integer.parseInt(args[1]), Integer.parseInt(args[2]), System.out::println);
        System.out.flush();
    }

    /** @param acknowledged is told the name of each change once it is kept */
    static void work(Path folder, int hand, int times, Consumer<String> acknowledged) throws FileProblem {
        Map<String, String> settings = Map.of();
        Optional<Job> job = Optional.empty();
        ThisBench bench = bench(folder);
        try (LogBook log = LogBook.open(folder.resolve("log"), bench, Clock.systemUTC(), new SecureRandom())) {
            for (int i = 0; i < times; i++) {
                String name = "hand " + hand + " time " + i;
                dose(folder.resolve("cup.json"), hand, i);
                acknowledged.accept("cup " + name);
                shelve(folder.resolve("shelf.json"), name);
                acknowledged.accept("shelf " + name);
                SettingsFile.keep(
                        folder.resolve("window.json"), settings, Map.of("times " + hand, Integer.toString(i)));
                settings = Map.of("times " + hand, Integer.toString(i));
                acknowledged.accept("settings " + name);
                job = keep(folder, hand, i, job);
                acknowledged.accept("bench " + name);
                Saved saved = log.write(Optional.empty(), new Page.Remark(Optional.empty(), name));
                if (saved instanceof Saved.OnDisk) {
                    acknowledged.accept("log " + name);
                }
            }
        }
    }

    private static ThisBench bench(Path folder) {
        try {
            return ThisBench.at(folder.resolve("home"), List.of("this machine"), new SecureRandom());
        } catch (LogFailure e) {
            throw new IllegalStateException(e);
        }
    }

    /** The moment names the dose. */
    static Instant moment(int hand, int time) {
        return Instant.ofEpochSecond(Hands.MOST_HANDS * (long) time + hand);
    }

    static void dose(Path cup, int hand, int time) throws FileProblem {
        CupFile.at(cup)
                .change(there -> new SharedFile.Changed<>(
                        there.add(moment(hand, time), new Deed.Weighed("plain-white", 0.01, 0.01)), true));
    }

    /** The grams wanted tell how often it was kept. */
    private static Optional<Job> keep(Path folder, int hand, int time, Optional<Job> before) throws FileProblem {
        Job job = new Job(
                "Tarrowmere",
                MeteredShop.places(),
                0,
                MeteredShop.shelf(),
                FIRST_GRAMS + time,
                0.01,
                Set.of(),
                FillDraft.NONE,
                Optional.empty(),
                List.of());
        BenchFile.keep(benchOf(folder, hand), before, job);
        return Optional.of(job);
    }

    static Path benchOf(Path folder, int hand) {
        return folder.resolve("bench-" + hand + ".json");
    }

    static void shelve(Path shelf, String name) throws FileProblem {
        ShelfFile.at(shelf).change(there -> new SharedFile.Changed<>(with(there, name), true));
    }

    static Shelf with(Shelf shelf, String name) {
        List<Chip> chips = new ArrayList<>(shelf.chips());
        Chip like = MeteredShop.shelf().chips().get(0);
        chips.add(new Chip(name, like.parts(), like.readings(), like.madeOn(), like.note()));
        return shelf.withChips(chips);
    }
}
