package tintwright.logbook.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Benches work apart, their files are copied together: whoever copies, in whatever order, reads the same log. */
class MergeTest {
    @TempDir
    Path tmp;

    @Test
    void filesCopiedTogetherInAnyOrderGiveTheSameState() throws IOException {
        for (int round = 0; round < 25; round++) {
            Path left = tmp.resolve(round + "-left");
            Path right = tmp.resolve(round + "-right");
            workApart(left, right, round);
            Path leftFirst = together(round + "-a", List.of(left, right), round);
            Path rightFirst = together(round + "-b", List.of(right, left), round + 1000);
            String one = state(leftFirst);
            assertEquals(one, state(rightFirst));
            copyAll(leftFirst, left);
            copyAll(rightFirst, right);
            assertEquals(one, state(left));
            assertEquals(one, state(right));
        }
    }

    /** A window that reads the files as they arrive, half of a file first, ends where a fresh one does. */
    @Test
    void filesThatArriveBitByBitGiveTheSameState() throws IOException {
        Path left = tmp.resolve("left");
        Path right = tmp.resolve("right");
        workApart(left, right, 3);
        Path whole = together("whole", List.of(left, right), 3);
        Path growing = Files.createDirectories(tmp.resolve("growing"));
        try (LogStore window = Folders.open(growing, Folders.bench(tmp, "watcher"))) {
            SplittableRandom random = new SplittableRandom(5);
            for (Path file : files(whole)) {
                byte[] bytes = Files.readAllBytes(file);
                for (int length = 0; length < bytes.length; length += random.nextInt(900)) {
                    Files.write(growing.resolve(file.getFileName()), Arrays.copyOf(bytes, length));
                    window.refresh();
                }
                Files.write(growing.resolve(file.getFileName()), bytes);
                window.refresh();
            }
            assertEquals(state(whole), Folders.state(window));
            assertEquals(List.of(), window.troubles());
        }
    }

    private void workApart(Path left, Path right, int seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        List<UUID> known = new ArrayList<>();
        ThisBench anna = Folders.bench(tmp.resolve("homes" + seed), "anna");
        try (LogStore store = Folders.open(left, anna)) {
            for (int i = 0; i < 6; i++) {
                known.add(store.append("note", null, Folders.note("shared " + i))
                        .entry()
                        .id());
            }
        }
        copyAll(left, right);
        work(left, anna, known, random, Duration.ZERO);
        work(right, Folders.bench(tmp.resolve("homes" + seed), "bert"), known, random, Duration.ofSeconds(-3));
    }

    private static void work(
            Path folder, ThisBench bench, List<UUID> shared, SplittableRandom random, Duration clockIsWrongBy) {
        List<UUID> known = new ArrayList<>(shared);
        Clock clock = Clock.offset(Folders.NOON, clockIsWrongBy);
        try (LogStore store = new LogStore(folder, bench, Disk.REAL, clock, random.split(), entry -> {})) {
            for (int i = 0; i < 40; i++) {
                UUID one = known.get(random.nextInt(known.size()));
                String text = Folders.note(bench.id() + " " + i);
                switch (random.nextInt(4)) {
                    case 0 -> store.replace(one, "note", text);
                    case 1 -> store.replace(one, Entry.WITHDRAWN, "{}");
                    default -> known.add(store.append("note", one, text).entry().id());
                }
            }
        }
    }

    private Path together(String name, List<Path> folders, int seed) throws IOException {
        Path all = Files.createDirectories(tmp.resolve(name));
        for (Path folder : folders) {
            List<Path> files = new ArrayList<>(files(folder));
            Collections.shuffle(files, new Random(seed));
            for (Path file : files) {
                copyUnlessShorter(file, all.resolve(file.getFileName()));
            }
        }
        return all;
    }

    private static void copyAll(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        for (Path file : files(from)) {
            copyUnlessShorter(file, to.resolve(file.getFileName()));
        }
    }

    /** As a program that carries files does: the newer, here the longer, copy of a file wins. */
    private static void copyUnlessShorter(Path file, Path copy) throws IOException {
        if (!Files.exists(copy) || Files.size(copy) < Files.size(file)) {
            Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(file -> file.toString().endsWith(Pen.ENDING))
                    .sorted()
                    .toList();
        }
    }

    private String state(Path folder) {
        try (LogStore store = Folders.open(folder, Folders.bench(tmp, "reader"))) {
            return Folders.state(store);
        }
    }
}
