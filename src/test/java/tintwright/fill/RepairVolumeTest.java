package tintwright.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleBinaryOperator;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tintwright.fill.repair.CountersunkHole;
import tintwright.fill.repair.Gouge;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.PlainHole;
import tintwright.fill.repair.Repair;
import tintwright.fill.repair.RepairLine;
import tintwright.fill.repair.ScratchGroove;
import tintwright.fill.repair.SprayArea;
import tintwright.fill.repair.WornArea;

/** Volumes against a numerical integration of the shape itself, and against textbook solids. */
class RepairVolumeTest {
    private static final int GRID = 1500;

    /** The depth of the opening summed over a fine grid of its bounding rectangle. */
    private static double integrated(double across, double width, DoubleBinaryOperator depthAt) {
        double sum = 0;
        for (int i = 0; i < GRID; i++) {
            double x = ((i + 0.5) / GRID - 0.5) * across;
            for (int j = 0; j < GRID; j++) {
                double y = ((j + 0.5) / GRID - 0.5) * width;
                sum += depthAt.applyAsDouble(x, y);
            }
        }
        return sum * across * width / GRID / GRID;
    }

    private static DoubleBinaryOperator countersunk(double hole, double top, double sink, double fill) {
        return (x, y) -> {
            double r = Math.hypot(x, y);
            double open = r <= hole / 2 ? fill : r >= top / 2 ? 0 : sink * (top / 2 - r) / (top / 2 - hole / 2);
            return Math.min(open, fill);
        };
    }

