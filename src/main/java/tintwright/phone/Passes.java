package tintwright.phone;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;

/**
 * Who may in. The code on the bench holds an invitation; the first phone that takes it up gets a pass of its own and
 * the invitation is used up, so a code that was seen over a shoulder opens nothing. Both are 128 bits of chance.
 */
final class Passes {
    private static final int BYTES = 16;
    /** More phones than any shop has; with it a flood of invitations cannot fill the memory. */
    static final int MOST_PHONES = 64;

    private final SecureRandom random = new SecureRandom();
    private final Map<String, Integer> phones = new HashMap<>();
    private String invitation = secret();
    private int given;
    private Runnable letIn = () -> {};

    private String secret() {
        byte[] bytes = new byte[BYTES];
        random.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    /** @return what the code holds at present */
    synchronized String invitation() {
        return invitation;
    }

    /** @return true when that is what the code holds at present */
    synchronized boolean invited(String secret) {
        // In the same time whatever was guessed right of it.
        return MessageDigest.isEqual(
                invitation.getBytes(StandardCharsets.UTF_8), secret.getBytes(StandardCharsets.UTF_8));
    }

    /** @param then told whenever a phone was let in and the invitation is another */
    synchronized void whenLetIn(Runnable then) {
        letIn = then;
    }

    /** @return a pass for the phone that shows this invitation; empty when it is used up or the house is full */
    synchronized Optional<String> admit(String secret) {
        if (!invited(secret) || phones.size() >= MOST_PHONES) {
            return Optional.empty();
        }
        invitation = secret();
        String pass = secret();
        phones.put(pass, ++given);
        letIn.run();
        return Optional.of(pass);
    }

    /** @return the number of the phone with this pass; empty when there is none */
    synchronized Optional<Integer> phone(String pass) {
        return Optional.ofNullable(phones.get(pass));
    }

    /** Ends every pass and the invitation. */
    synchronized void renew() {
        phones.clear();
        invitation = secret();
    }

    synchronized int phones() {
        return phones.size();
    }
}
