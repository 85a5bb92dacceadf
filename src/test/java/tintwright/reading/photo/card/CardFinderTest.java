package tintwright.reading.photo.card;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tintwright.reading.photo.RealPhotos;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Preview;
import tintwright.reading.photo.file.Progress;

/** Cards found in real photos. Source of the centres: photos.json of the reference folder. */
class CardFinderTest {
    @ParameterizedTest
    @ValueSource(strings = {"camera-a.jpg", "camera-b-linear.jpg", "camera-c-small.png", "phone-printed-chart.jpg"})
    void findsTheChartToAQuarterOfAPatch(String photo) throws Exception {
        PhotoFile file = PhotoFile.open(RealPhotos.file(photo));
        Preview preview = file.preview(CardFinder.PREVIEW_SIDE, Progress.NONE);
        Optional<CardFinder.Found> found = CardFinder.find(preview, RealPhotos.chart("a"));
        assertTrue(found.isPresent(), "not found");
        List<PixelPoint> given = RealPhotos.centres(photo);
        PlacedCard placed = found.get().placed();
        double worst = 0;
        for (int i = 0; i < given.size(); i++) {
            double side = placed.card().patchShare()
                    * Math.min(
                            given.get(i).distance(given.get(i % 6 == 5 ? i - 1 : i + 1)),
                            given.get(i).distance(given.get(i < 6 ? i + 6 : i - 6)));
            worst = Math.max(worst, placed.centre(i / 6, i % 6).distance(given.get(i)) / side);
        }
        assertTrue(worst <= 0.25, "farthest centre is off by " + worst + " of a patch");
    }
}
