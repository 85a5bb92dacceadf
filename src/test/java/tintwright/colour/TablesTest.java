package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tintwright.Reference;

/** The tables that travel with the program, against the published ones and against each other. */
class TablesTest {
    /** Sums of our own columns, taken when each value agreed with the published table: a guard against slips. */
    private static final Map<String, Double> SUMS = Map.of(
            "A", 9561.7213, "D50", 6959.526, "D65", 7092.7234, "FL2", 594.5, "FL11", 594.08, "FL12", 566.76, "LED-B1",
            641.7, "LED-B3", 631.14, "LED-B5", 655.25);

    /** What is worked out and not tabulated. */
    private static final Set<String> WORKED_OUT = Set.of("D75");

    @Test
    void everyColourMatchingValueIsThePublishedOne() {
        sameAsPublished("cie/cie1931_2deg_cmf_1nm.csv", Observer.CIE_1931_2_DEGREE);
        sameAsPublished("cie/cie1964_10deg_cmf_1nm.csv", Observer.CIE_1964_10_DEGREE);
    }

    private static void sameAsPublished(String name, Observer observer) {
        List<String[]> rows = Reference.rows(name);
        assertEquals(471, rows.size());
        for (String[] row : rows) {
            for (int axis = 0; axis < 3; axis++) {
                assertEquals(
                        Double.parseDouble(row[1 + axis]),
                        observer.matching(axis, Integer.parseInt(row[0])),
                        0,
                        observer + " axis " + axis + " at " + row[0] + " nm");
            }
        }
    }

    @Test
    void everyPowerIsThePublishedOne() {
        List<Map<String, String>> rows = Reference.named("cie/illuminants_5nm_380_780.csv");
        assertEquals(81, rows.size());
        for (Map<String, String> row : rows) {
            String nm = row.get("wavelength_nm");
            for (String light : SUMS.keySet()) {
                assertEquals(
                        Double.parseDouble(row.get(light)),
                        Illuminant.named(light).power(Double.parseDouble(nm)),
                        0,
                        light + " at " + nm + " nm");
            }
        }
    }

    /** Sums over 360 to 830 nm every 1 nm, CIE 15:2004 (from memory); all are near 106.86 / 116.66 by design. */
    @Test
    void columnsOfTheObserversSumToThePublishedSums() {
        double[][] published = {{106.865469, 106.856917, 106.892251}, {116.648519, 116.661877, 116.673980}};
        for (Observer observer : Observer.values()) {
            for (int axis = 0; axis < 3; axis++) {
                double sum = 0;
                for (int nm = 360; nm <= 830; nm++) {
                    sum += observer.matching(axis, nm);
                }
                assertEquals(published[observer.ordinal()][axis], sum, 0.000001, observer + " axis " + axis);
            }
        }
    }

    @Test
    void columnsOfTheLightsKeepTheirSums() {
        Set<String> tabulated = new HashSet<>(Illuminant.names());
        tabulated.removeAll(WORKED_OUT);
        assertEquals(SUMS.keySet(), tabulated);
        SUMS.forEach((light, published) -> {
            double sum = 0;
            for (int k = 0; k < Illuminant.TABLE.count(); k++) {
                sum += Illuminant.named(light).power(Illuminant.TABLE.nm(k));
            }
            assertEquals(published, sum, 1e-6, light);
        });
    }

    /** Every light is of one kind, and each kind stands for itself. */
    @Test
    void everyLightIsOfAKind() {
        Map<JudgedLight, Set<String>> kinds = Map.of(
                JudgedLight.DAYLIGHT, Set.of("D50", "D65", "D75"),
                JudgedLight.LAMP, Set.of("A"),
                JudgedLight.LED, Set.of("LED-B1", "LED-B3", "LED-B5"),
                JudgedLight.TUBE, Set.of("FL2", "FL11", "FL12"));
        kinds.forEach((kind, names) -> {
            names.forEach(name -> assertEquals(kind, JudgedLight.of(Illuminant.named(name)), name));
            assertEquals(kind, JudgedLight.of(kind.illuminant()));
        });
        assertEquals(
                Illuminant.names().size(),
                kinds.values().stream().mapToInt(Set::size).sum());
        assertEquals(JudgedLight.DAYLIGHT, JudgedLight.of(Illuminant.daylight(5500)));
        Map<JudgedLight, String> words = Map.of(
                JudgedLight.DAYLIGHT,
                "daylight",
                JudgedLight.LAMP,
                "lamp light",
                JudgedLight.LED,
                "LED",
                JudgedLight.TUBE,
                "fluorescent tube");
        assertEquals(words, JudgedLight.each(JudgedLight::words));
        assertEquals(
                Map.of(
                        JudgedLight.DAYLIGHT,
                        "Daylight",
                        JudgedLight.LAMP,
                        "Lamp",
                        JudgedLight.LED,
                        "LED",
                        JudgedLight.TUBE,
                        "Tube"),
                JudgedLight.each(JudgedLight::label));
        assertEquals("daylight (D50)", JudgedLight.words(Illuminant.D50));
        assertEquals(Viewing.D50_2, JudgedLight.DAYLIGHT.viewing(Viewing.D50_2), "as it was read");
        assertEquals(Viewing.of("A", 2), JudgedLight.LAMP.viewing(Viewing.D50_2), "the observer stays");
    }

