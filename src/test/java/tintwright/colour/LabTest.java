package tintwright.colour;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** ISO/CIE 11664-4, worked by hand where cube roots are whole tenths. */
class LabTest {
    private static Lab ofRatios(double x, double y, double z) {
        Xyz white = Viewing.D65_10.white();
        return Lab.of(new Xyz(x * white.x(), y * white.y(), z * white.z(), Viewing.D65_10));
    }

    @Test
    void isTheWorkedExample() {
        Lab lab = ofRatios(0.512, 0.343, 0.729);
        assertEquals(116 * 0.7 - 16, lab.lightness(), 1e-12);
        assertEquals(500 * (0.8 - 0.7), lab.a(), 1e-12);
        assertEquals(200 * (0.7 - 0.9), lab.b(), 1e-12);
    }

    @Test
    void isAStraightLineNearBlack() {
        // Below (6/29)^3: L* = (29/3)^3 Y/Yn, and f = (841/108) ratio + 4/29.
        Lab lab = ofRatios(0.003, 0.001, 0.002);
        assertEquals(0.9032962962962963, lab.lightness(), 1e-12);
        assertEquals(500 * 841.0 / 108 * 0.002, lab.a(), 1e-12);
        assertEquals(200 * 841.0 / 108 * -0.001, lab.b(), 1e-12);
        // The line is the tangent of the cube root where they meet: no step, no kink.
        double edge = 216.0 / 24389;
        assertEquals(8, ofRatios(edge, edge * (1 + 1e-12), edge).lightness(), 1e-9);
        assertEquals(8, ofRatios(edge, edge * (1 - 1e-12), edge).lightness(), 1e-9);
        assertEquals(
                ofRatios(1, edge * 1.0001, 1).lightness() - 8,
                8 - ofRatios(1, edge * 0.9999, 1).lightness(),
                1e-7);
        // On the line up to the very edge: a threshold set lower would follow the root's curve here.
        assertEquals(24389.0 / 27 * 0.0088555, ofRatios(1, 0.0088555, 1).lightness(), 1e-12);
        assertEquals(116 * Math.cbrt(0.0088570) - 16, ofRatios(1, 0.0088570, 1).lightness(), 1e-12);
    }

    @Test
    void whiteIsHundredAndMiddleGreyIsFifty() {
        for (Viewing viewing : new Viewing[] {Viewing.D65_10, Viewing.D50_2, Viewing.A_10, Viewing.FL11_10}) {
            Lab white = Lab.of(viewing.white());
            assertEquals(100, white.lightness(), 1e-12);
            assertEquals(0, white.chroma(), 1e-12);
        }
        assertEquals(50, ofRatios(0.1, 287496.0 / 1560896, 0.1).lightness(), 1e-12);
    }

    @Test
    void goesThereAndBack() {
        Random random = new Random(51);
        for (int i = 0; i < 500; i++) {
            Lab lab = new Lab(
                    random.nextDouble() * 110 - 2,
                    random.nextGaussian() * 60,
                    random.nextGaussian() * 60,
                    Viewing.D50_2);
            assertEquals(0, Cie76.between(lab, Lab.of(lab.toXyz())), 1e-10);
            double hue = Math.toRadians(lab.hueDegrees());
            assertEquals(lab.a(), lab.chroma() * Math.cos(hue), 1e-11);
            assertEquals(lab.b(), lab.chroma() * Math.sin(hue), 1e-11);
        }
    }

    @Test
    void polarFormIsTheRightAngledTriangle() {
        Lab lab = new Lab(40, -3, 4, Viewing.D50_2);
        assertEquals(5, lab.chroma(), 1e-15);
        assertArrayEquals(new double[] {40, -3, 4}, lab.axes());
        assertEquals(126.86989764584402, lab.hueDegrees(), 1e-12);
        assertEquals(0, new Lab(40, 0, 0, Viewing.D50_2).hueDegrees(), 0);
        assertEquals(270, new Lab(40, 0, -1, Viewing.D50_2).hueDegrees(), 1e-12);
        // Just below red the hue stays under a full turn.
        assertTrue(new Lab(40, 1, -1e-30, Viewing.D50_2).hueDegrees() < 360);
    }

    @Test
    void coloursUnderDifferentLightsAreNotCompared() {
        Lab day = new Lab(50, 0, 0, Viewing.D65_10);
        Lab lamp = new Lab(50, 0, 0, Viewing.A_10);
        Lab small = new Lab(50, 0, 0, Viewing.D65_2);
        String why = assertThrows(IllegalArgumentException.class, () -> Ciede2000.between(day, lamp))
                .getMessage();
        assertTrue(why.contains("D65/10") && why.contains("A/10"), why);
        assertThrows(IllegalArgumentException.class, () -> Ciede2000.between(day, small));
    }

    @Test
    void refusesWhatIsNotANumber() {
        assertThrows(IllegalArgumentException.class, () -> new Lab(Double.NaN, 0, 0, Viewing.D65_10));
        assertThrows(IllegalArgumentException.class, () -> new Lab(1, 0, 0, null));
        assertThrows(IllegalArgumentException.class, () -> new Xyz(1, Double.POSITIVE_INFINITY, 0, Viewing.D65_10));
    }
}
