package tintwright.reading.photo.sheet;

import boofcv.alg.fiducial.qrcode.QrCode;
import boofcv.alg.fiducial.qrcode.QrCodeEncoder;
import boofcv.alg.fiducial.qrcode.QrCodeGenerator;
import java.util.BitSet;

/**
 * The dark and light squares of a QR code with any text in it (ISO/IEC 18004, level M), for a screen or a terminal.
 */
public final class CodePattern {
    /** Light squares that must stand around it on every side (ISO/IEC 18004, 5.3.8). */
    public static final int QUIET = 4;

    private final int side;
    private final BitSet dark = new BitSet();

    private CodePattern(int side) {
        this.side = side;
    }

    /** @throws IllegalArgumentException when the text is longer than such a code holds */
    public static CodePattern of(String text) {
        QrCode code = new QrCodeEncoder()
                .setError(QrCode.ErrorLevel.M)
                .addAutomatic(text)
                .fixate();
        CodePattern pattern = new CodePattern(code.getNumberOfModules());
        CornerCode.Rectangles drawn = new CornerCode.Rectangles(new Area(0, 0, pattern.side, pattern.side));
        QrCodeGenerator generator = new QrCodeGenerator(pattern.side);
        generator.setRender(drawn);
        generator.render(code);
        for (Area area : drawn.all()) {
            for (long y = Math.round(area.top()); y < Math.round(area.top() + area.height()); y++) {
                for (long x = Math.round(area.left()); x < Math.round(area.left() + area.width()); x++) {
                    pattern.dark.set((int) (y * pattern.side + x));
                }
            }
        }
        return pattern;
    }

    /** @return squares across and down, without the quiet ones */
    public int side() {
        return side;
    }

    /** @return whether this square is dark; squares outside are light */
    public boolean dark(int x, int y) {
        return x >= 0 && y >= 0 && x < side && y < side && dark.get(y * side + x);
    }
}
