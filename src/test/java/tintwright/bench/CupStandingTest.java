package tintwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.cup.Cup;
import tintwright.cup.Deed;
import tintwright.demo.MeteredShop;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.shelf.knowledge.Knowledge;

/** Whether a cup may be filled from, said before the catalyst is. */
class CupStandingTest {
    private static final Instant NOW = Instant.parse("2026-05-04T09:00:00Z");
    private static final Knowledge SHELF = Knowledge.of(MeteredShop.shelf());

    private static final String WHITE = MeteredShop.shelf().bases().get(0).id();

    private static Cup white() {
        return Cup.empty("bow 1", MeteredShop.places().get(0), 150, 0.01, WHITE)
                .add(NOW, new Deed.Weighed(WHITE, 80, 0.01))
                .add(NOW, new Deed.Held(60));
    }

    @Test
    void anEmptyCupStandsNowhere() {
        assertTrue(CupBench.open(SHELF, Cup.empty("bow 1", MeteredShop.places().get(0), 150, 0.01, WHITE))
                .standing()
                .isEmpty());
    }

    @Test
    void whiteAloneIsNotTheColourYet() {
        CupStanding standing = CupBench.open(SHELF, white()).standing().orElseThrow();
        assertTrue(standing.another() && standing.deltaE() > 2, standing.toString());
        assertEquals("Weigh in first what is still missing.", standing.first());
        assertTrue(standing.sentence().contains("by its weights"), standing.sentence());
    }

    @Test
    void aCupThatSeemsFarTooDarkIsReadFirst() {
        CupStanding standing = CupBench.open(SHELF, white().add(NOW, new Deed.Weighed("soot-black", 2.5, 0.01)))
                .standing()
                .orElseThrow();
        assertEquals("Read a chip of it first.", standing.first());
        assertTrue(standing.sentence().contains("dark"), standing.sentence());
    }

    @Test
    void aChipThatCannotBeTheCupsIsNamed() {
        ColourReading stray = new ColourReading(
                new Lab(20, 40, -30, Viewing.D65_10),
                Covariance.same(0.1),
                Geometry.SPECULAR_INCLUDED,
                FilmState.CURED,
                Optional.empty());
        CupBench bench = CupBench.open(SHELF, white());
        Cup read = bench.read(NOW, stray, Optional.empty()).bench().cup();
        CupStanding standing = CupBench.open(SHELF, read).standing().orElseThrow();
        assertTrue(standing.another() && standing.first().contains("does not fit"), standing.toString());
        assertFalse(standing.read());
    }

    @Test
    void aChipThatCountsAndContradictsTheWeightsIsNamedToo() {
        ColourReading stray = new ColourReading(
                new Lab(88, -2, 2, Viewing.D65_10),
                Covariance.same(0.1),
                Geometry.SPECULAR_INCLUDED,
                FilmState.CURED,
                Optional.empty());
        Cup read = white().add(NOW, new Deed.Read(stray, Optional.empty(), true));
        assertTrue(CupBench.open(SHELF, read).standing().orElseThrow().first().contains("does not fit"));
    }
}
