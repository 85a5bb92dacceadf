package tintwright.cup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tintwright.colour.Ciede2000;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.files.Demo;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.EyeVerdict.Hue;
import tintwright.reading.FilmState;
import tintwright.reading.HullFamily;
import tintwright.shelf.Parts;
import tintwright.shelf.knowledge.Knowledge;

/** What is to be done next where nothing was read and an eye looks at the dabs. */
class EyePlanTest {
    private static final Instant NOW = Instant.parse("2026-05-31T09:00:00Z");
    private static final Knowledge SHELF = Knowledge.of(Demo.shelf());

    private static Cup white() {
        return Cup.empty("cup", HullFamily.STONE.place("", "bow"), 100, 0.01, "plain-white")
                .add(NOW, new Deed.Weighed("plain-white", 60, 0.01))
                .add(NOW, new Deed.Held(40));
    }

    private static Lab colour(Parts parts) {
        return SHELF.colour(parts, Viewing.D65_10, Geometry.SPECULAR_EXCLUDED);
    }

    /** What a trial dab of this cup is made of. */
    private static Parts made(Cup cup, Deed.Trial trial) {
        Cup pot = Cup.empty("pot", cup.hull(), 10, 0.01, "plain-white")
                .add(
                        NOW,
                        new Deed.Found(
                                cup.state()
                                        .parts()
                                        .orElseThrow()
                                        .times(trial.grams() / cup.state().mass()),
                                0));
        for (Deed dose : trial.doses()) {
            pot = pot.add(NOW, dose);
        }
        return pot.state().parts().orElseThrow();
    }

    /** An eye that never errs and says the same from 1 on, and much from 4 on. */
    private static EyeVerdict seen(Lab dab, Lab hull) {
        double depth = dab.lightness() - hull.lightness();
        Depth said = Math.abs(depth) < 1
                ? Depth.SAME
                : depth > 0
                        ? depth < 4 ? Depth.A_LITTLE_TOO_LIGHT : Depth.MUCH_TOO_LIGHT
                        : depth > -4 ? Depth.A_LITTLE_TOO_DARK : Depth.MUCH_TOO_DARK;
        double a = dab.a() - hull.a();
        double b = dab.b() - hull.b();
        double size = Math.hypot(a, b);
        if (size < 1) {
            return new EyeVerdict(Optional.of(said), Optional.of(Hue.NONE), Amount.NOT_SAID, FilmState.CURED);
        }
        Hue hue =
                Math.abs(a) > Math.abs(b) ? a > 0 ? Hue.TOO_RED : Hue.TOO_GREEN : b > 0 ? Hue.TOO_YELLOW : Hue.TOO_BLUE;
        return new EyeVerdict(
                Optional.of(said), Optional.of(hue), size < 4 ? Amount.LITTLE : Amount.MUCH, FilmState.CURED);
    }

    @Test
    void aPickedHullIsReachedFromTheLightSideAndTheBenchStopsByItself() {
        Lab hull = colour(Parts.of(Map.of("plain-white", 100.0, "soot-black", 0.08, "straw-yellow", 0.35)));
        Cup cup = white();
        int looks = 0;
        int tried = 0;
        Plan plan = DosePlanner.plan(CupSight.of(SHELF, cup));
        while (!(plan instanceof Plan.Stop)) {
            if (plan instanceof Plan.Doses doses) {
                for (Dose dose : doses.doses()) {
                    cup = cup.add(NOW, dose.deed());
                }
            } else if (plan instanceof Plan.TryDabs row) {
                int nearest = 0;
                for (int i = 1; i < row.dabs().size(); i++) {
                    nearest = apart(cup, row, i, hull) < apart(cup, row, nearest, hull) ? i : nearest;
                }
                Lab dab = colour(made(cup, row.dabs().get(nearest).trial()));
                cup = cup.add(NOW, row.seen(seen(dab, hull), nearest + 1));
                looks++;
                tried++;
            } else {
                assertInstanceOf(Plan.TakeChip.class, plan);
                cup = cup.add(
                        NOW, new Deed.Seen(seen(colour(Parts.of(cup.state().grams())), hull)));
                looks++;
            }
            double darker =
                    hull.lightness() - colour(Parts.of(cup.state().grams())).lightness();
            assertTrue(darker < 0.5, "darker by " + darker + " after " + looks);
            assertTrue(looks <= 10, "still no end after " + looks);
            plan = DosePlanner.plan(CupSight.of(SHELF, cup));
        }
        assertTrue(looks >= 2);
        assertTrue(tried >= 1, "no trial dab though nobody knows where the hull lies");
        assertEquals(0, Ciede2000.between(colour(Parts.of(cup.state().grams())), hull), 2);
    }

