package tintwright.logbook;

import java.io.ByteArrayOutputStream;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * A photo to give away: the picture, its colours and which way is up, without where it was taken, by whom and with which
 * camera's serial number. What is kept is listed, not what is left out, so that a tag nobody thought of stays behind too;
 * only inside an Exif block, whose offsets must stay, it is the telling tags that are taken out.
 *
 * <p>Own code, for the libraries at hand read these blocks and do not write them. Sources: JPEG markers ITU-T T.81, B.1;
 * PNG chunks ISO/IEC 15948, 11; TIFF 6.0, section 2; Exif tags JEITA CP-3451 (numbers from memory).
 */
final class UnmarkedPhoto {
    /** Exif and GPS places, makers' notes, comments, owners, artists, serial numbers, XMP, IPTC. */
    private static final Set<Integer> TELLING = Set.of(
            0x8825, 0x927c, 0x9286, 0x010e, 0x013b, 0x8298, 0xa420, 0xa430, 0xa431, 0xa435, 0xc62f, 0x02bc, 0x83bb,
            0x8649, 0x9c9b, 0x9c9c, 0x9c9d, 0x9c9e, 0x9c9f);

    private static final int EXIF_PART = 0x8769;
    private static final int GPS_PART = 0x8825;
    /** Bytes of one value by TIFF's number of its type. */
    private static final int[] TYPE_BYTES = {0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8};

    private static final Set<String> PNG_KEPT = Set.of(
            "IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "iCCP", "cICP", "sBIT", "bKGD", "pHYs");
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] ICC = "ICC_PROFILE\0".getBytes(StandardCharsets.US_ASCII);

    private UnmarkedPhoto() {}

    /** @return the photo without its marks; empty when it is no JPEG, PNG or TIFF that can be taken apart */
    static Optional<byte[]> of(byte[] photo) {
        try {
            if (photo.length > 3 && (photo[0] & 0xff) == 0xff && (photo[1] & 0xff) == 0xd8) {
                return Optional.of(jpeg(photo));
            }
            if (begins(photo, 0, PNG)) {
                return Optional.of(png(photo));
            }
            byte[] tiff = photo.clone();
            takeOut(ByteBuffer.wrap(tiff));
            return Optional.of(tiff);
        } catch (BufferUnderflowException | IndexOutOfBoundsException | IllegalArgumentException harmed) {
            return Optional.empty();
        }
    }

    private static boolean begins(byte[] bytes, int at, byte[] with) {
        return bytes.length - at >= with.length && Arrays.equals(bytes, at, at + with.length, with, 0, with.length);
    }

