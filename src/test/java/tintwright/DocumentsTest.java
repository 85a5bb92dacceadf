package tintwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the pages say of the tree is true: rooms, classes, links, pictures and the classes that commands start. */
class DocumentsTest {
    private static final Path MAIN = Path.of("src/main/java/tintwright");
    private static final Pattern LINK = Pattern.compile("]\\(([^)#\\s]+)(?:#[^)]*)?\\)");
    /** A name in code letters that can only be a class: two humps, and perhaps a member behind a dot. */
    private static final Pattern CLASS =
            Pattern.compile("`(?:[a-z]+\\.)*([A-Z][a-z0-9]+(?:[A-Z][A-Za-z0-9]*)+)(?:\\.[a-zA-Z]+)?(?:\\([^`]*\\))?`");

    private static final Pattern STARTED =
            Pattern.compile("-D(?:test|jmh)=([A-Z]\\w+)|-Dexec\\.mainClass=tintwright\\.[\\w.]*?([A-Z]\\w+)");

    /** In code letters, and not ours: of the JDK and of the libraries. */
    private static final Set<String> OF_OTHERS = Set.of(
            "IllegalArgumentException",
            "FileChannel",
            "ImageReader",
            // Checks of the linter.
            "ArrayRecordComponent",
            "EnumOrdinal",
            "ImmutableEnumChecker",
            "MissingSummary",
            "OperatorPrecedence",
            "ReferenceEquality",
            "StringSplitter",
            // Elements of ISO 17972.
            "ColorCIELab",
            "ColorSpecification",
            "ReflectanceSpectrum");

    private static List<Path> pages() throws IOException {
        try (Stream<Path> docs = Files.list(Path.of("docs"))) {
            return Stream.concat(
                            Stream.of(Path.of("README.md"), Path.of("DEVELOPERS.md")),
                            docs.filter(page -> page.toString().endsWith(".md")))
                    .sorted()
                    .toList();
        }
    }

    /** A figure is one that a command makes again, so no study is without a page that says what it found. */
    @Test
    void everyStudyStandsOnAPage() throws IOException {
        StringBuilder all = new StringBuilder();
        for (Path page : pages()) {
            all.append(Files.readString(page));
        }
        Set<String> untold = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith("Study.java"))
                    .map(name -> name.replace(".java", ""))
                    .filter(study -> all.indexOf(study) < 0)
                    .forEach(untold::add);
        }
        assertEquals(Set.of(), untold);
    }

    @Test
    void theTableOfRoomsNamesEveryRoomAndNoOther() throws IOException {
        Set<String> told = new TreeSet<>();
        for (String line : Files.readAllLines(Path.of("DEVELOPERS.md"))) {
            if (line.matches("\\| `[a-z.]+`.*\\|")) {
                Matcher room = Pattern.compile("`([a-z.]+)`").matcher(line.substring(0, line.indexOf('|', 1)));
                while (room.find()) {
                    told.add(room.group(1));
                }
            }
        }
        Set<String> there;
        try (Stream<Path> files = Files.walk(MAIN)) {
            there = files.filter(file -> file.toString().endsWith(".java")
                            && !file.getParent().equals(MAIN))
                    .map(file -> MAIN.relativize(file.getParent()).toString().replace('/', '.'))
                    // The stations of the two faces stand in the paragraph below the table.
                    .filter(room -> !room.startsWith("window.") && !room.startsWith("command."))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
        assertEquals(there, told);
    }

    @Test
    void theParagraphOnTheFacesNamesEachOfTheirRooms() throws IOException {
        String page = Files.readString(Path.of("DEVELOPERS.md"));
        Set<String> untold = new TreeSet<>();
        for (String face : List.of("window", "command")) {
            String told = page.substring(
                    page.indexOf(face.equals("window") ? "In the window each station" : "The commands stand"));
            told = told.substring(0, told.indexOf(face.equals("window") ? "The commands stand" : "\n"));
            try (Stream<Path> rooms = Files.list(MAIN.resolve(face))) {
                for (Path room : rooms.filter(Files::isDirectory).toList()) {
                    String name = room.getFileName().toString();
                    if (!told.contains("`" + face + "." + name + "`") && !told.contains("`." + name + "`")) {
                        untold.add(face + "." + name);
                    }
                }
            }
        }
        assertEquals(Set.of(), untold);
    }

    @Test
    void everyRoomSaysWhatItIs() throws IOException {
        try (Stream<Path> files = Files.walk(MAIN)) {
            Set<Path> silent = files.filter(file -> file.toString().endsWith(".java"))
                    .map(Path::getParent)
                    .filter(room -> !room.equals(MAIN) && !Files.exists(room.resolve("package-info.java")))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(Set.of(), silent);
        }
    }

    @Test
    void everyClassThatAPageNamesExists() throws IOException {
        Set<String> classes = classes();
        Set<String> unknown = new TreeSet<>();
        int seen = 0;
        for (Path page : pages()) {
            String text = Files.readString(page);
            for (Pattern pattern : List.of(CLASS, STARTED)) {
                Matcher name = pattern.matcher(text);
                while (name.find()) {
                    String found = name.group(1) == null ? name.group(2) : name.group(1);
                    seen++;
                    if (!classes.contains(found) && !OF_OTHERS.contains(found) && !found.equals("Name")) {
                        unknown.add(page.getFileName() + ": " + found);
                    }
                }
            }
        }
        assertTrue(seen > 60, "only " + seen + " names of classes were found");
        assertEquals(Set.of(), unknown);
    }

    /** @return the simple names of all classes in the tree, inner ones as well */
    private static Set<String> classes() throws IOException {
        Set<String> names = new TreeSet<>();
        Pattern declared = Pattern.compile("\\b(?:class|record|enum|interface) ([A-Z]\\w*)");
        try (Stream<Path> files = Files.walk(Path.of("src"))) {
            for (Path file :
                    files.filter(one -> one.toString().endsWith(".java")).toList()) {
                Matcher name = declared.matcher(Files.readString(file));
                while (name.find()) {
                    names.add(name.group(1));
                }
            }
        }
        return names;
    }

    @Test
    void everyLinkLeadsSomewhere() throws IOException {
        Set<String> broken = new TreeSet<>();
        for (Path page : pages()) {
            Matcher link = LINK.matcher(Files.readString(page));
            while (link.find()) {
                Path to = Path.of("").resolve(page).resolveSibling(link.group(1));
                if (!link.group(1).contains("://") && !Files.exists(to)) {
                    broken.add(page + " -> " + link.group(1));
                }
            }
        }
        assertEquals(Set.of(), broken);
    }

    @Test
    void everyPictureIsShownOnAPage() throws IOException {
        String all = pages().stream().map(DocumentsTest::text).collect(Collectors.joining());
        try (Stream<Path> pictures = Files.walk(Path.of("docs/images"))) {
            Set<String> unseen = pictures.filter(Files::isRegularFile)
                    .map(picture -> Path.of("docs").relativize(picture).toString())
                    .filter(picture -> !all.contains(picture))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(Set.of(), unseen);
        }
    }

    private static String text(Path page) {
        try {
            return Files.readString(page);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
