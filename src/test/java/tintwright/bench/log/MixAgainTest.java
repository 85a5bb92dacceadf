package tintwright.bench.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tintwright.cup.Cup;
import tintwright.cup.Deed;
import tintwright.demo.MeteredShop;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.reading.Reading;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;

/** On the invented boat and shelf. */
class MixAgainTest {
    private ShopLog log;
    private Noted<Page.Cup> cup;

    @BeforeEach
    void open() throws Exception {
        log = ShopLog.demo(Clock.systemUTC());
        cup = log.cup(log.boat("Tarrowmere"), Optional.of("bow 2"));
    }

    @AfterEach
    void close() throws Exception {
        log.close();
    }

    @Test
    void anUnchangedShelfGivesTheSamePartsAsTheScaleCanShowThem() {
        MixAgain.SameParts same =
                assertInstanceOf(MixAgain.SameParts.class, new MixAgain(log, MeteredShop.shelf()).cup(cup, 60, 0.1));
        assertEquals(60, same.parts().total(), 0.2);
        assertEquals(0.7, same.parts().grams("soot-black"), 1e-9);
        assertEquals(cup.page().parts().share("bottle-green"), same.parts().share("bottle-green"), 0.002);
        assertTrue(same.moved().orElseThrow().lighter() > 1, "the hull has faded since");
        assertTrue(
                same.remarks().get(0).startsWith("Opened after this cup: plain white"),
                same.remarks().toString());
    }

    @Test
    void aTintThatIsGoneMeansAMatchToTheColourRecordedThen() {
        Shelf without = without("bottle-green");
        MixAgain.Matched matched =
                assertInstanceOf(MixAgain.Matched.class, new MixAgain(log, without).cup(cup, 60, 0.01));
        assertTrue(
                matched.remarks().contains("There is no bottle green on the shelf any more."),
                matched.remarks().toString());
        assertEquals(0, matched.match().recipes().get(0).weighed().grams("bottle-green"));
        double recorded = cup.page()
                .readings()
                .get(0)
                .colour(matched.aim().target().colour().viewing())
                .orElseThrow()
                .lightness();
        assertEquals(recorded, matched.aim().target().colour().lightness(), 1e-9);
    }

    @Test
    void anotherTintUnderTheOldNameIsNoticed() {
        Shelf today = MeteredShop.shelf();
        Shelf renamed = today.with(today.tint("soot-black").orElseThrow().withName("lamp black"));
        MixAgain.Matched matched =
                assertInstanceOf(MixAgain.Matched.class, new MixAgain(log, renamed).cup(cup, 60, 0.01));
        assertTrue(
                matched.remarks().contains("What was soot black then is lamp black on the shelf now."),
                matched.remarks().toString());
    }

    @Test
    void followsTheHullAsItReadsToday() {
        MixAgain.Matched matched = assertInstanceOf(
                MixAgain.Matched.class, new MixAgain(log, MeteredShop.shelf()).hullToday(cup, 60, 0.01));
        double today = BoatStory.of(log, log.boat("Tarrowmere"))
                .places()
                .get(0)
                .latest()
                .orElseThrow()
                .lab()
                .lightness();
        assertEquals(today, matched.aim().target().colour().lightness(), 0.05);
        assertTrue(matched.moved().isPresent());
    }

    @Test
    void refusesWhatNoScaleOrCupCanDo() {
        MixAgain again = new MixAgain(log, MeteredShop.shelf());
        assertThrows(IllegalArgumentException.class, () -> again.cup(cup, 0, 0.01));
        assertThrows(IllegalArgumentException.class, () -> again.cup(cup, 60, 0));
    }

    @Test
    void aLeftoverInACupIsWrittenDownAsWhatIsInIt() {
        Shelf shelf = MeteredShop.shelf();
        Leftover left = shelf.leftovers().get(0);
        Parts mixed = Parts.of(Map.of(left.id(), left.parts().total() / 2, "soot-black", 0.1));
        Parts plain = WriteLog.withoutLeftovers(mixed, shelf);
        assertEquals(mixed.total(), plain.total(), 1e-9);
        assertEquals(left.parts().grams("soot-black") / 2 + 0.1, plain.grams("soot-black"), 1e-9);
        assertEquals(
                List.of(),
                plain.grams().keySet().stream()
                        .filter(id -> shelf.leftover(id).isPresent())
                        .toList());
    }

    @Test
    void aCupIsInTheLogAsItHappensAndItsChipsAndLeftoversWithIt() {
        Noted<Page.Boat> boat = log.boat("Tarrowmere");
        Optional<Noted<Page.Place>> bow = Optional.of(log.place(boat, "port bow"));
        Shelf shelf = MeteredShop.shelf();
        WriteLog pen = new WriteLog(log);
        Instant now = Instant.parse("2026-05-03T12:00:00Z");
        Reading seen = cup.page().readings().get(0);
        Cup mixing = Cup.empty("bow 3", MeteredShop.places().get(0), 60, 0.01, "plain-white")
                .add(now, new Deed.Weighed("plain-white", 40, 0.01));
        UUID page =
                pen.cup(boat, bow, mixing, shelf, "", Optional.empty()).entry().id();
        mixing = mixing.add(now, new Deed.LetDown("soot-black", 10, 5, 0.01))
                .add(now, new Deed.Read(seen, Optional.empty(), true))
                .add(now, new Deed.Dropped("bottle-green", 3, 0.04))
                .add(now, new Deed.SetAside(4.512, "for the oars"));
        pen.cup(boat, bow, mixing, shelf, "", Optional.of(page));
        pen.doneWith(boat, page, mixing, shelf);

        Page.Cup written = log.cup(boat, Optional.of("bow 3")).page();
        assertEquals(40.608, written.parts().total(), 1e-9);
        assertEquals(0.5 * 0.9, written.parts().grams("soot-black"), 1e-9);
        assertEquals(
                List.of(
                        "plain-white 40.0 ",
                        "soot-black 5.0 as 1:10 letdown",
                        "bottle-green 0.12 3 drops",
                        "set aside -4.512 for the oars"),
                written.weighings().stream()
                        .map(one -> one.part() + " " + one.grams() + " " + one.note())
                        .toList());
        assertEquals(List.of(), written.readings(), "the chip was of the cup before the green");
        assertEquals(2, log.book().history(page).size());
        Page.ChipMade chip = last(boat, Page.ChipMade.class);
        assertEquals(45, chip.chip().parts().total(), 1e-9);
        Page.LeftOver left = last(boat, Page.LeftOver.class);
        assertEquals("for the oars", left.leftover().name());
        assertEquals(4.512, left.leftover().parts().total(), 1e-9);
    }

    private <P extends Page> P last(Noted<Page.Boat> boat, Class<P> sort) {
        List<Noted<P>> all = log.book().of(boat.id(), sort);
        return all.get(all.size() - 1).page();
    }

    private static Shelf without(String tint) {
        Shelf shelf = MeteredShop.shelf();
        for (Leftover left : shelf.leftovers()) {
            shelf = shelf.without(left.id());
        }
        return shelf.without(tint);
    }
}
