package tintwright.phone;

/** The phone's pages cannot be served; the message says why and what to do. */
public final class PhoneFailure extends Exception {
    private static final long serialVersionUID = 1;

    PhoneFailure(String message) {
        super(message);
    }

    PhoneFailure(String message, Throwable cause) {
        super(message, cause);
    }
}
