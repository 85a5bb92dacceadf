package tintwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.files.TextFile;

/** The rooms of the house and which may look into which: the picture in DEVELOPERS.md, held by a test. */
@AnalyzeClasses(packages = "tintwright", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
    private static final Set<String> RECORDS = Set.of(
            "colour",
            "optics",
            "units",
            "reading",
            "reading.photo",
            "reading.photo.file",
            "reading.photo.card",
            "reading.photo.sheet",
            "shelf",
            "shelf.knowledge",
            "match",
            "cup",
            "fill.repair",
            "fill.catalyst",
            "fill");

    private static final Set<String> DISK = plus(RECORDS, "files", "files.instrument", "logbook", "logbook.disk");
    private static final Set<String> BENCH = plus(DISK, "paper", "bench", "bench.log", "bench.job", "bench.top");

    /** For each room the rooms it may use; the faces (command, window, phone) may use every room but each other, save that two of them open the phone. */
    private static final Map<String, Set<String>> MAY_USE = Map.ofEntries(
            Map.entry("colour", Set.of()),
            Map.entry("units", Set.of()),
            Map.entry("optics", Set.of("colour")),
            Map.entry("reading", Set.of("colour")),
            Map.entry("reading.photo.file", Set.of("colour", "reading")),
            Map.entry("reading.photo.card", Set.of("colour", "reading", "reading.photo.file")),
            Map.entry("reading.photo.camera", Set.of("colour", "reading", "reading.photo.file", "reading.photo.card")),
            Map.entry(
                    "reading.photo",
                    Set.of(
                            "colour",
                            "reading",
                            "reading.photo.file",
                            "reading.photo.card",
                            "reading.photo.camera",
                            "reading.photo.sheet")),
            Map.entry("reading.photo.sheet", Set.of("colour", "reading", "reading.photo.file", "reading.photo.card")),
            Map.entry("shelf", Set.of("colour", "reading")),
            Map.entry("shelf.knowledge", Set.of("colour", "optics", "reading", "shelf")),
            Map.entry("match", Set.of("colour", "optics", "reading", "shelf", "shelf.knowledge")),
            Map.entry("cup", Set.of("colour", "units", "optics", "reading", "shelf", "shelf.knowledge", "match")),
            Map.entry("fill.repair", Set.of("units")),
            Map.entry("fill.catalyst", Set.of("units", "fill.repair")),
            Map.entry("fill", Set.of("units", "fill.repair", "fill.catalyst")),
            Map.entry("files", RECORDS),
            Map.entry("files.instrument", plus(RECORDS, "files")),
            Map.entry("logbook.disk", Set.of("colour", "files")),
            Map.entry("logbook", plus(RECORDS, "files", "logbook.disk")),
            Map.entry("paper", DISK),
            Map.entry("bench", plus(DISK, "paper")),
            Map.entry("bench.log", plus(DISK, "paper", "bench")),
            Map.entry("bench.job", plus(DISK, "paper", "bench", "bench.log")),
            Map.entry("bench.top", plus(DISK, "paper", "bench", "bench.log", "bench.job")),
            Map.entry("phone", BENCH),
            Map.entry("command", plus(BENCH, "phone")),
            Map.entry("window", plus(BENCH, "phone")));

    private static final Set<String> FACES = Set.of("window", "command", "phone");

    /** For each face with stations the rooms every station of it may use, and the order in which these use each other. */
    private static final Map<String, Map<String, Set<String>>> SHARED = Map.of(
            "window",
            Map.of(
                    "pieces", Set.of(),
                    "picture", Set.of(),
                    "frame", Set.of("pieces"),
                    "job", Set.of("pieces", "frame")),
            "command",
            Map.of("pieces", Set.of()));

    /** The stations: within a face they never use each other. */
    private static final Set<String> STATIONS = Set.of("boat", "hull", "shelf", "cup", "holes", "log", "phone");

    @ArchTest
    static void stationsDoNotKnowEachOther(JavaClasses classes) {
        Set<String> trespasses = new TreeSet<>();
        for (JavaClass type : classes) {
            String face = roomOf(type.getPackageName());
            String from = stationOf(type);
            if (from.isEmpty()) {
                continue;
            }
            Map<String, Set<String>> shared = SHARED.get(face);
            type.getDirectDependenciesFromSelf().forEach(dependency -> {
                JavaClass other = dependency.getTargetClass();
                String to = stationOf(other);
                boolean may = shared.getOrDefault(from, shared.keySet()).contains(to) || to.equals(from);
                if (roomOf(other.getPackageName()).equals(face) && !may) {
                    trespasses.add(type.getName() + " -> " + other.getName());
                }
            });
        }
        assertEquals(Set.of(), trespasses, "rooms of a face that look where they may not");
    }

    /** The room within a face; empty for the face's own package and outside the faces. */
    private static String stationOf(JavaClass type) {
        String name = type.getPackageName();
        String face = "tintwright." + roomOf(name) + ".";
        return FACES.contains(roomOf(name)) && name.startsWith(face) ? name.substring(face.length()) : "";
    }

    private static Set<String> plus(Set<String> some, String... more) {
        Set<String> all = new TreeSet<>(some);
        all.addAll(List.of(more));
        return all;
    }

    @ArchTest
    static void everyClassStandsInARoomOfTheDesign(JavaClasses classes) {
        Set<String> strangers = new TreeSet<>();
        for (JavaClass type : classes) {
            String room = roomOf(type.getPackageName());
            String station = stationOf(type);
            boolean stands = station.isEmpty()
                    || SHARED.getOrDefault(room, Map.of()).containsKey(station)
                    || SHARED.containsKey(room) && STATIONS.contains(station);
            if (!room.isEmpty() && !(MAY_USE.containsKey(room) && stands)) {
                strangers.add(type.getName());
            }
        }
        assertEquals(Set.of(), strangers, "classes outside the rooms of the design");
    }

    @ArchTest
    static void roomsLookOnlyWhereTheyMay(JavaClasses classes) {
        Set<String> trespasses = new TreeSet<>();
        for (JavaClass type : classes) {
            String room = roomOf(type.getPackageName());
            type.getDirectDependenciesFromSelf().forEach(dependency -> {
                String other = dependency.getTargetClass().getPackageName();
                if (!room.isEmpty()
                        && other.startsWith("tintwright")
                        && !roomOf(other).equals(room)
                        && !MAY_USE.getOrDefault(room, Set.of()).contains(roomOf(other))) {
                    trespasses.add(type.getName() + " -> "
                            + dependency.getTargetClass().getName());
                }
            });
        }
        assertEquals(Set.of(), trespasses, "rooms that look where they may not");
    }

    /**
     * A face may hold values of the cup's room - records, enums and sealed interfaces, such as {@code Cup}, {@code
     * Deed}, {@code Plan}, {@code CupDeeds} - and calls no class there that works: whoever asks a cup something asks
     * {@code CupBench}, which looks at it once for all that show it.
     */
    @ArchTest
    static void facesHoldValuesOfTheCupAndWorkThroughTheBench(JavaClasses classes) {
        Set<String> walkedRound = new TreeSet<>();
        for (JavaClass type : classes) {
            String room = roomOf(type.getPackageName());
            if (FACES.contains(room)) {
                type.getDirectDependenciesFromSelf().forEach(dependency -> {
                    JavaClass other = dependency.getTargetClass();
                    if (roomOf(other.getPackageName()).equals("cup") && !isValue(other)) {
                        walkedRound.add(type.getName() + " -> " + other.getName());
                    }
                });
            }
        }
        assertEquals(Set.of(), walkedRound, "faces that walk round the bench");
    }

    private static boolean isValue(JavaClass type) {
        return type.isRecord() || type.isEnum() || type.isInterface();
    }

    /** The room a package belongs to: the longest room name it starts with; empty for the root package. */
    private static String roomOf(String packageName) {
        if (!packageName.startsWith("tintwright.")) {
            return "";
        }
        String path = packageName.substring("tintwright.".length());
        while (!MAY_USE.containsKey(path) && path.contains(".")) {
            path = path.substring(0, path.lastIndexOf('.'));
        }
        return path;
    }

    @ArchTest
    static void noPackagesGoRoundInACircle(JavaClasses classes) {
        slices().matching("tintwright.(**)").should().beFreeOfCycles().check(classes);
    }

    @ArchTest
    static void onlyTheWindowKnowsTheScreenToolkit(JavaClasses classes) {
        noClasses()
                .that()
                .resideOutsideOfPackages("tintwright.window..", "tintwright")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("javafx..")
                .because("the engine and the command line must run where there is no screen")
                .check(classes);
    }

    @ArchTest
    static void viewModelsKnowNoControls(JavaClasses classes) {
        noClasses()
                .that()
                .haveSimpleNameEndingWith("Model")
                .and()
                .resideInAPackage("tintwright.window..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javafx.scene..", "javafx.stage..")
                .allowEmptyShould(true)
                .because("tests drive the view models without a window")
                .check(classes);
    }

    @ArchTest
    static void whereColoursAreComparedInRowsNoPairIsMadeOfObjects(JavaClasses classes) {
        noClasses()
                .that()
                .haveFullyQualifiedName("tintwright.match.Odds")
                .or()
                .haveFullyQualifiedName("tintwright.cup.CupVersions")
                .or()
                .haveFullyQualifiedName("tintwright.logbook.Nearest")
                .should()
                .callMethod(Ciede2000.class, "between", Lab.class, Lab.class)
                .allowEmptyShould(true)
                .because("each version is turned into L*, a* and b* once, by rows, and compared as plain numbers")
                .check(classes);
    }

    @ArchTest
    static void onlyTheDiskRoomsKnowJson(JavaClasses classes) {
        noClasses()
                .that()
                .resideInAnyPackage(
                        "tintwright.colour..",
                        "tintwright.optics..",
                        "tintwright.reading..",
                        "tintwright.shelf..",
                        "tintwright.match..",
                        "tintwright.cup..",
                        "tintwright.fill..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("com.fasterxml..")
                .because("the engine knows no file")
                .check(classes);
    }

    @ArchTest
    static void filesThatOthersMayChangeAreWrittenInOneWay(JavaClasses classes) {
        noClasses()
                .that()
                .resideInAPackage("tintwright.files..")
                .and()
                .doNotHaveSimpleName("SharedFile")
                .should()
                .callMethod(TextFile.class, "write", Path.class, String.class)
                .orShould()
                .callMethod(Files.class, "writeString", Path.class, CharSequence.class, OpenOption[].class)
                .because("what another hand put there meanwhile would be lost")
                .check(classes);
    }

    @ArchTest
    static void noNameServerIsAsked(JavaClasses classes) {
        noClasses()
                .should()
                .callMethod(InetAddress.class, "getLocalHost")
                .orShould()
                .callMethod(InetAddress.class, "getHostName")
                .orShould()
                .callMethod(InetAddress.class, "getCanonicalHostName")
                .orShould()
                .callMethod(InetAddress.class, "getByName", String.class)
                .orShould()
                .callMethod(InetAddress.class, "getAllByName", String.class)
                .orShould()
                .callMethod(InetSocketAddress.class, "getHostName")
                .because("a dead name server holds each question up for ten seconds")
                .check(classes);
    }

    @ArchTest
    static void onlyTheSheetKnowsTheLibraryOfCodes(JavaClasses classes) {
        noClasses()
                .that()
                .resideOutsideOfPackage("tintwright.reading.photo.sheet..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("boofcv..", "georegression..", "org.ddogleg..")
                .because("codes are found and written in one place")
                .check(classes);
    }

    @ArchTest
    static void theEngineKnowsNoClockAndNoFile(JavaClasses classes) {
        noClasses()
                .that()
                .resideInAnyPackage(
                        "tintwright.optics..",
                        "tintwright.shelf..",
                        "tintwright.match..",
                        "tintwright.cup..",
                        "tintwright.fill..")
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.nio.file.Files")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.io.File")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.time.Clock")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(java.time.LocalDate.class, "now")
                .orShould()
                .callMethod(java.time.Instant.class, "now")
                .because("the same entries must always give the same answer")
                .check(classes);
    }
}
