package tintwright.cup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.demo.MeteredShop;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Parts;
import tintwright.shelf.knowledge.Knowledge;

/** A chip and weights that cannot both be right are told, with the slip that was really made. */
class ContradictionTest {
    private static final Instant NOW = Instant.parse("2026-05-31T09:00:00Z");
    private static final PlaceReadings BOW = MeteredShop.places().get(0);
    private static final Knowledge KNOWN = Knowledge.of(MeteredShop.shelf());

    private static Cup cup(double white, double black, double green) {
        return Cup.empty("bow 1", BOW, 100, 0.01, "plain-white")
                .add(NOW, new Deed.Weighed("plain-white", white, 0.01))
                .add(NOW, new Deed.Weighed("soot-black", black, 0.01))
                .add(NOW, new Deed.LetDown("bottle-green", 10, green, 0.01));
    }

    private static Lab truth(double white, double black, double green) {
        CupSight sight = CupSight.of(KNOWN, cup(white, black, green));
        return sight.colour().orElseThrow();
    }

    private static Cup read(Cup cup, Lab chip, boolean counts) {
        return cup.add(
                NOW,
                new Deed.Read(
                        new ColourReading(
                                chip,
                                Covariance.same(0.3),
                                BOW.readings().get(0).geometry(),
                                FilmState.CURED,
                                Optional.empty()),
                        Optional.empty(),
                        counts));
    }

    @Test
    void anHonestChipContradictsNothing() {
        Lab lab = truth(70, 0.3, 2);
        for (double off : new double[] {0, 0.6, -0.6}) {
            Cup cup =
                    read(cup(70, 0.3, 2), new Lab(lab.lightness() + off, lab.a(), lab.b() - off, lab.viewing()), true);
            assertEquals(Optional.empty(), CupSight.of(KNOWN, cup).contradiction());
        }
        assertEquals(Optional.empty(), CupSight.of(KNOWN, cup(70, 0.3, 2)).contradiction());
    }

    @Test
    void theSlipThatWasMadeIsNamedFirstAndPutRightItSettlesTheMatter() {
        double[][] slips = {{70, 1.2, 2}, {70, 0.3, 9}, {35, 0.3, 2}};
        double[] wanted = {1.2, 9, 35};
        String[] entries = {"e2", "e3", "e1"};
        for (int i = 0; i < slips.length; i++) {
            for (boolean counts : new boolean[] {true, false}) {
                Lab chip = truth(slips[i][0], slips[i][1], slips[i][2]);
                Cup cup = read(cup(70, 0.3, 2), chip, counts);
                Contradiction found = CupSight.of(KNOWN, cup).contradiction().orElseThrow();
                assertEquals("e4", found.entry());
                assertTrue(found.apart() > 1.5, "apart " + found.apart());
                Contradiction.Slip slip = found.slips().get(0);
                assertEquals(entries[i], slip.entry());
                assertEquals(wanted[i], slip.really(), 0.05 * wanted[i]);
                assertTrue(slip.left() < 0.5, "left " + slip.left());
                Deed old = cup.entry(slip.entry()).orElseThrow().deed();
                Deed right = old instanceof Deed.LetDown down
                        ? new Deed.LetDown(down.part(), down.oneIn(), slip.really(), down.step())
                        : new Deed.Weighed(slip.part(), slip.really(), 0.01);
                CupSight settled = CupSight.of(KNOWN, cup.correct(slip.entry(), right, NOW));
                assertEquals(Optional.empty(), settled.contradiction());
                assertTrue(Ciede2000.between(chip, settled.colour().orElseThrow()) < 0.6);
            }
        }
    }

    @Test
    void aReadingThatNoSlipExplainsIsStillTold() {
        Lab lab = truth(70, 0.3, 2);
        Lab pink = new Lab(lab.lightness(), lab.a() + 30, lab.b(), lab.viewing());
        Contradiction found = CupSight.of(KNOWN, read(cup(70, 0.3, 2), pink, false))
                .contradiction()
                .orElseThrow();
        assertEquals(List.of(), found.slips());
        assertTrue(found.words().contains("disagree by"), found.words());
    }

    @Test
    void onAShelfThatIsOnlyGuessedAChipTeachesInsteadOfContradicting() {
        Knowledge guessed = Knowledge.of(MeteredShop.shelf().withChips(List.of()));
        Lab expected = guessed.colour(
                Parts.of(Map.of("plain-white", 70.0, "soot-black", 0.3, "bottle-green", 0.2)),
                truth(70, 0.3, 2).viewing(),
                BOW.readings().get(0).geometry());
        Lab chip = new Lab(expected.lightness() - 4, expected.a(), expected.b(), expected.viewing());
        CupSight sight = CupSight.of(guessed, read(cup(70, 0.3, 2), chip, true));
        assertEquals(Optional.empty(), sight.contradiction());
        assertTrue(Ciede2000.between(chip, sight.colour().orElseThrow()) < 1);
    }
}
