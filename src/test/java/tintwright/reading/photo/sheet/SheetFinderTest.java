package tintwright.reading.photo.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import tintwright.reading.photo.card.PixelPoint;

/** The printed page laid into made-up scenes and found again; each place is compared with the ray that made it. */
class SheetFinderTest {
    private static final String SHOP = "K7QD";

    private static MadeUpView view(double fill, double turn, double tilt, double direction, double radius) {
        return new MadeUpView(
                SheetLayout.A4,
                1600,
                1200,
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

    private static SheetSearch.Why missed(GreyPicture photo) {
        return assertInstanceOf(SheetSearch.Missed.class, SheetFinder.find(photo, Optional.empty()))
                .why();
    }

    private static GreyPicture photo(MadeUpView view, MadeUpGreys.Taken taken) {
        return MadeUpGreys.photo(view, SheetLayout.A4, SHOP, 2, taken, 11);
    }

    @Test
    void threeCodesAreEnough() {
        GreyPicture photo = photo(view(0.3, 10, 15, 60, Double.POSITIVE_INFINITY), MadeUpGreys.Taken.WELL);
        MadeUpView view = view(0.3, 10, 15, 60, Double.POSITIVE_INFINITY);
        cover(photo, view, SheetLayout.A4.code(3));
        SheetSearch.Found found = assertInstanceOf(SheetSearch.Found.class, SheetFinder.find(photo, Optional.empty()));
        assertEquals(3, found.codes());
        double off = missed(found.pose(), view, 1);
        assertTrue(off < 1.5, "places missed by " + off + " mm");
        cover(photo, view, SheetLayout.A4.code(1));
        assertEquals(SheetSearch.Why.CUT_OFF, missed(photo));
    }

    /** Puts a thumb on it. */
    private static void cover(GreyPicture photo, MadeUpView view, Area area) {
        double[] middle = view.pixel(area.middleX(), area.middleY());
        for (int y = -40; y <= 40; y++) {
            for (int x = -40; x <= 40; x++) {
                int column = (int) middle[0] + x;
                int row = (int) middle[1] + y;
                if (x * x + y * y < 1600 && column >= 0 && row >= 0 && column < photo.width() && row < photo.height()) {
                    photo.values()[row * photo.width() + column] = 110;
                }
            }
        }
    }

    @Test
    void aMirroredPictureIsSaid() {
        GreyPicture photo = photo(view(0.3, 0, 10, 0, Double.POSITIVE_INFINITY), MadeUpGreys.Taken.WELL);
        byte[] turned = new byte[photo.values().length];
        for (int y = 0; y < photo.height(); y++) {
            for (int x = 0; x < photo.width(); x++) {
                turned[y * photo.width() + x] = photo.values()[y * photo.width() + photo.width() - 1 - x];
            }
        }
        assertEquals(SheetSearch.Why.MIRRORED, missed(new GreyPicture(photo.width(), photo.height(), turned, 1)));
    }

    @Test
    void eachObstacleIsNamed() {
        MadeUpView near = view(0.3, 5, 10, 0, Double.POSITIVE_INFINITY);
        MadeUpGreys.Taken shaken = new MadeUpGreys.Taken(0.8, 0.1, 0, 0.005, 14, 0.9f, Integer.MAX_VALUE);
        assertEquals(SheetSearch.Why.BLURRED, missed(photo(near, shaken)));
        MadeUpGreys.Taken night = new MadeUpGreys.Taken(0.0001, 0.1, 0, 0.00001, 0.6, 0.9f, Integer.MAX_VALUE);
        assertEquals(SheetSearch.Why.TOO_DARK, missed(photo(near, night)));
        MadeUpGreys.Taken burnt = new MadeUpGreys.Taken(40, 0.1, 0, 0.005, 0.6, 0.9f, Integer.MAX_VALUE);
        assertEquals(SheetSearch.Why.BURNT_OUT, missed(photo(near, burnt)));
        MadeUpView far = view(0.012, 5, 10, 0, Double.POSITIVE_INFINITY);
        String small = missed(photo(far, MadeUpGreys.Taken.WELL)).sentence();
        assertTrue(small.contains("nearer"), small);
        assertEquals(SheetSearch.Why.NOT_SEEN, missed(checked(1600, 1200)));
        assertEquals(SheetSearch.Why.SMALL_COPY, missed(checked(640, 480)));
    }

    private static GreyPicture checked(int width, int height) {
        GreyPicture picture = new GreyPicture(width, height, new byte[width * height], 1);
        for (int i = 0; i < picture.values().length; i++) {
            picture.values()[i] = (byte) ((i % width / 40 + i / width / 40) % 2 == 0 ? 60 : 190);
        }
        return picture;
    }

    @Test
    void aCopyFromAChatIsReadWhereItsCodesCanBe() {
        MadeUpGreys.Taken chat = new MadeUpGreys.Taken(0.8, 0.15, 0, 0.012, 1.0, 0.6f, 640);
        MadeUpGreys.Taken larger = new MadeUpGreys.Taken(0.8, 0.15, 0, 0.012, 1.0, 0.6f, 1300);
        MadeUpView near = view(0.4, 20, 10, 40, Double.POSITIVE_INFINITY);
        MadeUpView far = view(0.25, 20, 10, 40, Double.POSITIVE_INFINITY);
        assertInstanceOf(SheetSearch.Found.class, SheetFinder.find(photo(near, chat), Optional.empty()));
        assertEquals(SheetSearch.Why.SMALL_COPY, missed(photo(far, chat)));
        assertInstanceOf(SheetSearch.Found.class, SheetFinder.find(photo(far, larger), Optional.empty()));
    }

    @Test
    void aSecondSheetIsNamed() {
        MadeUpView left = sideways(-0.45);
        MadeUpView right = sideways(0.45);
        GreyPicture one = MadeUpGreys.photo(left, SheetLayout.A4, SHOP, 0, MadeUpGreys.Taken.WELL, 3);
        GreyPicture two = MadeUpGreys.photo(right, SheetLayout.A4, "Q3TW", 0, MadeUpGreys.Taken.WELL, 3);
        for (int y = 0; y < one.height(); y++) {
            System.arraycopy(
                    two.values(), y * two.width() + 800, one.values(), y * one.width() + 800, one.width() - 800);
        }
        SheetSearch.Found found = assertInstanceOf(SheetSearch.Found.class, SheetFinder.find(one, Optional.of("Q3TW")));
        assertEquals("Q3TW", found.shop());
        assertEquals(1, found.remarks().size());
        assertTrue(found.remarks().get(0).contains(SHOP), found.remarks().get(0));
    }

    private static MadeUpView sideways(double offX) {
        return new MadeUpView(SheetLayout.A4, 1600, 1200, 0.25, 0.1, 0.1, 0, offX, 0, Double.POSITIVE_INFINITY, 0);
    }
}
