package tintwright.bench.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.cup.Cup;
import tintwright.cup.Deed;
import tintwright.demo.MeteredShop;
import tintwright.files.Demo;
import tintwright.files.FileProblem;

class BenchFileTest {
    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("bench.json");
    }

    private static Job job(double grams, Optional<Cup> cup, Set<String> off) {
        return new Job(
                "Tarrowmere",
                MeteredShop.places(),
                0,
                MeteredShop.shelf(),
                grams,
                0.01,
                off,
                FillDraft.of(Demo.fillOrder().job(), OptionalDouble.of(0.4)),
                cup,
                cup.isPresent() ? List.of(new Deed.SetAside(12, "bow 1 rest")) : List.of());
    }

    private static Cup cup(double grams) {
        return Cup.empty("bow 1", MeteredShop.places().get(0), 100, 0.01, "plain-white")
                .add(Instant.parse("2026-05-31T09:12:00Z"), new Deed.Weighed("plain-white", grams, 0.01));
    }

    @Test
    void whatIsKeptComesBack() throws Exception {
        Job job = job(150, Optional.of(cup(60)), Set.of("soot-black"));
        BenchFile.keep(file(), Optional.empty(), job);
        assertEquals(job.toString(), BenchFile.read(file()).toString());
    }

    @Test
    void theHolesOfOtherPlacesAreKeptToo() throws Exception {
        Job job = job(150, Optional.empty(), Set.of()).at(1);
        BenchFile.keep(file(), Optional.empty(), job);
        Job back = BenchFile.read(file());
        assertEquals(job.fill(), back.fill());
        assertEquals(Demo.fillOrder().job().lines(), back.at(0).fill().lines());
    }

    @Test
    void aBenchOfTheFirstFormatOpensWithItsHolesAtThePlaceInHand() throws Exception {
        Job job = job(150, Optional.empty(), Set.of());
        BenchFile.keep(file(), Optional.empty(), job);
        String first = Files.readString(file())
                .replaceFirst("\"formatVersion\": 2", "\"formatVersion\": 1")
                .replaceFirst("\"elsewhere\": \\{ *\\},", "");
        assertTrue(first.contains("\"formatVersion\": 1") && !first.contains("elsewhere"), first.substring(0, 300));
        Files.writeString(file(), first);
        assertEquals(job.fill(), BenchFile.read(file()).fill());
    }

    @Test
    void twoWindowsKeepWhatEachChangedElsewhere() throws Exception {
        Job first = job(150, Optional.empty(), Set.of());
        BenchFile.keep(file(), Optional.empty(), first);
        BenchFile.keep(file(), Optional.of(first), job(150, Optional.empty(), Set.of("soot-black")));
        Job mine = job(77, Optional.empty(), Set.of());
        BenchFile.keep(file(), Optional.of(first), mine);
        assertEquals(77, BenchFile.read(file()).grams());
        assertEquals(Set.of("soot-black"), BenchFile.read(file()).off());
        // And again, though this window never saw what the other one did.
        BenchFile.keep(file(), Optional.of(mine), job(78, Optional.empty(), Set.of()));
        assertEquals(78, BenchFile.read(file()).grams());
        assertEquals(Set.of("soot-black"), BenchFile.read(file()).off());
    }

    @Test
    void theSecondOfTwoThatCannotBothStandIsToldAndNothingIsWritten() throws Exception {
        Job first = job(150, Optional.of(cup(60)), Set.of());
        BenchFile.keep(file(), Optional.empty(), first);
        BenchFile.keep(file(), Optional.of(first), job(150, Optional.of(cup(61)), Set.of()));
        String before = Files.readString(file());
        FileProblem told = assertThrows(
                FileProblem.class,
                () -> BenchFile.keep(file(), Optional.of(first), job(150, Optional.of(cup(62)), Set.of())));
        assertTrue(
                told.getMessage().contains("another window changed the same on this bench (cup)"), told.getMessage());
        assertEquals(1, told.getMessage().lines().count());
        assertEquals(before, Files.readString(file()));
    }
}
