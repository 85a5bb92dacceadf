package tintwright.bench.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tintwright.demo.MeteredShop;
import tintwright.fill.Conditions;
import tintwright.fill.GritLadder;
import tintwright.fill.Tools;
import tintwright.fill.catalyst.CatalystMeasure;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairKind;
import tintwright.fill.repair.RepairLine;

/** What belongs to a place of a boat, and what to the shop. */
class JobTest {
    private static final RepairLine GOUGE = new RepairLine(
            "gouge",
            RepairKind.GOUGE.make(Map.of("length", 40.0, "width", 3.0, "depth", 0.4), OptionalDouble.empty()),
            Lie.VERTICAL,
            1);

    private static Job job(int place) {
        return new Job(
                "Tarrowmere",
                MeteredShop.places(),
                place,
                MeteredShop.shelf(),
                150,
                0.01,
                Set.of(),
                FillDraft.NONE,
                Optional.empty(),
                List.of());
    }

    private static Job gouged(int place) {
        return job(place)
                .filling(FillDraft.NONE
                        .plus(GOUGE)
                        .at(new Conditions(24, OptionalDouble.empty()))
                        .knowing(new FillFacts(
                                OptionalDouble.of(0.4),
                                OptionalDouble.of(0.6),
                                OptionalDouble.of(8),
                                OptionalDouble.of(90),
                                Optional.of(GritLadder.Surface.values()[0]),
                                Tools.USUAL.with(CatalystMeasure.dropper(24)),
                                true,
                                FillFacts.NONE.seal())));
    }

    @Test
    void anotherPlaceStartsCleanInTheSameShop() {
        Job port = gouged(0);
        FillDraft stern = port.at(1).fill();
        assertEquals(List.of(), stern.lines());
        assertEquals(OptionalDouble.empty(), stern.facts().oldFilm(), "measured at the other place");
        assertEquals(OptionalDouble.empty(), stern.facts().hullMm());
        assertEquals(Optional.empty(), stern.facts().surface());
        assertEquals(24, stern.weather().hullCelsius());
        assertEquals(OptionalDouble.of(90), stern.facts().paste());
        assertEquals(port.fill().facts().tools(), stern.facts().tools());
    }

    @Test
    void theHolesOfAPlaceComeBackWithItIntoTheShopAsItIsByThen() {
        Job port = gouged(0);
        Job back = port.at(1)
                .filling(port.at(1).fill().at(new Conditions(17, OptionalDouble.empty())))
                .at(0);
        assertEquals(List.of(GOUGE), back.fill().lines());
        assertEquals(OptionalDouble.of(0.6), back.fill().facts().oldFilm());
        assertEquals(17, back.fill().weather().hullCelsius(), "the day is one");
        assertEquals(List.of(), back.at(1).fill().lines());
        assertEquals(List.of(GOUGE), back.at(1).at(0).fill().lines());
    }

    @Test
    void aPlaceThatIsReadLaterIsAnotherPlace() {
        Job one = gouged(0).withPlaces("Tarrowmere", MeteredShop.places().subList(0, 1), 0);
        assertEquals(List.of(GOUGE), one.fill().lines());
        Job two = one.withPlaces("Tarrowmere", MeteredShop.places(), 1);
        assertEquals(List.of(), two.fill().lines());
        assertEquals(List.of(GOUGE), two.at(0).fill().lines());
    }

    @Test
    void holesMeasuredBeforeAnyPlaceWasReadGoWithTheFirst() {
        Job before = gouged(0).withPlaces("Tarrowmere", List.of(), -1);
        Job typed = before.filling(FillDraft.NONE.plus(GOUGE));
        Job first = typed.withPlaces("Tarrowmere", MeteredShop.places().subList(0, 1), 0);
        assertEquals(List.of(GOUGE), first.fill().lines());
    }

    @Test
    void anotherBoatHasNoHoleOfAnyPlaceOfTheLast() {
        Job other = gouged(0).at(1).withPlaces("Dunnelquay", MeteredShop.places(), 0);
        assertEquals(List.of(), other.fill().lines());
        assertTrue(other.fill().elsewhere().isEmpty());
    }
}
