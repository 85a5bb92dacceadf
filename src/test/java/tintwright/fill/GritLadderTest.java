package tintwright.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import tintwright.fill.GritLadder.Surface;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.Published;
import tintwright.fill.repair.RepairLine;
import tintwright.fill.repair.SprayArea;

class GritLadderTest {
    @Test
    void startsWhereTheSurfaceNeedsItAndEndsWithPolish() {
        assertEquals(List.of(150, 220, 400, 600, 800, 1000, 0), grits(Surface.PROUD));
        assertEquals(List.of(220, 400, 600, 800, 1000, 0), grits(Surface.NEARLY_LEVEL));
        assertEquals(List.of(400, 600, 800, 1000, 0), grits(Surface.SPRAYED));
        assertEquals(List.of(600, 800, 1000, 0), grits(Surface.SCRATCHED));
        assertEquals(List.of(1000, 0), grits(Surface.DULL));
    }

    private static List<Integer> grits(Surface surface) {
        return GritLadder.from(surface).steps().stream()
                .map(GritLadder.Step::grit)
                .toList();
    }

    @Test
    void isWetFromP400() {
        for (GritLadder.Step step : GritLadder.from(Surface.PROUD).steps()) {
            assertEquals(step.grit() >= 400, step.wet(), step.words());
        }
    }

    /** P400 to P1000 by ISO 6344, from memory: 35.0, 25.8, 21.8 and 18.3 micrometres of grain. */
    @Test
    void takesAQuarterToAHalfOfEveryGrain() {
        double grains = (35.0 + 25.8 + 21.8 + 18.3) / 1000;
        assertEquals(grains / 4, GritLadder.from(Surface.SPRAYED).takesLeastMm(), 1e-12);
        assertEquals(grains / 2, GritLadder.from(Surface.SPRAYED).takesMostMm(), 1e-12);
    }

    @Test
    void theCoarserTheStartTheMoreItTakesOff() {
        double before = Double.MAX_VALUE;
        for (Surface surface : Surface.values()) {
            GritLadder ladder = GritLadder.from(surface);
            assertTrue(ladder.takesLeastMm() < ladder.takesMostMm());
            assertTrue(ladder.takesMostMm() < before, surface.words());
            before = ladder.takesMostMm();
        }
        assertTrue(
                GritLadder.from(Surface.PROUD).takesMostMm() < Published.LEAST_FILM_MM.low(),
                "one careful ladder must not eat a whole thin gel coat");
    }

    @Test
    void warnsWhenLittleOldGelCoatWouldBeLeft() {
        assertTrue(oldFilm(0.35).contains(Warning.Kind.OLD_FILM_THIN));
        assertFalse(oldFilm(0.6).contains(Warning.Kind.OLD_FILM_THIN));
        assertTrue(FillPlanner.plan(Jobs.job(
                        Jobs.ALL,
                        Jobs.UNWAXED,
                        Jobs.MILD,
                        new CatalystChoice.General(),
                        Allowances.USUAL,
                        Optional.empty(),
                        OptionalDouble.empty()))
                .warnings()
                .stream()
                .anyMatch(w -> w.kind() == Warning.Kind.OLD_FILM_UNKNOWN));
    }

    private static List<Warning.Kind> oldFilm(double mm) {
        return FillPlanner.plan(Jobs.job(
                        Jobs.ALL,
                        Jobs.UNWAXED,
                        Jobs.MILD,
                        new CatalystChoice.General(),
                        Allowances.USUAL,
                        Optional.empty(),
                        OptionalDouble.of(mm)))
                .warnings()
                .stream()
                .map(Warning::kind)
                .toList();
    }

    @Test
    void readsASurfaceByName() {
        assertEquals(Surface.NEARLY_LEVEL, Surface.named("nearly level"));
        assertEquals(Surface.DULL, Surface.named("DULL"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Surface.named("shiny"))
                .getMessage()
                .contains("proud, nearly level, sprayed, scratched, dull"));
    }

    @Test
    void aSprayedFilmIsNeverStartedCoarse() {
        assertEquals(
                List.of(400, 600, 800, 1000, 0),
                FillPlanner.plan(Jobs.all()).finish().sandings().get(1).ladder().steps().stream()
                        .map(GritLadder.Step::grit)
                        .toList());
        assertEquals(
                1, FillPlanner.plan(Jobs.of(Jobs.SPRAY)).finish().sandings().size());
    }

    @Test
    void aFilmSprayedToHideStillHidesAfterSanding() {
        FillPlan plan = FillPlanner.plan(Jobs.of(new RepairLine(
                "patch", SprayArea.toHide(100, 100, Jobs.UNWAXED.hidingFilmMm().getAsDouble()), Lie.VERTICAL, 1)));
        assertFalse(plan.warnings().stream().anyMatch(w -> w.kind() == Warning.Kind.SHOWS_THROUGH));
        FillPlan bare = FillPlanner.plan(Jobs.of(new RepairLine(
                "patch", new SprayArea(100, 100, Jobs.UNWAXED.hidingFilmMm().getAsDouble()), Lie.VERTICAL, 1)));
        assertTrue(bare.warnings().stream().anyMatch(w -> w.kind() == Warning.Kind.SHOWS_THROUGH));
    }

    @Test
    void tapeGoesAroundEveryPiece() {
        // A 10 mm hole: twice 10 + 10 mm and four laps of 25 mm, 24 times.
        assertEquals(24 * 140, FillPlanner.plan(Jobs.of(Jobs.HOLES)).tapeMm(), 1e-9);
    }
}
