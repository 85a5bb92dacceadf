package tintwright.window;

/** There is nothing to draw a window on; the message says what is missing and what still works. */
public final class NoScreenException extends Exception {
    private static final long serialVersionUID = 1;

    NoScreenException(String message, Throwable cause) {
        super(message, cause);
    }
}
