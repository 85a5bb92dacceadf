package tintwright.reading.photo;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tintwright.AccuracySection;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.Covariance;
import tintwright.reading.photo.camera.EyeMetric;
import tintwright.reading.photo.camera.KnownSample;
import tintwright.reading.photo.camera.PaperCorrection;
import tintwright.reading.photo.card.PatchReader;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.Region;
import tintwright.reading.photo.card.Sample;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Pixels;
import tintwright.reading.photo.file.Progress;
import tintwright.reading.photo.file.RgbProfile;

/** Real photos of a published chart, read through its white patch alone as the sheet is through its paper. */
@Tag("study")
class PaperOnRealPhotosStudy {
    private static final int WHITE = 18;
    /** As unsure as the sheet's paper. */
    private static final double SIGMA = 1.3;

    @Test
    void readsTheOtherPatches() throws Exception {
        List<String> lines = new ArrayList<>(List.of(
                "The chart's white patch stands for the sheet's paper (its colour given or taken 1.3); the 23 others are"
                        + " predicted as hulls. \"Like hulls\" are those of L\\* above 40 and chroma below 30. The chart is much"
                        + " more colourful than hulls are, and nothing of the light over it was taken out. CIEDE2000 (D50, 2"
                        + " degrees).",
                "",
                "Made by `mvn test -Dwanted.groups=study -Dtest=PaperOnRealPhotosStudy`.",
                "",
                "| photo | all: median | 90 % | in range | like hulls: median | worst | in range |",
                "| --- | --- | --- | --- | --- | --- | --- |"));
        int inside = 0;
        int count = 0;
        for (String name : List.of("camera-a.jpg", "camera-b-linear.jpg", "camera-c-small.png")) {
            List<Double> all = new ArrayList<>();
            List<Double> like = new ArrayList<>();
            int allIn = 0;
            int likeIn = 0;
            PhotoFile file = PhotoFile.open(RealPhotos.file(name));
            Pixels pixels = file.decode(0, 0, file.width(), file.height(), Progress.NONE);
            PatchReader reader =
                    new PatchReader(file, pixels, name.contains("linear") ? RgbProfile.LINEAR : file.profile());
            List<PixelPoint> centres = RealPhotos.centres(name);
            double radius = 0.22 * centres.get(0).distance(centres.get(1));
            List<Sample> samples = new ArrayList<>();
            for (PixelPoint centre : centres) {
                Sample seen = reader.read("", new Region.Disc(centre, radius)).sample();
                samples.add(new Sample(seen.light(), seen.noise(), 0, 0));
            }
            var patches = RealPhotos.chart("a").patches();
            KnownSample white = new KnownSample(
                    "white", samples.get(WHITE), patches.get(WHITE).colour(Viewing.D50_2), SIGMA);
            List<PaperCorrection.Answer> answers =
                    PaperCorrection.learn(List.of(white), Viewing.D50_2).apply(samples);
            for (int i = 0; i < answers.size(); i++) {
                if (i == WHITE) {
                    continue;
                }
                Lab truth = patches.get(i).colour(Viewing.D50_2);
                PaperCorrection.Answer one = answers.get(i);
                double error = Ciede2000.between(truth, one.colour());
                boolean in = error <= EyeMetric.nineInTen(one.colour(), total(one));
                all.add(error);
                allIn += in ? 1 : 0;
                if (truth.lightness() > 40 && Math.hypot(truth.a(), truth.b()) < 30) {
                    like.add(error);
                    likeIn += in ? 1 : 0;
                }
            }
            inside += likeIn;
            count += like.size();
            all.sort(null);
            like.sort(null);
            lines.add(String.format(
                    Locale.ROOT,
                    "| %s | %.2f | %.2f | %.0f %% | %.2f | %.2f | %d of %d |",
                    name,
                    all.get(all.size() / 2),
                    all.get((int) (0.9 * all.size())),
                    100.0 * allIn / all.size(),
                    like.get(like.size() / 2),
                    like.get(like.size() - 1),
                    likeIn,
                    like.size()));
        }
        lines.forEach(System.out::println);
        AccuracySection.write("The sheet: paper alone on real photos", lines);
        assertTrue(inside > 0.6 * count, inside + " of " + count);
    }

    private static Covariance total(PaperCorrection.Answer one) {
        double[][] sum = one.own().toArray();
        for (int r = 0; r < 3; r++) {
            for (int c = 0; c < 3; c++) {
                for (int k = 0; k < one.shared()[0].length; k++) {
                    sum[r][c] += one.shared()[r][k] * one.shared()[c][k];
                }
            }
        }
        return Covariance.of(sum);
    }
}
