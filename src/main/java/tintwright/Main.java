package tintwright;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import tintwright.command.Commands;
import tintwright.window.NoScreenException;
import tintwright.window.WindowStart;

/**
 * Where the program starts: without a word the window, or the demo as text where no window can be drawn; with
 * a command word one step in the terminal.
 *
 * <p>Not an {@code Application} itself, so that a jar on the class path is enough.
 */
public final class Main {
    private Main() {}

    /**
     * @param args nothing, or a command word with its options
     */
    public static void main(String[] args) {
        // The names on a shelf are in any script, whatever the terminal claims to be.
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int code = args.length == 0 ? window(out, err) : Commands.run(out, err, args);
        if (code != Commands.DONE) {
            System.exit(code);
        }
    }

    private static int window(PrintStream out, PrintStream err) {
        try {
            WindowStart.open(new String[0]);
            return Commands.DONE;
        } catch (NoScreenException e) {
            out.print(e.getMessage() + "\nHere is the demo in words.\n\n");
            return Commands.demo(out, err);
        } catch (RuntimeException e) {
            Throwable cause = e.getCause() == null ? e : e.getCause();
            err.print("The window stopped because of a mistake in the program (" + cause + "); what was saved is safe,"
                    + " please report this.\n");
            return Commands.FAILED;
        }
    }
}
