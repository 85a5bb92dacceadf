package tintwright.files;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;

/**
 * The one way to change a file that others may change too: read, change, compare what is there with what was read,
 * and put the whole file in place. A lock keeps the other processes of this machine out meanwhile; what no lock sees
 * (a program that keeps folders in step, an editor) is seen by the content, and the change is then worked out anew
 * from what is there. What was answered is on the disk; what was refused was not written.
 *
 * @param <T> what stands in the file
 */
public final class SharedFile<T> {
    /** How often a change is worked out anew before the person is told; chosen, no source. */
    private static final int TRIES = 5;
    /** How long another process may take over its change; the longest, a learning of a full shelf, takes seconds. */
    private static final Duration LONGEST_WAIT = Duration.ofSeconds(60);

    private final Path file;
    private final Shape<T> shape;

    private SharedFile(Path file, Shape<T> shape) {
        this.file = file;
        this.shape = shape;
    }

    /** How a value stands in a file. */
    interface Shape<T> {
        T from(JsonPlace root) throws FileProblem;

        String text(T value);
    }

    /** Works out what shall stand in the file; called again when the file was changed meanwhile. */
    @FunctionalInterface
    public interface Change<T, A> {
        /** @param there what stands in the file now */
        Changed<T, A> of(T there) throws FileProblem;
    }

    /**
     * @param value  what shall stand in the file
     * @param answer what is answered once it does
     */
    public record Changed<T, A>(T value, A answer) {}

    /** Takes two changes of one beginning together. */
    @FunctionalInterface
    public interface Merge<T> {
        /** @throws FileProblem when they cannot both stand, saying why */
        T of(T before, T theirs, T mine) throws FileProblem;
    }

    static <T> SharedFile<T> of(Path file, Shape<T> shape) {
        return new SharedFile<>(file, shape);
    }

    /**
     * Changes what stands in the file.
     *
     * @return the answer of the change that was written
     * @throws FileProblem when it cannot be read or written; what stood there still stands
     */
    public <A> A change(Change<T, A> change) throws FileProblem {
        try (Claim held = hold()) {
            for (int i = 0; i < TRIES; i++) {
                String read = TextFile.read(file);
                Changed<T, A> changed = change.of(parsed(read));
                String text = shape.text(changed.value());
                if (TextFile.read(file).equals(read)) {
                    TextFile.write(file, text);
                    return changed.answer();
                }
            }
            throw FileProblem.notWritten(
                    file + " is being changed by another program all the time; nothing was written: try again when it"
                            + " is done",
                    null);
        } catch (IOException e) {
            throw notHeld(e);
        }
    }

    /** Puts a new file in place. @throws FileProblem when there is one already, or it cannot be written */
    public void create(T value) throws FileProblem {
        String text = shape.text(value);
        try (Claim held = hold()) {
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                throw FileProblem.unusable(file + " is there already and was left as it was: name another file");
            }
            TextFile.write(file, text);
        } catch (IOException e) {
            throw notHeld(e);
        }
    }

    /**
     * Writes what somebody changed who holds the value in hand for long.
     *
     * @param before what they began from, as they last read or wrote it; empty when there was no file
     * @param mine   what they made of it
     * @return what stands in the file now: theirs and mine together
     * @throws FileProblem when the two cannot both stand, or it cannot be written; what stood there still stands
     */
    public T keep(Optional<T> before, T mine, Merge<T> merge) throws FileProblem {
        try (Claim held = hold()) {
            T now = mine;
            if (Files.exists(file)) {
                String there = TextFile.read(file);
                if (before.isEmpty() || !shape.text(before.get()).equals(there)) {
                    T theirs = parsed(there);
                    now = merge.of(before.orElse(theirs), theirs, mine);
                }
                if (shape.text(now).equals(there)) {
                    return now;
                }
            }
            TextFile.write(file, shape.text(now));
            return now;
        } catch (IOException e) {
            throw notHeld(e);
        }
    }

    private T parsed(String text) throws FileProblem {
        return shape.from(JsonPlace.parse(file.toString(), text));
    }

    private FileProblem notHeld(IOException e) {
        return FileProblem.notWritten(
                file + " could not be locked (" + e.getMessage() + "); nothing was written: make the folder for"
                        + " temporary files writable, or free some room there",
                e);
    }

    private Claim hold() throws FileProblem, IOException {
        Claim claim = Claim.await(lockFile(), LONGEST_WAIT)
                .orElseThrow(() -> FileProblem.notWritten(
                        file + " is held by another Tintwright that does not finish; nothing was written: close that"
                                + " one and try again",
                        null));
        try {
            clearDrafts();
            return claim;
        } catch (IOException e) {
            claim.close();
            throw e;
        }
    }

    /** Not beside the file: a folder that is kept in step with others would carry the lock along. */
    private Path lockFile() throws IOException {
        Path whole = file.toAbsolutePath().normalize();
        Path real = Files.exists(whole)
                ? whole.toRealPath()
                : Files.isDirectory(whole.getParent())
                        ? whole.getParent().toRealPath().resolve(whole.getFileName())
                        : whole;
        return Path.of(System.getProperty("java.io.tmpdir"), "tintwright-" + System.getProperty("user.name"))
                .resolve(Fingerprint.of(real.toString()) + ".lock");
    }

    /** Drafts of processes that ended while they wrote; nobody else writes this file while it is held. */
    private void clearDrafts() throws IOException {
        Path whole = file.toAbsolutePath();
        if (!Files.isDirectory(whole.getParent())) {
            return;
        }
        try (DirectoryStream<Path> left = Files.newDirectoryStream(
                whole.getParent(),
                path -> TextFile.isDraftOf(whole, path.getFileName().toString()))) {
            for (Path draft : left) {
                Files.deleteIfExists(draft);
            }
        }
    }
}
