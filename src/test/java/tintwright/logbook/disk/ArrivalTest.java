package tintwright.logbook.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import tintwright.cup.Cup;
import tintwright.cup.CupEntry;
import tintwright.cup.Deed;
import tintwright.demo.MeteredShop;
import tintwright.files.CupFile;
import tintwright.files.FileProblem;
import tintwright.files.SharedFile;
import tintwright.files.ShelfFile;
import tintwright.shelf.Chip;

/** Two benches with histories nobody thought of: in whatever order their work arrives, it comes to the same. */
class ArrivalTest {
    /** What one bench does: 0 a new note, 1 a correction, 2 a taking back. The second number says of which. */
    record Step(boolean left, int what, int of) {}

    @Provide
    Arbitrary<List<Step>> histories() {
        Arbitrary<Boolean> side = Arbitraries.of(true, false);
        Arbitrary<Integer> what = Arbitraries.integers().between(0, 2);
        Arbitrary<Integer> of = Arbitraries.integers().between(0, 30);
        return net.jqwik.api.Combinators.combine(side, what, of)
                .as(Step::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(30);
    }

    @Property(tries = 30, seed = "16")
    void theLogIsTheSameInAnyOrderOfArrival(
            @ForAll("histories") List<Step> steps, @ForAll long order, @ForAll boolean exchangedHalfway)
            throws IOException {
        Path tmp = Files.createTempDirectory("arrival");
        try {
            Path left = tmp.resolve("left");
            Path right = tmp.resolve("right");
            int half = exchangedHalfway ? steps.size() / 2 : 0;
            work(tmp, left, right, steps.subList(0, half));
            copy(left, right, new SplittableRandom(order));
            copy(right, left, new SplittableRandom(order + 1));
            work(tmp, left, right, steps.subList(half, steps.size()));
            Path one = tmp.resolve("one");
            Path other = tmp.resolve("other");
            copy(left, one, new SplittableRandom(order));
            copy(right, one, new SplittableRandom(order));
            copy(right, other, new SplittableRandom(order + 2));
            copy(left, other, new SplittableRandom(order + 3));
            assertEquals(state(tmp, one, order), state(tmp, other, order + 5));
        } finally {
            clear(tmp);
        }
    }

    private static void work(Path tmp, Path left, Path right, List<Step> steps) {
        Clock behind = Clock.offset(Folders.NOON, Duration.ofSeconds(-3));
        try (LogStore one = store(left, Folders.bench(tmp, "anna"), Folders.NOON, 1);
                LogStore other = store(right, Folders.bench(tmp, "bert"), behind, 2)) {
            for (Step step : steps) {
                act(step.left() ? one : other, step);
            }
        }
    }

    private static LogStore store(Path folder, ThisBench bench, Clock clock, long seed) {
        // Another seed for every opening: a bench never gives the same noise twice.
        return new LogStore(folder, bench, Disk.REAL, clock, new SplittableRandom(seed + System.nanoTime()), e -> {});
    }

    private static void act(LogStore store, Step step) {
        List<UUID> known = store.ask(ledger ->
                ledger.all().stream().map(Entry::id).sorted(EntryIds.ORDER).toList());
        if (step.what() == 0 || known.isEmpty()) {
            store.append("note", null, Folders.note("n" + step.of()));
        } else {
            UUID one = known.get(step.of() % known.size());
            store.replace(
                    one, step.what() == 1 ? "note" : Entry.WITHDRAWN, step.what() == 1 ? Folders.note("c") : "{}");
        }
    }

    /** In an order of its own, and now and then a file twice. */
    private static void copy(Path from, Path to, SplittableRandom random) throws IOException {
        if (!Files.isDirectory(from)) {
            return;
        }
        Files.createDirectories(to);
        List<Path> files = new ArrayList<>();
        try (Stream<Path> found = Files.list(from)) {
            found.filter(file -> file.toString().endsWith(Pen.ENDING)).forEach(files::add);
        }
        files.sort(Comparator.comparing(file -> random.split().nextLong()));
        for (Path file : files) {
            Path there = to.resolve(file.getFileName());
            if (!Files.exists(there) || Files.size(there) < Files.size(file)) {
                Files.write(there, Files.readAllBytes(file));
            }
            if (random.nextInt(4) == 0) {
                Files.write(to.resolve("copy of " + file.getFileName()), Files.readAllBytes(file));
            }
        }
    }

    private static String state(Path tmp, Path folder, long seed) {
        try (LogStore store = store(folder, Folders.bench(tmp, "reader"), Folders.NOON, seed)) {
            return Folders.state(store);
        }
    }

    @Provide
    Arbitrary<List<Boolean>> turns() {
        return Arbitraries.of(true, false).list().ofMinSize(1).ofMaxSize(12);
    }

    @Property(tries = 6, seed = "17")
    void theCupAndTheShelfHoldTheSameWhoeverComesFirst(
            @ForAll("turns") List<Boolean> turns, @ForAll("turns") List<Boolean> otherTurns) throws Exception {
        Path tmp = Files.createTempDirectory("turns");
        try {
            // The same work of each bench, in another order of turns: the rest of both follows at the end.
            String one = worked(Files.createDirectory(tmp.resolve("one")), turns);
            assertEquals(one, worked(Files.createDirectory(tmp.resolve("other")), otherTurns));
        } finally {
            clear(tmp);
        }
    }

    private static final int EACH = 6;

    private static String worked(Path folder, List<Boolean> turns) throws FileProblem {
        Path cup = folder.resolve("cup.json");
        Path shelf = folder.resolve("shelf.json");
        CupFile.at(cup).create(Cup.empty("bow 1", MeteredShop.places().get(0), 100, 0.01, "plain-white"));
        ShelfFile.at(shelf).create(MeteredShop.shelf());
        int[] done = {0, 0};
        for (int i = 0; done[0] + done[1] < 2 * EACH; i++) {
            boolean wanted = i < turns.size() ? turns.get(i) : done[0] < EACH;
            int bench = wanted == done[0] < EACH ? wanted ? 0 : 1 : done[0] < EACH ? 0 : 1;
            dose(cup, bench, done[bench]);
            chip(shelf, "bench " + bench + " chip " + done[bench]);
            done[bench]++;
        }
        Map<String, String> all = new TreeMap<>();
        for (CupEntry entry : CupFile.read(cup).entries()) {
            all.put("dose " + entry.at(), entry.deed().toString());
        }
        // A sum of doubles hangs on the order in its last bit.
        CupFile.read(cup).state().grams().forEach((part, grams) -> all.put(part, String.format("%.9f", grams)));
        ShelfFile.read(shelf)
                .chips()
                .forEach(chip -> all.put("chip " + chip.id(), chip.parts().toString()));
        return all.toString();
    }

    private static void dose(Path cup, int bench, int number) throws FileProblem {
        Instant at = Instant.ofEpochSecond(60L * number + bench);
        Deed deed = new Deed.Weighed(bench == 0 ? "plain-white" : "soot-black", 0.1 * (number + 1), 0.01);
        CupFile.at(cup).change(there -> new SharedFile.Changed<>(there.add(at, deed), true));
    }

    private static void chip(Path shelf, String name) throws FileProblem {
        Chip like = MeteredShop.shelf().chips().get(0);
        ShelfFile.at(shelf).change(there -> {
            List<Chip> chips = new ArrayList<>(there.chips());
            chips.add(new Chip(name, like.parts(), like.readings(), like.madeOn(), like.note()));
            return new SharedFile.Changed<>(there.withChips(chips), true);
        });
    }

    private static void clear(Path tmp) throws IOException {
        try (Stream<Path> all = Files.walk(tmp)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
