package tintwright;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import tintwright.command.Commands;
import tintwright.window.NoScreenException;
import tintwright.window.WindowStart;

/** Where the program starts: without a word the window on the demo, with one that step. */
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
        int code = args.length == 0 ? withoutAWord(out, err) : Commands.run(out, err, args);
        if (code != 0) {
            System.exit(code);
        }
    }

    /** The window on the demo where there is a display; the same match as text where there is none. */
    private static int withoutAWord(PrintStream out, PrintStream err) {
        if (WindowStart.likely()) {
            try {
                WindowStart.open(new String[0]);
                return 0;
            } catch (NoScreenException e) {
                err.println(e.getMessage());
            }
        }
        return Commands.run(out, err, "match", "--place", "port bow");
    }
}
