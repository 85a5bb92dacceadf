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

    /** @return wavelength number {@code index}, in nanometres */
    public int nm(int index) {
        return firstNm + index * stepNm;
    }

    /** @return last wavelength in nanometres */
    public int lastNm() {
        return nm(count - 1);
    }

    @Override
    public String toString() {
        return firstNm + " to " + lastNm() + " nm every " + stepNm + " nm";
    }
}
