package tintwright.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;

class OpaqueFilmTest {
    /** The usual table of the remission function (1 - R)^2 / 2R, by arithmetic. */
    @Test
    void isTheRemissionFunction() {
        assertEquals(0, KubelkaMunk.ratio(1), 0);
        assertEquals(0.25, KubelkaMunk.ratio(0.5), 1e-15);
        assertEquals(1.6, KubelkaMunk.ratio(0.2), 1e-15);
        assertEquals(4.05, KubelkaMunk.ratio(0.1), 1e-14);
        assertEquals(0.5, KubelkaMunk.reflectance(0.25), 1e-15);
        assertEquals(1, KubelkaMunk.reflectance(0), 0);
    }

    @Test
    void goesThereAndBackFromNearlyBlackToNearlyWhite() {
        for (double r = 1e-6; r <= 1; r *= 1.1) {
            assertEquals(1, KubelkaMunk.reflectance(KubelkaMunk.ratio(r)) / r, 1e-9);
        }
    }

    @Test
    void moreAbsorptionIsAlwaysDarker() {
        double before = 1;
        for (double ratio = 1e-6; ratio < 1e6; ratio *= 1.3) {
            double now = KubelkaMunk.reflectance(ratio);
            assertTrue(now < before && now > 0, "at K/S " + ratio);
            before = now;
        }
    }

    /** Many thin leaves of two paints, one over the other, are the mix of both: K and S add. */
    @Test
    void absorptionAndScatteringOfPartsAdd() {
        Random random = new Random(111);
        for (int i = 0; i < 50; i++) {
            double k1 = random.nextDouble();
            double s1 = 0.2 + random.nextDouble();
            double k2 = 3 * random.nextDouble();
            double s2 = 0.1 + random.nextDouble();
            double leaf = 1e-3;
            double r = 0.5;
            for (int n = 0; n < 20000; n++) {
                r = FiniteFilm.reflectance(k1, s1, leaf, r);
                r = FiniteFilm.reflectance(k2, s2, leaf, r);
            }
            assertEquals(KubelkaMunk.reflectance((k1 + k2) / (s1 + s2)), r, 2e-3);
        }
    }

    /** Saunderson (1942), worked by hand for k1 = 0.04, k2 = 0.60. */
    @Test
    void theSurfaceOfAResin() {
        assertEquals(0.04 + 0.96 * 0.4 * 0.5 / 0.7, Surface.RESIN.measured(0.5, Geometry.SPECULAR_INCLUDED), 1e-15);
        assertEquals(0.96 * 0.4 * 0.5 / 0.7, Surface.RESIN.measured(0.5, Geometry.SPECULAR_EXCLUDED), 1e-15);
        assertEquals(1, Surface.RESIN.measured(1, Geometry.SPECULAR_INCLUDED), 1e-15);
        assertEquals(0.04, Surface.RESIN.measured(0, Geometry.SPECULAR_INCLUDED), 0);
    }

    /** Fresnel: ((n - 1) / (n + 1))^2 straight on; from inside, diffuse, integrated over all angles: 0.596. */
    @Test
    void theSurfaceSharesAreThoseOfIndexOneAndAHalf() {
        assertEquals(0.04, Math.pow((1.5 - 1) / (1.5 + 1), 2), 1e-15);
        assertEquals(Math.pow((1.5 - 1) / (1.5 + 1), 2), Surface.RESIN.outside(), 1e-15);
        double inside = diffuseFromInside(1.5);
        assertEquals(0.596, inside, 0.0005);
        // The trade rounds 0.596 to 0.60.
        assertEquals(Math.rint(inside * 100) / 100, Surface.RESIN.inside(), 1e-15);
    }

    private static double diffuseFromInside(double index) {
        int steps = 200000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double sin2 = (i + 0.5) / steps;
            double sinOut = index * Math.sqrt(sin2);
            double share = 1;
            if (sinOut < 1) {
                double in = Math.sqrt(1 - sin2);
                double out = Math.sqrt(1 - sinOut * sinOut);
                double across = (index * in - out) / (index * in + out);
                double along = (in - index * out) / (in + index * out);
                share = (across * across + along * along) / 2;
            }
            sum += share / steps;
        }
        return sum;
    }

    @Test
    void theSurfaceGoesThereAndBack() {
        Random random = new Random(112);
        for (int i = 0; i < 500; i++) {
            Surface surface = new Surface(random.nextDouble() * 0.1, random.nextDouble() * 0.7);
            double internal = random.nextDouble();
            for (Geometry geometry : Geometry.values()) {
                double measured = surface.measured(internal, geometry);
                assertEquals(internal, surface.internal(measured, geometry), 1e-12);
                double h = 1e-6;
                assertEquals(
                        surface.slope(internal),
                        (surface.measured(internal + h, geometry) - surface.measured(internal - h, geometry)) / (2 * h),
                        1e-6);
            }
        }
    }

    @Test
    void refusesWhatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> KubelkaMunk.ratio(0));
        assertThrows(IllegalArgumentException.class, () -> KubelkaMunk.ratio(1.01));
        assertThrows(IllegalArgumentException.class, () -> KubelkaMunk.ratio(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Surface(-0.01, 0.6));
        assertThrows(IllegalArgumentException.class, () -> new Surface(0.04, 1));
    }
}
