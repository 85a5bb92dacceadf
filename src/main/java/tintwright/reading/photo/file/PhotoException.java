package tintwright.reading.photo.file;

/**
 * A photo, or what is marked in it, that cannot be read. The message is for the person at the bench: what was
 * wrong, where, what to do.
 */
public final class PhotoException extends Exception {
    public PhotoException(String message) {
        super(message);
    }

    public PhotoException(String message, Throwable cause) {
        super(message, cause);
    }
}
