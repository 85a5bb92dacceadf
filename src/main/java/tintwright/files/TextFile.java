package tintwright.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Text on disk: read whole, or replaced whole. */
public final class TextFile {
    /** Far more than ten thousand chips take. */
    private static final long LARGEST = 64_000_000;

    private static final String DRAFT = ".draft";

    private TextFile() {}

    /** @return the text of a UTF-8 file, without a byte-order mark */
    public static String read(Path file) throws FileProblem {
        try {
            if (Files.isDirectory(file)) {
                throw FileProblem.unusable(file + " is a folder; name a file in it");
            }
            if (Files.size(file) > LARGEST) {
                throw FileProblem.unusable(file + " is larger than 64 MB; it cannot be one of our files");
            }
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (NoSuchFileException e) {
            throw FileProblem.unusable(file + " is not there; check the name and the folder", e);
        } catch (AccessDeniedException e) {
            throw FileProblem.unusable(file + " may not be read; change its permissions or name another", e);
        } catch (CharacterCodingException e) {
            throw FileProblem.unusable(file + " is not UTF-8 text; save it as UTF-8 or name another", e);
        } catch (IOException e) {
            throw FileProblem.unusable(file + " cannot be read (" + reason(e) + "); check the disk", e);
        }
    }

    /**
     * Replaces a file whole: a draft beside it, forced to the disk, then moved over it. Whatever goes wrong, what
     * stood there before still stands.
     */
    public static void write(Path file, String text) throws FileProblem {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Replaces a file whole, like {@link #write(Path, String)}. */
    public static void write(Path file, byte[] bytes) throws FileProblem {
        Path whole = file.toAbsolutePath();
        if (Files.isSymbolicLink(whole) && !Files.exists(whole)) {
            throw FileProblem.unusable(
                    file + " is a link to a file that is not there; nothing was written: name the file itself");
        }
        if (Files.isDirectory(whole)) {
            throw FileProblem.unusable(file + " is a folder; name a file in it");
        }
        if (!Files.isDirectory(whole.getParent())) {
            throw FileProblem.unusable(
                    file + " cannot be written: there is no folder " + whole.getParent() + "; make it first");
        }
        try {
            place(whole, bytes);
        } catch (IOException e) {
            throw FileProblem.notWritten(
                    file + " could not be written (" + reason(e)
                            + "); what stood there was left as it was: free some room or choose another folder",
                    e);
        }
    }

    /**
     * Puts a file in place whole, forced out: it is there with all its bytes, or what stood there still stands. A link
     * stays a link: what it names is written.
     */
    public static void place(Path named, byte[] bytes) throws IOException {
        Path file = Files.isSymbolicLink(named) ? named.toRealPath() : named;
        // Not a temporary file of the system: that would be for this person's eyes only, also after the move.
        Path draft = file.resolveSibling(draftPrefix(file) + UUID.randomUUID() + DRAFT);
        try {
            try (FileChannel channel =
                    FileChannel.open(draft, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
                channel.force(true);
            }
            move(draft, file);
        } catch (IOException e) {
            discard(draft, e);
            throw e;
        }
        forceFolder(file.toAbsolutePath().getParent());
    }

    private static void move(Path draft, Path file) throws IOException {
        try {
            Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static String draftPrefix(Path file) {
        return "." + file.getFileName() + ".";
    }

    /** @return whether a name in the folder of the file is that of a draft of it */
    static boolean isDraftOf(Path file, String name) {
        return name.startsWith(draftPrefix(file)) && name.endsWith(DRAFT);
    }

    /** The new name is part of the folder; not every system lets a folder be forced out (Windows does not). */
    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notOnThisSystem) {
            return;
        }
    }

    private static void discard(Path draft, IOException because) {
        try {
            Files.deleteIfExists(draft);
        } catch (IOException e) {
            because.addSuppressed(e);
        }
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "no permission";
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }
}
