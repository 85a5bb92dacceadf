package tintwright.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tintwright.Reference;

class UnitsTest {
    /** NIST SP 811 appendix B prints these, each exact or to the digits shown. */
    @Test
    void factorsAreThoseOfTheirDefinitions() {
        assertEquals(25.4, Units.MM_PER_INCH);
        assertEquals(0.0254, Units.MM_PER_MIL, 1e-15);
        assertEquals(304.8, Units.MM_PER_FOOT, 1e-12);
        assertEquals(3785.411784, Units.ML_PER_US_GALLON, 1e-9);
        assertEquals(29.5735295625, Units.ML_PER_US_FLUID_OUNCE, 1e-12);
        assertEquals(28.349523125, Units.GRAMS_PER_OUNCE, 1e-12);
        // NIST Special Publication 811 (2008), appendix B.8, teaspoon and tablespoon, to the digits printed there.
        assertEquals(4.928922, Units.ML_PER_US_TEASPOON, 5e-7);
        assertEquals(14.78676, Units.ML_PER_US_TABLESPOON, 5e-6);
    }

    @Test
    void fahrenheitMeetsCelsiusAtItsFixedPoints() {
        assertEquals(0, Units.celsius(32), 1e-12);
        assertEquals(100, Units.celsius(212), 1e-12);
        assertEquals(-40, Units.celsius(-40), 1e-12);
        assertEquals(25, Units.celsius(77), 1e-12);
        assertEquals(68.3, Units.fahrenheit(Units.celsius(68.3)), 1e-12);
    }

    /** The coatings primer's identity, 1604 square feet per US gallon at one mil and 80 at twenty. */
    @Test
    void aGallonCoversWhatThePrimerSays() {
        String[] row = Reference.rows("handbook/gelcoat-values.csv").stream()
                .filter(r -> r[0].equals("coverage"))
                .findFirst()
                .orElseThrow();
        double published = Double.parseDouble(row[1].substring(0, row[1].indexOf('/')));
        assertEquals(published, Units.SQUARE_FEET_PER_GALLON_MIL, 0.5);
        assertEquals(80, Units.SQUARE_FEET_PER_GALLON_MIL / 20, 0.5);
    }

    @ParameterizedTest
    @CsvSource({
        "12, 12",
        "12 mm, 12",
        "1.5 cm, 15",
        "0.5in, 12.7",
        "3/8 in, 9.525",
        "1 1/2 in, 38.1",
        "12 mil, 0.3048",
        "2 ft, 609.6",
        ".25 in, 6.35",
        "300 µm, 0.3"
    })
    void readsALengthAsItIsTyped(String typed, double mm) {
        assertEquals(mm, Entry.lengthMm("depth", typed, UnitSystem.METRIC), 1e-12);
    }

    @Test
    void aBareNumberIsInThePersonsOwnUnits() {
        assertEquals(25.4, Entry.lengthMm("depth", "1", UnitSystem.US), 1e-12);
        assertEquals(0.508, Entry.filmMm("film", "20", UnitSystem.US), 1e-12);
        assertEquals(25, Entry.celsius("air", "77", UnitSystem.US), 1e-12);
        assertEquals(-5, Entry.celsius("air", "-5", UnitSystem.METRIC), 1e-12);
        assertEquals(25, Entry.celsius("air", "77 °F", UnitSystem.METRIC), 1e-12);
        assertEquals(56.69904625, Entry.grams("cup", "2", UnitSystem.US), 1e-12);
        assertEquals(1.232230, Entry.ml("spoon", "1/4", UnitSystem.US), 1e-6);
        assertEquals(1.25, Entry.ml("spoon", "1,25", UnitSystem.METRIC), 1e-12);
        assertEquals(14.786765, Entry.ml("spoon", "1 tbsp", UnitSystem.METRIC), 1e-6);
    }

    @Test
    void aCommaIsADecimalSignUnlessItCouldPartThousands() {
        assertEquals(2.5, Entry.lengthMm("depth", "2,5", UnitSystem.METRIC));
        assertEquals(12.75, Entry.lengthMm("depth", "12,75 mm", UnitSystem.METRIC));
        assertEquals(0.1255, Entry.grams("what is left", "0,1255", UnitSystem.METRIC));
        assertTrue(assertThrows(
                        IllegalArgumentException.class, () -> Entry.grams("what is left", "1,250 g", UnitSystem.METRIC))
                .getMessage()
                .contains("two ways"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "deep", "12 furlong", "1/0", "3 4", "1e3", "NaN", "12 mm 3", "1,5,2 mm"})
    void refusesWhatIsNoLengthAndNamesIt(String typed) {
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class, () -> Entry.lengthMm("depth of hole", typed, UnitSystem.METRIC));
        assertTrue(refusal.getMessage().startsWith("depth of hole must"), refusal.getMessage());
        assertTrue(refusal.getMessage().contains("\"" + typed + "\""), refusal.getMessage());
    }

    @Test
    void showsAmountsInBothSystems() {
        assertEquals("12.7 mm", UnitSystem.METRIC.length(12.7));
        assertEquals("0.5 in", UnitSystem.US.length(12.7));
        assertEquals("12 mil", UnitSystem.US.film(0.3048));
        assertEquals("0.30 mm", UnitSystem.METRIC.film(0.3048));
        assertEquals("77 °F", UnitSystem.US.temperature(25));
        assertEquals("2.00 oz (56.7 g)", UnitSystem.US.mass(56.699));
        assertEquals("0.42 ml", UnitSystem.US.volume(0.42));
        assertEquals("1.00 fl oz", UnitSystem.US.volume(29.57));
        assertEquals("100 g", UnitSystem.METRIC.mass(99.96));
        assertEquals("10 g", UnitSystem.METRIC.mass(9.999));
        assertEquals("0.1 g", UnitSystem.METRIC.mass(0.09999));
        assertEquals("0 g", UnitSystem.METRIC.mass(0));
    }

    @Test
    void refusesAnUnknownSystem() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> UnitSystem.named("imperial"))
                .getMessage()
                .contains("metric or us"));
        assertEquals(UnitSystem.US, UnitSystem.named(" us "));
    }
}
