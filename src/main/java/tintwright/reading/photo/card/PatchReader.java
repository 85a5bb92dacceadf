package tintwright.reading.photo.card;

import java.awt.Rectangle;
import java.util.Arrays;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Pixels;
import tintwright.reading.photo.file.RgbProfile;

/**
 * One colour from many pixels: glare, dust, edges and noise set aside, the mean taken in linear light.
 */
public final class PatchReader {
    /** Fewer pixels than this show no colour; a judgement of ours. */
    static final int LEAST_PIXELS = 9;
    /** More pixels than this teach nothing new; a bound on work, a judgement of ours. */
    private static final int MOST_SAMPLES = 4000;
    /** Spreads beyond which a pixel does not belong to the region; a judgement of ours. */
    private static final double BELONGS = 2.5;
    /** A pixel this much brighter than the middle is glare, when it also does not belong; a judgement of ours. */
    private static final double GLARE = 1.10;
    /** Neighbouring pixels of a photo share their noise: so many count as one; a judgement of ours. */
    private static final double SHARE_NOISE = 9;
    /** Of a code step, what remains of rounding in a mean of many pixels; a judgement of ours. */
    private static final double ROUNDING = 0.12;
    /** Unevenness of sensor and lens over short ways, of the light; a judgement of ours. */
    private static final double PATTERN = 0.002;

    /** A channel cut off at 0 may have stood this far below: a colour outside what the file can hold; a judgement of ours. */
    private static final double BELOW_BLACK = 0.03;
    /** A channel cut off at the top may have stood anywhere above, as a share: it says next to nothing. A judgement; a judgement of ours. */
    private static final double ABOVE_WHITE = 0.5;

    private final Pixels pixels;
    private final RgbProfile profile;
    private final float[][] light;
    private final double halfDiagonal;
    private final PhotoFile photo;

    public PatchReader(PhotoFile photo, Pixels pixels, RgbProfile profile) {
        this.photo = photo;
        this.pixels = pixels;
        this.profile = profile;
        this.light = new float[3][];
        for (int k = 0; k < 3; k++) {
            light[k] = profile.table(k, pixels.largest());
        }
        this.halfDiagonal = Math.hypot(photo.width(), photo.height()) / 2;
    }

    /** @throws PhotoException when the region has too few pixels to show a colour */
    public PatchRecord read(String name, Region region) throws PhotoException {
        Rectangle box = region.bounds().intersection(new Rectangle(0, 0, photo.width(), photo.height()));
        int stride =
                Math.max(pixels.step(), (int) Math.ceil(Math.sqrt((double) box.width * box.height / MOST_SAMPLES)));
        int most = (box.width / stride + 1) * (box.height / stride + 1);
        double[][] channel = new double[3][most];
        double[] bright = new double[most];
        int[] code = new int[8];
        int top = pixels.largest() - (pixels.largest() >> 7); // 254 of 255: rounding and JPEG ripple hide the last
        int count = 0;
        int clipped = 0;
        int black = 0;
        int[] none = new int[3];
        int[] full = new int[3];
        for (int y = box.y; y < box.y + box.height; y += stride) {
            for (int x = box.x; x < box.x + box.width; x += stride) {
                if (!region.contains(x, y) || !pixels.codes(x, y, code)) {
                    continue;
                }
                clipped += code[0] >= top || code[1] >= top || code[2] >= top ? 1 : 0;
                black += code[0] == 0 || code[1] == 0 || code[2] == 0 ? 1 : 0;
                for (int k = 0; k < 3; k++) {
                    channel[k][count] = light[k][code[k]];
                    none[k] += code[k] == 0 ? 1 : 0;
                    full[k] += code[k] >= top ? 1 : 0;
                }
                bright[count] = 0.3 * channel[0][count] + 0.6 * channel[1][count] + 0.1 * channel[2][count];
                count++;
            }
        }
        int inPhoto = count * stride * stride;
        if (count < LEAST_PIXELS) {
            throw new PhotoException("\"" + name + "\" covers only " + Math.min(inPhoto, count)
                    + " pixels of the photo; at least " + LEAST_PIXELS + " are needed. Make the mark larger, or take "
                    + "the photo from nearer.");
        }
        double[] off = Arrays.copyOf(bright, count);
        double middle = Middle.of(off, count);
        for (int i = 0; i < count; i++) {
            off[i] = Math.abs(bright[i] - middle);
        }
        double spread = Math.max(1.4826 * Middle.of(off, count), slope(middle) / 2);
        return summary(region, channel, bright, count, inPhoto, middle, spread, clipped, black, none, full);
    }

    private PatchRecord summary(
            Region region,
            double[][] channel,
            double[] bright,
            int count,
            int inPhoto,
            double middle,
            double spread,
            int clipped,
            int black,
            int[] none,
            int[] full) {
        double[] sum = new double[3];
        double[] square = new double[3];
        int kept = 0;
        int glare = 0;
        for (int i = 0; i < count; i++) {
            if (Math.abs(bright[i] - middle) <= BELONGS * spread) {
                kept++;
                for (int k = 0; k < 3; k++) {
                    sum[k] += channel[k][i];
                    square[k] += channel[k][i] * channel[k][i];
                }
            } else if (bright[i] > Math.max(middle * GLARE, middle + 4 * spread)) {
                glare++;
            }
        }
        double[] mean = new double[3];
        double[] sigma = new double[3];
        int cut = 0;
        for (int k = 0; k < 3; k++) {
            mean[k] = sum[k] / kept;
            double variance = Math.max(0, square[k] / kept - mean[k] * mean[k]);
            double rounding = ROUNDING * slope(mean[k]);
            double pattern = PATTERN * mean[k];
            double below = BELOW_BLACK * none[k] / count;
            double above = full[k] > PatchRecord.CLIPPED * count ? ABOVE_WHITE * mean[k] : 0;
            cut += above > 0 ? 1 : 0;
            sigma[k] = Math.sqrt(below * below
                    + above * above
                    + variance * Math.min(1, SHARE_NOISE / kept)
                    + rounding * rounding
                    + pattern * pattern);
        }
        PixelPoint centre = region.centre();
        Sample sample = new Sample(
                profile.toSrgb(mean),
                profile.noiseToSrgb(sigma),
                (centre.x() - photo.width() / 2.0) / halfDiagonal,
                (centre.y() - photo.height() / 2.0) / halfDiagonal);
        return new PatchRecord(
                sample,
                inPhoto,
                clipped / (double) count,
                black / (double) count,
                glare / (double) count,
                spread / Math.max(middle, 1e-4),
                cut);
    }

    /** Light of one code step near some light. */
    private double slope(double lightNear) {
        float[] table = light[1];
        int at = Arrays.binarySearch(table, (float) lightNear);
        int code = Math.max(0, Math.min(table.length - 2, at < 0 ? -at - 1 : at));
        return Math.max(1e-7, table[code + 1] - table[code]);
    }
}
