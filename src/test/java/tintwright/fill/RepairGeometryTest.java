package tintwright.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import tintwright.fill.repair.CountersunkHole;
import tintwright.fill.repair.Gouge;
import tintwright.fill.repair.PlainHole;
import tintwright.fill.repair.Repair;
import tintwright.fill.repair.ScratchGroove;
import tintwright.fill.repair.SprayArea;
import tintwright.fill.repair.WornArea;

/** Every repair against the closed form of its solid, and its top against the area of its section added up by depth. */
class RepairGeometryTest {
    /** Simpson's rule over the sections; exact for sections that are polynomials of up to the third degree in depth. */
    private static double addedUp(DoubleUnaryOperator section, double from, double to) {
        return (to - from)
                / 6
                * (section.applyAsDouble(from)
                        + 4 * section.applyAsDouble((from + to) / 2)
                        + section.applyAsDouble(to));
    }

    private static void same(double expected, double found) {
        assertEquals(expected, found, 1e-9 * Math.max(1, Math.abs(expected)));
    }

    @Property
    void aGougeIsHalfAnEllipsoid(
            @ForAll @DoubleRange(min = 1, max = 900) double length,
            @ForAll @DoubleRange(min = 1, max = 200) double width,
            @ForAll @DoubleRange(min = 0.1, max = 50) double depth,
            @ForAll @DoubleRange(min = 0, max = 1) double part) {
        Gouge gouge = new Gouge(length, width, depth);
        // Two thirds of the product of the half axes times pi.
        same(2.0 / 3 * Math.PI * length / 2 * width / 2 * depth, gouge.volumeMm3());
        double to = part * depth;
        same(addedUp(z -> Math.PI / 4 * length * width * (1 - z * z / (depth * depth)), 0, to), gouge.volumeToMm3(to));
        same(gouge.volumeMm3(), gouge.volumeToMm3(depth + 1));
    }

    @Property
    void aGrooveIsAPrismOnATriangle(
            @ForAll @DoubleRange(min = 1, max = 5000) double length,
            @ForAll @DoubleRange(min = 0.2, max = 50) double width,
            @ForAll @DoubleRange(min = 0.1, max = 20) double depth,
            @ForAll @DoubleRange(min = 0, max = 1) double part) {
        ScratchGroove groove = new ScratchGroove(length, width, depth);
        same(length * width * depth / 2, groove.volumeMm3());
        same(addedUp(z -> length * width * (1 - z / depth), 0, part * depth), groove.volumeToMm3(part * depth));
    }

    @Property
    void aCountersunkHoleIsAFrustumOverACylinder(
            @ForAll @DoubleRange(min = 1, max = 30) double hole,
            @ForAll @DoubleRange(min = 0.1, max = 20) double wider,
            @ForAll @DoubleRange(min = 0.2, max = 15) double countersink,
            @ForAll @DoubleRange(min = 0.1, max = 30) double below,
            @ForAll @DoubleRange(min = 0, max = 0.9) double plug,
            @ForAll @DoubleRange(min = 0, max = 1) double part) {
        double depth = countersink + below;
        CountersunkHole repair = new CountersunkHole(hole, hole + wider, countersink, depth, plug * depth);
        double fill = depth - plug * depth;
        DoubleUnaryOperator section = z -> {
            double across = z < countersink ? hole + wider * (1 - z / countersink) : hole;
            return Math.PI / 4 * across * across;
        };
        double to = part * fill;
        double turn = Math.min(to, countersink);
        double expected = addedUp(section, 0, turn) + Math.PI / 4 * hole * hole * (to - turn);
        same(expected, repair.volumeToMm3(to));
        same(repair.volumeMm3(), repair.volumeToMm3(fill));
    }

    @Property
    void nothingIsMoreThanItsBoxAndDeeperIsNeverLess(
            @ForAll @DoubleRange(min = 1, max = 900) double length,
            @ForAll @DoubleRange(min = 1, max = 200) double width,
            @ForAll @DoubleRange(min = 0.1, max = 3) double depth,
            @ForAll @DoubleRange(min = 0, max = 1) double part) {
        for (Repair repair : new Repair[] {
            new Gouge(length, width, depth),
            new ScratchGroove(length, width, depth),
            new WornArea(length, width, depth),
            new SprayArea(length, width, depth),
            new PlainHole(width, depth, 0)
        }) {
            assertTrue(repair.volumeMm3() <= repair.acrossMm() * repair.widthMm() * repair.thickestMm() * (1 + 1e-12));
            assertTrue(repair.volumeToMm3(part * depth) <= repair.volumeMm3() * (1 + 1e-12));
            same(0, repair.volumeToMm3(0));
        }
    }
}
