package tintwright.paper;

import java.util.ArrayList;
import java.util.List;
import tintwright.reading.photo.sheet.Area;
import tintwright.reading.photo.sheet.CornerCode;
import tintwright.reading.photo.sheet.SheetLayout;

/** The sheet that lies on the hull while the photo is taken, as a PDF page to print at full size. */
public final class HullSheet {
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final int BLACK = 0x000000;
    private static final int LINE = 0x8a8f93;
    private static final double SMALL = 7.5;
    private static final double LINE_STEP = 3.6;

    private final SheetLayout layout;
    private final Type type;
    private final List<Mark> marks = new ArrayList<>();

    private HullSheet(SheetLayout layout, Type type) {
        this.layout = layout;
        this.type = type;
    }

    /**
     * @param layout which paper
     * @param shop   sign of the shop, four letters or digits: {@link CornerCode#signOf}
     * @return one page
     */
    public static byte[] pdf(SheetLayout layout, String shop) {
        Paper paper = new Paper(layout.width() * POINTS_PER_MM, layout.height() * POINTS_PER_MM, 0, SMALL, SMALL);
        return PdfSheet.drawn(
                "Hull sheet " + layout.code() + " " + shop,
                (layout.code() + shop).hashCode(),
                paper,
                type -> List.of(new HullSheet(layout, type).page(shop)));
    }

    private List<Mark> page(String shop) {
        for (int corner = 1; corner <= 4; corner++) {
            new CornerCode(layout, shop, corner).dark().forEach(area -> box(area, BLACK, Mark.NONE));
        }
        layout.dots().forEach(area -> box(area, BLACK, Mark.NONE));
        for (int i = 0; i < layout.places().size(); i++) {
            place(layout.places().get(i), Integer.toString(i + 1));
        }
        place(layout.tape(), "tape");
        lines(layout.tape(), 12, List.of("White plumber's tape,", "8 layers or more,", "pressed flat"));
        box(layout.window(), Mark.NONE, LINE);
        centred(layout.window(), layout.window().height() / 2 - 3, 12, true, "Cut this out");
        centred(layout.window(), layout.window().height() / 2 + 4, SMALL, false, "The hull shows here.");
        box(layout.dab(), Mark.NONE, LINE);
        lines(layout.dab(), 8, List.of("A dab of the cup:", "its chip lies here,", "its edge at the window"));
        heading(shop);
        return marks;
    }

    private void heading(String shop) {
        double left = layout.code(1).right() + 7;
        Area room = new Area(left, layout.code(1).top(), layout.width() - 2 * left, 27);
        centred(room, 4, 15, true, "This side up");
        List<String> words = List.of(
                "Print at full size on plain white paper. Cut the window out.",
                "Tape the sheet flat on the clean hull. Lay cured chips in the places",
                "and write their names under them; leave the rest of the paper bare.",
                "Open shade, no flash, all four corner codes in the picture.",
                "Sheet " + shop + ", " + layout.code());
        for (int i = 0; i < words.size(); i++) {
            centred(room, 10 + i * LINE_STEP, SMALL, false, words.get(i));
        }
    }

    private void place(Area place, String name) {
        box(place, Mark.NONE, LINE);
        Area strip = layout.name(place);
        words(strip.left(), strip.top() + 4, SMALL, false, name);
        box(new Area(strip.left() + 6, strip.bottom() - 2, strip.width() - 6, 0.1), LINE, Mark.NONE);
    }

    private void lines(Area within, double from, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            centred(within, from + i * LINE_STEP, SMALL, false, lines.get(i));
        }
    }

    private void centred(Area within, double down, double size, boolean bold, String words) {
        double width = type.width(words, size) / POINTS_PER_MM;
        words(within.middleX() - width / 2, within.top() + down, size, bold, words);
    }

    private void words(double x, double y, double size, boolean bold, String words) {
        marks.add(new Mark.Words(x * POINTS_PER_MM, up(y), size, bold, words));
    }

    private void box(Area area, int fill, int line) {
        marks.add(new Mark.Box(
                area.left() * POINTS_PER_MM,
                up(area.bottom()),
                area.width() * POINTS_PER_MM,
                area.height() * POINTS_PER_MM,
                fill,
                line));
    }

    /** @return pt from the lower edge, of mm from the upper edge */
    private double up(double mm) {
        return (layout.height() - mm) * POINTS_PER_MM;
    }
}
