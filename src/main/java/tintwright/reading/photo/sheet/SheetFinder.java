package tintwright.reading.photo.sheet;

import boofcv.abst.fiducial.QrCodeDetector;
import boofcv.alg.fiducial.qrcode.QrCode;
import boofcv.concurrency.BoofConcurrency;
import boofcv.factory.fiducial.ConfigQrCode;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.image.GrayU8;
import georegression.struct.point.Point2D_F64;
import georegression.struct.shapes.Polygon2D_F64;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.file.Pixels;
import tintwright.reading.photo.sheet.SheetSearch.Why;

/**
 * Finds the printed sheet in a photo by its corner codes. Three of the four are enough; black squares near the window
 * say how it bends. Looks at the picture coarsely first and in full when that is not enough.
 */
public final class SheetFinder {
    /** Longer side the first look is taken at, pixels; chosen by the study {@code SheetFinderStudy}. */
    private static final int FIRST_LOOK = 2400;
    /**
     * Below this longer side a picture is a small copy and is enlarged first; from it on a sheet over a quarter of the
     * picture is found at once. Some 1.6 pixels to a module of the codes can be read; chosen by the study
     * {@code SheetFinderStudy}.
     */
    private static final int SMALL_PICTURE = 1300;
    /** Fewest codes that tell how a sheet lies; a judgement of ours. */
    private static final int ENOUGH = 3;
    /** Corners of codes that belong to one sheet agree this well with a plane, mm; a bent sheet included; a judgement of ours. */
    private static final double ONE_SHEET_MM = 6;
    /** A code of fewer pixels on a side is too small to blame anything else; a judgement of ours. */
    private static final double SMALL_CODE = 45;

    /** Modules on a side of version 1, ISO/IEC 18004:2015, 5.3.1. */
    private static final int MODULES = 21;

    /** A judgement of ours. */
    private static final int BURNT = 253;

    /** A judgement of ours. */
    private static final int DARK = 20;
    /** Steepest change over the spread of the picture's greys, below which nothing in it is sharp; a judgement of ours. */
    private static final double BLURRED = 0.16;

    private final QrCodeDetector<GrayU8> detector;

    static {
        // A photo is read on the thread that asked; the library would start threads of its own.
        BoofConcurrency.USE_CONCURRENT = false;
    }

    private SheetFinder() {
        ConfigQrCode how = new ConfigQrCode();
        how.versionMaximum = 1;
        detector = FactoryFiducial.qrcode(how, GrayU8.class);
    }

    /** A corner code that was read: its corners in pixels of the photo, from its upper left one clockwise. */
    private record Read(CornerCode code, List<SheetPose.Seen> seen, double side, boolean mirrored) {}

    /** Some codes that lie as one sheet. */
    private record Together(SheetPose pose, List<Read> codes, double off) {}

    /**
     * @param photo  the whole photo, decoded
     * @param wanted the sign of the sheet to prefer when there are several; empty for any
     */
    public static SheetSearch find(Pixels photo, Optional<String> wanted) {
        int every = 1;
        while (Math.max(photo.greyWidth(every), photo.greyHeight(every)) > FIRST_LOOK) {
            every *= 2;
        }
        SheetSearch coarse = find(GreyPicture.of(photo, every), wanted);
        if (every == 1 || coarse instanceof SheetSearch.Found found && found.codes() == 4) {
            return coarse;
        }
        SheetSearch full = find(GreyPicture.of(photo, 1), wanted);
        return full instanceof SheetSearch.Missed && coarse instanceof SheetSearch.Found ? coarse : full;
    }

    /** As {@link #find(Pixels, Optional)}, in a picture that is grey already. */
    static SheetSearch find(GreyPicture picture, Optional<String> wanted) {
        return new SheetFinder().search(picture, wanted);
    }

