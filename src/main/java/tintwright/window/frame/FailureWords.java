package tintwright.window.frame;

import java.lang.System.Logger.Level;
import java.util.function.Consumer;
import tintwright.files.FileProblem;
import tintwright.logbook.disk.LogFailure;

/** What a failure says to a person. */
public final class FailureWords {
    private static final System.Logger LOG = System.getLogger(FailureWords.class.getName());

    private FailureWords() {}

    /** @return one sentence; what is no slip of the person's goes to the program's log in full */
    public static String of(Exception failure) {
        if (failure instanceof FileProblem
                || failure instanceof LogFailure
                || failure instanceof IllegalArgumentException) {
            String words = failure.getMessage();
            // The names of two of the three figures of a colour are small letters and stay so.
            String begun = words.startsWith("a*") || words.startsWith("b*")
                    ? words
                    : Character.toUpperCase(words.charAt(0)) + words.substring(1);
            return begun + (words.endsWith(".") ? "" : ".");
        }
        LOG.log(Level.ERROR, "in the window", failure);
        return "That did not work, and nothing was changed. The details are in the program's log.";
    }

    /**
     * Does what was typed, where it can be done.
     *
     * @param said takes why it cannot, or nothing when it is done
     * @return whether it was done
     */
    public static boolean tried(Consumer<String> said, Runnable edit) {
        try {
            edit.run();
            said.accept("");
            return true;
        } catch (IllegalArgumentException e) {
            said.accept(of(e));
            return false;
        }
    }
}
