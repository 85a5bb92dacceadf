package tintwright.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.MatchBench;
import tintwright.bench.PhotoBench;
import tintwright.bench.SheetBench;
import tintwright.bench.ShelfBench;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.files.Demo;
import tintwright.files.ShelfFile;
import tintwright.files.TargetFile;
import tintwright.match.Aim;
import tintwright.match.Target;
import tintwright.match.Wish;
import tintwright.reading.ColourReading;
import tintwright.reading.PlaceReadings;
import tintwright.reading.photo.SpotReading;
import tintwright.reading.photo.file.Progress;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.shelf.Chip;
import tintwright.shelf.Shelf;
import tintwright.shelf.Tint;
import tintwright.shelf.knowledge.Knowledge;

class DemoSwatchesTest {
    private static final Path BOAT = Path.of("swatches/tarrowmere");

    @Test
    void theFilesAreWhatTheGeneratorMakes(@TempDir Path folder) throws Exception {
        DemoGenerator.write(folder);
        for (String name : List.of(
                "swatches/tarrowmere/on-sheet.json",
                "swatches/tarrowmere/stern-quarter.json",
                MeteredShop.SHELF_FILE,
                MeteredShop.BOW_FILE,
                "src/test/resources/tintwright/demo/contradictory-chip.json")) {
            assertEquals(Files.readString(folder.resolve(name)), Files.readString(Path.of(name)), name);
        }
        // Another machine's arithmetic, or another maker of JPEGs, may differ in the last bit of a picture.
        ColourReading again = hull(TargetFile.read(folder.resolve("swatches/tarrowmere/port-bow.json")));
        assertEquals(0, Ciede2000.between(again.lab(), hull(bow()).lab()), 0.05);
        Shelf made = ShelfFile.read(folder.resolve("swatches/shelf.json"));
        assertEquals(made.items(), Demo.shelf().items());
        assertEquals(
                made.chips().stream().map(Chip::id).toList(),
                Demo.shelf().chips().stream().map(Chip::id).toList());
    }

    /** The photo that is shipped, read anew: what place and shelf say of it, and what nobody at the bench can know. */
    @Test
    void thePhotoReadsAsPlaceAndShelfSay() throws Exception {
        Path photo = BOAT.resolve(DemoPhoto.NAME);
        assertTrue(Files.size(photo) < 600_000, Files.size(photo) + " bytes");
        SheetContents contents = SheetBench.contents(BOAT.resolve("on-sheet.json"));
        SheetBench.Read read =
                SheetBench.read(photo, contents, Optional.of(Demo.shelf()), PhotoBench.VIEWING, Progress.NONE);
        assertEquals(List.of(), read.readings().flags());
        assertEquals(4, read.found().codes());
        assertEquals(0, Ciede2000.between(read.hull().lab(), hull(bow()).lab()), 1e-6);
        assertEquals(Demo.shelf(), read.onto(Demo.shelf()), "looking once more changes nothing");
        SpotReading hull = read.readings().spot(SheetContents.HULL).orElseThrow();
        Lab truth = DemoGenerator.hiddenPhoto().truth();
        double error = Ciede2000.between(truth, hull.reading().lab());
        assertTrue(error < hull.goodTo(), error + " off, " + hull.inWords());
        assertTrue(error < Ciede2000.between(truth, read.hull().lab()), "the chips have made it no better");
    }

    /** Hull and chips stood in one photo: what it is off by is off in hull and mix alike. */
    @Test
    void whatThePhotoIsOffByCancelsInTheRecipe() {
        MatchBench bench = MatchBench.of(Demo.shelf());
        Target together = Aim.of(bow()).through(bench.knowledge()).target();
        Target alone = new Target(
                together.name(), together.colour(), together.covariance(), together.geometry(), together.reflectance());
        double joint = bench.match(Wish.of(together, 100, 0.01)).best().within90();
        double apart = bench.match(Wish.of(alone, 100, 0.01)).best().within90();
        assertTrue(joint * 1.5 < apart, joint + " together, " + apart + " apart");
    }

    @Test
    void aWhiteAndFourTintsKnownByWeighedChipsOnly() {
        Shelf shelf = Demo.shelf();
        assertEquals(1, shelf.bases().size());
        assertEquals(4, shelf.tints().size());
        assertEquals(7, shelf.chips().size());
        for (Tint tint : shelf.tints()) {
            assertTrue(shelf.chips().stream().anyMatch(chip -> chip.parts().grams(tint.id()) > 0), tint.name());
        }
        for (Chip chip : shelf.chips()) {
            ColourReading seen = (ColourReading) chip.readings().get(0);
            assertEquals(DemoPhoto.NAME, seen.photo().orElseThrow().photo());
        }
        assertTrue(shelf.leftovers().get(0).readings().isEmpty());
    }

    /** Whoever tries the demo years from now must not be told off about tubs that were never theirs. */
    @Test
    void theDemoNeverCallsItsOwnTubsStale() {
        for (LocalDate day : List.of(LocalDate.of(2026, 3, 14), LocalDate.of(2040, 1, 1))) {
            assertEquals(List.of(), ShelfBench.toBuy(Demo.shelf(), day), "on " + day);
            for (ShelfBench.Line line : ShelfBench.look(Knowledge.of(Demo.shelf()), day)) {
                assertEquals(List.of(), line.warnings(), line.item().name() + " on " + day);
            }
        }
    }

    @Test
    void thePlacesAreOfClearlyDifferentColour() {
        Lab bow = hull(bow()).lab();
        Lab stern =
                Demo.places().get(1).readings().get(0).colour(Viewing.D65_10).orElseThrow();
        assertTrue(bow.lightness() < stern.lightness() - 10, bow + " and " + stern);
        assertTrue(bow.a() < -5 && stern.b() > bow.b() + 8, bow + " and " + stern);
    }

    @Test
    void alittleBlackTakesTheWhiteDownAsBlackDoes() {
        Chip chip = MeteredShop.shelf().chips().stream()
                .filter(c -> c.id().equals("soot-black 0.3 %"))
                .findFirst()
                .orElseThrow();
        double lightness =
                chip.readings().get(0).colour(Viewing.D65_10).orElseThrow().lightness();
        assertTrue(lightness > 74 && lightness < 81, "L* " + lightness);
    }

    private static PlaceReadings bow() {
        return Demo.places().get(0);
    }

    private static ColourReading hull(PlaceReadings place) {
        return (ColourReading) place.readings().get(0);
    }
}