    private static byte[] jpeg(byte[] photo) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(photo.length);
        out.write(photo, 0, 2);
        int at = 2;
        while (true) {
            int marker = photo[at + 1] & 0xff;
            if ((photo[at] & 0xff) != 0xff) {
                throw new IllegalArgumentException("no marker");
            }
            if (marker == 0xff) {
                at++;
                continue;
            }
            if (marker == 0xd9) {
                // What follows the end (a second picture, a film) has marks of its own and is no part of the photo.
                out.write(photo, at, 2);
                return out.toByteArray();
            }
            int to = at + 2 + ((photo[at + 2] & 0xff) << 8 | photo[at + 3] & 0xff);
            byte[] segment = Arrays.copyOfRange(photo, at, to);
            if (to > photo.length) {
                throw new IllegalArgumentException("cut off");
            }
            if (isKept(marker, segment)) {
                out.writeBytes(segment);
            }
            at = to;
            if (marker == 0xda) {
                int from = at;
                while (!((photo[at] & 0xff) == 0xff
                        && photo[at + 1] != 0
                        && ((photo[at + 1] & 0xff) < 0xd0 || (photo[at + 1] & 0xff) > 0xd7))) {
                    at++;
                }
                out.write(photo, from, at - from);
            }
        }
    }

    /** Cleans an Exif block where it stands. */
    private static boolean isKept(int marker, byte[] segment) {
        if (marker == 0xe1 && begins(segment, 4, EXIF)) {
            try {
                takeOut(ByteBuffer.wrap(segment, 10, segment.length - 10).slice());
                return true;
            } catch (BufferUnderflowException | IndexOutOfBoundsException | IllegalArgumentException harmed) {
                return false;
            }
        }
        boolean application = marker >= 0xe0 && marker <= 0xef;
        boolean colours = marker == 0xe0 || marker == 0xee || marker == 0xe2 && begins(segment, 4, ICC);
        return marker != 0xfe && (!application || colours);
    }

    private static byte[] png(byte[] photo) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(photo.length);
        ByteBuffer in = ByteBuffer.wrap(photo);
        out.write(photo, 0, PNG.length);
        int at = PNG.length;
        String name = "";
        while (!name.equals("IEND")) {
            int length = in.getInt(at);
            int whole = Math.addExact(length, 12);
            if (length < 0 || whole > photo.length - at) {
                throw new IllegalArgumentException("cut off");
            }
            name = new String(photo, at + 4, 4, StandardCharsets.US_ASCII);
            if (PNG_KEPT.contains(name)) {
                out.write(photo, at, whole);
            }
            at += whole;
        }
        return out.toByteArray();
    }

    /** @param tiff a whole TIFF structure, from its first byte on */
    private static void takeOut(ByteBuffer tiff) {
        int order = tiff.getShort(0);
        if (order != 0x4949 && order != 0x4d4d) {
            throw new IllegalArgumentException("no TIFF");
        }
        tiff.order(order == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        if (tiff.getShort(2) != 42) {
            throw new IllegalArgumentException("no TIFF");
        }
        Set<Integer> seen = new HashSet<>();
        int part = tiff.getInt(4);
        while (part != 0 && seen.add(part)) {
            part = takeOut(tiff, part, false, seen);
        }
    }

    /** @return where the next part begins; 0 for none */
    private static int takeOut(ByteBuffer tiff, int part, boolean all, Set<Integer> seen) {
        int count = tiff.getShort(part) & 0xffff;
        int next = tiff.getInt(part + 2 + 12 * count);
        int kept = 0;
        for (int i = 0; i < count; i++) {
            int at = part + 2 + 12 * i;
            int tag = tiff.getShort(at) & 0xffff;
            if (tag == EXIF_PART && seen.add(tiff.getInt(at + 8))) {
                takeOut(tiff, tiff.getInt(at + 8), false, seen);
            }
            if (tag == GPS_PART && seen.add(tiff.getInt(at + 8))) {
                takeOut(tiff, tiff.getInt(at + 8), true, seen);
            }
            if (all || TELLING.contains(tag)) {
                wipe(tiff, at);
            } else {
                for (int b = 0; b < 12; b++) {
                    tiff.put(part + 2 + 12 * kept + b, tiff.get(at + b));
                }
                kept++;
            }
        }
        tiff.putShort(part, (short) kept);
        tiff.putInt(part + 2 + 12 * kept, next);
        for (int b = part + 6 + 12 * kept; b < part + 6 + 12 * count; b++) {
            tiff.put(b, (byte) 0);
        }
        return next;
    }

    private static void wipe(ByteBuffer tiff, int at) {
        int type = tiff.getShort(at + 2) & 0xffff;
        long bytes = type < TYPE_BYTES.length ? TYPE_BYTES[type] * (tiff.getInt(at + 4) & 0xffffffffL) : 0;
        if (bytes > 4) {
            int from = tiff.getInt(at + 8);
            if (from < 0 || from + bytes > tiff.limit()) {
                throw new IllegalArgumentException("a value outside the file");
            }
            for (int b = 0; b < bytes; b++) {
                tiff.put(from + b, (byte) 0);
            }
        }
    }
}
