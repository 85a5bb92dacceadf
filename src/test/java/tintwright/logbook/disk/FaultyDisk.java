package tintwright.logbook.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;

/** A disk that can be told to fail, and that knows what would be left if the power went now. */
final class FaultyDisk implements Disk {
    /** What fails next. */
    enum Fault {
        NONE,
        WRITE,
        HALF_WRITE,
        FORCE,
        CUT_AND_FORCE,
        OPEN
    }

    private final Map<Path, byte[]> forced = new HashMap<>();
    private Fault fault = Fault.NONE;
    private String message = "No space left on device";

    void fail(Fault with, String saying) {
        fault = with;
        message = saying;
    }

    void heal() {
        fault = Fault.NONE;
    }

    /** The power goes: of each file there is what was forced, and some of what was not, perhaps as zeros. */
    void losePower(SplittableRandom random) throws IOException {
        for (Map.Entry<Path, byte[]> file : forced.entrySet()) {
            if (!Files.exists(file.getKey())) {
                continue;
            }
            byte[] now = Files.readAllBytes(file.getKey());
            byte[] safe = file.getValue();
            int kept = safe.length + (now.length > safe.length ? random.nextInt(now.length - safe.length + 1) : 0);
            byte[] left = Arrays.copyOf(now, Math.max(safe.length, kept));
            System.arraycopy(safe, 0, left, 0, safe.length);
            if (random.nextBoolean()) {
                Arrays.fill(left, safe.length, left.length, (byte) 0);
            }
            Files.write(file.getKey(), left);
        }
    }

    @Override
    public Sheet open(Path file) throws IOException {
        failAt(Fault.OPEN);
        return new FaultySheet(file, REAL.open(file));
    }

    @Override
    public void place(Path file, byte[] bytes) throws IOException {
        failAt(Fault.OPEN);
        REAL.place(file, bytes);
        forced.put(file, bytes.clone());
    }

    private void failAt(Fault point) throws IOException {
        if (fault == point) {
            throw new IOException(message);
        }
    }

    private final class FaultySheet implements Sheet {
        private final Path file;
        private final Sheet real;

        private FaultySheet(Path file, Sheet real) {
            this.file = file;
            this.real = real;
        }

        @Override
        public long size() throws IOException {
            return real.size();
        }

        @Override
        public boolean isStill(Path path) throws IOException {
            return real.isStill(path);
        }

        @Override
        public void add(byte[] bytes) throws IOException {
            failAt(Fault.WRITE);
            if (fault == Fault.HALF_WRITE || fault == Fault.CUT_AND_FORCE) {
                real.add(Arrays.copyOf(bytes, bytes.length / 2));
                throw new IOException(message);
            }
            real.add(bytes);
        }

        @Override
        public void force() throws IOException {
            failAt(Fault.FORCE);
            real.force();
            forced.put(file, Files.readAllBytes(file));
        }

        @Override
        public void cutTo(long size) throws IOException {
            failAt(Fault.CUT_AND_FORCE);
            real.cutTo(size);
            forced.put(file, Files.readAllBytes(file));
        }

        @Override
        public void close() throws IOException {
            real.close();
        }
    }
}
