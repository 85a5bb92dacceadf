package tintwright.reading.photo.sheet;

import boofcv.alg.geo.h.HomographyDirectLinearTransform;
import boofcv.struct.geo.AssociatedPair;
import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import tintwright.reading.photo.card.PixelPoint;

/**
 * Where a sheet lies in a photo: from millimetres on the sheet to pixels of the upright photo. A homography (the sheet
 * as a plane) and, where black squares show that it bends, a second-degree correction to it.
 *
 * <p>Source: Hartley and Zisserman (2004), Multiple View Geometry in Computer Vision, 4.1 (direct linear transform).
 */
public final class SheetPose {
    /** A bend of one millimetre at the sheet's edge is usual; more must be shown by the points. Chosen by us. */
    private static final double RIDGE = 0.05;

    /** A judgement of ours. */
    private static final int TERMS = 6;

    private final SheetLayout layout;
    private final DMatrixRMaj toPixels;
    private final double[][] bend;

    private SheetPose(SheetLayout layout, DMatrixRMaj toPixels, double[][] bend) {
        this.layout = layout;
        this.toPixels = toPixels;
        this.bend = bend;
    }

    /**
     * A point of the sheet that was seen in the photo.
     *
     * @param x     mm on the sheet
     * @param y     mm on the sheet
     * @param pixel where it was seen
     */
    record Seen(double x, double y, PixelPoint pixel) {}

    /** @param seen at least four, no three of them in a line */
    static SheetPose plane(SheetLayout layout, List<Seen> seen) {
        List<AssociatedPair> pairs = new ArrayList<>();
        for (Seen one : seen) {
            pairs.add(new AssociatedPair(
                    one.x(), one.y(), one.pixel().x(), one.pixel().y()));
        }
        DMatrixRMaj found = new DMatrixRMaj(3, 3);
        if (!new HomographyDirectLinearTransform(true).process(pairs, found)) {
            throw new IllegalArgumentException("the corners of the sheet lie in a line; move them apart");
        }
        return new SheetPose(layout, found, new double[2][TERMS]);
    }

    /** @return the same pose, bent as far as these points say */
    SheetPose bentThrough(List<Seen> seen) {
        DMatrixRMaj back = new DMatrixRMaj(3, 3);
        CommonOps_DDRM.invert(toPixels, back);
        DMatrixRMaj normal = new DMatrixRMaj(TERMS, TERMS);
        DMatrixRMaj right = new DMatrixRMaj(TERMS, 2);
        for (int k = 0; k < TERMS; k++) {
            normal.set(k, k, RIDGE);
        }
        for (Seen one : seen) {
            double[] flat = apply(back, one.pixel().x(), one.pixel().y());
            double[] terms = terms(one.x(), one.y());
            for (int i = 0; i < TERMS; i++) {
                for (int j = 0; j < TERMS; j++) {
                    normal.add(i, j, terms[i] * terms[j]);
                }
                right.add(i, 0, terms[i] * (flat[0] - one.x()));
                right.add(i, 1, terms[i] * (flat[1] - one.y()));
            }
        }
        DMatrixRMaj solved = new DMatrixRMaj(TERMS, 2);
        var solver = LinearSolverFactory_DDRM.symmPosDef(TERMS);
        solver.setA(normal);
        solver.solve(right, solved);
        double[][] bent = new double[2][TERMS];
        for (int i = 0; i < TERMS; i++) {
            bent[0][i] = solved.get(i, 0);
            bent[1][i] = solved.get(i, 1);
        }
        return new SheetPose(layout, toPixels, bent);
    }

    private double[] terms(double x, double y) {
        double u = 2 * x / layout.width() - 1;
        double v = 2 * y / layout.height() - 1;
        return new double[] {1, u, v, u * u, u * v, v * v};
    }

    private static double[] apply(DMatrixRMaj h, double x, double y) {
        double w = h.get(2, 0) * x + h.get(2, 1) * y + h.get(2, 2);
        return new double[] {
            (h.get(0, 0) * x + h.get(0, 1) * y + h.get(0, 2)) / w, (h.get(1, 0) * x + h.get(1, 1) * y + h.get(1, 2)) / w
        };
    }

    /** @return which sheet it is */
    public SheetLayout layout() {
        return layout;
    }

    /**
     * @param x mm on the sheet
     * @param y mm on the sheet
     * @return where that is in the photo
     */
    public PixelPoint at(double x, double y) {
        double[] terms = terms(x, y);
        double dx = 0;
        double dy = 0;
        for (int i = 0; i < TERMS; i++) {
            dx += bend[0][i] * terms[i];
            dy += bend[1][i] * terms[i];
        }
        double[] pixel = apply(toPixels, x + dx, y + dy);
        return new PixelPoint(pixel[0], pixel[1]);
    }

    /** @return pixels to a millimetre about a place of the sheet, along the direction in which they are fewest */
    public double pixelsPerMm(double x, double y) {
        PixelPoint here = at(x, y);
        PixelPoint right = at(x + 1, y);
        PixelPoint down = at(x, y + 1);
        double a = right.x() - here.x();
        double b = down.x() - here.x();
        double c = right.y() - here.y();
        double d = down.y() - here.y();
        // The smaller singular value of the 2 by 2 slope.
        double sum = a * a + b * b + c * c + d * d;
        double area = a * d - b * c;
        return Math.sqrt(Math.max(0, (sum - Math.sqrt(Math.max(0, sum * sum - 4 * area * area))) / 2));
    }

    /** @return the paper's four corners in the photo: upper left, upper right, lower right, lower left */
    public List<PixelPoint> corners() {
        return List.of(at(0, 0), at(layout.width(), 0), at(layout.width(), layout.height()), at(0, layout.height()));
    }

    /** @return true when the photo shows the sheet as in a mirror */
    boolean mirrored() {
        PixelPoint a = at(0, 0);
        PixelPoint b = at(layout.width(), 0);
        PixelPoint c = at(0, layout.height());
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x()) < 0;
    }
}
