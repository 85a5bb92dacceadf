package tintwright.command.pieces;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tintwright.files.JsonText;

/**
 * One command word. A subclass states its options, gets its answer from the bench and leaves the rest to this
 * class: {@code --help}, {@code --json}, where the answer goes, and exit code 0.
 *
 * <p>A subclass is annotated {@code @picocli.CommandLine.Command(name, description, footer)}; the footer shows at
 * least one line that can be typed, beginning with {@code tintwright} and the word. Exit codes: {@code Commands}.
 */
public abstract class Command implements Callable<Integer> {
    @Option(names = "--json", description = "Answer as JSON for machines (field names: docs/formats.md).")
    private boolean json;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    @SuppressWarnings("unused") // picocli acts on it by itself
    private boolean help;

    @Spec
    private CommandSpec spec;

    /**
     * Does the step.
     *
     * @throws IllegalArgumentException for options that cannot be used; its message is the one sentence shown
     * @throws Exception any checked exception whose message is one clear sentence for the person
     */
    protected abstract Answer answer() throws Exception;

    /** @return what picocli knows of this word, with what was typed */
    protected final CommandSpec spec() {
        return spec;
    }

    @Override
    public final Integer call() throws Exception {
        Answer answer = answer();
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            Map<String, Object> fields = new LinkedHashMap<>();
            // A word below another is told with it: "cup add".
            fields.put("command", spec.qualifiedName().replaceFirst("^\\S+ ", ""));
            fields.put("formatVersion", 1);
            fields.putAll(answer.fields());
            out.print(PlainLine.ofJson(JsonText.of(fields)));
        } else {
            answer.lines().forEach(line -> out.print(PlainLine.of(line) + "\n"));
        }
        out.flush();
        return CommandLine.ExitCode.OK;
    }
}
