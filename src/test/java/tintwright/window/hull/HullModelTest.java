package tintwright.window.hull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.colour.Geometry;
import tintwright.colour.Viewing;
import tintwright.window.Desk;
import tintwright.window.Desks;

/** Readings of the hull without a window. */
class HullModelTest {
    private final Desk desk = Desks.demo(Clock.systemUTC());
    private final HullModel hull = desk.hull();

    private HullModel.Hull now() {
        return hull.hullProperty().get();
    }

    @Test
    void aTypedPlaceIsMatchedAtOnceAndUndone() {
        assertTrue(hull.newPlace("transom", "55,5", "\u22122.0", "6.5", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
        assertEquals("transom", now().place());
        assertEquals(
                55.5,
                desk.plan().planProperty().get().target().orElseThrow().colour().lightness(),
                1e-9);
        desk.shell().undo();
        assertEquals("port bow", now().place());
    }

    @Test
    void aReadingFarFromTheOthersIsNamedAndLeftOut() {
        assertTrue(hull.newPlace("transom", "55.5", "-2.0", "6.5", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
        assertTrue(hull.type("55.3", "-2.1", "6.4", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
        assertTrue(hull.type("55.6", "-1.9", "6.6", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
        assertTrue(hull.type("70", "5", "20", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
        assertFalse(now().lines().get(3).counts());
        assertTrue(now().doubt().contains("Reading 4") && now().doubt().contains("lighter"), now().doubt());
        assertEquals(55.47, now().mean().orElseThrow().lightness(), 0.01);
        hull.remove(3);
        assertEquals("", now().doubt());
    }

    @Test
    void twoReadingsFarApartAskForAThird() {
        assertTrue(hull.newPlace("transom", "55.5", "-2.0", "6.5", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
        assertTrue(hull.type("63.3", "-2.1", "6.4", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
        assertTrue(now().doubt().contains("third time"), now().doubt());
        assertTrue(hull.type("63.4", "-2.1", "6.5", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
        assertFalse(now().doubt().contains("third time"), now().doubt());
    }

    @Test
    void whatCannotBeAColourIsRefusedInOneSentence() {
        int before = now().lines().size();
        for (String[] typed : new String[][] {{"pale", "0", "0"}, {"620", "0", "0"}, {"60", "-300", "0"}}) {
            assertFalse(hull.type(typed[0], typed[1], typed[2], Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
            assertFalse(hull.problemProperty(HullModel.Where.TYPED).get().isBlank());
            assertFalse(hull.problemProperty(HullModel.Where.TYPED).get().contains("Exception"));
        }
        assertEquals(before, now().lines().size());
    }

    @Test
    void aColourUnderAnotherLightThanTheRestIsRefused() {
        assertTrue(hull.newPlace("transom", "55.5", "-2.0", "6.5", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
        assertFalse(hull.type("55.3", "-2.1", "6.4", Viewing.D50_2, Geometry.SPECULAR_EXCLUDED));
        assertTrue(
                hull.problemProperty(HullModel.Where.TYPED).get().contains("light"),
                hull.problemProperty(HullModel.Where.TYPED).get());
    }

    @Test
    void anInstrumentsFileWithTwoSamplesBecomesTwoPlaces(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("readings.csv");
        StringBuilder csv = new StringBuilder("SAMPLE_NAME");
        for (int nm = 400; nm <= 700; nm += 10) {
            csv.append(",SPECTRAL_NM_").append(nm);
        }
        for (String name : new String[] {"deck", "cabin side"}) {
            csv.append("\n").append(name);
            csv.append(",0.55".repeat(31));
        }
        Files.writeString(file, csv.append("\n"));
        hull.open(file, Viewing.D65_10, Geometry.SPECULAR_INCLUDED);
        assertEquals("", hull.problemProperty(HullModel.Where.FILE).get());
        assertEquals(
                "2 places read: deck, cabin side.",
                desk.shell().noticeProperty().get());
        assertEquals(4, desk.job().now().places().size());
        assertEquals("deck", now().place());
        // A reflectance of 0.55 at every wavelength: L* = 116 * cbrt(0.55) - 16.
        assertEquals(79.04, now().mean().orElseThrow().lightness(), 0.01);
    }

    @Test
    void aFileThatIsNoReadingIsNamedAndNothingIsLost(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("holiday.txt");
        Files.writeString(file, "nothing of the kind");
        hull.open(file, Viewing.D65_10, Geometry.SPECULAR_INCLUDED);
        assertTrue(
                hull.problemProperty(HullModel.Where.FILE).get().contains("holiday.txt"),
                hull.problemProperty(HullModel.Where.FILE).get());
        assertEquals("", hull.problemProperty(HullModel.Where.TYPED).get(), "said where the file was opened");
        assertEquals(2, desk.job().now().places().size());
    }

    @Test
    void aPlaceOfTheSameNameIsTheSamePlaceHoweverItIsTyped() {
        assertTrue(hull.newPlace("transom", "55.5", "-2.0", "6.5", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
        desk.plan().place(0);
        int places = desk.job().now().places().size();
        assertTrue(hull.newPlace("  Transom ", "55.3", "-2.1", "6.4", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
        assertEquals(places, desk.job().now().places().size());
        assertEquals("transom", now().place());
        assertEquals(2, now().lines().size());
        assertTrue(
                desk.shell().noticeProperty().get().contains("2 readings of transom"),
                desk.shell().noticeProperty().get());
        desk.shell().undo();
        assertEquals("port bow", now().place(), "one deed, one undo");
    }

    @Test
    void theOnlyReadingStaysAndThatIsSaidBesideIt() {
        assertTrue(hull.newPlace("transom", "55.5", "-2.0", "6.5", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
        hull.remove(0);
        assertTrue(hull.problemProperty(HullModel.Where.LINES).get().contains("only reading"));
        assertTrue(hull.type("55.3", "-2.1", "6.4", Viewing.D65_10, Geometry.SPECULAR_EXCLUDED));
        assertEquals("", hull.problemProperty(HullModel.Where.LINES).get(), "mended");
    }

    @Test
    void aSampleOfAFileThatBearsTheNameOfAPlaceBelongsToIt(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("two.csv");
        StringBuilder csv = new StringBuilder("SAMPLE_NAME");
        for (int nm = 400; nm <= 700; nm += 10) {
            csv.append(",SPECTRAL_NM_").append(nm);
        }
        for (String name : new String[] {"Deck", "deck ", "cabin side"}) {
            csv.append("\n").append(name).append(",0.55".repeat(31));
        }
        Files.writeString(file, csv.append("\n"));
        hull.open(file, Viewing.D65_10, Geometry.SPECULAR_INCLUDED);
        assertEquals(4, desk.job().now().places().size());
        assertEquals(2, now().lines().size(), "both of the deck");
        hull.open(file, Viewing.D65_10, Geometry.SPECULAR_INCLUDED);
        assertEquals(4, desk.job().now().places().size(), "the places are there already");
        assertEquals(4, now().lines().size());
    }
}
