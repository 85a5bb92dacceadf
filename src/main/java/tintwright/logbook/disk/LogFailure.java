package tintwright.logbook.disk;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;

/** The world refused: a disk, a folder, a share. The message says what happened, what still stands, what to do. */
public final class LogFailure extends Exception {
    private static final long serialVersionUID = 1;

    private final boolean aboutInput;

    /** What was handed in cannot be used. */
    public LogFailure(String message) {
        super(message);
        this.aboutInput = true;
    }

    /** A disk or folder refused. */
    public LogFailure(String message, Throwable cause) {
        super(message, cause);
        this.aboutInput = false;
    }

    /** @return whether what was handed in is at fault, rather than a disk or a folder */
    public boolean isAboutInput() {
        return aboutInput;
    }

    /** @return one plain sentence for why {@code folder} could not be written */
    static String whyNotWritten(Path folder, Exception cause) {
        String said = String.valueOf(cause.getMessage()).toLowerCase(Locale.ROOT);
        if (said.contains("no space left") || said.contains("not enough space") || said.contains("disk full")) {
            return "The disk that holds the log folder " + folder + " is full. Make room on it";
        }
        if (said.contains("quota exceeded")) {
            return "Your share of the disk that holds the log folder " + folder + " is used up. Make room on it";
        }
        if (cause instanceof FileAlreadyExistsException
                || cause instanceof NotDirectoryException
                || Files.exists(folder) && !Files.isDirectory(folder)) {
            return "The log folder " + folder + " is a file, not a folder. Choose another folder";
        }
        if (cause instanceof NoSuchFileException || !Files.isDirectory(folder)) {
            return "The log folder " + folder + " is not there, or holds nothing of what it held. Connect the disk or"
                    + " share that holds it";
        }
        if (cause instanceof AccessDeniedException
                || cause instanceof ReadOnlyFileSystemException
                || said.contains("read-only")
                || said.contains("permission denied")) {
            return "The log folder " + folder + " may not be written to. Ask for the right to write, or make the"
                    + " disk writable";
        }
        return "The log folder " + folder + " could not be written (" + plain(cause) + "). Check its disk or share";
    }

    static String whyNotRead(Path file, Exception cause) {
        if (cause instanceof AccessDeniedException) {
            return "it may not be read; ask for the right to read it";
        }
        if (cause instanceof NoSuchFileException) {
            return "it is gone; connect the disk or share that holds it";
        }
        return "it cannot be read (" + plain(cause) + "); check its disk or share";
    }

    private static String plain(Exception cause) {
        String message = cause.getMessage();
        return message == null || message.isBlank() ? cause.getClass().getSimpleName() : message;
    }

    public static LogFailure notWritten(Path folder, IOException cause) {
        return new LogFailure(whyNotWritten(folder, cause) + ".", cause);
    }
}
