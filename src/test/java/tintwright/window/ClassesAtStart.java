package tintwright.window;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import javafx.application.Application;
import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;
import tintwright.Main;
import tintwright.window.frame.Step;

/**
 * The classes a start loads, found by answering some commands, starting the window without a display and looking at
 * every station; the image profile of pom.xml calls both commands. {@code visit} is to be run with {@code -XX:DumpLoadedClassList},
 * {@code archive} takes what that wrote and lets the Java of a packed image make its class-data archive of it.
 */
public final class ClassesAtStart {
    private static final long LIMIT_SECONDS = 120;
    /** Where the toolkit keeps what belongs to one system's screen; a run without a display sees none of it. */
    private static final List<String> SCREEN = List.of(
            "com/sun/glass/ui/gtk/",
            "com/sun/glass/ui/win/",
            "com/sun/glass/ui/mac/",
            "com/sun/prism/es2/",
            "com/sun/prism/d3d/",
            "com/sun/javafx/font/freetype/",
            "com/sun/javafx/font/directwrite/",
            "com/sun/javafx/font/coretext/");

    private static final List<List<String>> COMMANDS = List.of(
            List.of("--help"), List.of("match", "--place", "stern quarter"), List.of("boat"), List.of("cup", "--help"));

    private ClassesAtStart() {}

    /** @param args {@code visit}, or {@code archive}, the list, the toolkit's modules, and the folder of the image */
    public static void main(String[] args) throws Exception {
        if (args[0].equals("visit")) {
            visit();
        } else {
            archive(Path.of(args[1]), Path.of(args[2]), Path.of(args[3]));
        }
    }

    private static void visit() {
        PrintStream terminal = System.out;
        System.setOut(new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8));
        for (List<String> words : COMMANDS) {
            Main.main(words.toArray(String[]::new));
        }
        System.setOut(terminal);
        Thread driver = new Thread(
                () -> {
                    try {
                        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(LIMIT_SECONDS);
                        while (!Stagehand.onScreen(ClassesAtStart::matched)) {
                            if (System.nanoTime() > end) {
                                throw new IllegalStateException("no match was shown within " + LIMIT_SECONDS + " s");
                            }
                            Thread.sleep(100);
                        }
                        for (int station = 1; station <= Step.values().length; station++) {
                            int number = station;
                            Stagehand.onScreen(() -> {
                                go(number);
                                root().applyCss();
                                root().layout();
                                return null;
                            });
                        }
                        System.exit(0);
                    } catch (Throwable failure) {
                        System.err.println("The window could not be visited: " + failure);
                        System.exit(1);
                    }
                },
                "visitor");
        BenchWindow.prepare();
        driver.start();
        Application.launch(BenchWindow.class);
    }

    private static boolean matched() {
        if (Window.getWindows().isEmpty()) {
            return false;
        }
        go(Step.CUP.ordinal() + 1);
        return root().lookup(".recipe-grams") != null;
    }

    private static void go(int station) {
        root().fireEvent(new KeyEvent(
                KeyEvent.KEY_PRESSED, "", "", KeyCode.valueOf("DIGIT" + station), false, true, false, false));
    }

    private static Parent root() {
        return Window.getWindows().get(0).getScene().getRoot();
    }

    /** An image without the archive starts too, only slower: whatever goes wrong here is said and no more. */
    private static void archive(Path seen, Path modules, Path image) throws Exception {
        TreeSet<String> screen = new TreeSet<>();
        try (Stream<Path> jars = Files.list(modules)) {
            for (Path jar :
                    jars.filter(file -> file.toString().endsWith(".jar")).toList()) {
                try (JarFile open = new JarFile(jar.toFile())) {
                    open.stream()
                            .map(entry -> entry.getName())
                            .filter(name -> name.endsWith(".class"))
                            .filter(name -> SCREEN.stream().anyMatch(name::startsWith))
                            .forEach(name -> screen.add(name.substring(0, name.length() - ".class".length())));
                }
            }
        }
        List<String> list = Stream.concat(
                        Files.readAllLines(seen).stream().filter(ClassesAtStart::inTheImage), screen.stream())
                .toList();
        Path kept = Files.write(seen.resolveSibling("classes-archived.lst"), list);
        Path java = find(
                image, System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("win") ? "java.exe" : "java");
        Process dump = new ProcessBuilder(
                        java.toString(),
                        "-Xshare:dump",
                        "-XX:SharedClassListFile=" + kept,
                        "-Xlog:disable",
                        "-Xlog:all=error")
                .inheritIO()
                .start();
        if (dump.waitFor() != 0) {
            System.err.println("The class-data archive could not be made; the image starts without it, slower.");
        }
    }

    /**
     * What the image does not hold is left out, and so are the lambdas of the program: dumping one that stands twice in
     * the list ends Debian's Java 17.0.15 with a crash, and without them a command needs no more time.
     */
    private static boolean inTheImage(String line) {
        return !line.contains("/monocle/")
                && !line.startsWith("tintwright/window/ClassesAtStart")
                && !line.startsWith("tintwright/window/Stagehand")
                && !line.startsWith("@lambda-proxy tintwright/");
    }

    private static Path find(Path folder, String name) throws Exception {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.getFileName().toString().equals(name) && Files.isRegularFile(file))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException(name + " is not in " + folder));
        }
    }
}
