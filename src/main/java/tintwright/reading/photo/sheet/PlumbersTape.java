package tintwright.reading.photo.sheet;

import tintwright.colour.Lab;
import tintwright.colour.Viewing;

/**
 * What colour layers of white plumber's tape have over the sheet's paper. Pressed PTFE reflects 99 % and more from 400
 * to 700 nm where it is thick (Weidner and Hsia (1981), J. Opt. Soc. Am. 71, 856-861); tape is thin, so the paper shows
 * through: a film that scatters and hardly absorbs over a ground (Kubelka and Munk, K = 0).
 */
final class PlumbersTape {
    /** Scattering of one layer of about 0.09 mm times its thickness; from memory, half or twice as much may be true. */
    private static final double LAYER = 1.2;

    /** A judgement of ours. */
    private static final double UNSURE = 0.5;
    /** Reflectance of the sheet's paper; L* 93; a judgement of ours. */
    private static final double PAPER = 0.83;

    private PlumbersTape() {}

    static double reflectance(double scattering) {
        return 1 - (1 - PAPER) / (1 + (1 - PAPER) * scattering);
    }

    /** @param layers at least 1 */
    static Lab colour(int layers, Viewing viewing) {
        double y = reflectance(LAYER * layers);
        // What is left of the paper's own tint shrinks with what is left of its grey.
        double left = (1 - y) / (1 - PAPER);
        return new Lab(116 * Math.cbrt(y) - 16, left, -4 * left, viewing);
    }

    /** @return standard deviation of the colour, CIEDE2000: the scattering may be half or more, and tape is handled */
    static double sigma(int layers) {
        double less = 116 * Math.cbrt(reflectance(LAYER * (1 - UNSURE) * layers));
        double more = 116 * Math.cbrt(reflectance(LAYER * (1 + UNSURE) * layers));
        return Math.hypot((more - less) / 2 / WEIGHT_OF_LIGHTNESS, HANDLED);
    }

    /** S_L of CIEDE2000 (CIE 142) near L* 97. */
    private static final double WEIGHT_OF_LIGHTNESS = 1.7;
    /** Fingers, folds, the ridges of the weave; a judgement of ours. */
    private static final double HANDLED = 0.4;
}
