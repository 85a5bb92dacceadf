package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import tintwright.colour.DifferenceWords.Said;
import tintwright.colour.DifferenceWords.Word;

class DifferenceWordsTest {
    private static Lab lab(double l, double a, double b) {
        return new Lab(l, a, b, Viewing.D65_10);
    }

    @Test
    void namesTheLargestPartFirst() {
        DifferenceWords words = DifferenceWords.of(lab(80, 1, 4), lab(84, 0.2, 4));
        assertEquals("darker and a touch redder", words.phrase());
        assertEquals(
                "The mix is darker and a touch redder than the hull; the value is what the eye sees first. It is likely "
                        + "within 4.4: seen at a glance, and a dab tells.",
                words.sentence(4.4));
    }

    @Test
    void noDifferenceIsCalledNothing() {
        assertEquals("0.3 off", DifferenceWords.off(0.34));
        assertEquals("0.1 off", DifferenceWords.off(0.1));
        assertEquals("under 0.1 off", DifferenceWords.off(0.0999));
        assertEquals("under 0.1 off", DifferenceWords.off(0));
        assertEquals("under 0.1", DifferenceWords.size(0.04));
    }

    @Test
    void oppositePairsGetOppositeWords() {
        assertEquals(
                "lighter and a touch greener",
                DifferenceWords.of(lab(84, 0.2, 4), lab(80, 1, 4)).phrase());
    }

    @Test
    void saysNothingOfWhatIsNotSeen() {
        DifferenceWords words = DifferenceWords.of(lab(84, 0.2, 4), lab(84.1, 0.2, 4.1));
        assertEquals("no difference to see", words.phrase());
        assertEquals(
                "Beside the hull: no difference to see. It is likely within 0.9: hard to see.", words.sentence(0.9));
        assertEquals("alike as far as is known", words.phrase(3.2), "a best guess is no promise");
        assertEquals(
                "Beside the hull: alike as far as is known. It is likely within 3.2: seen side by side, and a dab tells.",
                words.sentence(3.2));
        assertTrue(words.said().isEmpty());
    }

    @Test
    void aTurnOfHueIsNamedAfterTheNextOfTheFourHues() {
        assertEquals(Word.YELLOWER, turn(60, 75));
        assertEquals(Word.REDDER, turn(75, 60));
        assertEquals(Word.GREENER, turn(85, 100));
        assertEquals(Word.REDDER, turn(100, 85));
        assertEquals(Word.BLUER, turn(170, 185));
        assertEquals(Word.YELLOWER, turn(185, 170));
        assertEquals(Word.REDDER, turn(265, 280));
        assertEquals(Word.GREENER, turn(280, 265));
        assertEquals(Word.YELLOWER, turn(352, 7));
        assertEquals(Word.BLUER, turn(7, 352));
    }

    private static Word turn(double from, double to) {
        return DifferenceWords.of(ofHue(to), ofHue(from)).said().get(0).word();
    }

    private static Lab ofHue(double degrees) {
        double hue = Math.toRadians(degrees);
        return lab(50, 40 * Math.cos(hue), 40 * Math.sin(hue));
    }

    @Test
    void moreChromaIsCleanerLessIsDirtier() {
        assertEquals(
                "a touch cleaner",
                DifferenceWords.of(lab(50, 32, 0), lab(50, 30, 0)).phrase());
        assertEquals(
                "dirtier", DifferenceWords.of(lab(50, 22, 0), lab(50, 30, 0)).phrase());
    }

    @Test
    void aNearWhiteIsNeverCalledDirty() {
        assertEquals(
                "yellower", DifferenceWords.of(lab(90, 0, 5), lab(90, 0, 2)).phrase());
        assertEquals("bluer", DifferenceWords.of(lab(90, 0, 0), lab(90, 0, 2)).phrase());
    }

    @Test
    void aGreyThatLacksATintIsNotCalledByItsOpposite() {
        assertEquals(
                "much less green",
                DifferenceWords.of(lab(65, 0.5, 1), lab(65, -9, 1)).phrase());
        assertEquals(
                "less yellow",
                DifferenceWords.of(lab(90, 0, 1.5), lab(90, 0, 4)).phrase());
        assertEquals(
                "much redder", DifferenceWords.of(lab(65, 4, 1), lab(65, -5, 1)).phrase());
        assertEquals(
                "greener", DifferenceWords.of(lab(65, -7, 1), lab(65, -5, 1)).phrase());
    }

    @Test
    void theClearestComesFirst() {
        assertEquals(
                "much yellower, less red and a touch darker",
                DifferenceWords.of(lab(89, 0, 9), lab(90, 4, 0)).phrase());
    }

    /** Straight along the axes of a grey, the sizes of the words are the whole difference, by Pythagoras. */
    @Test
    void theWordsOfAGreyShareTheWholeDifference() {
        Random random = new Random(61);
        for (int i = 0; i < 100; i++) {
            DifferenceWords words = DifferenceWords.of(
                    lab(60, 2 + random.nextDouble(), 1 + random.nextDouble()),
                    lab(60, -2 - random.nextDouble(), -1 - random.nextDouble()));
            double squares = words.said().stream()
                    .mapToDouble(said -> said.size() * said.size())
                    .sum();
            assertEquals(words.parts().total(), Math.sqrt(squares), 1e-12);
        }
    }

    @Test
    void fromWhereOnAWordIsSaid() {
        assertEquals("a touch redder", new Said(Word.REDDER, 1.19).text());
        assertEquals("redder", new Said(Word.REDDER, DifferenceWords.PLAIN).text());
        assertEquals("much redder", new Said(Word.REDDER, DifferenceWords.MUCH).text());
        assertEquals("no eye sees it", DifferenceWords.seen(0.34));
        assertEquals("hard to see", DifferenceWords.seen(DifferenceWords.UNSEEN));
        assertEquals("hard to see", DifferenceWords.seen(1));
        assertEquals("seen edge to edge", DifferenceWords.seen(2));
        assertEquals("seen side by side", DifferenceWords.seen(4));
        assertEquals("seen at a glance", DifferenceWords.seen(4.1));
        DifferenceWords alike = DifferenceWords.of(lab(60, 0, 0), lab(60, 0, 0));
        assertEquals("no difference to see", alike.phrase(1));
        assertTrue(alike.sentence(1).endsWith("hard to see."));
    }

    /** Two things too small for a word can together be seen; then it is not said that there is nothing. */
    @Test
    void twoSmallDifferencesAreNotNone() {
        DifferenceWords words = DifferenceWords.of(lab(60.3, 0.2, 0), lab(60, 0, 0));
        assertTrue(words.said().isEmpty());
        assertTrue(words.parts().total() > DifferenceWords.UNSEEN);
        assertEquals("hardly a difference to see", words.phrase());
    }

    @Test
    void aChanceIsNeverAsGoodAsCertain() {
        assertEquals("more than 95 %", DifferenceWords.chance(1));
        assertEquals("about 95 %", DifferenceWords.chance(0.95));
        assertEquals("about 80 %", DifferenceWords.chance(0.79));
        assertEquals("about 5 %", DifferenceWords.chance(0.05));
        assertEquals("hardly any chance", DifferenceWords.chance(0.049));
    }

    @Test
    void refusesColoursUnderDifferentLights() {
        assertThrows(
                IllegalArgumentException.class,
                () -> DifferenceWords.of(lab(50, 0, 0), new Lab(50, 0, 0, Viewing.D50_2)));
    }
}
