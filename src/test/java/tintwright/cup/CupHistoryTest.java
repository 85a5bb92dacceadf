package tintwright.cup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Parts;

/** Undoing, redoing and correcting late leave a cup as if it had been written right at first. */
class CupHistoryTest {
    private static final Instant NOW = Instant.parse("2026-05-31T09:00:00Z");
    private static final List<String> TINTS = List.of("soot", "brick", "straw");
    private static final int HISTORIES = 2000;

    static Cup empty() {
        PlaceReadings hull = new PlaceReadings("boat", "bow", List.of(reading(62, -3, 11)), "");
        return Cup.empty("cup", hull, 100, 0.01, "white");
    }

    static ColourReading reading(double l, double a, double b) {
        return new ColourReading(
                new Lab(l, a, b, Viewing.D65_10),
                Covariance.same(0.3),
                Geometry.SPECULAR_INCLUDED,
                FilmState.CURED,
                Optional.empty());
    }

    private static Deed anyDeed(Random random) {
        double grams = Math.round(100 * (0.05 + 5 * random.nextDouble())) / 100.0;
        String tint = TINTS.get(random.nextInt(TINTS.size()));
        return switch (random.nextInt(8)) {
            case 0, 1 -> new Deed.Weighed("white", 10 * grams, 0.01);
            case 2, 3 -> new Deed.Weighed(tint, grams, 0.01);
            case 4 -> new Deed.LetDown(tint, 10, grams, 0.01);
            case 5 -> random.nextBoolean() ? new Deed.Held(5 * grams) : new Deed.Dropped(tint, 3, 0.04);
            case 6 -> new Deed.Read(reading(40 + 10 * grams, grams, -grams), Optional.empty(), random.nextInt(5) > 0);
            default -> new Deed.SetAside(grams, "rest");
        };
    }

    @Test
    void correctingAndUndoingLateIsAsIfWrittenRightAtFirst() {
        Random random = new Random(20260531);
        int corrected = 0;
        int undone = 0;
        for (int h = 0; h < HISTORIES; h++) {
            List<Deed> meant = new ArrayList<>();
            Cup cup = empty();
            List<String> wrong = new ArrayList<>();
            List<Deed> right = new ArrayList<>();
            List<String> surplus = new ArrayList<>();
            int length = 2 + random.nextInt(14);
            for (int i = 0; i < length; i++) {
                Deed deed = anyDeed(random);
                int slip = random.nextInt(4);
                cup = cup.add(NOW.plusSeconds(60L * i), slip == 0 ? anyDeed(random) : deed);
                String id = cup.entries().get(cup.entries().size() - 1).id();
                if (slip == 1) {
                    surplus.add(id);
                } else {
                    meant.add(deed);
                    if (slip == 0) {
                        wrong.add(id);
                        right.add(deed);
                    }
                }
                // Now and then a slip is noticed at once, undone, redone, undone again.
                if (slip == 1 && random.nextBoolean()) {
                    CupState before = cup.state();
                    cup = cup.undo(NOW);
                    cup = cup.redo(NOW);
                    assertEquals(before, cup.state());
                    cup = cup.undo(NOW);
                    surplus.remove(id);
                    undone++;
                }
            }
            // The others are put right long after, in any order.
            for (int i = wrong.size() - 1; i >= 0; i--) {
                cup = cup.correct(wrong.get(i), anyDeed(random), NOW);
                cup = cup.correct(wrong.get(i), right.get(i), NOW);
                corrected++;
            }
            for (String id : surplus) {
                cup = cup.undo(id, NOW);
                undone++;
            }
            Cup clean = empty();
            for (Deed deed : meant) {
                clean = clean.add(NOW, deed);
            }
            assertSameState(clean.state(), cup.state());
        }
        assertTrue(corrected > HISTORIES && undone > HISTORIES, corrected + " corrected, " + undone + " undone");
    }

