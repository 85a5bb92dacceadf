package tintwright.command.pieces;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.DoubleStream;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tintwright.files.Fields;
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
            // A word below another is told with it: "cup add".
            Fields head = Fields.of("command", spec.qualifiedName().replaceFirst("^\\S+ ", ""));
            Map<String, Object> fields = head.with("formatVersion", 1).and(answer.fields());
            out.print(PlainLine.ofJson(JsonText.of(rounded(fields))));
        } else {
            answer.lines().forEach(line -> out.print(PlainLine.of(line) + "\n"));
        }
        out.flush();
        return CommandLine.ExitCode.OK;
    }

    /** Six decimals: beyond that there is only the noise of arithmetic. */
    private static Object rounded(Object tree) {
        if (tree instanceof Map<?, ?> fields) {
            Map<Object, Object> all = new LinkedHashMap<>();
            fields.forEach((name, value) -> all.put(name, rounded(value)));
            return all;
        }
        if (tree instanceof Iterable<?> list) {
            List<Object> all = new ArrayList<>();
            list.forEach(value -> all.add(rounded(value)));
            return all;
        }
        if (tree instanceof double[] numbers) {
            return DoubleStream.of(numbers).mapToObj(Command::rounded).toList();
        }
        return tree instanceof Double number ? (Double) (Math.rint(number * 1e6) / 1e6) : tree;
    }
}
