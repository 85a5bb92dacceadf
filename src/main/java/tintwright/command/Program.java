package tintwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tintwright.bench.Version;

/** The program without a command word: only its help and its version. */
@CommandLine.Command(
        name = Program.NAME,
        description = {
            "Matches the colour of a faded fibreglass hull from a white base and a few tints.",
            "Without a command word it opens the window, or prints the demo match where there is no display."
        },
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "\"tintwright\" stands for: java -jar target/tintwright.jar",
            "Exit code 0: done; 2: the input cannot be used; 1: anything else."
        })
final class Program implements Callable<Integer> {
    static final String NAME = "tintwright";

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    @SuppressWarnings("unused") // picocli acts on it by itself
    private boolean help;

    @Option(names = "--version", description = "Show the version.")
    private boolean version;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (version) {
            spec.commandLine().getOut().print("tintwright " + Version.number() + "\n");
            return Commands.DONE;
        }
        throw new CommandLine.ParameterException(spec.commandLine(), "Say what to do with a command word");
    }
}
