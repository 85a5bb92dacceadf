package tintwright.reading.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tintwright.reading.photo.CardBesideHull.Kind;

/** A few photos of the study in docs/accuracy.md, of the half that no constant was chosen on. */
class CardGroundTest {
    private static final long[] SEEDS = {1, 3};

    @TempDir
    Path folder;

    /** The study takes a published chart and hulls of published pigments beside these. */
    private final CardBesideHull scene = CardBesideHull.invented();

    @Test
    void otherLightOnTheCardIsSaidAndNearlyAllRangesHold() throws Exception {
        int held = 0;
        int all = 0;
        for (Kind kind : List.of(
                Kind.HULL_IN_SHADE,
                Kind.CARD_IN_SHADE,
                Kind.OTHER_HUE_OF_LIGHT,
                Kind.CARD_ON_SUNNY_BENCH,
                Kind.CARD_ON_SHADY_BENCH)) {
            for (long seed : new long[] {1, 3, 5, 7}) {
                CardBesideHull.Outcome one = scene.read(kind, seed, false, folder);
                assertTrue(one.said(Flag.Kind.OTHER_GROUND), kind + " " + seed + " said only " + one.flags());
                assertTrue(one.stated() > 10, "light that matters, stated " + one.stated());
                held += one.off() <= one.stated() ? 1 : 0;
                all++;
            }
        }
        // Nine in ten are meant; of twenty with a true share of nine in ten, 16 or more hold in 24 of 25 samples.
        assertTrue(held >= 16, held + " of " + all);
    }

    @ParameterizedTest
    @EnumSource(names = {"CARD_ON_HULL", "STRIPE_BETWEEN", "TRAILER"})
    void aCardOnTheHullIsLeftInPeaceWhateverElseIsAbout(Kind kind) throws Exception {
        for (long seed : SEEDS) {
            CardBesideHull.Outcome one = scene.read(kind, seed, false, folder);
            assertFalse(one.said(Flag.Kind.OTHER_GROUND), seed + " said " + one.flags());
            assertEquals(scene.read(kind, seed, true, folder).stated(), one.stated(), "not a bit wider");
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"WATERLINE_BETWEEN", "GREY_TABLE"})
    void otherGroundIsNotTakenForOtherLightAndAPersonCanSaySo(Kind kind) throws Exception {
        CardBesideHull.Outcome one = scene.read(kind, 1, false, folder);
        Flag said = one.flags().stream()
                .filter(flag -> flag.kind() == Flag.Kind.OTHER_GROUND)
                .findFirst()
                .orElseThrow();
        assertTrue(said.message().contains("can be paint or other light"), said.message());
        assertTrue(said.sentence().contains("say so"), said.sentence());
        CardBesideHull.Outcome vouched = scene.read(kind, 1, true, folder);
        assertFalse(vouched.said(Flag.Kind.OTHER_GROUND));
        assertTrue(vouched.stated() < 5 && one.stated() > 10, one.stated() + " became " + vouched.stated());
        assertEquals(one.off(), vouched.off(), "the colour is the same");
    }

    /** The study finds most, not all of them; these are reflections that are plain. */
    @Test
    void aPlainReflectionOverAThirdOfTheCardIsNamedAndLeftOut() throws Exception {
        for (long seed : new long[] {3, 5}) {
            CardBesideHull.Outcome one = scene.read(Kind.SHEEN_ON_CARD, seed, false, folder);
            assertTrue(one.said(Flag.Kind.GLARE), seed + " said only " + one.flags());
            assertTrue(one.off() <= one.stated(), seed + " off by " + one.off() + ", stated " + one.stated());
        }
    }
}
