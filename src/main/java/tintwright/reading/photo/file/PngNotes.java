package tintwright.reading.photo.file;

import java.io.EOFException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Set;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Packed notes of a PNG (texts and the colour profile), unpacked only to count them: a few kilobytes can stand for
 * gigabytes, and both the decoder and the reader of tags would unpack them whole.
 *
 * <p>Source: PNG specification, ISO/IEC 15948, 11.3 (zTXt, iTXt, iCCP).
 */
final class PngNotes {
    /** The largest profiles of printers take about 4 MB; chosen, no source. */
    static final long MOST_UNPACKED = 16L << 20;
    /** More packed bytes than this are no note; chosen, no source. */
    private static final long MOST_PACKED = 32L << 20;

    private static final Set<String> PACKED = Set.of("zTXt", "iTXt", "iCCP");
    /** Bytes before the first chunk; PNG specification, ISO/IEC 15948, 5.2. */
    private static final int SIGNATURE = 8;

    private PngNotes() {}

    /** @throws PhotoException when the notes unpack to more than any camera or program writes */
    static void check(Path path) throws PhotoException, IOException {
        try (RandomAccessFile in = new RandomAccessFile(path.toFile(), "r")) {
            in.seek(SIGNATURE);
            long unpacked = 0;
            while (true) {
                long length = in.readInt() & 0xffffffffL;
                byte[] name = new byte[4];
                in.readFully(name);
                long next = in.getFilePointer() + length + 4;
                String kind = new String(name, StandardCharsets.US_ASCII);
                if (PACKED.contains(kind)) {
                    unpacked += length > MOST_PACKED ? MOST_UNPACKED + 1 : unpacked(in, kind, (int) length);
                }
                if (unpacked > MOST_UNPACKED) {
                    throw new PhotoException(PhotoFile.name(path) + " carries notes or a profile that unpack to more"
                            + " than 16 MB, as no camera writes them. Save it again without them and read that.");
                }
                in.seek(next);
            }
        } catch (EOFException atTheEnd) {
            // Whether the end is the right one is told by WholeFile.
            return;
        }
    }

    private static long unpacked(RandomAccessFile in, String kind, int length) throws IOException {
        byte[] chunk = new byte[length];
        in.readFully(chunk);
        int at = afterZero(chunk, 0);
        if (!kind.equals("iTXt")) {
            return counted(chunk, at + 1);
        }
        boolean packed = at < length && chunk[at] != 0;
        return packed ? counted(chunk, afterZero(chunk, afterZero(chunk, at + 2))) : length;
    }

    /** @return where what follows the next zero begins; beyond the end when there is none */
    private static int afterZero(byte[] chunk, int from) {
        int at = from;
        while (at < chunk.length && chunk[at] != 0) {
            at++;
        }
        return at + 1;
    }

    private static long counted(byte[] chunk, int from) {
        if (from >= chunk.length) {
            return 0;
        }
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(chunk, from, chunk.length - from);
            byte[] some = new byte[1 << 16];
            long count = 0;
            while (count <= MOST_UNPACKED) {
                int got = inflater.inflate(some);
                if (got == 0) {
                    return count;
                }
                count += got;
            }
            return count;
        } catch (DataFormatException noStream) {
            return 0;
        } finally {
            inflater.end();
        }
    }
}
