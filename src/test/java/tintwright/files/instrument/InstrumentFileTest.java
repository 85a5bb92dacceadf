package tintwright.files.instrument;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.files.FileProblem;
import tintwright.files.JsonPlace;
import tintwright.files.ReadingShape;
import tintwright.reading.ColourReading;
import tintwright.reading.Conditions;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.NamedReading;
import tintwright.reading.SpectralReading;

class InstrumentFileTest {
    private static final Path FOLDER = Path.of("src/test/resources/tintwright/files");
    private static final Conditions GLOSS_LEFT_OUT =
            new Conditions(Optional.empty(), Optional.of(Geometry.SPECULAR_EXCLUDED), FilmState.CURED, 0.003, 0.5);

    private static List<NamedReading> read(String name, Conditions unsaid) throws FileProblem {
        return InstrumentFile.read(FOLDER.resolve(name), unsaid);
    }

    @Test
    void readsPercentWithADecimalComma() throws FileProblem {
        List<NamedReading> readings = read("percent.csv", Conditions.AS_IN_THE_FILE);
        assertEquals(
                List.of("Chip Ä", "Soot 2 %"),
                readings.stream().map(NamedReading::name).toList());
        SpectralReading first =
                assertInstanceOf(SpectralReading.class, readings.get(0).reading());
        assertEquals(new Grid(400, 20, 4), first.reflectance().grid());
        assertArrayEquals(
                new double[] {0.425, 0.71, 0.8025, 0.81}, first.reflectance().toArray(), 1e-12);
        assertEquals(Geometry.SPECULAR_INCLUDED, first.geometry());
    }

    @Test
    void readsColoursWithTheirLightFilmAndNoise() throws FileProblem {
        List<NamedReading> readings = read("colours.csv", Conditions.AS_IN_THE_FILE);
        assertEquals("bow, port", readings.get(0).name());
        assertEquals(
                new ColourReading(
                        new Lab(60, -3.1, 10.2, Viewing.D65_10),
                        Covariance.same(0.4),
                        Geometry.SPECULAR_EXCLUDED,
                        FilmState.WET,
                        Optional.empty()),
                readings.get(1).reading());
    }

    @Test
    void readsKeywordTextWithWavelengthsAsValues() throws FileProblem {
        List<NamedReading> readings = read("pairs.txt", Conditions.AS_IN_THE_FILE);
        SpectralReading stern =
                assertInstanceOf(SpectralReading.class, readings.get(1).reading());
        assertEquals("stern", readings.get(1).name());
        assertEquals(new Grid(400, 10, 3), stern.reflectance().grid());
        assertArrayEquals(
                new double[] {0.4011, 0.4522, 0.481}, stern.reflectance().toArray());
        assertEquals(Geometry.SPECULAR_EXCLUDED, stern.geometry());
    }

    @Test
    void readsKeywordTextWithColours() throws FileProblem {
        ColourReading reading = assertInstanceOf(
                ColourReading.class, read("lab.txt", GLOSS_LEFT_OUT).get(0).reading());
        assertEquals(new Lab(62.1, -3.4, 11, Viewing.D50_2), reading.lab());
        assertEquals(Covariance.same(0.5), reading.covariance());
    }

    @Test
    void readsColourExchangeFiles() throws FileProblem {
        List<NamedReading> readings = read("exchange.cxf", Conditions.AS_IN_THE_FILE);
        assertEquals(
                List.of("port bow", "stern"),
                readings.stream().map(NamedReading::name).toList());
        SpectralReading bow =
                assertInstanceOf(SpectralReading.class, readings.get(0).reading());
        assertArrayEquals(
                new double[] {0.2871, 0.3012, 0.3055, 0.31}, bow.reflectance().toArray());
        ColourReading stern =
                assertInstanceOf(ColourReading.class, readings.get(1).reading());
        assertEquals(new Lab(80.5, 1.25, 14, Viewing.D65_10), stern.lab());
    }

