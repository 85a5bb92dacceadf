package tintwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.command.pieces.Figures;

/** What holds for every command word: help, JSON, exit codes, one sentence. */
class CommandLineTest {
    @CommandLine.Command(
            name = "weigh",
            description = "Weighs one thing.",
            footer = {"", "Example:", "  tintwright weigh --grams 12.5"})
    static final class Weigh extends Command {
        @Option(names = "--grams", required = true)
        private double grams;

        @Override
        protected Answer answer() throws Exception {
            if (grams == 1) {
                throw new IOException("disk is full");
            }
            if (grams == 2) {
                throw new IllegalStateException("a mistake of ours");
            }
            if (grams < 0) {
                throw new IllegalArgumentException("grams must be 0 or more, was " + grams + " g");
            }
            return new Answer(List.of("Grün: " + Figures.fixed(grams, 2) + " g"), Map.of("grams", grams));
        }
    }

    record Ran(int code, String out, String err) {}

    static Ran run(List<Command> commands, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Commands.run(
                commands,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                args);
        return new Ran(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private static Ran weigh(String... args) {
        return run(List.of(new Weigh()), args);
    }

    @Test
    void answersInWordsWithADecimalPointInEveryCountry() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertEquals(new Ran(0, "Grün: 12.50 g\n", ""), weigh("weigh", "--grams", "12.5"));
            Locale.setDefault(Locale.GERMANY);
            assertEquals(new Ran(0, "Grün: 12.50 g\n", ""), weigh("weigh", "--grams", "12.5"));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void answersInJsonWithTheCommandAndTheVersionFirst() throws IOException {
        Ran ran = weigh("weigh", "--grams", "12.5", "--json");
        JsonNode json = new ObjectMapper().readTree(ran.out());
        assertEquals(
                "[command, formatVersion, grams]",
                json.properties().stream().map(Map.Entry::getKey).toList().toString());
        assertEquals(12.5, json.get("grams").doubleValue());
        assertEquals(0, ran.code());
    }

    @Test
    void refusesWhatItCannotUseInOneSentenceWithTwo() {
        refused("There is no command \"wegh\": the commands are weigh.", "wegh");
        refused(
                "Unknown option: '--colour'; \"tintwright weigh --help\" shows what it takes.",
                "weigh",
                "--grams",
                "5",
                "--colour");
        refused(
                "Invalid value for option '--grams': \"12,5\" is not a number such as 12.5; "
                        + "\"tintwright weigh --help\" shows what it takes.",
                "weigh",
                "--grams",
                "12,5");
        refused(
                "Invalid value for option '--grams': \"NaN\" is not a number such as 12.5; "
                        + "\"tintwright weigh --help\" shows what it takes.",
                "weigh",
                "--grams",
                "NaN");
        refused(
                "Missing required option: '--grams=<grams>'; \"tintwright weigh --help\" shows what it takes.",
                "weigh");
        refused("Grams must be 0 or more, was -3.0 g.", "weigh", "--grams=-3");
    }

    private static void refused(String sentence, String... args) {
        assertEquals(new Ran(2, "", sentence + "\n"), weigh(args), Arrays.toString(args));
    }

    @Test
    void answersOneForWhatIsNotTheInputsFault() {
        assertEquals(1, weigh("weigh", "--grams", "1").code());
        Ran ours = weigh("weigh", "--grams", "2");
        assertEquals(1, ours.code());
        assertEquals(1, ours.err().lines().count());
        assertFalse(ours.err().contains("\tat "), ours.err());
    }

    @Test
    void everyCommandHasAnExampleThatCanBeTyped() {
        for (Command command : Commands.all()) {
            CommandLine line = new CommandLine(command);
            String word = line.getCommandName();
            List<String> examples = Arrays.stream(
                            line.getCommandSpec().usageMessage().footer())
                    .map(String::strip)
                    .filter(text -> text.startsWith("tintwright " + word))
                    .toList();
            assertFalse(examples.isEmpty(), word + " needs an example in its footer");
            for (String example : examples) {
                String[] args = example.substring("tintwright ".length()).split(" +");
                Commands.alone(command).parseArgs(Arrays.copyOfRange(args, 1, args.length));
            }
            Ran help = run(Commands.all(), word, "--help");
            assertEquals(0, help.code());
            assertTrue(help.out().contains(examples.get(0)) && help.out().contains("--json"), help.out());
        }
    }
}
