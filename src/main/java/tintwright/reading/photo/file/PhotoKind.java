package tintwright.reading.photo.file;

import com.twelvemonkeys.imageio.metadata.jpeg.JPEGSegment;
import com.twelvemonkeys.imageio.metadata.jpeg.JPEGSegmentUtil;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.zip.InflaterInputStream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageInputStream;
import org.w3c.dom.NodeList;

/**
 * The kinds of photo file, told apart by their first bytes, and where each keeps its colour profile.
 */
enum PhotoKind {
    JPEG,
    PNG,
    TIFF;

    /** A profile larger than this is damaged or meant for something else; a bound on work, a judgement of ours. */
    private static final int MOST_PROFILE_BYTES = 4 << 20;

    static PhotoKind of(Path path) throws PhotoException {
        byte[] start;
        try (InputStream in = Files.newInputStream(path)) {
            start = in.readNBytes(16);
        } catch (IOException e) {
            throw new PhotoException(
                    PhotoFile.name(path) + " cannot be opened. Check that it is there and may be " + "read.", e);
        }
        if (start.length == 0) {
            throw new PhotoException(PhotoFile.name(path) + " is empty. Copy it from the phone again.");
        }
        if (starts(start, 0, 0xFF, 0xD8, 0xFF)) {
            return JPEG;
        }
        if (starts(start, 0, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A)) {
            return PNG;
        }
        if (starts(start, 0, 'I', 'I', 42, 0) || starts(start, 0, 'M', 'M', 0, 42)) {
            return TIFF;
        }
        if (starts(start, 4, 'f', 't', 'y', 'p')) {
            String brand = new String(start, 8, Math.min(4, start.length - 8), StandardCharsets.ISO_8859_1);
            if (brand.matches("hei[cfxsm]|hev[cxms]|mif1|msf1|avif|avis")) {
                throw new PhotoException(PhotoFile.name(path) + " is in a format that phones use to save room (HEIC), "
                        + "which cannot be read here. On the phone choose the most compatible camera format, share the "
                        + "photo as JPEG, or take it on the page that the bench opens on the phone.");
            }
            throw new PhotoException(PhotoFile.name(path) + " is a film, not a photo. Take a photo.");
        }
        throw new PhotoException(
                PhotoFile.name(path) + " is not a JPEG, PNG or TIFF picture. Save the photo as one of " + "these.");
    }

    private static boolean starts(byte[] bytes, int at, int... wanted) {
        for (int i = 0; i < wanted.length; i++) {
            if (at + i >= bytes.length || (bytes[at + i] & 255) != wanted[i]) {
                return false;
            }
        }
        return true;
    }

    /** @return the bytes of the embedded profile, or null; empty bytes for one that cannot be taken out */
    static byte[] profileOf(PhotoKind kind, Path path, ImageReader reader) throws IOException {
        try {
            return switch (kind) {
                case JPEG -> profileOfJpeg(path);
                case PNG -> profileOfPng(reader.getImageMetadata(0));
                case TIFF -> profileOfTiff(reader.getImageMetadata(0));
            };
        } catch (IllegalArgumentException e) {
            return new byte[0];
        }
    }

    private static byte[] profileOfJpeg(Path path) throws IOException {
        try (ImageInputStream in = ImageIO.createImageInputStream(path.toFile())) {
            List<JPEGSegment> parts =
                    JPEGSegmentUtil.readSegments(in, com.twelvemonkeys.imageio.metadata.jpeg.JPEG.APP2, "ICC_PROFILE");
            if (parts.isEmpty()) {
                return null;
            }
            // Each part: its number and how many there are, then the bytes.
            byte[][] ordered = new byte[256][];
            for (JPEGSegment part : parts) {
                byte[] data = part.data().readAllBytes();
                if (data.length > 2) {
                    ordered[data[0] & 255] = Arrays.copyOfRange(data, 2, data.length);
                }
            }
            ByteArrayOutputStream all = new ByteArrayOutputStream();
            for (byte[] part : ordered) {
                if (part != null) {
                    all.write(part);
                }
            }
            return all.toByteArray();
        }
    }

    private static byte[] profileOfPng(IIOMetadata metadata) throws IOException {
        IIOMetadataNode chunk = node(metadata, "iCCP");
        if (chunk == null || !(chunk.getUserObject() instanceof byte[] packed)) {
            return null;
        }
        try (InputStream in = new InflaterInputStream(new java.io.ByteArrayInputStream(packed))) {
            return in.readNBytes(MOST_PROFILE_BYTES);
        } catch (IOException e) {
            return new byte[0];
        }
    }

    /** @return the power by which a PNG file without profile says its codes become light; empty for sRGB */
    static Optional<RgbProfile> gammaOf(ImageReader reader) throws IOException {
        IIOMetadata metadata = reader.getImageMetadata(0);
        IIOMetadataNode gamma = node(metadata, "gAMA");
        if (gamma == null || node(metadata, "sRGB") != null) {
            return Optional.empty();
        }
        double value = Integer.parseInt(gamma.getAttribute("value")) / 100000.0;
        // 1/2.2 stands for sRGB in files that write both or either.
        return value > 0.05 && value < 20 && Math.abs(value - 1 / 2.2) > 0.005
                ? Optional.of(RgbProfile.power(1 / value))
                : Optional.empty();
    }

    private static byte[] profileOfTiff(IIOMetadata metadata) {
        IIOMetadataNode root = (IIOMetadataNode) metadata.getAsTree(metadata.getNativeMetadataFormatName());
        NodeList fields = root.getElementsByTagName("TIFFField");
        for (int i = 0; i < fields.getLength(); i++) {
            IIOMetadataNode field = (IIOMetadataNode) fields.item(i);
            if ("34675".equals(field.getAttribute("number"))) {
                NodeList values = field.getElementsByTagName("TIFFUndefined");
                if (values.getLength() == 1) {
                    String[] numbers = ((IIOMetadataNode) values.item(0))
                            .getAttribute("value")
                            .split(",");
                    byte[] out = new byte[numbers.length];
                    for (int k = 0; k < out.length; k++) {
                        out[k] = (byte) Integer.parseInt(numbers[k].trim());
                    }
                    return out;
                }
                return new byte[0];
            }
        }
        return null;
    }

    private static IIOMetadataNode node(IIOMetadata metadata, String name) {
        IIOMetadataNode root = (IIOMetadataNode) metadata.getAsTree(metadata.getNativeMetadataFormatName());
        NodeList found = root.getElementsByTagName(name);
        return found.getLength() == 0 ? null : (IIOMetadataNode) found.item(0);
    }
}