    @Test
    void saysWhatIsWrongWhere() throws Exception {
        said("x: the file is empty; export the measurements again", "# nothing\n");
        said("x: no sample stands in it; export the measurements again", "name,400,410\n");
        said(
                "x: no readings were found among the columns a, c; name them by wavelength (400, 410, ... 700) or L, a, b",
                "a,c\n1,2\n");
        said(
                "x, line 2, column \"410\": must be a number such as 0.25, was \"dark\"; correct it there",
                "name,400,410\nk,0.5,dark\n");
        said(
                "x, line 2, column \"410\": reflectance must be -0.02 to 1.5, was -0.5; correct it there",
                "name,400,410\nk,0.5,-0.5\n");
        said(
                "x, line 3: expected 3 cells as in the headings, got 2; correct that line",
                "name,400,410\nk,0.5,0.5\nm,0.5\n");
        said(
                "x: the wavelengths must rise in equal steps, but after 410 nm comes 430 nm; put the columns in order",
                "name,400,410,430\nk,1,1,1\n");
        said("x, line 2: L* must be 0 to 100.5, was 130.0; correct it there", "L,a,b,light,observer\n130,0,0,D65,10\n");
        said(
                "x, line 7: L* must be 0 to 100.5, was 100.6; correct it there",
                "WEIGHTING_FUNCTION \"ILLUMINANT, D50\"\nWEIGHTING_FUNCTION \"OBSERVER, 2 degree\"\nBEGIN_DATA_FORMAT\nLAB_L LAB_A LAB_B\nEND_DATA_FORMAT\nBEGIN_DATA\n100.6 0 0\nEND_DATA\n");
        said(
                "x, line 1, object \"k\": L* must be 0 to 100.5, was -1.0; correct it there",
                "<CxF><Object Name=\"k\"><ColorCIELab><L>-1</L><A>0</A><B>0</B></ColorCIELab></Object></CxF>");
        said("x: the light and observer of L*, a*, b* are not said; add columns light and observer", "L,a,b\n50,0,0\n");
        said(
                "x, line 2: light and observer must be such as D65 and 10, were sun and 10; correct them there",
                "L,a,b,light,observer\n50,0,0,sun,10\n");
        said(
                "x: END_DATA is missing, so the file was cut short; export it again",
                "BEGIN_DATA_FORMAT\nLAB_L LAB_A LAB_B\nEND_DATA_FORMAT\nBEGIN_DATA\n50 0 0\n");
        said(
                "x, line 5: expected 3 values as in the data format, got 2; correct that line",
                "BEGIN_DATA_FORMAT\nLAB_L LAB_A LAB_B\nEND_DATA_FORMAT\nBEGIN_DATA\n50 0\nEND_DATA\n");
        said("x: XML of another kind (html); export the measurements as CxF3, CGATS or CSV", "<html></html>");
        said("x, line 1: this is not whole XML; export it again", "<CxF><Object>");
    }

    private static void said(String sentence, String text) {
        assertEquals(
                sentence,
                assertThrows(FileProblem.class, () -> InstrumentFile.parse("x", text, GLOSS_LEFT_OUT), text)
                        .getMessage());
    }

    /** A reflectance of 1.4 at every wavelength is a lightness of 114, and no paint. */
    @Test
    void aSpectrumLighterThanAnyPaintIsRefusedWhereItIsRead() {
        String waves = IntStream.rangeClosed(40, 70).mapToObj(i -> i + "0").collect(Collectors.joining(","));
        String values = "1.4,".repeat(30) + "1.4";
        FileProblem told = assertThrows(
                FileProblem.class, () -> InstrumentFile.parse("x", waves + "\n" + values + "\n", GLOSS_LEFT_OUT));
        assertTrue(told.getMessage().startsWith("x, line 2: L* must be 0 to 100.5, was 11"), told.getMessage());
        String json = "{\"spectrum\": {\"firstNm\": 400, \"stepNm\": 10, \"values\": [" + values
                + "]}, \"geometry\": \"specular-excluded\", \"film\": \"cured\"}";
        told = assertThrows(FileProblem.class, () -> ReadingShape.from(JsonPlace.parse("x", json)));
        assertTrue(told.getMessage().contains("L* must be 0 to 100.5, was 11"), told.getMessage());
    }

    @Test
    void asksForTheGeometryWhereNobodySaysIt() {
        assertEquals(
                "x, line 2: whether the gloss is in the reading is not said; add a column geometry with"
                        + " specular-included or specular-excluded",
                assertThrows(
                                FileProblem.class,
                                () -> InstrumentFile.parse("x", "400,410\n0.5,0.5\n", Conditions.AS_IN_THE_FILE))
                        .getMessage());
    }

    @Test
    void fetchesNothingThatAnExchangeFileNames(@TempDir Path folder) throws Exception {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "0.1 0.2");
        String text = "<!DOCTYPE CxF [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]><CxF><Object Name=\"k\">"
                + "<ReflectanceSpectrum StartWL=\"400\">&e;</ReflectanceSpectrum></Object></CxF>";
        FileProblem problem = assertThrows(FileProblem.class, () -> InstrumentFile.parse("x", text, GLOSS_LEFT_OUT));
        assertFalse(problem.getMessage().contains("0.1"), problem.getMessage());
    }
}
