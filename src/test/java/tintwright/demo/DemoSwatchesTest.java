package tintwright.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.files.Demo;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Chip;
import tintwright.shelf.Shelf;
import tintwright.shelf.Tint;

class DemoSwatchesTest {
    @Test
    void theFilesAreWhatTheGeneratorMakes(@TempDir Path folder) throws Exception {
        DemoGenerator.write(folder);
        for (String name : List.of(
                "swatches/shelf.json",
                "swatches/tarrowmere/port-bow.json",
                "swatches/tarrowmere/stern-quarter.json",
                "src/test/resources/tintwright/demo/contradictory-chip.json")) {
            assertEquals(Files.readString(folder.resolve(name)), Files.readString(Path.of(name)), name);
        }
    }

    @Test
    void eachTintHasTwoChipsOfKnownParts() {
        Shelf shelf = Demo.shelf();
        assertEquals(1, shelf.bases().size());
        assertTrue(shelf.tints().size() >= 7);
        for (Tint tint : shelf.tints()) {
            assertEquals(
                    2,
                    shelf.chips().stream()
                            .filter(c -> c.parts().grams(tint.id()) > 0)
                            .count(),
                    tint.name());
        }
        assertEquals(1, shelf.leftovers().size());
    }

    @Test
    void thePlacesAreOfClearlyDifferentColour() {
        List<PlaceReadings> places = Demo.places();
        Lab bow = colour(places.get(0));
        Lab stern = colour(places.get(1));
        assertTrue(bow.lightness() < stern.lightness() - 10, bow + " and " + stern);
        assertTrue(bow.a() < -5 && stern.b() > bow.b() + 8, bow + " and " + stern);
    }

    @Test
    void alittleBlackTakesTheWhiteDownAsBlackDoes() {
        Chip chip = Demo.shelf().chips().stream()
                .filter(c -> c.id().equals("soot-black 0.3 %"))
                .findFirst()
                .orElseThrow();
        double lightness =
                chip.readings().get(0).colour(Viewing.D65_10).orElseThrow().lightness();
        assertTrue(lightness > 74 && lightness < 81, "L* " + lightness);
    }

    private static Lab colour(PlaceReadings place) {
        return place.readings().get(0).colour(Viewing.D65_10).orElseThrow();
    }
}
