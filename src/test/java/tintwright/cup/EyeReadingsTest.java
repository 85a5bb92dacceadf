package tintwright.cup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tintwright.demo.MeteredShop;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.EyeVerdict.Hue;
import tintwright.reading.FilmState;
import tintwright.reading.HullFamily;
import tintwright.shelf.knowledge.Knowledge;

class EyeReadingsTest {
    private static final Instant NOW = Instant.parse("2026-05-31T09:00:00Z");
    private static final Knowledge SHELF = Knowledge.of(MeteredShop.shelf());

    /** A cup of stone grey for a hull that was only picked. */
    private static Cup picked() {
        return Cup.empty("bow", HullFamily.STONE.place("", "bow"), 100, 0.01, "plain-white")
                .add(NOW, new Deed.Weighed("plain-white", 60, 0.01))
                .add(NOW, new Deed.Weighed("soot-black", 0.06, 0.01));
    }

    private static Deed seen(Depth depth, Hue hue) {
        return new Deed.Seen(new EyeVerdict(Optional.of(depth), Optional.of(hue), Amount.NOT_SAID, FilmState.CURED));
    }

    private static double lighter(CupSight sight) {
        return sight.colour().orElseThrow().lightness() - sight.hull().lightness();
    }

    @Test
    void theHullIsLearnedFromWhatIsSeenBesideTheDab() {
        CupSight before = CupSight.of(SHELF, picked());
        for (Depth depth : Depth.values()) {
            CupSight after = CupSight.of(
                    SHELF,
                    picked().add(
                                    NOW,
                                    new Deed.Seen(new EyeVerdict(
                                            Optional.of(depth), Optional.empty(), Amount.NOT_SAID, FilmState.CURED))));
            double apart = lighter(after);
            switch (depth) {
                case MUCH_TOO_DARK -> assertTrue(apart < -4, "apart " + apart);
                case A_LITTLE_TOO_DARK -> assertEquals(-2.7, apart, 1.2);
                case SAME -> assertEquals(0, apart, 0.7);
                case A_LITTLE_TOO_LIGHT -> assertEquals(2.7, apart, 1.2);
                case MUCH_TOO_LIGHT -> assertTrue(apart > 4, "apart " + apart);
            }
            if (Math.abs(depth.ordinal() - Depth.SAME.ordinal()) < 2) {
                // Much can be very much.
                assertTrue(
                        after.outlook().orElseThrow().within90()
                                < before.outlook().orElseThrow().within90(),
                        depth.words());
            }
        }
    }

    @Test
    void aHueMovesTheHullTheOtherWay() {
        Tone red = hull(seen(Depth.SAME, Hue.TOO_RED));
        Tone green = hull(seen(Depth.SAME, Hue.TOO_GREEN));
        Tone yellow = hull(seen(Depth.SAME, Hue.TOO_YELLOW));
        Tone blue = hull(seen(Depth.SAME, Hue.TOO_BLUE));
        assertTrue(red.a() + 2 < green.a(), red + " " + green);
        assertTrue(yellow.b() + 2 < blue.b(), yellow + " " + blue);
    }

    private record Tone(double a, double b) {}

    private static Tone hull(Deed seen) {
        CupSight sight = CupSight.of(SHELF, picked().add(NOW, seen));
        return new Tone(sight.hull().a(), sight.hull().b());
    }

    @Test
    void cannotTellTeachesNothingAndAsksOn() {
        Cup cup = picked().add(NOW, new Deed.Seen(EyeVerdict.cannotTell(FilmState.CURED)));
        CupSight sight = CupSight.of(SHELF, cup);
        assertEquals(lighter(CupSight.of(SHELF, picked())), lighter(sight));
        assertEquals(0, sight.eye().answers());
        assertTrue(cup.state().unjudged());
        assertTrue(!cup.add(NOW, seen(Depth.SAME, Hue.NONE)).state().unjudged());
    }

    @Test
    void anAnswerAgainstAllElseIsAskedAboutAndBelievedWhenItIsSaidAgain() {
        Cup near = picked().add(NOW, seen(Depth.SAME, Hue.NONE)).add(NOW, seen(Depth.SAME, Hue.NONE));
        Cup more = near.add(NOW, new Deed.Weighed("soot-black", 0.04, 0.01));
        double before = lighter(CupSight.of(SHELF, more));
        Cup odd = more.add(NOW, seen(Depth.MUCH_TOO_LIGHT, Hue.NONE));
        CupSight once = CupSight.of(SHELF, odd);
        assertEquals(
                odd.entries().get(odd.entries().size() - 1).id(),
                once.eye().doubted().orElseThrow());
        assertEquals(before, lighter(once), 0.7);
        CupSight twice = CupSight.of(
                SHELF,
                odd.add(NOW, seen(Depth.MUCH_TOO_LIGHT, Hue.NONE)).add(NOW, seen(Depth.MUCH_TOO_LIGHT, Hue.NONE)));
        assertTrue(lighter(twice) > before + 1.5, "said three times: " + lighter(twice));
        assertTrue(twice.eye().doubted().isEmpty());
    }

    @Test
    void answersThatDoNotFitTogetherShowAPoorEye() {
        Cup steady = picked();
        Cup wild = picked();
        Depth[] said = {Depth.A_LITTLE_TOO_DARK, Depth.MUCH_TOO_LIGHT, Depth.SAME, Depth.MUCH_TOO_DARK};
        Hue[] hues = {Hue.TOO_RED, Hue.TOO_GREEN, Hue.TOO_BLUE, Hue.TOO_YELLOW};
        for (int i = 0; i < said.length; i++) {
            steady = steady.add(NOW, seen(Depth.A_LITTLE_TOO_LIGHT, Hue.TOO_BLUE));
            wild = wild.add(NOW, seen(said[i], hues[i]));
        }
        Eye good = CupSight.of(SHELF, steady).eye();
        Eye poor = CupSight.of(SHELF, wild).eye();
        assertTrue(!good.poor() && good.poorness() < 1.4, good.toString());
        assertTrue(poor.poor() && poor.poorness() > 2, poor.toString());
    }
}
