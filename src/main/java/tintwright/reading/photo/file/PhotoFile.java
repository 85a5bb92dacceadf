package tintwright.reading.photo.file;

import java.awt.Rectangle;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.DataBuffer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.stream.ImageInputStream;

/**
 * A photo on disk: its size, how it was held and what its codes mean are known; its pixels are decoded when and
 * where they are wanted, as the file's own codes.
 */
public final class PhotoFile {
    /** The largest photo that is decoded. A phone's largest mode is about 200 megapixels binned to fewer; a bound on work, a judgement of ours. */
    public static final long MOST_PIXELS = 120_000_000L;
    /** The shortest side that can hold a card and a hull; a judgement of ours. */
    private static final int LEAST_SIDE = 16;
    /** More pixels than this are not held at once; every second or third is enough then; a bound on work, a judgement of ours. */
    private static final long HELD_PIXELS = 30_000_000L;

    private final Path path;
    private final PhotoKind kind;
    private final int storedWidth;
    private final int storedHeight;
    private final Orientation orientation;
    private final RgbProfile profile;
    private final boolean profileStated;
    private final boolean profileBroken;
    private final boolean flash;

    private PhotoFile(
            Path path,
            PhotoKind kind,
            int storedWidth,
            int storedHeight,
            Orientation orientation,
            RgbProfile profile,
            boolean profileStated,
            boolean profileBroken,
            boolean flash) {
        this.path = path;
        this.kind = kind;
        this.storedWidth = storedWidth;
        this.storedHeight = storedHeight;
        this.orientation = orientation;
        this.profile = profile;
        this.profileStated = profileStated;
        this.profileBroken = profileBroken;
        this.flash = flash;
    }