    static Stream<Arguments> shapes() {
        return Stream.of(
                Arguments.of(new CountersunkHole(5, 10, 2.5, 9, 0), countersunk(5, 10, 2.5, 9)),
                Arguments.of(new CountersunkHole(5, 10, 2.5, 9, 4), countersunk(5, 10, 2.5, 5)),
                // The plug reaches up into the countersink.
                Arguments.of(new CountersunkHole(6, 13, 3, 8, 6.5), countersunk(6, 13, 3, 1.5)),
                Arguments.of(new PlainHole(8, 12, 7), (DoubleBinaryOperator) (x, y) -> Math.hypot(x, y) <= 4 ? 5 : 0),
                Arguments.of(new Gouge(60, 9, 3), (DoubleBinaryOperator)
                        (x, y) -> 3 * Math.sqrt(Math.max(0, 1 - x * x / 900 - y * y / 20.25))),
                Arguments.of(
                        new ScratchGroove(400, 3, 1.2), (DoubleBinaryOperator) (x, y) -> 1.2 * (1 - Math.abs(y) / 1.5)),
                Arguments.of(new WornArea(900, 45, 0.5), (DoubleBinaryOperator) (x, y) -> 0.5),
                Arguments.of(new SprayArea(300, 200, 0.4), (DoubleBinaryOperator) (x, y) -> 0.4));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("shapes")
    void theClosedFormIsTheIntegralOfTheShape(Repair repair, DoubleBinaryOperator depthAt) {
        double expected = integrated(repair.acrossMm(), repair.widthMm(), depthAt);
        // The grid misses up to one cell along a round edge: about 2 in 1500.
        assertEquals(expected, repair.volumeMm3(), expected * 1e-3);
        double opening =
                integrated(repair.acrossMm(), repair.widthMm(), (x, y) -> depthAt.applyAsDouble(x, y) > 0 ? 1 : 0);
        assertEquals(opening, repair.openingMm2(), opening * 1e-3);
    }

    @Test
    void specialCasesAreTheTextbookSolids() {
        assertEquals(Math.PI / 3 * 25 * 7, new CountersunkHole(1e-9, 10, 7, 7, 0).volumeMm3(), 1e-6, "cone");
        assertEquals(Math.PI * 16 * 5, new PlainHole(8, 5, 0).volumeMm3(), 1e-9, "cylinder");
        assertEquals(2.0 / 3 * Math.PI * 1000, new Gouge(20, 20, 10).volumeMm3(), 1e-9, "hemisphere");
    }

    @Test
    void aCountersinkGivenByItsAngleIsAsDeepAsTheAngleSays() {
        assertEquals(2.5, CountersunkHole.ofAngle(5, 10, 90, 9, 0).countersinkMm(), 1e-12);
        // 82 degrees, the inch screw's: (10 - 5) / 2 / tan(41 degrees).
        assertEquals(
                2.5 / Math.tan(41 * Math.PI / 180),
                CountersunkHole.ofAngle(5, 10, 82, 9, 0).countersinkMm(),
                1e-12);
    }

    @Test
    void moreOfAnythingIsNeverLess() {
        double before = 0;
        for (double depth = 1; depth < 12; depth += 0.25) {
            double volume = new CountersunkHole(4, 9, 1, depth, 0).volumeMm3();
            assertTrue(volume > before, "depth " + depth);
            before = volume;
        }
        for (double plug = 0; plug < 8.9; plug += 0.25) {
            assertTrue(
                    new CountersunkHole(5, 10, 2.5, 9, plug).volumeMm3()
                            > new CountersunkHole(5, 10, 2.5, 9, plug + 0.05).volumeMm3(),
                    "plug " + plug);
        }
    }

    static Stream<Arguments> wrong() {
        return Stream.of(
                refusal(() -> new PlainHole(0, 5, 0), "diameter of the hole must be above 0", "was 0 mm"),
                refusal(() -> new PlainHole(-3, 5, 0), "was -3 mm"),
                refusal(() -> new PlainHole(3, Double.NaN, 0), "depth of the hole", "not a number"),
                refusal(() -> new PlainHole(3, 500, 0), "at most 100 mm", "was 500 mm"),
                refusal(() -> new PlainHole(3, 5, 5), "less than the hole's depth of 5 mm"),
                refusal(() -> new PlainHole(3, 5, -1), "plug", "was -1 mm"),
                refusal(() -> new CountersunkHole(8, 6, 2, 9, 0), "wider than its hole of 8 mm", "was 6 mm"),
                refusal(() -> new CountersunkHole(8, 8, 2, 9, 0), "plain hole"),
                refusal(() -> new CountersunkHole(5, 10, 12, 9, 0), "no deeper than the hole of 9 mm"),
                refusal(() -> CountersunkHole.ofAngle(8, 6, 90, 9, 0), "wider than its hole of 8 mm"),
                refusal(() -> CountersunkHole.ofAngle(5, 10, 10, 9, 0), "angle of the countersink must be 40 to 140"),
                refusal(() -> new Gouge(10, 0, 2), "width of the gouge"),
                refusal(() -> new ScratchGroove(100, 2, -1), "depth of the scratch", "was -1 mm"),
                refusal(() -> new WornArea(1e9, 2, 1), "at most 20000 mm"),
                refusal(() -> new SprayArea(100, 100, 0), "sprayed film"),
                refusal(() -> SprayArea.toHide(100, 100, -1), "hiding film"),
                refusal(() -> new RepairLine(" ", new PlainHole(3, 5, 0), Lie.VERTICAL, 1), "needs a name"),
                refusal(
                        () -> new RepairLine("holes", new PlainHole(3, 5, 0), Lie.VERTICAL, 0),
                        "count of holes must be 1 to 1000, was 0"),
                refusal(() -> Lie.named("sideways"), "facing up, vertical, overhead or deep overhead", "sideways"));
    }

    private static Arguments refusal(Supplier<?> attempt, String... words) {
        return Arguments.of(words[0], attempt, words);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wrong")
    void refusesWhatCannotBeAndSaysWhy(String name, Supplier<?> attempt, String[] words) {
        String message =
                assertThrows(IllegalArgumentException.class, attempt::get).getMessage();
        for (String word : words) {
            assertTrue(message.contains(word), message);
        }
    }
}
