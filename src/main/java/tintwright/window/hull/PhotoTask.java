package tintwright.window.hull;

import java.util.List;
import tintwright.reading.photo.PhotoReadings;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.Spot;

/** What a photo is read for: which spots a click sets, and who takes what was read of them. */
interface PhotoTask {
    /** @return what to click on once the card is found, as the end of a sentence such as "click on the hull" */
    String toClick();

    /**
     * A click on the picture.
     *
     * @param spots  what is marked already
     * @param at     where, inside the photo
     * @param radius of a fresh spot, pixels
     * @return what is marked from now on, the spot of this click last
     */
    List<Spot> marked(List<Spot> spots, PixelPoint at, double radius);

    /** @return what must still be marked before the readings can be taken; empty when nothing */
    String missing(List<Spot> spots);

    /**
     * Hands the readings over.
     *
     * @return what was taken, such as "2 readings"
     */
    String take(PhotoReadings readings);
}
