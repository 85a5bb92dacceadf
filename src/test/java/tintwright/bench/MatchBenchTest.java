package tintwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.demo.MeteredShop;
import tintwright.match.Aim;
import tintwright.match.Recipe;
import tintwright.match.Wish;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.shelf.Parts;
import tintwright.shelf.PigmentFamily;

class MatchBenchTest {
    private static final MatchBench BENCH = MatchBench.of(MeteredShop.shelf());

    @Test
    void theOrderOfWeighingIsBaseThenBlackOrWhatDarkensMost() {
        for (PlaceReadings place : MeteredShop.places()) {
            for (Recipe recipe :
                    BENCH.match(Wish.of(Aim.of(place).target(), 100, 0.01)).recipes()) {
                List<Weighing> order = BENCH.order(recipe, 0.01);
                assertEquals(recipe.weighed().grams().keySet().size(), order.size());
                assertFalse(order.get(0).tint());
                if (order.stream().anyMatch(each -> isBlack(each.id()))) {
                    assertTrue(isBlack(order.get(1).id()), place.place() + " " + order);
                    continue;
                }
                double first = lightnessWithout(recipe.weighed(), order.get(1).id());
                for (Weighing later : order.subList(2, order.size())) {
                    assertTrue(first >= lightnessWithout(recipe.weighed(), later.id()), place.place() + " " + order);
                }
            }
        }
    }

    private static boolean isBlack(String id) {
        return BENCH.knowledge()
                .shelf()
                .tint(id)
                .filter(tint -> tint.family() == PigmentFamily.CARBON_BLACK)
                .isPresent();
    }

    private static double lightnessWithout(Parts parts, String id) {
        Map<String, Double> rest = new LinkedHashMap<>(parts.grams());
        rest.remove(id);
        return BENCH.knowledge()
                .colour(Parts.of(rest), Viewing.D65_10, Geometry.SPECULAR_INCLUDED)
                .lightness();
    }

    private static Reading colour(double lightness, FilmState film) {
        return new ColourReading(
                new Lab(lightness, -9, 3, Viewing.D65_10),
                Covariance.same(0.3),
                Geometry.SPECULAR_EXCLUDED,
                film,
                Optional.empty());
    }

    @Test
    void saysWhichReadingOfThePlaceItLeftOut() {
        Aim aim = Aim.of(new PlaceReadings(
                "",
                "bow",
                List.of(colour(60, FilmState.CURED), colour(60.2, FilmState.CURED), colour(52, FilmState.CURED)),
                ""));
        assertEquals(
                List.of("Reading 3 of 3 lies far from the others and was left out; read that spot again."),
                aim.remarks());
        assertEquals(60.1, aim.target().colour().lightness(), 1e-9);
    }

    @Test
    void aHullIsNotReadWet() {
        PlaceReadings wet = new PlaceReadings("", "bow", List.of(colour(60, FilmState.WET)), "");
        assertThrows(IllegalArgumentException.class, () -> Aim.of(wet));
    }
}
