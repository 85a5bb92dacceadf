package tintwright.colour;

/**
 * Regular wavelengths, first to last, both included.
 *
 * @param firstNm first wavelength in nanometres, 200 to 2500
 * @param stepNm  distance between neighbours in nanometres, 1 to 20
 * @param count   how many wavelengths, at least 2
 */
public record Grid(int firstNm, int stepNm, int count) {
    /** The wavelengths used inside the program: 400 to 700 nm every 10 nm, 31 values. */
    public static final Grid INSIDE = new Grid(400, 10, 31);

    public Grid {
        if (firstNm < 200 || firstNm > 2500) {
            throw new IllegalArgumentException("first wavelength must be 200 to 2500 nm, was " + firstNm);
        }
        if (stepNm < 1 || stepNm > 20) {
            throw new IllegalArgumentException("wavelength step must be 1 to 20 nm, was " + stepNm);
        }
        if (count < 2 || count > 2500) {
            throw new IllegalArgumentException("a spectrum needs 2 to 2500 wavelengths, got " + count);
        }
    }

    /** @return the grid with these ends and step, both ends included */
    public static Grid between(int firstNm, int lastNm, int stepNm) {
        if (stepNm < 1 || lastNm <= firstNm || (lastNm - firstNm) % stepNm != 0) {
            throw new IllegalArgumentException(
                    "wavelengths " + firstNm + " to " + lastNm + " nm cannot be walked in steps of " + stepNm + " nm");
        }
        return new Grid(firstNm, stepNm, (lastNm - firstNm) / stepNm + 1);
    }

    /**
     * The grid of a list of wavelengths, as a file or an instrument gives them.
     *
     * @param nm whole nanometres, rising in equal steps of 1 to 20
     */
    public static Grid of(double... nm) {
        if (nm.length < 2) {
            throw new IllegalArgumentException("a spectrum needs 2 to 2500 wavelengths, got " + nm.length);
        }
        double step = nm[1] - nm[0];
        for (int i = 0; i < nm.length; i++) {
            if (!(nm[i] == Math.rint(nm[i]))) {
                throw new IllegalArgumentException("wavelengths must be whole nanometres, was " + nm[i]);
            }
            double expected = nm[0] + i * step;
            if (!(step >= 1 && step <= 20) || nm[i] != expected) {
                int late = step >= 1 && step <= 20 ? i : 1;
                throw new IllegalArgumentException("wavelengths must rise in equal steps of 1 to 20 nm; after "
                        + plain(nm[late - 1]) + " came " + plain(nm[late]) + " nm"
                        + (late > 1 ? ", expected " + plain(expected) : ""));
            }
        }
        return new Grid((int) nm[0], (int) step, nm.length);
    }

    private static String plain(double nm) {
        return nm == Math.rint(nm) && Math.abs(nm) < 1e9 ? Long.toString((long) nm) : Double.toString(nm);
    }

    /** @return the wavelengths in nanometres, rising */
    public double[] toArray() {
        double[] nm = new double[count];
        for (int i = 0; i < count; i++) {
            nm[i] = nm(i);
        }
        return nm;
    }

    /** @return wavelength number {@code index}, in nanometres */
    public int nm(int index) {
        return firstNm + index * stepNm;
    }

    /** @return last wavelength in nanometres */
    public int lastNm() {
        return nm(count - 1);
    }

    /** @return true when this grid reaches at least as far as the other at both ends */
    public boolean covers(Grid other) {
        return firstNm <= other.firstNm && lastNm() >= other.lastNm();
    }

    @Override
    public String toString() {
        return firstNm + " to " + lastNm() + " nm every " + stepNm + " nm";
    }
}