    /** Whites of ASTM E308 (from memory): finer sums over a wider range, up to 0.021 from 5 nm sums. */
    @Test
    void whitesAreThoseOfThePractice() {
        white("D65", 10, 94.811, 107.304);
        white("D65", 2, 95.047, 108.883);
        white("D50", 10, 96.720, 81.427);
        white("D50", 2, 96.422, 82.521);
        white("A", 10, 111.146, 35.203);
        white("A", 2, 109.850, 35.585);
        white("FL2", 2, 99.186, 67.393);
        white("FL2", 10, 103.279, 69.027);
        white("FL11", 2, 100.962, 64.350);
        white("FL11", 10, 103.863, 65.607);
    }

    private static void white(String light, int degrees, double x, double z) {
        Xyz white = Viewing.of(light, degrees).white();
        assertEquals(x, white.x(), 0.025, light + " " + degrees + " X");
        assertEquals(100, white.y(), 0);
        assertEquals(z, white.z(), 0.025, light + " " + degrees + " Z");
    }

    /** The tables of D50 and D65 are printed to three and four decimals; the shares are rounded to three. */
    @Test
    void daylightByTemperatureIsTheTabulatedDaylight() {
        Illuminant d65 = Illuminant.daylight(Daylight.ofNominal(6500));
        Illuminant d50 = Illuminant.daylight(Daylight.ofNominal(5000));
        for (int nm = 380; nm <= 780; nm += 10) {
            assertEquals(Illuminant.D65.power(nm), d65.power(nm), 0.0006, "D65 at " + nm + " nm");
            assertEquals(Illuminant.D50.power(nm), d50.power(nm), 0.0006, "D50 at " + nm + " nm");
        }
    }

    /** At 560 nm every daylight is 100 (CIE 15:2018: there S0 is 100 and S1 and S2 are 0), to both ends of the range. */
    @Test
    void everyDaylightIsAHundredAt560() {
        for (double kelvin : new double[] {4000, 6999, 7001, 25000}) {
            assertEquals(100, Illuminant.daylight(kelvin).power(560), 1e-12);
        }
    }

    /** The two printed cubics of the chromaticity meet at 7000 K; so neither can be off alone. */
    @Test
    void coolAndHotDaylightMeet() {
        assertEquals(Daylight.chromaticityX(7000), Daylight.chromaticityX(Math.nextUp(7000.0)), 0.000001);
    }

    /** Chromaticity of D55 and D75, CIE 15:2004 table T.3 (from memory). */
    @Test
    void otherDaylightsHaveTheirPublishedWhites() {
        chromaticity(5500, 0.33243, 0.34744);
        chromaticity(7500, 0.29903, 0.31488);
    }

    /** Power of D75, CIE 15:2004 table T.1 (from memory, to the decimals that are remembered). */
    @Test
    void d75HasItsPublishedPower() {
        double[] published = {101.93, 121.20, 126.80, 116.59, 100.00};
        int[] nm = {400, 440, 480, 500, 560};
        for (int i = 0; i < nm.length; i++) {
            assertEquals(published[i], Illuminant.named("d75").power(nm[i]), 0.01, nm[i] + " nm");
        }
    }

    private static void chromaticity(double nominal, double x, double y) {
        Xyz white = new Viewing(Illuminant.daylight(Daylight.ofNominal(nominal)), Observer.CIE_1931_2_DEGREE).white();
        double sum = white.x() + white.y() + white.z();
        assertEquals(x, white.x() / sum, 0.0001, nominal + " K x");
        assertEquals(y, white.y() / sum, 0.0001, nominal + " K y");
    }

    @Test
    void aDaylightIsFoundAgainByItsName() {
        Illuminant light = Illuminant.daylight(5503.06);
        assertEquals("D5503.06K", light.name());
        assertEquals(light, Illuminant.named("d5503.06k"));
        assertEquals("D6500K", Illuminant.daylight(6500).name());
        assertEquals(Viewing.of("D6500K", 10), new Viewing(Illuminant.daylight(6500), Observer.CIE_1964_10_DEGREE));
    }

    @Test
    void aFlatSampleIsGreyOnEveryGrid() {
        for (int step : new int[] {1, 2, 4, 5, 10, 20}) {
            Grid grid = Grid.between(380, 780, step);
            double[] half = new double[grid.count()];
            java.util.Arrays.fill(half, 0.5);
            for (Viewing viewing : new Viewing[] {Viewing.D65_10, Viewing.FL11_10, Viewing.A_10}) {
                Xyz xyz = Xyz.of(Spectrum.of(grid, half), viewing);
                assertArrayEquals(
                        new double[] {
                            viewing.white().x() / 2, 50, viewing.white().z() / 2
                        },
                        new double[] {xyz.x(), xyz.y(), xyz.z()},
                        1e-12);
            }
        }
    }
}
