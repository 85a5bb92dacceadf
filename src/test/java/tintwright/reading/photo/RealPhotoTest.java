package tintwright.reading.photo;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The 4th, 8th, ... 24th patch of real photos, predicted from the others. Source of photos, centres and colours:
 * photos.json and the published averages of the chart in the reference folder.
 */
class RealPhotoTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource({"camera-a.jpg, 2.5", "camera-b-linear.jpg, 2.5", "camera-c-small.png, 3.5"})
    void predictsWhatWasKeptOutBetterThanAnyRival(String photo, double atMost) throws Exception {
        HeldOut one = new HeldOut(photo, "a", 3);
        HeldOut other = new HeldOut(photo, "b", 3);
        // Nobody says which printing stood before the camera: the references, not the kept-out patches, decide.
        HeldOut out = other.readings.leaveOneOut() < one.readings.leaveOneOut() ? other : one;
        double mean = HeldOut.mean(out.errors());
        assertTrue(mean <= atMost, () -> "mean CIEDE2000 " + mean);
        assertTrue(mean < HeldOut.mean(out.plainSrgb), "plain sRGB is better");
        assertTrue(mean < HeldOut.mean(out.whitePatch), "one white patch is better");
        assertTrue(mean < HeldOut.mean(out.leastSquares), "3 by 3 least squares is better");
    }
}
