package tintwright.reading.photo.camera;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.photo.card.Sample;
import tintwright.reading.photo.file.Rgb;

class CorrectionTest {
    private static Sample seen(double red, double green, double blue) {
        return new Sample(new Rgb(red, green, blue), new Rgb(1e-4, 1e-4, 1e-4), 0, 0);
    }

    /** One grey explains itself without any error left, and a share of nothing is no number. */
    @Test
    void oneNeutralReferenceIsEnoughToRead() {
        for (int lightness = 30; lightness <= 100; lightness++) {
            Lab grey = new Lab(lightness, 0, 0, Viewing.D65_10);
            Sample record = seen(0.5, 0.5, 0.5);
            Correction one = Correction.learn(
                    List.of(new KnownSample("grey", record, grey, 0.5)), List.of(record), Viewing.D65_10);
            Correction.Answer answer = one.apply(List.of(record)).get(0);
            assertEquals(0, Ciede2000.between(grey, answer.colour()), 0.5);
            assertEquals(1, one.references());
            assertTrue(answer.shared().plus(answer.own()).ll() > 0, "how wide it may be off is stated");
        }
    }

    @Test
    void twoThatAreTheSameGreyAreEnoughToo() {
        Lab grey = new Lab(60, 0, 0, Viewing.D65_10);
        Sample record = seen(0.4, 0.5, 0.35);
        KnownSample known = new KnownSample("grey", record, grey, 0.5);
        Correction two = Correction.learn(List.of(known, known), List.of(record), Viewing.D65_10);
        assertEquals(
                0, Ciede2000.between(grey, two.apply(List.of(record)).get(0).colour()), 0.5);
    }
}
