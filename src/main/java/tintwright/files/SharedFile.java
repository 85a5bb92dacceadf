package tintwright.files;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

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
    private final Reading<T> reading;
    private final Function<T, String> text;

    private SharedFile(Path file, Reading<T> reading, Function<T, String> text) {
        this.file = file;
        this.reading = reading;
        this.text = text;
    }

    /** Takes a value out of a file. */
    @FunctionalInterface
    public interface Reading<T> {
        T from(JsonPlace root) throws FileProblem;
    }

    /** What shall stand in the file, by what is there; empty when there is no file. */
    @FunctionalInterface
    private interface Next<T, A> {
        Changed<T, A> after(Optional<String> there) throws FileProblem;
    }

    /** What is done while nobody else writes the file. */
    @FunctionalInterface
    private interface Work<A> {
        A done() throws FileProblem;
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

    public static <T> SharedFile<T> of(Path file, Reading<T> reading, Function<T, String> text) {
        return new SharedFile<>(file, reading, text);
    }

    /** @throws FileProblem when it is missing, malformed, of a newer version, or says what cannot be */
    public T read() throws FileProblem {
        return parsed(TextFile.read(file));
    }

    /**
     * Changes what stands in the file.
     *
     * @return the answer of the change that was written
     * @throws FileProblem when it cannot be read or written; what stood there still stands
     */
    public <A> A change(Change<T, A> change) throws FileProblem {
        return put(there -> change.of(there.isPresent() ? parsed(there.get()) : read()));
    }

    /**
     * The same for a file that need not be there yet.
     *
     * @param none what counts as standing in a file that is not there
     */
    public <A> A change(T none, Change<T, A> change) throws FileProblem {
        return put(there -> change.of(there.isPresent() ? parsed(there.get()) : none));
    }

    /** Puts a new file in place. @throws FileProblem when there is one already, or it cannot be written */
    public void create(T value) throws FileProblem {
        put(there -> {
            if (there.isPresent()) {
                throw FileProblem.unusable(file + " is there already and was left as it was: name another file");
            }
            return new Changed<>(value, value);
        });
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
        return put(there -> {
            T now = mine;
            if (there.isPresent() && !before.map(text).equals(there)) {
                now = together(before, parsed(there.get()), mine, merge);
            }
            return new Changed<>(now, now);
        });
    }

    private T together(Optional<T> before, T theirs, T mine, Merge<T> merge) throws FileProblem {
        String written = text.apply(theirs);
        if (written.equals(text.apply(mine))
                || before.map(text).filter(written::equals).isPresent()) {
            return mine;
        }
        return merge.of(
                before.orElseThrow(() -> FileProblem.unusable("another window has made " + file + " meanwhile, so what"
                        + " you did here is not kept in it: close one of the two windows and open it again")),
                theirs,
                mine);
    }

    private <A> A put(Next<T, A> next) throws FileProblem {
        return alone(() -> {
            for (int i = 0; i < TRIES; i++) {
                Optional<String> read = there();
                Changed<T, A> changed = next.after(read);
                String now = text.apply(changed.value());
                if (read.isPresent() && read.get().equals(now)) {
                    return changed.answer();
                }
                // Nothing is put in place that could not be opened again.
                parsed(now);
                if (there().equals(read)) {
                    TextFile.write(file, now);
                    return changed.answer();
                }
            }
            throw FileProblem.notWritten(
                    file + " is being changed by another program all the time; nothing was written: try again when it"
                            + " is done",
                    null);
        });
    }

    private Optional<String> there() throws FileProblem {
        return Files.exists(file) ? Optional.of(TextFile.read(file)) : Optional.empty();
    }

    /** @return theirs without what was taken out of mine, and with what came into mine */
    static <E> List<E> grown(List<E> before, List<E> theirs, List<E> mine) {
        List<E> both = new ArrayList<>(theirs);
        List<E> added = new ArrayList<>(mine);
        for (E one : before) {
            if (!added.remove(one)) {
                both.remove(one);
            }
        }
        // What both took in alike is one thing told twice.
        added.removeAll(theirs);
        both.addAll(added);
        return both;
    }

    private T parsed(String there) throws FileProblem {
        return reading.from(JsonPlace.parse(file.toString(), there));
    }

    private <A> A alone(Work<A> work) throws FileProblem {
        try (Claim held = Claim.await(lockFile(), LONGEST_WAIT)
                .orElseThrow(() -> FileProblem.notWritten(
                        file + " is held by another Tintwright that does not finish; nothing was written: close that"
                                + " one and try again",
                        null))) {
            clearDrafts();
            return work.done();
        } catch (IOException e) {
            throw FileProblem.notWritten(
                    file + " could not be locked (" + e.getMessage() + "); nothing was written: make the folder for"
                            + " temporary files writable, or free some room there",
                    e);
        }
    }

    /** Not beside the file: a folder that is kept in step with others would carry the lock along. */
    private Path lockFile() throws IOException {
        return Path.of(System.getProperty("java.io.tmpdir"), "tintwright-" + System.getProperty("user.name"))
                .resolve(Fingerprint.of(real().toString()) + ".lock");
    }

    /** @return the file under the one name that all paths and links to it lead to */
    private Path real() throws IOException {
        Path whole = file.toAbsolutePath().normalize();
        if (Files.exists(whole)) {
            return whole.toRealPath();
        }
        return Files.isDirectory(whole.getParent())
                ? whole.getParent().toRealPath().resolve(whole.getFileName())
                : whole;
    }

    /** Drafts of processes that ended while they wrote; nobody else writes this file while it is held. */
    private void clearDrafts() {
        try {
            Path real = real();
            try (DirectoryStream<Path> left = Files.newDirectoryStream(
                    real.getParent(),
                    path -> TextFile.isDraftOf(real, path.getFileName().toString()))) {
                for (Path draft : left) {
                    Files.deleteIfExists(draft);
                }
            }
        } catch (IOException | DirectoryIteratorException untidyOnly) {
            return;
        }
    }
}
