package tintwright.fill.repair;

/**
 * Gel coat to neutral gel paste, in parts by volume.
 *
 * @param gelCoat parts of coloured gel coat, above 0
 * @param paste   parts of neutral gel paste, 0 for neat gel coat
 */
public record Mix(double gelCoat, double paste) {
    /** Unthickened, for the spray gun. */
    public static final Mix NEAT = new Mix(1, 0);

    public Mix {
        Sizes.aboveZero("parts of gel coat", gelCoat, 100, "parts");
        Sizes.between("parts of gel paste", paste, 0, 100, "parts");
    }

    /** @return what this repair is made from: neat for the gun, else by how the surface lies */
    public static Mix of(Repair repair, Lie lie) {
        return repair instanceof SprayArea ? NEAT : lie.mix();
    }

    /** @return share of gel coat in the mix by volume, above 0, at most 1 */
    public double gelCoatShare() {
        return gelCoat / (gelCoat + paste);
    }

    /**
     * The film this mix needs to hide. Neutral paste neither absorbs nor scatters to speak of, so it thins the
     * colour and the film grows by as much: in the Kubelka-Munk picture hiding goes by scattering times thickness,
     * and the scattering per millimetre falls with the share of gel coat.
     *
     * @param gelCoatHidingMm film that hides when the gel coat is neat, mm
     * @return mm
     */
    public double hidingFilmMm(double gelCoatHidingMm) {
        return gelCoatHidingMm / gelCoatShare();
    }

    /** @return grams per millilitre of the mix */
    public double density(Densities densities) {
        return gelCoatShare() * densities.gelCoat() + (1 - gelCoatShare()) * densities.paste();
    }

    /** @return the mix in words, gel coat first: "2 to 1 by volume, runny" */
    public String words() {
        if (paste == 0) {
            return "neat gel coat";
        }
        double ratio = gelCoat / paste;
        String feel = ratio > 1.5 ? "runny" : ratio >= 1 ? "stiff" : "stiffer still";
        return ratio() + " by volume, " + feel;
    }

    /** @return gel coat to paste: "2 to 1" */
    public String ratio() {
        return Sizes.plain(gelCoat) + " to " + Sizes.plain(paste);
    }
}
