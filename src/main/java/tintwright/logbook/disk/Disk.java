package tintwright.logbook.disk;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import tintwright.files.TextFile;

/** What the pen asks of a disk, so that a test can be a disk that fails at any of it. */
public interface Disk {
    /** Opens a file that exists, for adding at its end. */
    Sheet open(Path file) throws IOException;

    /** Puts a new file in place whole, forced out: it is there with all its bytes or not at all. */
    void place(Path file, byte[] bytes) throws IOException;

    /** A file open for adding. */
    interface Sheet extends Closeable {
        long size() throws IOException;

        /** @return whether {@code file} still names the very file that is open, and not another put in its place */
        boolean isStill(Path file) throws IOException;

        /** Adds all the bytes at the end; they may still be in memory only. */
        void add(byte[] bytes) throws IOException;

        /** Returns when everything added is on the disk itself. */
        void force() throws IOException;

        void cutTo(long size) throws IOException;
    }

    /** The disk of the machine. */
    Disk REAL = new Disk() {
        @Override
        public Sheet open(Path file) throws IOException {
            FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
            return new RealSheet(channel, RealSheet.key(file));
        }

        @Override
        public void place(Path file, byte[] bytes) throws IOException {
            TextFile.place(file, bytes);
        }
    };

    /** A file channel that writes everything it is given. */
    record RealSheet(FileChannel channel, Object key) implements Sheet {
        /** What the system knows a file by, whatever its name; null where the system does not tell. */
        private static Object key(Path file) throws IOException {
            return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
        }

        @Override
        public boolean isStill(Path file) throws IOException {
            return Objects.equals(key, key(file)) && Files.size(file) == channel.size();
        }

        @Override
        public long size() throws IOException {
            return channel.size();
        }

        @Override
        public void add(byte[] bytes) throws IOException {
            writeAll(channel, bytes, channel.size());
        }

        static void writeAll(FileChannel channel, byte[] bytes, long at) throws IOException {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer, at + buffer.position());
            }
        }

        @Override
        public void force() throws IOException {
            channel.force(false);
        }

        @Override
        public void cutTo(long size) throws IOException {
            channel.truncate(size);
            channel.force(true);
        }

        @Override
        public void close() throws IOException {
            channel.close();
        }
    }
}
