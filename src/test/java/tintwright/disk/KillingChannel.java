package tintwright.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;

/** What is written in one go is half written when the process dies of it. */
final class KillingChannel extends FileChannel {
    private final KillingFiles disk;
    private final FileChannel real;

    KillingChannel(KillingFiles disk, FileChannel real) {
        this.disk = disk;
        this.real = real;
    }

    private ByteBuffer halfOf(ByteBuffer bytes) {
        ByteBuffer half = bytes.duplicate();
        half.limit(bytes.position() + bytes.remaining() / 2);
        return half;
    }

    @Override
    public int write(ByteBuffer bytes) throws IOException {
        if (disk.isTheLast()) {
            real.write(halfOf(bytes));
            disk.die();
        }
        return real.write(bytes);
    }

    @Override
    public int write(ByteBuffer bytes, long at) throws IOException {
        if (disk.isTheLast()) {
            real.write(halfOf(bytes), at);
            disk.die();
        }
        return real.write(bytes, at);
    }

    @Override
    public long write(ByteBuffer[] bytes, int from, int count) throws IOException {
        disk.step();
        return real.write(bytes, from, count);
    }

    @Override
    public void force(boolean whole) throws IOException {
        disk.step();
        real.force(whole);
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
        disk.step();
        real.truncate(size);
        return this;
    }

    @Override
    public int read(ByteBuffer bytes) throws IOException {
        return real.read(bytes);
    }

    @Override
    public int read(ByteBuffer bytes, long at) throws IOException {
        return real.read(bytes, at);
    }

    @Override
    public long read(ByteBuffer[] bytes, int from, int count) throws IOException {
        return real.read(bytes, from, count);
    }

    @Override
    public long position() throws IOException {
        return real.position();
    }

    @Override
    public FileChannel position(long at) throws IOException {
        real.position(at);
        return this;
    }

    @Override
    public long size() throws IOException {
        return real.size();
    }

    @Override
    public long transferTo(long from, long count, WritableByteChannel to) throws IOException {
        return real.transferTo(from, count, to);
    }

    @Override
    public long transferFrom(ReadableByteChannel in, long from, long count) throws IOException {
        disk.step();
        return real.transferFrom(in, from, count);
    }

    @Override
    public MappedByteBuffer map(MapMode mode, long from, long size) throws IOException {
        return real.map(mode, from, size);
    }

    @Override
    public FileLock lock(long from, long size, boolean shared) throws IOException {
        return real.lock(from, size, shared);
    }

    @Override
    public FileLock tryLock(long from, long size, boolean shared) throws IOException {
        return real.tryLock(from, size, shared);
    }

    @Override
    protected void implCloseChannel() throws IOException {
        real.close();
    }
}
