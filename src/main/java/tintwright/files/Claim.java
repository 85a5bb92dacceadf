package tintwright.files;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The sole right of one process to write one file. The lock lies on a disk of this machine: locks on shared folders
 * are not to be relied on.
 *
 * <p>Within one process the held locks are remembered apart, because on some systems closing any second channel
 * on a file gives up every lock the process holds on it (see {@link FileLock}).
 */
public final class Claim implements Closeable {
    private static final long PAUSE_MS = 5;
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final FileChannel channel;

    private Claim(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** @return the claim, or empty when another window has it */
    public static Optional<Claim> tryOn(Path lockFile) throws IOException {
        Files.createDirectories(lockFile.toAbsolutePath().getParent());
        Path file = lockFile.toAbsolutePath().getParent().toRealPath().resolve(lockFile.getFileName());
        if (!HELD.add(file)) {
            return Optional.empty();
        }
        FileChannel channel = null;
        try {
            channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (channel.tryLock() != null) {
                return Optional.of(new Claim(file, channel));
            }
            giveUp(file, channel);
            return Optional.empty();
        } catch (IOException e) {
            giveUp(file, channel);
            throw e;
        }
    }

    /**
     * Waits for the claim.
     *
     * @return the claim, or empty when another process still has it in the end
     */
    public static Optional<Claim> await(Path lockFile, Duration longest) throws IOException {
        long until = System.nanoTime() + longest.toNanos();
        Optional<Claim> claim = tryOn(lockFile);
        while (claim.isEmpty() && System.nanoTime() < until) {
            try {
                Thread.sleep(PAUSE_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return Optional.empty();
            }
            claim = tryOn(lockFile);
        }
        return claim;
    }

    private static void giveUp(Path file, FileChannel channel) throws IOException {
        try {
            if (channel != null) {
                channel.close();
            }
        } finally {
            HELD.remove(file);
        }
    }

    @Override
    public void close() throws IOException {
        giveUp(file, channel);
    }
}
