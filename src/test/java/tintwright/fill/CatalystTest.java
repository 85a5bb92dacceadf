package tintwright.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tintwright.units.UnitSystem;

class CatalystTest {
    private static final Mix ONE_TO_ONE = new Mix(1, 1);

    private static String refused(Runnable attempt) {
        return assertThrows(IllegalArgumentException.class, attempt::run).getMessage();
    }

    @ParameterizedTest
    @ValueSource(doubles = {3.01, 4, 1.19, 0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void noShareExistsOutsideTheLimit(double percent) {
        for (Basis basis : Basis.values()) {
            String message = refused(() -> new CatalystShare(percent, basis));
            assertTrue(
                    message.contains("1.2 to 3 %")
                            && message.contains(basis.words())
                            && message.contains(CatalystShare.CAUTION),
                    message);
        }
    }

    @Test
    void theRefusalSaysWhatTooMuchDoes() {
        assertTrue(refused(() -> new CatalystShare(5, Basis.MASS)).contains("hot, brittle and yellow"));
        assertTrue(refused(() -> new CatalystShare(0.5, Basis.MASS)).contains("never cures through"));
        assertTrue(refused(() -> new CatalystShare(2, null)).contains("by mass or by volume"));
    }

    @Test
    void massVolumeAndDropsAreOneAmount() {
        Densities densities = new Densities(1.3, 1.1, 1.15, 0.9);
        CatalystDose byVolume = CatalystDose.of(new CatalystShare(2, Basis.VOLUME), ONE_TO_ONE, 50, densities, 20);
        assertEquals(1.0, byVolume.ml(), 1e-12);
        assertEquals(1.15, byVolume.grams(), 1e-12);
        assertEquals(20, byVolume.drops().getAsInt());
        // 50 ml of 1 to 1 weigh 25 * 1.3 + 25 * 1.1 = 60 g; 2 % of that is 1.2 g.
        CatalystDose byMass = CatalystDose.of(new CatalystShare(2, Basis.MASS), ONE_TO_ONE, 50, densities, 20);
        assertEquals(1.2, byMass.grams(), 1e-12);
        assertEquals(1.2 / 1.15, byMass.ml(), 1e-12);
    }

    @Test
    void aCountOfDropsStaysInsideTheLimit() {
        Random random = new Random(7);
        int counted = 0;
        for (int i = 0; i < 5000; i++) {
            CatalystShare share = new CatalystShare(1.2 + 1.8 * random.nextDouble(), Basis.VOLUME);
            double ml = 0.5 + 60 * random.nextDouble();
            double dropsPerMl = 10 + 30 * random.nextDouble();
            CatalystDose dose = CatalystDose.of(share, ONE_TO_ONE, ml, Densities.USUAL, dropsPerMl);
            if (dose.drops().isPresent()) {
                counted++;
                double percent = dose.drops().getAsInt() / dropsPerMl / ml * 100;
                assertTrue(percent >= 1.2 - 1e-6 && percent <= 3 + 1e-6, dose + " comes to " + percent);
            }
        }
        assertTrue(counted > 4500, "counted " + counted);
    }

    @Test
    void whatIsTooLittleToCountSaysSo() {
        CatalystDose dose = CatalystDose.of(new CatalystShare(1.8, Basis.VOLUME), ONE_TO_ONE, 0.6, Densities.USUAL, 20);
        assertTrue(dose.drops().isEmpty());
        assertTrue(dose.words(UnitSystem.METRIC).contains("too little to count in drops"));
    }

    @Test
    void aDoseAlwaysNamesItsBasisItsLimitAndTheCaution() {
        for (Basis basis : Basis.values()) {
            CatalystDose dose = CatalystDose.of(new CatalystShare(1.8, basis), ONE_TO_ONE, 30, Densities.USUAL, 20);
            for (String words : List.of(
                    dose.words(UnitSystem.METRIC),
                    dose.words(UnitSystem.US),
                    dose.toString(),
                    dose.share().toString(),
                    dose.share().words())) {
                assertTrue(words.contains(basis.words()), words);
                assertTrue(words.contains("limit 1.2 to 3 %"), words);
                assertTrue(words.contains(CatalystShare.CAUTION), words);
            }
        }
    }

    @Test
    void theGeneralTableStaysInsideTheLimitOnBothBases() {
        for (double celsius = 10; celsius <= 35; celsius += 0.1) {
            CatalystShare share = GeneralCatalyst.shareAt(Math.min(35, celsius));
            double byMass = share.percent() * Densities.USUAL.catalyst() / Densities.USUAL.gelCoat();
            assertTrue(Published.CATALYST_RANGE.holds(byMass), celsius + " °C: " + byMass + " % by mass");
        }
    }

    @Test
    void theColderTheMoreCatalystAndTheMoreTime() {
        for (double celsius = 10; celsius < 34.5; celsius += 0.5) {
            double warmer = celsius + 0.5;
            assertTrue(GeneralCatalyst.shareAt(celsius).percent()
                    > GeneralCatalyst.shareAt(warmer).percent());
            WorkingTime cold = GeneralCatalyst.timeAt(celsius, 1.8);
            WorkingTime warm = GeneralCatalyst.timeAt(warmer, 1.8);
            assertTrue(cold.leastMinutes() > warm.leastMinutes() && cold.mostMinutes() > warm.mostMinutes());
        }
        assertTrue(GeneralCatalyst.timeAt(20, 1.5).leastMinutes()
                > GeneralCatalyst.timeAt(20, 2).leastMinutes());
    }

    /** Ten degrees away the weaker rule doubles or halves the time once, the stronger twice. */
    @Test
    void theTimeFollowsTheTwoRulesOfThumb() {
        assertEquals(new WorkingTime(10 * 2, 17 * 4), GeneralCatalyst.timeAt(15, 1.8));
        assertEquals(new WorkingTime(10 / 4.0, 17 / 2.0), GeneralCatalyst.timeAt(35, 1.8));
    }

    /** Away from the one published point we know less, and the range says so. */
    @Test
    void theRangeWidensAwayFromThePublishedPoint() {
        double at25 = ratio(25);
        for (double away = 1; away <= 10; away++) {
            assertTrue(ratio(25 + away) > at25 && ratio(25 - away) > at25, away + " degrees away");
        }
    }

    private static double ratio(double celsius) {
        WorkingTime time = GeneralCatalyst.timeAt(celsius, 1.8);
        return time.mostMinutes() / time.leastMinutes();
    }

    @ParameterizedTest
    @ValueSource(doubles = {9.9, 0, -20, 35.1, 50, Double.NaN})
    void nothingIsDosedWhereNothingCures(double celsius) {
        assertTrue(refused(() -> GeneralCatalyst.shareAt(celsius)).contains("10 to 35 °C"));
        assertTrue(refused(() -> GeneralCatalyst.timeAt(celsius, 1.8)).contains("10 to 35 °C"));
    }

    private static CatalystTable.Row row(double celsius, double percent, Basis basis, double least, double most) {
        return new CatalystTable.Row(celsius, new CatalystShare(percent, basis), new WorkingTime(least, most));
    }

    private static final CatalystTable OWN = new CatalystTable(
            "Harbour white base", List.of(row(25, 1.5, Basis.MASS, 12, 18), row(15, 2.5, Basis.MASS, 30, 50)));

    @Test
    void theOwnTableIsReadAlongTheLineBetweenItsRows() {
        CatalystTable.Row at20 = OWN.at(20);
        assertEquals(2.0, at20.share().percent(), 1e-12);
        assertEquals(Basis.MASS, at20.share().basis());
        assertEquals(21, at20.time().leastMinutes(), 1e-12);
        assertEquals(34, at20.time().mostMinutes(), 1e-12);
        assertEquals(2.5, OWN.at(15).share().percent());
        assertEquals(1.5, OWN.at(25).share().percent());
    }

    @Test
    void theOwnTableSaysNothingOutsideItsTemperatures() {
        String message = refused(() -> OWN.at(12));
        assertTrue(message.contains("Harbour white base covers 15 to 25 °C, it is 12 °C"), message);
        assertTrue(refused(() -> OWN.at(26)).contains("it is 26 °C"));
    }

    @Test
    void aTableThatContradictsItselfIsRefused() {
        assertTrue(refused(() -> new CatalystTable("X base", List.of())).contains("at least one row"));
        assertTrue(refused(() -> new CatalystTable(
                        "X base", List.of(row(20, 2, Basis.MASS, 9, 9), row(20, 1.8, Basis.MASS, 9, 9))))
                .contains("two rows for 20 °C"));
        assertTrue(refused(() -> new CatalystTable(
                        "X base", List.of(row(20, 2, Basis.MASS, 9, 9), row(25, 1.8, Basis.VOLUME, 9, 9))))
                .contains("by mass with percent by volume"));
        assertTrue(refused(() -> new WorkingTime(20, 10)).contains("must not be below the shortest"));
    }

    @Test
    void aBasisIsReadAsItIsSaid() {
        assertEquals(Basis.MASS, Basis.named("by mass"));
        assertEquals(Basis.VOLUME, Basis.named("Volume"));
        assertTrue(refused(() -> Basis.named("percent")).contains("by mass or by volume"));
        assertFalse(OWN.rows().get(0).celsius() > OWN.rows().get(1).celsius(), "kept from cold to warm");
    }
}
