package tintwright.reading;

/**
 * Covariance of L*, a*, b*: how far a reading may be off, and which errors go together.
 *
 * @param ll variance of L*
 * @param la covariance of L* and a*
 * @param lb covariance of L* and b*
 * @param aa variance of a*
 * @param ab covariance of a* and b*
 * @param bb variance of b*
 */
public record Covariance(double ll, double la, double lb, double aa, double ab, double bb) {
    public Covariance {
        if (!Double.isFinite(ll + la + lb + aa + ab + bb) || ll < 0 || aa < 0 || bb < 0) {
            throw new IllegalArgumentException(
                    "variances of L*, a*, b* must be finite and 0 or more, were " + ll + ", " + aa + ", " + bb);
        }
    }

    /** @param sigma standard deviation of each axis, in Lab units, the axes independent */
    public static Covariance same(double sigma) {
        if (!(sigma >= 0)) {
            throw new IllegalArgumentException("noise of a reading must be 0 or more, was " + sigma);
        }
        return new Covariance(sigma * sigma, 0, 0, sigma * sigma, 0, sigma * sigma);
    }

    /** @return rows and columns in the order L*, a*, b* */
    public double[][] toArray() {
        return new double[][] {{ll, la, lb}, {la, aa, ab}, {lb, ab, bb}};
    }

    /** @param m symmetric, rows and columns in the order L*, a*, b* */
    public static Covariance of(double[][] m) {
        return new Covariance(
                m[0][0], (m[0][1] + m[1][0]) / 2, (m[0][2] + m[2][0]) / 2, m[1][1], (m[1][2] + m[2][1]) / 2, m[2][2]);
    }

    public Covariance plus(Covariance other) {
        return new Covariance(ll + other.ll, la + other.la, lb + other.lb, aa + other.aa, ab + other.ab, bb + other.bb);
    }
}