    private SheetSearch search(GreyPicture picture, Optional<String> wanted) {
        List<GreyPicture> looks = looks(picture);
        List<Read> best = List.of();
        double smallestFailure = Double.POSITIVE_INFINITY;
        boolean failures = false;
        for (GreyPicture look : looks) {
            detector.process(look.image());
            List<Read> read = read(look);
            for (QrCode failed : detector.getFailures()) {
                failures = true;
                smallestFailure = Math.min(smallestFailure, side(failed.ppCorner) * 3 * look.scale());
            }
            if (read.size() > best.size()) {
                best = read;
            }
            List<Together> sheets = sheets(best);
            if (!sheets.isEmpty() && (sheets.get(0).codes().size() == 4 || look == looks.get(looks.size() - 1))) {
                return found(choose(sheets, wanted), best, picture);
            }
        }
        List<Together> sheets = sheets(best);
        if (!sheets.isEmpty()) {
            return found(choose(sheets, wanted), best, picture);
        }
        return new SheetSearch.Missed(why(picture, best, failures, smallestFailure));
    }

    private static List<GreyPicture> looks(GreyPicture picture) {
        List<GreyPicture> looks = new ArrayList<>();
        int side = Math.max(picture.width(), picture.height());
        if (side < SMALL_PICTURE) {
            looks.add(picture.enlarged(2));
            looks.add(picture.enlarged(4));
            looks.add(picture);
            return looks;
        }
        GreyPicture coarse = picture;
        while (Math.max(coarse.width(), coarse.height()) > FIRST_LOOK) {
            looks.add(0, coarse);
            coarse = coarse.halved();
        }
        looks.add(0, coarse);
        return looks;
    }

    private List<Read> read(GreyPicture look) {
        List<Read> out = new ArrayList<>();
        for (QrCode one : detector.getDetections()) {
            CornerCode.parse(one.message)
                    .ifPresent(code -> out.add(new Read(
                            code,
                            corners(code, one, look.scale()),
                            side(one.bounds) * look.scale(),
                            one.bitsTransposed || one.bounds.isCCW() != UPRIGHT_IS_CCW)));
        }
        return out;
    }

    /** Pixels grow downwards, so the corners of an upright code run the other way round than in a drawing. */
    private static final boolean UPRIGHT_IS_CCW = true;

    /** The outer corners of the three position patterns; the fourth corner of a code is only reckoned from them. */
    private static List<SheetPose.Seen> corners(CornerCode code, QrCode one, double scale) {
        Area place = code.layout().code(code.corner());
        double pattern = place.width() * 7 / MODULES;
        List<SheetPose.Seen> seen = new ArrayList<>();
        add(seen, one.ppCorner, place.left(), place.top(), pattern, scale);
        add(seen, one.ppRight, place.right() - pattern, place.top(), pattern, scale);
        add(seen, one.ppDown, place.left(), place.bottom() - pattern, pattern, scale);
        return seen;
    }

    private static void add(
            List<SheetPose.Seen> seen, Polygon2D_F64 corners, double left, double top, double side, double scale) {
        for (int i = 0; i < 4; i++) {
            Point2D_F64 p = corners.get(i);
            seen.add(new SheetPose.Seen(
                    i == 1 || i == 2 ? left + side : left,
                    i > 1 ? top + side : top,
                    new PixelPoint(p.x * scale, p.y * scale)));
        }
    }

    private static double side(Polygon2D_F64 four) {
        return four.size() < 4 ? 0 : Math.min(four.getSideLength(0), four.getSideLength(1));
    }

    /** @return codes that lie as one sheet, the sheet with most codes first, then the larger one */
    private static List<Together> sheets(List<Read> codes) {
        Map<String, List<Read>> bySign = new LinkedHashMap<>();
        codes.forEach(one -> bySign.computeIfAbsent(
                        one.code().shop() + one.code().layout().code(), sign -> new ArrayList<>())
                .add(one));
        List<Together> out = new ArrayList<>();
        bySign.values().forEach(same -> pick(same, 1, new ArrayList<>(), out));
        out.sort(Comparator.comparingInt((Together one) -> -one.codes().size())
                .thenComparingDouble(one -> -area(one.pose())));
        return out;
    }

    private static void pick(List<Read> same, int corner, List<Read> picked, List<Together> out) {
        if (corner > 4) {
            if (picked.size() >= ENOUGH) {
                together(picked).filter(one -> one.off() < ONE_SHEET_MM).ifPresent(out::add);
            }
            return;
        }
        for (Read one : same) {
            if (one.code().corner() == corner) {
                picked.add(one);
                pick(same, corner + 1, picked, out);
                picked.remove(picked.size() - 1);
            }
        }
        pick(same, corner + 1, picked, out);
    }

