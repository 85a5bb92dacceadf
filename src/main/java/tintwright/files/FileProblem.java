package tintwright.files;

/**
 * A file that cannot be used or written. The message is one sentence for the person at the bench: which file,
 * which place in it, what was wrong, what to do. The file was left as it was.
 */
public final class FileProblem extends Exception {
    private final boolean aboutInput;

    private FileProblem(String message, boolean aboutInput, Throwable cause) {
        // What stands in a file, or its name, may hold line breaks and worse.
        super(message.replaceAll("\\p{Cntrl}", " "), cause);
        this.aboutInput = aboutInput;
    }

    /** The file holds, or is, something that cannot be used. */
    public static FileProblem unusable(String message) {
        return new FileProblem(message, true, null);
    }

    /** The file holds, or is, something that cannot be used. */
    public static FileProblem unusable(String message, Throwable cause) {
        return new FileProblem(message, true, cause);
    }

    /** The file could not be written; what stood there still stands. */
    public static FileProblem notWritten(String message, Throwable cause) {
        return new FileProblem(message, false, cause);
    }

    /** @return true when another input would help; false when the disk, not the input, is at fault */
    public boolean isAboutInput() {
        return aboutInput;
    }
}
