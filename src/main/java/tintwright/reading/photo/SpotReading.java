package tintwright.reading.photo;

import java.util.Locale;
import tintwright.colour.Lab;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.photo.camera.EyeMetric;
import tintwright.reading.photo.card.Spot;

/**
 * What was read at a spot.
 *
 * @param spot    the spot
 * @param reading the colour, its own covariance and the one it shares with everything else in the photo
 */
public record SpotReading(Spot spot, ColourReading reading) {
    /** @return its own and the shared covariance together */
    public Covariance total() {
        return reading.photo()
                .map(bias -> bias.covariance().plus(reading.covariance()))
                .orElse(reading.covariance());
    }

    /** @return the CIEDE2000 that the reading is within nine times out of ten */
    public double goodTo() {
        return goodTo(reading.lab(), total());
    }

    /** @return the CIEDE2000 that a colour known like this is within nine times out of ten */
    public static double goodTo(Lab colour, Covariance total) {
        return EyeMetric.nineInTen(colour, total);
    }

    /** @return such as "good to about 1.6" */
    public String inWords() {
        double good = goodTo();
        return good < 10
                ? String.format(Locale.ROOT, "good to about %.1f", good)
                : String.format(Locale.ROOT, "good to about %.0f: a rough idea only", good);
    }
}
