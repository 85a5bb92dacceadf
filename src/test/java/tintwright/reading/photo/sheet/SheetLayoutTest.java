package tintwright.reading.photo.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SheetLayoutTest {
    static List<SheetLayout> layouts() {
        return SheetLayout.ALL;
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void nothingOnTheSheetLiesOnAnythingElse(SheetLayout layout) {
        List<Area> all = new ArrayList<>();
        for (int corner = 1; corner <= 4; corner++) {
            all.add(layout.code(corner));
        }
        all.add(layout.window());
        all.add(layout.dab());
        all.add(layout.tape());
        all.add(layout.name(layout.tape()));
        layout.places().forEach(place -> {
            all.add(place);
            all.add(layout.name(place));
        });
        all.addAll(layout.dots());
        all.addAll(layout.paper());
        for (int i = 0; i < all.size(); i++) {
            Area one = all.get(i);
            assertTrue(
                    one.left() >= 5
                            && one.top() >= 5
                            && one.right() <= layout.width() - 5
                            && one.bottom() <= layout.height() - 5,
                    one + " comes nearer to the edge than printers print");
            for (int j = 0; j < i; j++) {
                assertFalse(one.overlaps(all.get(j)), one + " lies on " + all.get(j));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void codesKeepTheirQuietZone(SheetLayout layout) {
        double module = layout.code(1).width() / 21;
        for (int corner = 1; corner <= 4; corner++) {
            Area code = layout.code(corner);
            // ISO/IEC 18004, 5.3.8: four modules of clear paper on every side.
            Area zone =
                    Area.about(code.middleX(), code.middleY(), code.width() + 8 * module, code.height() + 8 * module);
            List<Area> printed = new ArrayList<>(layout.places());
            printed.addAll(layout.dots());
            printed.add(layout.window());
            for (Area one : printed) {
                assertFalse(zone.overlaps(one), one + " lies in the quiet zone of corner " + corner);
            }
            assertTrue(zone.left() >= 0 && zone.top() >= 0);
            assertTrue(zone.right() <= layout.width() && zone.bottom() <= layout.height());
        }
    }

    @Test
    void aShopsSignDependsOnItsNameAlone() {
        assertEquals(CornerCode.signOf("Gull shed"), CornerCode.signOf(" gull shed"));
        assertFalse(CornerCode.signOf("Gull shed").equals(CornerCode.signOf("Tern shed")));
        assertTrue(CornerCode.signOf("Gull shed").matches("[A-Z0-9]{4}"));
    }

    @Test
    void onlyOurOwnCodesAreUnderstood() {
        CornerCode code = new CornerCode(SheetLayout.LETTER, "K7QD", 3);
        assertEquals(code, CornerCode.parse(code.text()).orElseThrow());
        for (String other : List.of("", "HELLO", "TWS1-A4-K7QD-5", "TWS1-ZZ-K7QD-1", "TWS1-A4-K7Q-1")) {
            assertTrue(CornerCode.parse(other).isEmpty(), other);
        }
    }
}
