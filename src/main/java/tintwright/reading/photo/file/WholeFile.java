package tintwright.reading.photo.file;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Notices a photo that was cut short before a part of it is read: a decoder that stops where the marks end would not.
 *
 * <p>Source: ITU-T T.81 annex B (end-of-image marker); PNG specification (IEND chunk).
 */
final class WholeFile {
    /** Here and in those below, markers of ITU-T T.81, table B.1, and the length in bytes of the IEND chunk (PNG, 11.2.5). */
    private static final int START_OF_SCAN = 0xDA;

    /** The marker EOI, ITU-T T.81 (1992), B.1.1.3. */
    private static final int END_OF_IMAGE = 0xD9;

    /** Bytes of an empty IEND chunk, ISO/IEC 15948:2004 (PNG), 5.3. */
    private static final int PNG_END = 12;

    private WholeFile() {}

    static void check(PhotoKind kind, Path path) throws PhotoException {
        try {
            boolean whole = switch (kind) {
                case JPEG -> endOfJpeg(path);
                case PNG -> endOfPng(path);
                case TIFF -> true; // its directory may stand anywhere; the decoder runs off the end by itself
            };
            if (!whole) {
                throw new PhotoException(
                        PhotoFile.name(path) + " is damaged or cut short. Copy it from the phone " + "again.");
            }
            if (kind == PhotoKind.PNG) {
                PngNotes.check(path);
            }
        } catch (IOException e) {
            throw PhotoFile.damaged(path, e);
        }
    }

    private static boolean endOfJpeg(Path path) throws IOException {
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ)) {
            long size = channel.size();
            if (size < 4 || size > Integer.MAX_VALUE) {
                return false;
            }
            MappedByteBuffer in = channel.map(FileChannel.MapMode.READ_ONLY, 0, size);
            int last = (int) size;
            if (in.get(last - 2) == (byte) 0xFF && (in.get(last - 1) & 255) == END_OF_IMAGE) {
                return true;
            }
            // Some phones hang a short film on the picture: the picture's own end then stands before it.
            for (int at = startOfScan(in, last); at >= 0 && at < last - 1; at++) {
                if (in.get(at) == (byte) 0xFF && (in.get(at + 1) & 255) == END_OF_IMAGE) {
                    return true;
                }
            }
            return false;
        }
    }

    private static int startOfScan(MappedByteBuffer in, int last) {
        int at = 2;
        while (at + 4 < last && in.get(at) == (byte) 0xFF) {
            int marker = in.get(at + 1) & 255;
            if (marker == START_OF_SCAN) {
                return at;
            }
            at += marker == 0xFF ? 1 : 2 + (in.getShort(at + 2) & 0xFFFF);
        }
        return -1;
    }

    private static boolean endOfPng(Path path) throws IOException {
        try (RandomAccessFile in = new RandomAccessFile(path.toFile(), "r")) {
            int length = (int) Math.min(in.length(), 65536);
            byte[] end = new byte[length];
            in.seek(in.length() - length);
            in.readFully(end);
            for (int at = length - PNG_END + 4; at >= 0; at--) {
                if (at + 4 <= length
                        && end[at] == 'I'
                        && end[at + 1] == 'E'
                        && end[at + 2] == 'N'
                        && end[at + 3] == 'D') {
                    return true;
                }
            }
            return false;
        }
    }
}
