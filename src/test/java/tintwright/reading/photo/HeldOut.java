package tintwright.reading.photo;

import java.util.ArrayList;
import java.util.List;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.colour.Matrix3;
import tintwright.colour.Viewing;
import tintwright.colour.Xyz;
import tintwright.reading.photo.camera.CameraModel;
import tintwright.reading.photo.card.KnownPatch;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.PatchReader;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.ReferenceCard;
import tintwright.reading.photo.card.Region;
import tintwright.reading.photo.card.Spot;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Pixels;
import tintwright.reading.photo.file.Progress;
import tintwright.reading.photo.file.Rgb;
import tintwright.reading.photo.file.RgbProfile;

/**
 * A real photo of the chart in which every fourth patch is kept out of the references and predicted, by us and by
 * three simple rivals written here for the comparison.
 */
final class HeldOut {
    final List<Lab> truth = new ArrayList<>();
    final List<SpotReading> ours;
    final PhotoReadings readings;
    final double[] plainSrgb;
    final double[] whitePatch;
    final double[] leastSquares;

    /** @param first index of the first patch kept out: 3 for the 4th, 8th, ... 24th */
    HeldOut(String photo, String printing, int first) throws PhotoException {
        PhotoFile file = PhotoFile.open(RealPhotos.file(photo));
        ReferenceCard chart = RealPhotos.chart(printing);
        List<PixelPoint> centres = RealPhotos.centres(photo);
        double radius = 0.22
                * Math.min(
                        centres.get(0).distance(centres.get(1)), centres.get(0).distance(centres.get(6)));
        List<KnownPatch> known = new ArrayList<>();
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < RealPhotos.PATCHES; i++) {
            PixelPoint at = centres.get(i);
            if (i % 4 == first) {
                spots.add(Spot.hull(chart.patches().get(i).name(), at.x(), at.y(), radius));
                truth.add(chart.patches().get(i).colour(Viewing.D50_2));
            } else {
                known.add(new KnownPatch(chart.patches().get(i), at, radius, chart.sigma()));
            }
        }
        readings = PhotoReader.read(file, new Marks(List.of(), known, spots, false), Viewing.D50_2, Progress.NONE);
        ours = readings.spots();

        Pixels pixels = file.decode(0, 0, file.width(), file.height(), Progress.NONE);
        // The rivals are told what the camera did: sRGB codes, or linear ones where the publisher says so.
        PatchReader reader =
                new PatchReader(file, pixels, photo.contains("linear") ? RgbProfile.LINEAR : RgbProfile.SRGB);
        List<double[]> references = new ArrayList<>();
        List<double[]> colours = new ArrayList<>();
        List<double[]> wanted = new ArrayList<>();
        double[] white = null;
        for (int i = 0; i < RealPhotos.PATCHES; i++) {
            Rgb rgb = reader.read("", new Region.Disc(centres.get(i), radius))
                    .sample()
                    .light();
            double[] light = {rgb.red(), rgb.green(), rgb.blue()};
            if (i == 18) {
                white = light;
            }
            if (i % 4 == first) {
                wanted.add(light);
            } else {
                Xyz xyz = chart.patches().get(i).colour(Viewing.D50_2).toXyz();
                references.add(light);
                colours.add(new double[] {xyz.x(), xyz.y(), xyz.z()});
            }
        }
        double[][] screen = new CameraModel(Viewing.D50_2).matrixToXyz();
        plainSrgb = errors(wanted, light -> scaled(Matrix3.times(screen, light)));
        double[] whiteKnown =
                shareOfWhite(chart.patches().get(18).colour(Viewing.D50_2).toXyz());
        double[] whiteLight = Matrix3.times(Matrix3.inverse(screen), whiteKnown);
        double[] seen = white;
        whitePatch = errors(
                wanted,
                light -> scaled(Matrix3.times(screen, new double[] {
                    light[0] * whiteLight[0] / seen[0],
                    light[1] * whiteLight[1] / seen[1],
                    light[2] * whiteLight[2] / seen[2]
                })));
        double[][] fitted = leastSquares(references, colours);
        leastSquares = errors(wanted, light -> Matrix3.times(fitted, light));
    }

    private static double[] shareOfWhite(Xyz colour) {
        Xyz white = colour.viewing().white();
        return new double[] {colour.x() / white.x(), colour.y() / white.y(), colour.z() / white.z()};
    }

    private static double[] scaled(double[] share) {
        Xyz white = Viewing.D50_2.white();
        return new double[] {share[0] * white.x(), share[1] * white.y(), share[2] * white.z()};
    }

    private interface Rival {
        double[] xyz(double[] light);
    }

    private double[] errors(List<double[]> wanted, Rival rival) {
        double[] out = new double[wanted.size()];
        for (int i = 0; i < out.length; i++) {
            double[] xyz = rival.xyz(wanted.get(i));
            out[i] = Ciede2000.between(
                    truth.get(i),
                    Lab.of(new Xyz(Math.max(0, xyz[0]), Math.max(0, xyz[1]), Math.max(0, xyz[2]), Viewing.D50_2)));
        }
        return out;
    }

    /** The 3 by 3 matrix with the least squared error of X, Y, Z, by its normal equations. */
    private static double[][] leastSquares(List<double[]> light, List<double[]> xyz) {
        double[][] ll = new double[3][3];
        double[][] xl = new double[3][3];
        for (int n = 0; n < light.size(); n++) {
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    ll[i][j] += light.get(n)[i] * light.get(n)[j];
                    xl[i][j] += xyz.get(n)[i] * light.get(n)[j];
                }
            }
        }
        double scale = ll[0][0];
        for (double[] row : ll) {
            for (int j = 0; j < 3; j++) {
                row[j] /= scale;
            }
        }
        double[][] out = Matrix3.times(xl, Matrix3.inverse(ll));
        for (double[] row : out) {
            for (int j = 0; j < 3; j++) {
                row[j] /= scale;
            }
        }
        return out;
    }

    double[] errors() {
        double[] out = new double[ours.size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = Ciede2000.between(truth.get(i), ours.get(i).reading().lab());
        }
        return out;
    }

    /** How many of the patches lie within their stated nine-in-ten range. */
    int within() {
        int within = 0;
        for (int i = 0; i < ours.size(); i++) {
            within += errors()[i] <= ours.get(i).goodTo() ? 1 : 0;
        }
        return within;
    }

    static double mean(double[] errors) {
        double sum = 0;
        for (double e : errors) {
            sum += e;
        }
        return sum / errors.length;
    }

    static double worst(double[] errors) {
        double worst = 0;
        for (double e : errors) {
            worst = Math.max(worst, e);
        }
        return worst;
    }
}
