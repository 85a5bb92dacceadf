package tintwright.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tintwright.fill.catalyst.Basis;
import tintwright.fill.catalyst.CatalystDose;
import tintwright.fill.catalyst.CatalystMeasure;
import tintwright.fill.catalyst.CatalystShare;
import tintwright.fill.catalyst.CatalystTable;
import tintwright.fill.catalyst.GelTimes;
import tintwright.fill.catalyst.GeneralCatalyst;
import tintwright.fill.catalyst.WorkingTime;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Mix;
import tintwright.fill.repair.Published;
import tintwright.units.UnitSystem;

class CatalystTest {
    private static final Mix ONE_TO_ONE = new Mix(1, 1);
    private static final CatalystMeasure SCALE = new CatalystMeasure(CatalystMeasure.By.SCALE, 0.01);
    private static final CatalystMeasure SYRINGE = new CatalystMeasure(CatalystMeasure.By.SYRINGE, 0.01);
    private static final CatalystMeasure DROPPER = CatalystMeasure.dropper(20);

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
        CatalystDose byVolume = CatalystDose.of(new CatalystShare(2, Basis.VOLUME), ONE_TO_ONE, 50, densities, DROPPER);
        assertEquals(1.0, byVolume.ml(), 1e-12);
        assertEquals(1.15, byVolume.grams(), 1e-12);
        assertEquals(20, byVolume.said().getAsDouble());
        // 50 ml of 1 to 1 weigh 25 * 1.3 + 25 * 1.1 = 60 g; 2 % of that is 1.2 g.
        CatalystDose byMass = CatalystDose.of(new CatalystShare(2, Basis.MASS), ONE_TO_ONE, 50, densities, SCALE);
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
            CatalystDose dose =
                    CatalystDose.of(share, ONE_TO_ONE, ml, Densities.USUAL, CatalystMeasure.dropper(dropsPerMl));
            if (dose.said().isPresent()) {
                counted++;
                assertTrue(dose.said().getAsDouble() >= 5, "never under five drops");
                double percent = dose.said().getAsDouble() / dropsPerMl / ml * 100;
                assertTrue(percent >= 1.2 - 1e-6 && percent <= 3 + 1e-6, dose + " comes to " + percent);
            }
        }
        assertTrue(counted > 4000, "counted " + counted);
    }

    private static final Pattern SAID = Pattern.compile("([\\d.]+) (g|ml|drops)(?= on the| in the| of your)");

    /** What stands in the words, as a share of what is catalysed by the basis of its own unit and by that of the share. */
    private static void holdsAllThatIsSaid(CatalystDose dose, UnitSystem units) {
        String words = dose.words(units);
        Matcher said = SAID.matcher(
                words.substring(0, words.indexOf(" (" + dose.share().words())) + " (");
        while (said.find()) {
            if (words.substring(0, said.start()).endsWith("takes ")) {
                continue;
            }
            double amount = Double.parseDouble(said.group(1));
            boolean weighed = said.group(2).equals("g");
            double inMl = weighed || said.group(2).equals("ml")
                    ? amount
                    : amount / dose.measure().dropsPerMl();
            double onItsOwn = 100 * (weighed ? amount / dose.mixGrams() : inMl / dose.mixMl());
            double asAsked = dose.share().percent() * (weighed ? amount / dose.grams() : inMl / dose.ml());
            assertTrue(onItsOwn >= 1.2 && onItsOwn <= 3, said.group() + " is " + onItsOwn + " %: " + words);
            assertTrue(asAsked >= 1.2 && asAsked <= 3, said.group() + " is " + asAsked + " %: " + words);
        }
    }

    @Test
    void aHundredthOfAGramOnASixthOfAGramIsNotSaid() {
        // 0.16 g of neat gel coat: 1.8 % is 0.003 g, and the 0.01 g that a scale shows would be 6 %.
        CatalystDose dose =
                CatalystDose.of(new CatalystShare(1.8, Basis.MASS), Mix.NEAT, 0.16 / 1.3, Densities.USUAL, SCALE);
        String words = dose.words(UnitSystem.METRIC);
        assertFalse(words.contains("0.00 g") || words.startsWith("0.01 g"), words);
        assertTrue(
                words.contains("too little for weighing to 0.01 g") && words.contains("takes 0.4 g of gel coat"),
                words);
    }

    @Test
    void densitiesThatCarryTheOtherBasisOutOfTheLimitLeaveThatFigureOut() {
        Densities odd = new Densities(0.8, 0.8, 1.6, 0.9);
        CatalystShare share = new CatalystShare(2, Basis.VOLUME);
        String drops = CatalystDose.of(share, Mix.NEAT, 50, odd, DROPPER).words(UnitSystem.METRIC);
        assertTrue(drops.startsWith("20 drops of your dropper"), drops);
        String weighed = CatalystDose.of(share, Mix.NEAT, 50, odd, SCALE).words(UnitSystem.METRIC);
        assertTrue(weighed.contains("not by weighing to 0.01 g: with these densities"), weighed);
    }

    @Test
    void noRoundingLeavesTheLimitOnAnyBasisInAnyUnit() {
        Random random = new Random(11);
        for (int i = 0; i < 20_000; i++) {
            CatalystShare share = new CatalystShare(
                    i % 5 == 0 ? 3 : i % 5 == 1 ? 1.2 : 1.2 + 1.8 * random.nextDouble(),
                    random.nextBoolean() ? Basis.MASS : Basis.VOLUME);
            Densities densities = i % 2 == 0
                    ? Densities.USUAL
                    : new Densities(
                            0.3 + 3 * random.nextDouble(),
                            0.3 + 3 * random.nextDouble(),
                            0.3 + 3 * random.nextDouble(),
                            0.9);
            double ml = Math.pow(10, -2 + 4.5 * random.nextDouble());
            CatalystDose dose = CatalystDose.of(
                    share,
                    ONE_TO_ONE,
                    ml,
                    densities,
                    List.of(SCALE, SYRINGE, DROPPER).get(i % 3));
            for (UnitSystem units : UnitSystem.values()) {
                holdsAllThatIsSaid(dose, units);
            }
        }
    }

    @Test
    void theSmallestBatchThatIsNamedCanBeMeasured() {
        Random random = new Random(13);
        for (int i = 0; i < 5000; i++) {
            CatalystShare share = new CatalystShare(1.25 + 1.7 * random.nextDouble(), Basis.MASS);
            double ml = Math.pow(10, -2 + 2 * random.nextDouble());
            String words =
                    CatalystDose.of(share, Mix.NEAT, ml, Densities.USUAL, SCALE).words(UnitSystem.METRIC);
            Matcher least = Pattern.compile("weighing to 0.01 g inside the limit, which takes ([\\d.]+) g")
                    .matcher(words);
            if (least.find()) {
                double enough = Double.parseDouble(least.group(1)) / Densities.USUAL.gelCoat();
                String larger = CatalystDose.of(share, Mix.NEAT, enough, Densities.USUAL, SCALE)
                        .words(UnitSystem.METRIC);
                assertTrue(larger.startsWith("0.01 g"), words + " but then " + larger);
            }
        }
    }

    @Test
    void whatIsTooLittleToCountSaysSo() {
        CatalystDose dose =
                CatalystDose.of(new CatalystShare(1.8, Basis.VOLUME), ONE_TO_ONE, 0.6, Densities.USUAL, DROPPER);
        assertTrue(dose.said().isEmpty());
        assertTrue(dose.words(UnitSystem.METRIC).contains("too little for drops inside the limit"));
    }

    @Test
    void aDoseAlwaysNamesItsBasisItsLimitAndTheCaution() {
        for (Basis basis : Basis.values()) {
            CatalystDose dose =
                    CatalystDose.of(new CatalystShare(1.8, basis), ONE_TO_ONE, 30, Densities.USUAL, SYRINGE);
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
        for (double celsius = 0; celsius <= 60; celsius += 0.1) {
            CatalystShare share = GeneralCatalyst.shareAt(celsius);
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
            WorkingTime cold = at(celsius, 1.8);
            WorkingTime warm = at(warmer, 1.8);
            assertTrue(cold.leastMinutes() > warm.leastMinutes() && cold.mostMinutes() > warm.mostMinutes());
        }
        assertTrue(at(20, 1.5).leastMinutes() > at(20, 2).leastMinutes());
    }

    /** Ten degrees away the middle of the two rules, 2 in 10 and 2 in 6 degrees, is a factor of 2 to the 4/3. */
    @Test
    void theTimeFollowsTheTwoRulesOfThumb() {
        double middle = Math.sqrt(10 * 17);
        for (double away : new double[] {-10, 10}) {
            WorkingTime time = at(25 + away, 1.8);
            double found = Math.sqrt(time.leastMinutes() * time.mostMinutes());
            assertEquals(middle * Math.pow(2, -4.0 / 3 * away / 10), found, 1e-9);
            // Half-ranges of the logarithm add as squares: that of the published point and a third of a doubling more
            // or less.
            double spread = Math.hypot(Math.log(1.7) / 2, Math.log(2) / 3);
            assertEquals(found * Math.exp(spread), time.mostMinutes(), 1e-9);
        }
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
        WorkingTime time = at(celsius, 1.8);
        return time.mostMinutes() / time.leastMinutes();
    }

    private static WorkingTime at(double celsius, double percent) {
        return new GelTimes(List.of(), Densities.USUAL).at(celsius, percent);
    }

    private static CatalystTable.Row row(double celsius, double percent, Basis basis, double least, double most) {
        return new CatalystTable.Row(celsius, new CatalystShare(percent, basis), new WorkingTime(least, most));
    }

    private static final CatalystTable OWN = new CatalystTable(
            "plain white base", List.of(row(25, 1.5, Basis.MASS, 12, 18), row(15, 2.5, Basis.MASS, 30, 50)));

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
    void beyondItsTemperaturesTheOwnTableKeepsItsShareAndMovesItsTime() {
        CatalystTable.Row at30 = OWN.at(30);
        assertEquals(OWN.at(25).share(), at30.share());
        assertTrue(
                at30.time().leastMinutes() < 12 && at30.time().mostMinutes() < 18,
                at30.time().words());
        assertTrue(OWN.at(12).time().mostMinutes() > 50);
        assertTrue(OWN.covers(20) && !OWN.covers(12) && !OWN.covers(26));
    }

    @Test
    void aTableThatContradictsItselfIsRefused() {
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
