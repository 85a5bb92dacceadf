package tintwright.reading.photo.sheet;

/**
 * Where a made-up camera stands before a made-up sheet, by its own ray casting: for every pixel the place on the sheet
 * that it sees. The sheet is plane or bent round a cylinder. Shares no code with what finds it.
 */
public final class MadeUpView {
    /** A phone's main camera: focal length of 26 mm on a picture 36 mm wide; common practice, no source. */
    private static final double FOCAL = 26.0 / 36.0;

    public final int width;
    public final int height;
    private final SheetLayout layout;
    private final double focal;
    private final double[][] toSheet;
    private final double radius;
    private final double axis;
    private double[] eye;
    private final double offX;
    private final double offY;

    /**
     * @param fill      share of the picture that the paper covers
     * @param turn      about the line of sight, radians
     * @param tilt      of the sheet away from square, radians
     * @param direction towards which it is tilted, radians
     * @param offX      where the sheet's middle lies, half widths from the picture's middle
     * @param radius    of the cylinder it is bent round, mm; infinite for a plane
     * @param axis      direction of the cylinder's axis on the sheet, radians
     */
    public MadeUpView(
            SheetLayout layout,
            int width,
            int height,
            double fill,
            double turn,
            double tilt,
            double direction,
            double offX,
            double offY,
            double radius,
            double axis) {
        this.layout = layout;
        this.width = width;
        this.height = height;
        this.radius = radius;
        this.axis = axis;
        this.offX = offX;
        this.offY = offY;
        this.focal = FOCAL * Math.max(width, height);
        double[][] about = times(times(z(direction), x(tilt)), z(-direction));
        this.toSheet = transposed(times(z(turn), about));
        double near = 50;
        double far = 50_000;
        for (int i = 0; i < 60; i++) {
            double middle = Math.sqrt(near * far);
            stand(middle);
            if (area() > fill * width * height) {
                near = middle;
            } else {
                far = middle;
            }
        }
        stand(near);
    }

    private void stand(double distance) {
        double[] to = {offX * width / 2 / focal * distance, offY * height / 2 / focal * distance, distance};
        double[] seen = times(toSheet, to);
        eye = new double[] {-seen[0], -seen[1], -seen[2]};
    }

    private double area() {
        double[][] c = {
            pixel(0, 0), pixel(layout.width(), 0), pixel(layout.width(), layout.height()), pixel(0, layout.height())
        };
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            double[] a = c[i];
            double[] b = c[(i + 1) % 4];
            if (a == null || b == null) {
                return Double.POSITIVE_INFINITY;
            }
            sum += a[0] * b[1] - b[0] * a[1];
        }
        return Math.abs(sum) / 2;
    }

    /** @return pixel of a place on the sheet, mm; null when it lies behind the camera */
    public double[] pixel(double x, double y) {
        double u = x - layout.width() / 2;
        double v = y - layout.height() / 2;
        double along = u * Math.cos(axis) + v * Math.sin(axis);
        double across = -u * Math.sin(axis) + v * Math.cos(axis);
        double deep = 0;
        if (!Double.isInfinite(radius)) {
            deep = radius * (1 - Math.cos(across / radius));
            across = radius * Math.sin(across / radius);
        }
        double[] p = {
            along * Math.cos(axis) - across * Math.sin(axis) - eye[0],
            along * Math.sin(axis) + across * Math.cos(axis) - eye[1],
            deep - eye[2]
        };
        double[] c = times(transposed(toSheet), p);
        return c[2] <= 1 ? null : new double[] {width / 2.0 + focal * c[0] / c[2], height / 2.0 + focal * c[1] / c[2]};
    }

    /** @return true when the whole paper lies in the picture */
    boolean whole() {
        for (int i = 0; i < 4; i++) {
            double[] p = pixel(i % 2 * layout.width(), Math.floorDiv(i, 2) * layout.height());
            if (p == null || p[0] < 0 || p[1] < 0 || p[0] >= width || p[1] >= height) {
                return false;
            }
        }
        return true;
    }

    /**
     * @param px pixel column, may lie between two
     * @param at mm on the sheet come here
     * @return false when the pixel sees past the sheet's surface
     */
    public boolean sees(double px, double py, double[] at) {
        double[] d = times(toSheet, new double[] {(px - width / 2.0) / focal, (py - height / 2.0) / focal, 1});
        double c = Math.cos(axis);
        double s = Math.sin(axis);
        double t;
        double across;
        if (Double.isInfinite(radius)) {
            t = -eye[2] / d[2];
            across = -(eye[0] + t * d[0]) * s + (eye[1] + t * d[1]) * c;
        } else {
            double o1 = -eye[0] * s + eye[1] * c;
            double d1 = -d[0] * s + d[1] * c;
            double o2 = eye[2] - radius;
            double a = d1 * d1 + d[2] * d[2];
            double b = o1 * d1 + o2 * d[2];
            double root = b * b - a * (o1 * o1 + o2 * o2 - radius * radius);
            if (root < 0) {
                return false;
            }
            t = (-b - Math.sqrt(root)) / a;
            across = radius * Math.atan2(o1 + t * d1, -(o2 + t * d[2]));
        }
        if (!(t > 0)) {
            return false;
        }
        double along = (eye[0] + t * d[0]) * c + (eye[1] + t * d[1]) * s;
        at[0] = along * c - across * s + layout.width() / 2;
        at[1] = along * s + across * c + layout.height() / 2;
        return true;
    }

    private static double[][] z(double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return new double[][] {{c, -s, 0}, {s, c, 0}, {0, 0, 1}};
    }

    private static double[][] x(double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return new double[][] {{1, 0, 0}, {0, c, -s}, {0, s, c}};
    }

    private static double[][] times(double[][] a, double[][] b) {
        double[][] out = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                out[i][j] = a[i][0] * b[0][j] + a[i][1] * b[1][j] + a[i][2] * b[2][j];
            }
        }
        return out;
    }

    private static double[] times(double[][] a, double[] v) {
        return new double[] {
            a[0][0] * v[0] + a[0][1] * v[1] + a[0][2] * v[2],
            a[1][0] * v[0] + a[1][1] * v[1] + a[1][2] * v[2],
            a[2][0] * v[0] + a[2][1] * v[1] + a[2][2] * v[2]
        };
    }

    private static double[][] transposed(double[][] m) {
        double[][] out = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                out[i][j] = m[j][i];
            }
        }
        return out;
    }
}
