package tintwright.phone;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;

/**
 * What a phone gets back.
 *
 * @param status  the status code (RFC 9110, section 15)
 * @param type    the media type of the body
 * @param body    may be empty
 * @param headers what goes with it besides
 */
record Reply(int status, String type, byte[] body, Map<String, String> headers) {
    static final int OK = 200;
    static final int SEE_OTHER = 303;
    static final int BAD_REQUEST = 400;
    static final int FORBIDDEN = 403;
    static final int NOT_FOUND = 404;
    static final int METHOD_NOT_ALLOWED = 405;
    static final int TOO_LARGE = 413;
    static final int WRONG_TYPE = 415;
    static final int UNUSABLE = 422;
    static final int TOO_MANY = 429;
    static final int FAILED = 500;
    static final int BUSY = 503;

    static Reply page(int status, String html) {
        return new Reply(status, "text/html; charset=utf-8", html.getBytes(StandardCharsets.UTF_8), Map.of());
    }

    /** To another page, by GET, so that going back or loading anew sends nothing twice. */
    static Reply to(String path) {
        return new Reply(SEE_OTHER, "text/plain; charset=utf-8", new byte[0], Map.of("Location", path));
    }

    /**
     * What cannot be done, in one sentence.
     *
     * @param back where to go on; empty for one who is not let in
     */
    static Reply refusal(int status, String sentence, Optional<Place> back) {
        return page(status, Html.refusal(sentence, back));
    }
}
