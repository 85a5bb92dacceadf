package tintwright.reading.photo.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * Where everything on the sheet is: a window that is cut out, through which the hull shows, places for chips round it,
 * one for layers of plumber's tape, one for a dab at the window's edge, a code at each corner, and black squares that
 * tell how the sheet bends. Millimetres from the upper left corner. All that is not named here is plain paper.
 *
 * <p>The layout is ours; its sizes were chosen so that it prints on any printer with a margin of 10 mm, that a chip
 * drawn down on a card 30 mm wide fits its place, and that the codes are found by the study {@code SheetFinderStudy}.
 *
 * @param code   what the corner codes call this layout
 * @param width  of the paper, mm
 * @param height of the paper, mm
 * @param window the cut-out
 * @param dab    where a dab of the cup lies, its upper edge on the window's lower edge
 * @param tape   where layers of white plumber's tape are laid
 * @param places for chips, numbered from 1 in this order: down the left side, down the right side, then the bottom
 * @param dots   black squares
 * @param paper  patches that stay plain, all over the sheet; those beside the window first
 */
public record SheetLayout(
        String code,
        double width,
        double height,
        Area window,
        Area dab,
        Area tape,
        List<Area> places,
        List<Area> dots,
        List<Area> paper) {
    /** Kept free on every side: a printer's edge; common practice, no source. */
    private static final double MARGIN = 10;
    /** Side of a corner code: 21 modules of 1.3 mm; a judgement of ours. */
    private static final double CODE = 27.3;
    /** Clear paper round a code: more than the four modules of ISO/IEC 18004, 5.3.8. */
    private static final double QUIET = 7;

    /** A judgement of ours. */
    private static final double PLACE = 34;
    /** Room under a place for a name in ink; a judgement of ours. */
    private static final double NAME = 9;

    /** Bare paper between the places of the bottom row; a judgement of ours. */
    private static final double GAP = 6;

    /** A judgement of ours. */
    private static final double WINDOW_WIDTH = 64;

    /** A judgement of ours. */
    private static final double WINDOW_HEIGHT = 84;

    /** A judgement of ours. */
    private static final double DAB_HEIGHT = 26;

    /** A judgement of ours. */
    private static final double DOT = 5;

    /** A judgement of ours. */
    private static final double PATCH = 6;
    /** How many patches of plain paper lie beside the window; a judgement of ours. */
    private static final int RIM = 8;

    /** For A4 paper, 210 by 297 mm (ISO 216). */
    public static final SheetLayout A4 = of("A4", 210, 297);
    /** For US letter paper, 8.5 by 11 inches. */
    public static final SheetLayout LETTER = of("US", 215.9, 279.4);
    /** All of them. */
    public static final List<SheetLayout> ALL = List.of(A4, LETTER);

    public SheetLayout {
        places = List.copyOf(places);
        dots = List.copyOf(dots);
        paper = List.copyOf(paper);
    }

    private static SheetLayout of(String code, double width, double height) {
        double middle = width / 2;
        double first = MARGIN + CODE + QUIET;
        double low = height - MARGIN - PLACE - NAME;
        Area window = new Area(middle - WINDOW_WIDTH / 2, first + 36, WINDOW_WIDTH, WINDOW_HEIGHT);
        Area dab = new Area(middle - PLACE / 2, window.bottom(), PLACE, DAB_HEIGHT);
        Area tape = new Area(middle - PLACE / 2, low, PLACE, PLACE);
        List<Area> places = new ArrayList<>();
        List<Area> beside = new ArrayList<>();
        double step = (height - 2 * first - PLACE - NAME) / 3;
        for (double left : new double[] {MARGIN, width - MARGIN - PLACE}) {
            double edge = left < middle ? left + PLACE + 4.5 : left - 4.5;
            for (int row = 0; row < 4; row++) {
                Area place = new Area(left, first + row * step, PLACE, PLACE);
                places.add(place);
                beside.add(Area.about(edge, place.middleY(), PATCH, PATCH));
            }
        }
        for (double left : new double[] {tape.left() - GAP - PLACE, tape.right() + GAP}) {
            Area place = new Area(left, low, PLACE, PLACE);
            places.add(place);
            beside.add(Area.about(place.middleX(), low - 4.5, PATCH, PATCH));
        }
        beside.add(Area.about(middle, low - 4.5, PATCH, PATCH));
        List<Area> paper = new ArrayList<>();
        for (double x : new double[] {window.left() - 6, window.right() + 6}) {
            for (double along : new double[] {0.2, 0.5, 0.8}) {
                paper.add(Area.about(x, window.top() + along * WINDOW_HEIGHT, PATCH, PATCH));
            }
        }
        paper.add(Area.about(middle - 14, window.top() - 6, PATCH, PATCH));
        paper.add(Area.about(middle + 14, window.top() - 6, PATCH, PATCH));
        paper.addAll(beside);
        List<Area> dots = new ArrayList<>();
        for (double x : new double[] {window.left() - 7, window.right() + 7}) {
            dots.add(Area.about(x, window.top() - 7, DOT, DOT));
            dots.add(Area.about(x, window.bottom() + 7, DOT, DOT));
        }
        double between = (places.get(1).bottom() + NAME + places.get(2).top()) / 2;
        dots.add(Area.about(places.get(1).right() + 4.5, between, DOT, DOT));
        dots.add(Area.about(places.get(5).left() - 4.5, between, DOT, DOT));
        return new SheetLayout(code, width, height, window, dab, tape, places, dots, paper);
    }

    /**
     * @param corner 1 to 4: upper left, upper right, lower right, lower left
     * @return where its code is printed
     */
    public Area code(int corner) {
        boolean right = corner == 2 || corner == 3;
        boolean low = corner > 2;
        return new Area(right ? width - MARGIN - CODE : MARGIN, low ? height - MARGIN - CODE : MARGIN, CODE, CODE);
    }

    /** @return the strip under a place where a name goes in ink */
    public Area name(Area place) {
        return new Area(place.left(), place.bottom(), place.width(), NAME);
    }

    /** @return the patches of paper beside the window: what lights them lights the hull */
    public List<Area> rim() {
        return paper.subList(0, RIM);
    }
}