    private static Optional<Together> together(List<Read> codes) {
        List<SheetPose.Seen> seen = new ArrayList<>();
        codes.forEach(one -> seen.addAll(one.seen()));
        SheetPose pose = SheetPose.plane(codes.get(0).code().layout(), seen);
        double worst = 0;
        for (SheetPose.Seen one : seen) {
            PixelPoint there = pose.at(one.x(), one.y());
            double scale = pose.pixelsPerMm(one.x(), one.y());
            worst = Math.max(worst, there.distance(one.pixel()) / Math.max(scale, 1e-6));
        }
        return Double.isFinite(worst) ? Optional.of(new Together(pose, List.copyOf(codes), worst)) : Optional.empty();
    }

    private static double area(SheetPose pose) {
        List<PixelPoint> c = pose.corners();
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            PixelPoint a = c.get(i);
            PixelPoint b = c.get((i + 1) % 4);
            sum += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(sum) / 2;
    }

    private static Together choose(List<Together> sheets, Optional<String> wanted) {
        return sheets.stream()
                .filter(one ->
                        wanted.isPresent() && one.codes().get(0).code().shop().equals(wanted.get()))
                .findFirst()
                .orElse(sheets.get(0));
    }

    private static SheetSearch found(Together sheet, List<Read> all, GreyPicture picture) {
        if (sheet.pose().mirrored()) {
            return new SheetSearch.Missed(Why.MIRRORED);
        }
        List<SheetPose.Seen> seen = new ArrayList<>();
        sheet.codes().forEach(one -> seen.addAll(one.seen()));
        seen.addAll(DarkSquares.near(sheet.pose(), picture));
        List<String> remarks = new ArrayList<>();
        String shop = sheet.codes().get(0).code().shop();
        all.stream()
                .filter(one -> !sheet.codes().contains(one))
                .map(one -> one.code().shop())
                .findFirst()
                .ifPresent(other -> remarks.add("A second sheet lies in the picture (sign " + other + "); the one with"
                        + " sign " + shop + (other.equals(shop) ? " that shows more of its codes" : "")
                        + " was read. Take the other away, or take a photo of each."));
        return new SheetSearch.Found(
                sheet.pose().bentThrough(seen), shop, sheet.codes().size(), remarks);
    }

    private static Why why(GreyPicture picture, List<Read> read, boolean failures, double smallestFailure) {
        if (read.stream().anyMatch(Read::mirrored)) {
            return Why.MIRRORED;
        }
        if (!read.isEmpty()) {
            return read.stream().anyMatch(one -> one.side() < SMALL_CODE && !leavesThePicture(one, picture))
                    ? Why.TOO_SMALL
                    : Why.CUT_OFF;
        }
        if (picture.percentile(0.99) < DARK) {
            return Why.TOO_DARK;
        }
        if (picture.percentile(0.6) >= BURNT) {
            return Why.BURNT_OUT;
        }
        if (Math.max(picture.width(), picture.height()) < SMALL_PICTURE) {
            return Why.SMALL_COPY;
        }
        int spread = Math.max(1, picture.percentile(0.98) - picture.percentile(0.02));
        if (picture.steepest() < BLURRED * spread) {
            return Why.BLURRED;
        }
        if (failures) {
            return smallestFailure < SMALL_CODE ? Why.TOO_SMALL : Why.BLURRED;
        }
        return Why.NOT_SEEN;
    }

    /** @return true when the sheet, as this one code alone shows it to lie, does not fit into the picture */
    private static boolean leavesThePicture(Read one, GreyPicture picture) {
        SheetPose rough = SheetPose.plane(one.code().layout(), one.seen());
        for (int corner = 1; corner <= 4; corner++) {
            Area code = one.code().layout().code(corner);
            PixelPoint there = rough.at(code.middleX(), code.middleY());
            if (there.x() < 0
                    || there.y() < 0
                    || there.x() > picture.width() * picture.scale()
                    || there.y() > picture.height() * picture.scale()) {
                return true;
            }
        }
        return false;
    }
}
