package tintwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tintwright.colour.Ciede2000;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.demo.MeteredShop;
import tintwright.fill.Materials;
import tintwright.optics.Film;
import tintwright.optics.Hiding;
import tintwright.optics.Surface;
import tintwright.shelf.Base;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;
import tintwright.shelf.knowledge.Knowledge;

class FillColourTest {
    private static Knowledge knowledge;

    @BeforeAll
    static void learn() {
        knowledge = Knowledge.of(MeteredShop.shelf());
    }

    private static Parts whiteWith(double blackGrams) {
        Map<String, Double> grams = new LinkedHashMap<>();
        grams.put("plain-white", 100.0);
        grams.put("soot-black", blackGrams);
        return Parts.of(grams);
    }

    private static double against(Parts parts) {
        return FillColour.of(knowledge, parts).hidingAgainstBase().orElseThrow();
    }

    @Test
    void theBareBaseHidesLikeItself() {
        assertEquals(1, against(whiteWith(0)), 1e-12);
    }

    @Test
    void aDarkerMixHidesInAThinnerFilm() {
        double before = 1;
        for (double black : new double[] {0.02, 0.1, 0.5, 2}) {
            double now = against(whiteWith(black));
            assertTrue(now < before, black + " g of black: " + now + " after " + before);
            before = now;
        }
    }

    /** Black and white card under the film differ by 1 at the hiding film: put back into the optics by hand. */
    @Test
    void theFilmItNamesIsTheOneThatJustHides() {
        Parts parts = whiteWith(0.3);
        double ratio = against(parts);
        // The base's own film, in the optics' unit, by halving the difference over the two cards.
        double low = 0;
        double high = 1000;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (difference(whiteWith(0), middle) > 1) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertEquals(1, difference(parts, high * ratio), 1e-6);
    }

    private static double difference(Parts parts, double thickness) {
        double total = parts.total();
        double[] k = new double[31];
        double[] s = new double[31];
        parts.grams().forEach((id, grams) -> {
            int row = knowledge.ids().indexOf(id);
            for (int w = 0; w < 31; w++) {
                k[w] += grams / total * knowledge.absorption(knowledge.shares(parts))[row][w];
                s[w] += grams / total * knowledge.scattering(knowledge.shares(parts))[row][w];
            }
        });
        Film film = new Film(Grid.INSIDE, k, s, Surface.RESIN);
        return Ciede2000.between(
                Lab.of(film.over(Hiding.BLACK_CARD, thickness, Geometry.SPECULAR_INCLUDED), Viewing.D65_10),
                Lab.of(film.over(Hiding.WHITE_CARD, thickness, Geometry.SPECULAR_INCLUDED), Viewing.D65_10));
    }

    @Test
    void densityIsByVolumeWaxIsTheBasesAndPasteIsTheShelfs() {
        Shelf shelf = knowledge.shelf();
        FillColour colour = FillColour.of(knowledge, whiteWith(10));
        Materials materials = colour.materials(OptionalDouble.of(0.5));
        double byHand = 110
                / (100 / shelf.base("plain-white").orElseThrow().density()
                        + 10 / shelf.tint("soot-black").orElseThrow().density());
        assertEquals(byHand, materials.densities().gelCoat(), 1e-9);
        assertEquals(shelf.pastes().get(0).density(), materials.densities().paste());
        assertEquals(0.5 * against(whiteWith(10)), materials.hidingFilmMm().orElseThrow(), 1e-12);
        assertEquals(false, materials.waxed());
        Base base = shelf.bases().get(0);
        Shelf waxed = shelf.with(new Base(base.id(), base.name(), base.density(), true, base.stock()));
        assertTrue(FillColour.of(Knowledge.of(waxed), whiteWith(1))
                .materials(OptionalDouble.empty())
                .waxed());
        assertEquals(
                Optional.of("plain white"),
                colour.recipe().stream().map(part -> part.name()).findFirst());
    }

    @Test
    void withoutTheBasesFilmNothingIsMadeUp() {
        assertTrue(FillColour.of(knowledge, whiteWith(1))
                .materials(OptionalDouble.empty())
                .hidingFilmMm()
                .isEmpty());
    }

    @Test
    void refusesAPartThatIsNotOnTheShelf() {
        assertTrue(assertThrows(
                        IllegalArgumentException.class,
                        () -> FillColour.of(knowledge, Parts.of(Map.of("plain-white", 9.0, "chalk", 1.0))))
                .getMessage()
                .contains("\"chalk\""));
    }
}
