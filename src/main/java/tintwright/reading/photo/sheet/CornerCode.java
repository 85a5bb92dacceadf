package tintwright.reading.photo.sheet;

import boofcv.alg.drawing.FiducialRenderEngine;
import boofcv.alg.fiducial.qrcode.QrCode;
import boofcv.alg.fiducial.qrcode.QrCodeEncoder;
import boofcv.alg.fiducial.qrcode.QrCodeGenerator;
import boofcv.struct.image.GrayU8;
import georegression.struct.point.Point2D_F64;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the QR code at one corner of a sheet says: which layout, whose sheet, which corner. A version 1 symbol of 21
 * modules with a quarter of it for mending (ISO/IEC 18004, level Q), such as {@code TWS1-A4-K7QD-2}.
 *
 * @param layout the printed layout
 * @param shop   the sign of the shop whose sheet it is, four letters or digits
 * @param corner 1 to 4: upper left, upper right, lower right, lower left
 */
public record CornerCode(SheetLayout layout, String shop, int corner) {
    private static final Pattern TEXT = Pattern.compile("TWS1-([A-Z0-9]{2})-([A-Z0-9]{4})-([1-4])");
    /** Letters and digits that are not taken for one another. */
    private static final String SIGNS = "ABCDEFGHJKLMNPQRTUVWXY3479";

    /** A judgement of ours. */
    private static final int SIGN_LENGTH = 4;

    public CornerCode {
        if (!shop.matches("[A-Z0-9]{4}") || corner < 1 || corner > 4) {
            throw new IllegalArgumentException("a corner code needs a shop's sign of four letters or digits and a"
                    + " corner 1 to 4, were \"" + shop + "\" and " + corner);
        }
    }

    /** @return the sign that the sheets of a shop carry: the same for the same name */
    public static String signOf(String shopName) {
        long left = Math.floorMod(shopName.strip().toLowerCase(Locale.ROOT).hashCode() * 2_654_435_761L, (long)
                Math.pow(SIGNS.length(), 4));
        StringBuilder sign = new StringBuilder();
        for (int i = 0; i < SIGN_LENGTH; i++) {
            sign.append(SIGNS.charAt((int) (left % SIGNS.length())));
            left /= SIGNS.length();
        }
        return sign.toString();
    }

    /** @return what a code's text says; empty when it is no code of ours */
    static Optional<CornerCode> parse(String text) {
        Matcher parts = TEXT.matcher(text);
        if (!parts.matches()) {
            return Optional.empty();
        }
        return SheetLayout.ALL.stream()
                .filter(layout -> layout.code().equals(parts.group(1)))
                .findFirst()
                .map(layout -> new CornerCode(layout, parts.group(2), Integer.parseInt(parts.group(3))));
    }

    /** @return what the code holds */
    String text() {
        return "TWS1-" + layout.code() + "-" + shop + "-" + corner;
    }

    /** @return the dark rectangles of the code, in its place on the sheet */
    public List<Area> dark() {
        Area place = layout.code(corner);
        Rectangles drawn = new Rectangles(place);
        QrCode code = new QrCodeEncoder()
                .setVersion(1)
                .setError(QrCode.ErrorLevel.Q)
                .addAlphanumeric(text())
                .fixate();
        QrCodeGenerator generator = new QrCodeGenerator(place.width());
        generator.setRender(drawn);
        generator.render(code);
        return drawn.all;
    }

    /** Takes what the library draws and keeps it as rectangles. */
    static final class Rectangles extends FiducialRenderEngine {
        private final Area place;
        private final List<Area> all = new ArrayList<>();

        Rectangles(Area place) {
            this.place = place;
        }

        List<Area> all() {
            return all;
        }

        @Override
        public void init() {}

        @Override
        public void setGray(double value) {}

        @Override
        public void circle(double centreX, double centreY, double radius) {
            throw new IllegalStateException("a code of squares asked for a circle");
        }

        @Override
        public void square(double x, double y, double side, double thickness) {
            rectangle(x, y, x + side, y + thickness);
            rectangle(x, y + side - thickness, x + side, y + side);
            rectangle(x, y + thickness, x + thickness, y + side - thickness);
            rectangle(x + side - thickness, y + thickness, x + side, y + side - thickness);
        }

        @Override
        public void rectangle(double left, double top, double right, double bottom) {
            all.add(new Area(place.left() + left, place.top() + top, right - left, bottom - top));
        }

        @Override
        public void draw(GrayU8 image, double left, double top, double right, double bottom) {
            throw new IllegalStateException("a code of squares asked for a picture");
        }

        @Override
        public void inputToDocument(double x, double y, Point2D_F64 document) {
            document.setTo(x, y);
        }
    }
}