    /** The same but for the names of entries, which the clean history numbers anew. */
    private static void assertSameState(CupState clean, CupState mended) {
        assertEquals(clean.grams(), mended.grams());
        assertEquals(
                List.copyOf(clean.grams().keySet()), List.copyOf(mended.grams().keySet()));
        assertEquals(clean.off(), mended.off());
        assertEquals(clean.unread(), mended.unread());
        assertEquals(clean.reserve(), mended.reserve());
        assertEquals(clean.aside(), mended.aside());
        assertEquals(clean.samples().size(), mended.samples().size());
        for (int i = 0; i < clean.samples().size(); i++) {
            assertEquals(clean.samples().get(i).read(), mended.samples().get(i).read());
            assertEquals(clean.samples().get(i).parts(), mended.samples().get(i).parts());
            assertEquals(clean.samples().get(i).off(), mended.samples().get(i).off());
        }
    }

    @Test
    void undoGoesBackOneByOneAndRedoForth() {
        Cup cup = empty();
        List<CupState> states = new ArrayList<>(List.of(cup.state()));
        for (int i = 1; i <= 4; i++) {
            cup = cup.add(NOW, new Deed.Weighed("soot", 0.1 * i, 0.01));
            states.add(cup.state());
        }
        for (int i = 3; i >= 0; i--) {
            cup = cup.undo(NOW);
            assertEquals(states.get(i), cup.state());
        }
        assertEquals(cup, cup.undo(NOW), "nothing is left to undo");
        for (int i = 1; i <= 4; i++) {
            cup = cup.redo(NOW);
            assertEquals(states.get(i), cup.state());
        }
        assertEquals(cup, cup.redo(NOW), "nothing is left to redo");
        Cup other = cup.undo(NOW).add(NOW, new Deed.Weighed("brick", 1, 0.01));
        assertEquals(other, other.redo(NOW), "a new deed ends the redoing");
        assertEquals(
                Map.of("brick", 1.0),
                other.undo("e1", NOW).undo("e2", NOW).undo("e3", NOW).state().grams());
    }

    @Test
    void undoingACorrectionBringsTheFirstWordBack() {
        Cup cup = empty().add(NOW, new Deed.Weighed("soot", 0.13, 0.01));
        Cup right = cup.correct("e1", new Deed.Weighed("soot", 0.31, 0.01), NOW);
        assertEquals(0.31, right.state().grams().get("soot"));
        assertEquals(cup.state(), right.undo(NOW).state());
        assertNotEquals(cup.state(), right.undo(NOW).redo(NOW).state());
    }

    @Test
    void aLetdownBringsItsBaseAndWhiteComesFromTheReserve() {
        Cup cup = empty().add(NOW, new Deed.Weighed("white", 60, 0.01))
                .add(NOW, new Deed.Held(30))
                .add(NOW, new Deed.LetDown("soot", 20, 1.6, 0.01))
                .add(NOW, new Deed.Weighed("white", 12.5, 0.01));
        CupState state = cup.state();
        assertEquals(0.08, state.grams().get("soot"), 1e-12);
        assertEquals(60 + 1.52 + 12.5, state.white(), 1e-12);
        assertEquals(30 - 1.52 - 12.5, state.reserve(), 1e-12);
    }

    @Test
    void whatIsSetAsideTakesItsShareOfEverything() {
        Cup cup = empty().add(NOW, new Deed.Weighed("white", 60, 0.01))
                .add(NOW, new Deed.Weighed("soot", 0.6, 0.01))
                .add(NOW, new Deed.SetAside(20.2, "dark"));
        CupState state = cup.state();
        assertEquals(40.4, state.mass(), 1e-9);
        assertEquals(0.4, state.grams().get("soot"), 1e-9);
        assertEquals(
                Parts.of(Map.of("white", 20.0, "soot", 0.2)).total(),
                state.aside().get(0).parts().total(),
                1e-9);
    }

    @Test
    void refusesEntriesAboutWhatIsNotThere() {
        Cup cup = empty().add(NOW, new Deed.Weighed("white", 60, 0.01));
        assertThrows(IllegalArgumentException.class, () -> cup.undo("e9", NOW));
        assertThrows(IllegalArgumentException.class, () -> cup.correct("e9", new Deed.Held(1), NOW));
        assertThrows(
                IllegalArgumentException.class,
                () -> cup.undo(NOW).correct("e2", new Deed.Held(1), NOW),
                "e2 is an undoing");
        assertThrows(IllegalArgumentException.class, () -> new Deed.Weighed("white", Double.NaN, 0.01));
        assertThrows(IllegalArgumentException.class, () -> new Deed.LetDown("soot", 1, 1, 0.01));
    }
}
