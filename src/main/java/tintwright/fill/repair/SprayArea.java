package tintwright.fill.repair;

/**
 * An area to spray with unthickened gel coat: a rectangle under a film.
 *
 * @param lengthMm length
 * @param widthMm  width
 * @param filmMm   wet film to put on in all passes together
 */
public record SprayArea(double lengthMm, double widthMm, double filmMm) implements Patch {
    public SprayArea {
        Sizes.length("length of the area to spray", lengthMm);
        Sizes.length("width of the area to spray", widthMm);
        Sizes.aboveZero("sprayed film", filmMm, 3, "mm");
    }

    /**
     * The area under the film that hides after it has cured and was sanded, and never under less than gel coat needs to
     * cure.
     *
     * @param hidingFilmMm film of neat gel coat that hides, mm
     */
    public static SprayArea toHide(double lengthMm, double widthMm, double hidingFilmMm) {
        Sizes.aboveZero("hiding film", hidingFilmMm, 3, "mm");
        return new SprayArea(
                lengthMm,
                widthMm,
                Math.max(
                        Published.LEAST_FILM_MM.low(),
                        (hidingFilmMm + Published.SPRAY_SANDED_MM.high()) / Published.CURED_OF_WET.middle()));
    }

    @Override
    public double volumeToMm3(double toMm) {
        return lengthMm * widthMm * Math.min(toMm, filmMm);
    }

    @Override
    public double depthMm() {
        return 0;
    }

    @Override
    public double thickestMm() {
        return filmMm;
    }

    @Override
    public String kind() {
        return "area to spray";
    }
}
