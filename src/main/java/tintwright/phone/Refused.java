package tintwright.phone;

import java.util.Optional;

/** A request that is not served; the message is the sentence that the phone shows. */
final class Refused extends Exception {
    private static final long serialVersionUID = 1;

    private final int status;

    Refused(int status, String sentence) {
        super(sentence);
        this.status = status;
    }

    Reply reply(Optional<Place> back) {
        return Reply.refusal(status, getMessage(), back);
    }
}