    /** @throws PhotoException when it is no photo that can be read; nothing was decoded yet */
    public static PhotoFile open(Path path) throws PhotoException {
        PhotoKind kind = PhotoKind.of(path);
        try (ImageInputStream in = ImageIO.createImageInputStream(path.toFile())) {
            ImageReader reader = reader(kind, in, path);
            try {
                reader.setInput(in, false, false);
                int width = reader.getWidth(0);
                int height = reader.getHeight(0);
                if ((long) width * height > MOST_PIXELS) {
                    throw new PhotoException(String.format(
                            Locale.ROOT,
                            "%s says it is %d by %d pixels; the limit is "
                                    + "%d megapixels. Save it smaller and read that.",
                            name(path),
                            width,
                            height,
                            MOST_PIXELS / 1_000_000));
                }
                if (Math.min(width, height) < LEAST_SIDE) {
                    throw new PhotoException(name(path) + " is only " + width + " by " + height
                            + " pixels: too small to read a colour from. Take the photo itself, not its thumbnail.");
                }
                WholeFile.check(kind, path);
                checkColours(reader, path);
                PhotoTags tags = PhotoTags.of(kind, path);
                byte[] icc = PhotoKind.profileOf(kind, path, reader);
                Optional<RgbProfile> own = icc == null ? Optional.empty() : RgbProfile.parse(icc);
                boolean stated = own.isPresent();
                if (icc == null && kind == PhotoKind.PNG) {
                    own = PhotoKind.gammaOf(reader);
                    stated = own.isPresent();
                }
                return new PhotoFile(
                        path,
                        kind,
                        width,
                        height,
                        Orientation.of(tags.orientation()),
                        own.orElse(RgbProfile.SRGB),
                        stated,
                        icc != null && own.isEmpty(),
                        tags.flash());
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException e) {
            throw damaged(path, e);
        }
    }

    private static ImageReader reader(PhotoKind kind, ImageInputStream in, Path path) throws PhotoException {
        if (in == null) {
            throw new PhotoException(name(path) + " cannot be opened. Check that it is there and may be read.");
        }
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(kind.name());
        if (!readers.hasNext()) {
            throw new PhotoException(name(path) + " is a " + kind.name() + " file, which this program was built "
                    + "without. Save it as JPEG.");
        }
        return readers.next();
    }

    private static void checkColours(ImageReader reader, Path path) throws IOException, PhotoException {
        ImageTypeSpecifier type = reader.getRawImageType(0);
        if (type == null) {
            type = reader.getImageTypes(0).next();
        }
        ColorModel colours = type.getColorModel();
        ColorSpace space = colours.getColorSpace();
        if (space.getType() == ColorSpace.TYPE_CMYK) {
            throw new PhotoException(name(path) + " holds printing inks (CMYK), not light. Save the photo as an RGB "
                    + "JPEG, or take the camera's own file.");
        }
        if (space.getType() == ColorSpace.TYPE_GRAY) {
            throw new PhotoException(
                    name(path) + " is black and white, so it holds no hue. Take the photo in " + "colour.");
        }
        int transfer = colours.getTransferType();
        if (transfer != DataBuffer.TYPE_BYTE && transfer != DataBuffer.TYPE_USHORT) {
            throw new PhotoException(name(path) + " holds numbers of a kind that phones do not write. Save it with 8 "
                    + "or 16 bits for each channel.");
        }
    }

    /**
     * Decodes a part of the photo.
     *
     * @param left     upright
     * @param top      upright
     * @param right    upright, not included
     * @param bottom   upright, not included
     * @param progress told how far it is
     */
    public Pixels decode(int left, int top, int right, int bottom, Progress progress) throws PhotoException {
        Rectangle upright = new Rectangle(left, top, right - left, bottom - top)
                .intersection(new Rectangle(0, 0, width(), height()));
        if (upright.isEmpty()) {
            throw new PhotoException("Nothing of " + name(path) + " is marked. Place the marks on the picture.");
        }
        Rectangle stored = stored(upright);
        int step = 1;
        while ((long) stored.width * stored.height / ((long) step * step) > HELD_PIXELS) {
            step++;
        }
        try (ImageInputStream in = ImageIO.createImageInputStream(path.toFile())) {
            ImageReader reader = reader(kind, in, path);
            try {
                reader.setInput(in, true, true);
                ImageReadParam wanted = reader.getDefaultReadParam();
                wanted.setSourceRegion(stored);
                wanted.setSourceSubsampling(step, step, 0, 0);
                wanted.setDestinationType(ownCodes(reader));
                DecodeWatch watch = new DecodeWatch(reader, progress);
                BufferedImage image = reader.read(0, wanted);
                watch.check(name(path));
                return new Pixels(image, orientation, width(), height(), stored.x, stored.y, step);
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException e) {
            throw damaged(path, e);
        } catch (OutOfMemoryError e) {
            throw new PhotoException(
                    name(path) + " needs more memory than there is. Save it smaller and read that.", e);
        }
    }

    /**
     * The whole photo, small enough to look at and to find a card in.
     *
     * @param longestSide pixels the longer side may have at most, 100 to 8000
     */
    public Preview preview(int longestSide, Progress progress) throws PhotoException {
        if (longestSide < 100 || longestSide > 8000) {
            throw new IllegalArgumentException(
                    "the longest side of a preview must be 100 to 8000 pixels, was " + longestSide);
        }
        return PreviewMaker.make(this, decode(0, 0, width(), height(), progress), longestSide);
    }

    /** The type that keeps the file's codes: the one in the file's own colour space, when the reader knows it. */
    private static ImageTypeSpecifier ownCodes(ImageReader reader) throws IOException {
        ImageTypeSpecifier first = null;
        for (Iterator<ImageTypeSpecifier> types = reader.getImageTypes(0); types.hasNext(); ) {
            ImageTypeSpecifier type = types.next();
            ColorSpace space = type.getColorModel().getColorSpace();
            if (space.getType() == ColorSpace.TYPE_RGB && space instanceof ICC_ColorSpace && !space.isCS_sRGB()) {
                return type;
            }
            first = first == null ? type : first;
        }
        return first;
    }

    private Rectangle stored(Rectangle upright) {
        int[] xs = {upright.x, upright.x + upright.width - 1};
        int[] ys = {upright.y, upright.y + upright.height - 1};
        Rectangle out = null;
        for (int x : xs) {
            for (int y : ys) {
                Rectangle one = new Rectangle(
                        orientation.storedColumn(x, y, width(), height()),
                        orientation.storedRow(x, y, width(), height()),
                        1,
                        1);
                out = out == null ? one : out.union(one);
            }
        }
        return out;
    }

    static PhotoException damaged(Path path, Exception cause) {
        if (!Files.isReadable(path)) {
            return new PhotoException(name(path) + " cannot be opened. Check that it is there and may be read.", cause);
        }
        return new PhotoException(name(path) + " is damaged or cut short. Copy it from the phone again.", cause);
    }

    static String name(Path path) {
        return "The photo " + path.getFileName();
    }

    /** @return width in pixels as a person sees the photo */
    public int width() {
        return orientation.swapped() ? storedHeight : storedWidth;
    }

    /** @return height in pixels as a person sees the photo */
    public int height() {
        return orientation.swapped() ? storedWidth : storedHeight;
    }

    /** @return where it lies */
    public Path path() {
        return path;
    }

    public RgbProfile profile() {
        return profile;
    }

    /** @return true when the file says what its codes mean */
    public boolean profileStated() {
        return profileStated;
    }

    /** @return true when the file carries a profile that cannot be used, and sRGB stands in for it */
    public boolean profileBroken() {
        return profileBroken;
    }

    /** @return true when the camera says that its flash fired */
    public boolean flash() {
        return flash;
    }
}
