package tintwright.logbook;

import com.sun.management.OperatingSystemMXBean;
import java.io.File;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.net.URLClassLoader;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.logbook.disk.Saved;
import tintwright.logbook.disk.ThisBench;

/**
 * Measures the log at 5,000 boats with 50,000 entries: the table of {@code docs/performance.md}.
 *
 * <p>Run it with {@code mvn -q test-compile exec:java -Dexec.mainClass=tintwright.logbook.LogSpeed
 * -Dexec.classpathScope=test}.
 */
final class LogSpeed {
    private static final int BOATS = 5000;
    private static final int RUNS = 11;
    private static final String[] TYPED = {
        "m",
        "ma",
        "mar",
        "mark",
        "port bow",
        "chalky gre",
        "2011 blue",
        "zzzz",
        "elber",
        "redo yellow",
        "straw",
        "invisible deck"
    };

    private LogSpeed() {}

    public static void main(String[] args) throws Exception {
        if (args.length == 2 && args[0].equals("list")) {
            list(Path.of(args[1]));
            return;
        }
        Path tmp = Files.createTempDirectory("big-log");
        try {
            Path log = tmp.resolve("log");
            BigLog.write(log, BOATS);
            System.out.printf(
                    "%d boats, %d entries, %.1f MB in %d files%n",
                    BOATS,
                    BOATS * BigLog.ENTRIES_A_BOAT,
                    size(log) / 1e6,
                    files(log).size());
            coldStarts(log);
            inOneProcess(log, tmp);
        } finally {
            try (Stream<Path> all = Files.walk(tmp)) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }

    /** What a fresh process does until the list of boats is there. */
    private static void list(Path log) {
        try (LogBook book = LogBook.open(
                log,
                new ThisBench("lister", log.resolveSibling("home-lister")),
                Clock.systemUTC(),
                new SplittableRandom(1))) {
            List<Noted<Page.Boat>> boats = book.boats();
            System.out.println(boats.size() + " boats, " + book.troubles().size() + " troubles " + processorNanos());
        }
    }

    private static long processorNanos() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    private static void coldStarts(Path log) throws IOException, InterruptedException {
        double[] seconds = new double[RUNS];
        double[] processor = new double[RUNS];
        for (int run = 0; run < RUNS; run++) {
            long start = System.nanoTime();
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-Xmx300m",
                            "-cp",
                            classPath(),
                            LogSpeed.class.getName(),
                            "list",
                            log.toString())
                    .redirectErrorStream(true)
                    .start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
            process.waitFor();
            seconds[run] = (System.nanoTime() - start) / 1e9;
            if (!said.startsWith(BOATS + " boats, 0 troubles ")) {
                throw new IllegalStateException("the fresh process said: " + said);
            }
            processor[run] = Double.parseDouble(said.substring(said.lastIndexOf(' ') + 1)) / 1e9;
        }
        report("fresh process to the list of boats, at most 300 MiB of heap", seconds, "s");
        report("  the same in processor time, all threads", processor, "s");
    }

    /** The class path of this process, also where a build tool loaded it through a loader of its own. */
    private static String classPath() {
        if (!(LogSpeed.class.getClassLoader() instanceof URLClassLoader loader)) {
            return System.getProperty("java.class.path");
        }
        return Arrays.stream(loader.getURLs())
                .map(url -> Path.of(URI.create(url.toString())).toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    private static void inOneProcess(Path log, Path tmp) throws IOException {
        try (LogBook book = LogBook.open(
                log, new ThisBench("speed", tmp.resolve("home-speed")), Clock.systemUTC(), new SplittableRandom(2))) {
            long start = System.nanoTime();
            book.search("m", 50);
            System.out.printf("first search of all: %.0f ms%n", (System.nanoTime() - start) / 1e6);
            double[] searches = new double[TYPED.length * 20];
            double[] processor = new double[searches.length];
            for (int i = 0; i < searches.length; i++) {
                start = System.nanoTime();
                long work = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
                book.search(TYPED[i % TYPED.length], 50);
                searches[i] = (System.nanoTime() - start) / 1e6;
                processor[i] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - work) / 1e6;
            }
            report("search for " + TYPED.length + " things typed, 50 boats shown", searches, "ms");
            report("  the same in processor time", processor, "ms");
            nearest(book);
            appends(book, tmp);
            System.gc();
            System.gc();
            Runtime runtime = Runtime.getRuntime();
            System.out.printf(
                    "heap in use, log and search in memory: %.0f MiB%n",
                    (runtime.totalMemory() - runtime.freeMemory()) / 1048576.0);
        }
    }

    private static void nearest(LogBook book) {
        double[] near = new double[RUNS];
        for (int run = 0; run < RUNS; run++) {
            long start = System.nanoTime();
            book.nearest(new Lab(60 + run, -3, 8, Viewing.D65_10), 10);
            near[run] = (System.nanoTime() - start) / 1e6;
        }
        report("ten nearest of all cups and leftovers", near, "ms");
    }

    private static void appends(LogBook book, Path tmp) throws IOException {
        UUID boat = book.boats().get(7).id();
        double[] forced = new double[300];
        double[] bare = new double[300];
        byte[] line = new byte[250];
        Arrays.fill(line, (byte) 'x');
        try (FileChannel file =
                FileChannel.open(tmp.resolve("bare"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            for (int i = 0; i < forced.length; i++) {
                long start = System.nanoTime();
                file.write(ByteBuffer.wrap(line), file.size());
                file.force(false);
                bare[i] = (System.nanoTime() - start) / 1e6;
                start = System.nanoTime();
                Saved saved = book.write(Optional.of(boat), new Page.Remark(Optional.empty(), "a touch warm " + i));
                forced[i] = (System.nanoTime() - start) / 1e6;
                if (!(saved instanceof Saved.OnDisk)) {
                    throw new IllegalStateException("not on disk: " + saved);
                }
            }
        }
        report("a bare write of 250 bytes, forced", bare, "ms");
        report("an entry written, forced", forced, "ms");
    }

    private static void report(String what, double[] values, String unit) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        System.out.printf(
                "%s: median %.2f %s, worst %.2f %s%n",
                what, sorted[sorted.length / 2], unit, sorted[sorted.length - 1], unit);
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.toList();
        }
    }

    private static long size(Path folder) throws IOException {
        long sum = 0;
        for (Path file : files(folder)) {
            sum += Files.size(file);
        }
        return sum;
    }
}
