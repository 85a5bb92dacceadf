package tintwright;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import tintwright.command.Commands;

/** Where the program starts: without a word the demo match, with one that step. */
public final class Main {
    private Main() {
    }

    /**
     * @param args nothing, or a command word with its options
     */
    public static void main(String[] args) {
        // The names on a shelf are in any script, whatever the terminal claims to be.
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int code = args.length == 0 ? Commands.run(out, err, "match", "--place", "port bow")
                : Commands.run(out, err, args);
        if (code != 0) {
            System.exit(code);
        }
    }
}