    @Test
    void aTrialDabTeachesAndTheCupOnlyLosesItsGrams() {
        Cup cup = white().add(NOW, new Deed.LetDown("soot-black", 20, 0.4, 0.01));
        Deed.Trial trial = new Deed.Trial(4, List.of(new Deed.LetDown("soot-black", 20, 0.3, 0.01)));
        EyeVerdict dark =
                new EyeVerdict(Optional.of(Depth.MUCH_TOO_DARK), Optional.empty(), Amount.NOT_SAID, FilmState.CURED);
        Cup after = cup.add(NOW, new Deed.Seen(dark, Optional.of(trial), List.of()));
        double left = 56.4 / 60.4;
        assertEquals(0.02 * left, after.state().grams().get("soot-black"), 1e-12);
        assertEquals(56.4, after.state().mass(), 1e-9);
        assertEquals(39.62, after.state().reserve());
        Parts dab = after.state().looks().get(0).parts();
        assertEquals(0.02 * 4 / 60.4 + 0.015, dab.grams("soot-black"), 1e-12);
        assertEquals(4.3, dab.total(), 1e-9);
        assertEquals(made(cup, trial).grams("soot-black"), dab.grams("soot-black"), 1e-12);
        double before = CupSight.of(SHELF, cup).hull().lightness();
        assertTrue(CupSight.of(SHELF, after).hull().lightness() > before + 0.5, "the hull is lighter than was thought");
        assertEquals(cup.state().grams(), after.undo(NOW).state().grams());
    }

    private static double apart(Cup cup, Plan.TryDabs row, int dab, Lab hull) {
        return Ciede2000.between(colour(made(cup, row.dabs().get(dab).trial())), hull);
    }

    /** Of two dabs that both are "a little too dark" the nearer says more: the hull is not beyond the middle of the two. */
    @Test
    void theNearestOfARowTeachesMoreThanTheSameWordsOfOneDab() {
        Cup cup = white().add(NOW, new Deed.LetDown("soot-black", 20, 0.4, 0.01));
        Deed.Trial light = new Deed.Trial(3, List.of(new Deed.LetDown("soot-black", 20, 0.1, 0.01)));
        Deed.Trial dark = new Deed.Trial(3, List.of(new Deed.LetDown("soot-black", 20, 0.3, 0.01)));
        EyeVerdict words = new EyeVerdict(
                Optional.of(Depth.A_LITTLE_TOO_LIGHT), Optional.empty(), Amount.NOT_SAID, FilmState.CURED);
        double alone = hullAfter(cup, new Deed.Seen(words, Optional.of(light), List.of()));
        double nearest = hullAfter(cup, new Deed.Seen(words, Optional.of(light), List.of(dark)));
        assertTrue(nearest > alone + 0.3, nearest + " and alone " + alone);
        Cup after = cup.add(NOW, new Deed.Seen(words, Optional.of(light), List.of(dark)));
        assertEquals(60.4 - 6, after.state().mass(), 1e-9);
        assertEquals(
                made(cup, dark).grams("soot-black"),
                after.state().looks().get(0).farther().get(0).parts().grams("soot-black"),
                1e-12);
    }

    private static double hullAfter(Cup cup, Deed.Seen seen) {
        return CupSight.of(SHELF, cup.add(NOW, seen)).hull().lightness();
    }

    @Test
    void aRowIsOfTrialDabsAndItsDabsAreNumbered() {
        EyeVerdict told = EyeVerdict.cannotTell(FilmState.CURED);
        Cup cup = white();
        Plan plan = DosePlanner.plan(CupSight.of(SHELF, cup));
        while (plan instanceof Plan.Doses doses) {
            for (Dose dose : doses.doses()) {
                cup = cup.add(NOW, dose.deed());
            }
            plan = DosePlanner.plan(CupSight.of(SHELF, cup));
        }
        Plan.TryDabs row = (Plan.TryDabs) plan;
        assertEquals(2, row.dabs().size());
        String said = assertThrows(IllegalArgumentException.class, () -> row.seen(told, 3))
                .getMessage();
        assertTrue(said.contains("1 to 2"), said);
        assertEquals(2, row.seen(told, 0).farther().size());
        assertEquals(1, row.seen(told, Plan.TryDabs.FIRST_ALONE).trials().size());
    }

    @Test
    void aTrialDabWithNothingInItIsRefused() {
        String said = assertThrows(IllegalArgumentException.class, () -> new Deed.Trial(4, List.of()))
                .getMessage();
        assertTrue(said.contains("at least one tint"), said);
    }

    @Test
    void aCupThatAnEyeCallsMuchTooDarkIsBroughtBackWithWhite() {
        Cup dark = white().add(NOW, new Deed.Weighed("soot-black", 1.2, 0.01));
        Cup seen = dark.add(
                NOW,
                new Deed.Seen(new EyeVerdict(
                        Optional.of(Depth.MUCH_TOO_DARK), Optional.empty(), Amount.NOT_SAID, FilmState.CURED)));
        assertInstanceOf(Plan.WayBack.class, DosePlanner.plan(CupSight.of(SHELF, seen)));
    }

    @Test
    void whereMuchIsLeftAndNoDoseIsSafeTheSameDabIsLookedAtAgain() {
        Cup cup = white();
        for (int look = 1; look <= 2; look++) {
            cup = cup.add(
                    NOW,
                    new Deed.Seen(new EyeVerdict(
                            Optional.of(Depth.SAME), Optional.of(Hue.TOO_BLUE), Amount.MUCH, FilmState.CURED)));
            CupSight sight = CupSight.of(SHELF, cup);
            assertEquals(look, cup.state().looksAtThis());
            assertTrue(!(DosePlanner.plan(sight) instanceof Plan.Stop)
                    || sight.outlook().orElseThrow().expected() < 2);
        }
    }
}
