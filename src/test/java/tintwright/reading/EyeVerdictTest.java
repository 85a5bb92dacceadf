package tintwright.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.EyeVerdict.Hue;

class EyeVerdictTest {
    private static final Lab HULL = new Lab(75, 1, 10, Viewing.D65_10);

    @ParameterizedTest
    @CsvSource({
        "much too dark,MUCH_TOO_DARK",
        "Far too deep,MUCH_TOO_DARK",
        "a little too dark,A_LITTLE_TOO_DARK",
        "slightly darker,A_LITTLE_TOO_DARK",
        "same,SAME",
        "the same depth,SAME",
        "a little light,A_LITTLE_TOO_LIGHT",
        "a bit paler than the hull,A_LITTLE_TOO_LIGHT",
        "way too light,MUCH_TOO_LIGHT",
    })
    void aDepthIsTakenInThePersonsOwnWords(String said, Depth meant) {
        assertEquals(meant, EyeWords.depth(said));
    }

    @ParameterizedTest
    @CsvSource({
        "much red,TOO_RED,MUCH",
        "a touch pinker,TOO_RED,LITTLE",
        "too yellow,TOO_YELLOW,NOT_SAID",
        "a little green,TOO_GREEN,LITTLE",
        "very blue,TOO_BLUE,MUCH",
        "no other hue,NONE,NOT_SAID",
        "none,NONE,NOT_SAID",
    })
    void aHueIsTakenInThePersonsOwnWords(String said, Hue meant, Amount amount) {
        assertEquals(new EyeWords.SaidHue(meant, amount), EyeWords.hue(said));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "dark", "dark and light", "same but dark", "not dark enough", "much same", "a lot"})
    void whatIsNoDepthIsRefused(String said) {
        assertThrows(IllegalArgumentException.class, () -> EyeWords.depth(said));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "warm", "red and green", "not red enough", "much none", "much"})
    void whatIsNoHueIsRefused(String said) {
        assertThrows(IllegalArgumentException.class, () -> EyeWords.hue(said));
    }

    @Test
    void everyAnswerIsUnderstoodAsItIsSaid() {
        for (Depth depth : Depth.values()) {
            assertEquals(depth, EyeWords.depth(depth.words()));
        }
        for (Hue hue : Hue.values()) {
            assertEquals(hue, EyeWords.hue(hue.words()).hue());
        }
    }

    @Test
    void everyAnswerIsDrawnFartherTheMoreItSays() {
        double before = -1;
        for (Depth depth : Depth.values()) {
            double lightness = depth.shade(HULL).lightness();
            assertTrue(lightness > before, depth.words());
            before = lightness;
        }
        assertEquals(HULL, Depth.SAME.shade(HULL));
        assertTrue(Hue.TOO_RED.shade(HULL, Amount.MUCH).a()
                > Hue.TOO_RED.shade(HULL, Amount.LITTLE).a());
        assertTrue(Hue.TOO_BLUE.shade(HULL, Amount.NOT_SAID).b() < HULL.b());
        assertEquals(HULL, Hue.NONE.shade(HULL, Amount.NOT_SAID));
    }

    @Test
    void everyDifferenceIsCalledByTheNearestHue() {
        for (int degrees = -180; degrees < 180; degrees++) {
            double angle = Math.toRadians(degrees + 0.5);
            Lab moved = new Lab(50, 4 * Math.cos(angle), 4 * Math.sin(angle), HULL.viewing());
            Hue nearest = Hue.NONE;
            int called = 0;
            double least = Double.POSITIVE_INFINITY;
            Lab grey = new Lab(50, 0, 0, HULL.viewing());
            for (Hue hue : Hue.values()) {
                Lab there = hue.shade(grey, Amount.LITTLE);
                double off = Math.hypot(there.a() - 0.75 * moved.a(), there.b() - 0.75 * moved.b());
                if (hue != Hue.NONE && off < least) {
                    least = off;
                    nearest = hue;
                }
            }
            for (Hue hue : Hue.values()) {
                double round = angle < hue.from() ? angle + 2 * Math.PI : angle;
                if (hue != Hue.NONE && round >= hue.from() && round < hue.to()) {
                    called++;
                    assertEquals(nearest, hue, degrees + " degrees");
                }
            }
            assertEquals(1, called, degrees + " degrees");
        }
    }

    @Test
    void anAmountNeedsAHue() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new EyeVerdict(Optional.of(Depth.SAME), Optional.of(Hue.NONE), Amount.MUCH, FilmState.CURED));
        assertTrue(!EyeVerdict.cannotTell(FilmState.CURED).tells());
        assertEquals("cannot tell", EyeVerdict.cannotTell(FilmState.CURED).words());
    }
}
