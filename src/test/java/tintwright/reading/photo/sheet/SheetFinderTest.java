package tintwright.reading.photo.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import tintwright.reading.photo.PixelPoint;

/** The printed page laid into made-up scenes and found again; each place is compared with the ray that made it. */
class SheetFinderTest {
    private static final String SHOP = "K7QD";

    private static MadeUpView view(double fill, double turn, double tilt, double direction, double radius) {
        return new MadeUpView(
                SheetLayout.A4,
                2000,
                1500,
                fill,
                Math.toRadians(turn),
                Math.toRadians(tilt),
                Math.toRadians(direction),
                0.05,
                -0.05,
                radius,
                Math.toRadians(90));
    }

    /** @return mm by which the worst place of the sheet is missed */
    static double missed(SheetPose pose, MadeUpView view, double scale) {
        double worst = 0;
        java.util.List<Area> all = new java.util.ArrayList<>(pose.layout().places());
        all.add(pose.layout().window());
        all.add(pose.layout().tape());
        all.addAll(pose.layout().paper());
        for (Area area : all) {
            PixelPoint there = pose.at(area.middleX(), area.middleY());
            double[] true_ = view.pixel(area.middleX(), area.middleY());
            double mm = pose.pixelsPerMm(area.middleX(), area.middleY());
            worst = Math.max(worst, Math.hypot(there.x() - true_[0] * scale, there.y() - true_[1] * scale) / mm);
        }
        return worst;
    }

    @Test
    void foundAtAnyTurnAndTilted() {
        double[][] cases = {{0.3, 0, 0, 0}, {0.2, 135, 30, 70}, {0.15, 200, 40, 200}, {0.1, 290, 20, 310}};
        for (double[] one : cases) {
            MadeUpView view = view(one[0], one[1], one[2], one[3], Double.POSITIVE_INFINITY);
            GreyPicture photo = MadeUpGreys.photo(view, SheetLayout.A4, SHOP, 2, MadeUpGreys.Taken.WELL, 7);
            SheetSearch.Found found =
                    assertInstanceOf(SheetSearch.Found.class, SheetFinder.find(photo, Optional.empty()));
            assertEquals(SHOP, found.shop());
            assertEquals(SheetLayout.A4, found.pose().layout());
            double off = missed(found.pose(), view, 1);
            assertTrue(off < 1, "places missed by " + off + " mm");
        }
    }

    @Test
    void foundOnACurvedSide() {
        MadeUpView view = view(0.3, 20, 35, 0, 600);
        GreyPicture photo = MadeUpGreys.photo(view, SheetLayout.A4, SHOP, 0, MadeUpGreys.Taken.WELL, 8);
        SheetSearch.Found found = assertInstanceOf(SheetSearch.Found.class, SheetFinder.find(photo, Optional.empty()));
        double off = missed(found.pose(), view, 1);
        assertTrue(off < 4, "places missed by " + off + " mm");
    }
}
