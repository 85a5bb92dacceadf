package tintwright;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each rule of {@link ArchitectureTest} fails on a fault that is planted for it, and for its own reason only. */
class ArchitectureFaultsTest {
    @TempDir
    private Path folder;

    static Stream<Arguments> faults() {
        return Stream.of(
                fault(
                        "a station that looks into another",
                        ArchitectureTest::stationsDoNotKnowEachOther,
                        "tintwright.window.hull.Planted { tintwright.window.cup.CupModel cup; }"),
                fault(
                        "a command that looks into another station",
                        ArchitectureTest::stationsDoNotKnowEachOther,
                        "tintwright.command.hull.Planted { tintwright.command.Commands all; }"),
                fault(
                        "a piece that looks into a station",
                        ArchitectureTest::stationsDoNotKnowEachOther,
                        "tintwright.window.pieces.Planted { tintwright.window.cup.CupModel cup; }"),
                fault(
                        "a room that the design does not have",
                        ArchitectureTest::everyClassStandsInARoomOfTheDesign,
                        "tintwright.helpers.Planted { }"),
                fault(
                        "an arrow back",
                        ArchitectureTest::roomsLookOnlyWhereTheyMay,
                        "tintwright.colour.Planted { tintwright.match.Matcher matcher; }"),
                fault(
                        "a face that looks into the other",
                        ArchitectureTest::roomsLookOnlyWhereTheyMay,
                        "tintwright.command.Planted { tintwright.window.cup.CupModel cup; }"),
                fault(
                        "a face that plans doses by itself",
                        ArchitectureTest::facesHoldValuesOfTheCupAndWorkThroughTheBench,
                        "tintwright.phone.Planted { tintwright.cup.DosePlanner planner; }"),
                fault(
                        "two rooms that know each other",
                        ArchitectureTest::noPackagesGoRoundInACircle,
                        "tintwright.shelf.Planted { tintwright.units.Other other; }",
                        "tintwright.units.Other { tintwright.shelf.Planted planted; }"),
                fault(
                        "a screen in the bench",
                        ArchitectureTest::onlyTheWindowKnowsTheScreenToolkit,
                        "tintwright.bench.Planted { javafx.scene.Node node; }"),
                fault(
                        "a control in a view model",
                        ArchitectureTest::viewModelsKnowNoControls,
                        "tintwright.window.cup.PlantedModel { javafx.scene.control.Button button; }"),
                fault(
                        "a pair of colours where they come in rows",
                        ArchitectureTest::whereColoursAreComparedInRowsNoPairIsMadeOfObjects,
                        "tintwright.cup.CupVersions { double asPlanted(tintwright.colour.Lab one) {"
                                + " return tintwright.colour.Ciede2000.between(one, one); } }"),
                fault(
                        "JSON in the engine",
                        ArchitectureTest::onlyTheDiskRoomsKnowJson,
                        "tintwright.cup.Planted { com.fasterxml.jackson.databind.JsonNode node; }"),
                fault(
                        "a file of ours that is written over what another hand put there",
                        ArchitectureTest::filesThatOthersMayChangeAreWrittenInOneWay,
                        "tintwright.files.Planted { void w(java.nio.file.Path p) throws Exception {"
                                + " java.nio.file.Files.writeString(p, \"\"); } }"),
                fault(
                        "a name server that is asked",
                        ArchitectureTest::noNameServerIsAsked,
                        "tintwright.bench.Planted { Object o() throws Exception {"
                                + " return java.net.InetAddress.getLocalHost(); } }"),
                fault(
                        "the library of codes outside the sheet",
                        ArchitectureTest::onlyTheSheetKnowsTheLibraryOfCodes,
                        "tintwright.reading.Planted { boofcv.struct.image.GrayU8 image; }"),
                fault(
                        "a clock in the engine",
                        ArchitectureTest::theEngineKnowsNoClockAndNoFile,
                        "tintwright.match.Planted { java.time.Instant at = java.time.Instant.now(); }"),
                fault(
                        "a file in the engine",
                        ArchitectureTest::theEngineKnowsNoClockAndNoFile,
                        "tintwright.cup.Planted { boolean is(java.nio.file.Path p) {"
                                + " return java.nio.file.Files.exists(p); } }"));
    }

    private static Arguments fault(String name, Consumer<JavaClasses> rule, String... classes) {
        return Arguments.of(name, rule, List.of(classes));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void isFound(String name, Consumer<JavaClasses> rule, List<String> sources) throws IOException {
        JavaClasses planted = compile(sources);
        AssertionError found = assertThrows(AssertionError.class, () -> rule.accept(planted), name);
        assertTrue(found.getMessage().contains("Planted"), found.getMessage());
    }

    @Test
    void whatMayStandIsLeftAlone() throws IOException {
        JavaClasses planted = compile(List.of(
                "tintwright.window.hull.Planted { tintwright.bench.job.Job job; tintwright.cup.Cup cup;"
                        + " javafx.scene.Node node; }",
                "tintwright.files.Shape { tintwright.units.Grams grams; }",
                "tintwright.cup.Beside { tintwright.match.Aim aim; tintwright.units.Grams grams; }"));
        faults().forEach(fault -> {
            @SuppressWarnings("unchecked")
            Consumer<JavaClasses> rule = (Consumer<JavaClasses>) fault.get()[1];
            assertDoesNotThrow(() -> rule.accept(planted), fault.get()[0].toString());
        });
    }

    @Test
    void everyRuleHasItsFault() {
        long rules = Arrays.stream(ArchitectureTest.class.getDeclaredMethods())
                .filter(m -> m.isAnnotationPresent(com.tngtech.archunit.junit.ArchTest.class))
                .count();
        // Two rules have a second fault, one a third.
        assertEquals(rules + 4, faults().count());
    }

    /** @param sources a class each, as {@code package.Name { body }} */
    private JavaClasses compile(List<String> sources) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<Path> files = new ArrayList<>();
        for (String source : sources) {
            String name = source.substring(0, source.indexOf(' '));
            int dot = name.lastIndexOf('.');
            Path file = folder.resolve(name.substring(dot + 1) + ".java");
            Files.writeString(
                    file,
                    "package " + name.substring(0, dot) + "; public class " + source.substring(dot + 1),
                    StandardCharsets.UTF_8);
            files.add(file);
        }
        Path classes = Files.createDirectory(folder.resolve("classes"));
        StringWriter said = new StringWriter();
        try (StandardJavaFileManager disk =
                compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8)) {
            Iterable<? extends JavaFileObject> units = disk.getJavaFileObjectsFromPaths(files);
            List<String> how = List.of("-d", classes.toString(), "-proc:none", "--release", "17");
            assertTrue(compiler.getTask(said, disk, null, how, null, units).call(), said.toString());
        }
        return new ClassFileImporter().importPath(classes);
    }
}
