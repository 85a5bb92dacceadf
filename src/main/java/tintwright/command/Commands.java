package tintwright.command;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import tintwright.command.cup.CorrectCommand;
import tintwright.command.cup.CupCommand;
import tintwright.command.cup.MatchCommand;
import tintwright.command.holes.FillCommand;
import tintwright.command.hull.ReadCommand;
import tintwright.command.hull.SheetCommand;
import tintwright.command.log.AgainCommand;
import tintwright.command.log.BoatCommand;
import tintwright.command.log.ExportCommand;
import tintwright.command.log.ImportCommand;
import tintwright.command.log.LogCommand;
import tintwright.command.log.NearCommand;
import tintwright.command.pieces.Command;
import tintwright.command.pieces.Figures;
import tintwright.command.pieces.PlainLine;
import tintwright.command.shelf.LearnCommand;
import tintwright.command.shelf.ShelfCommand;
import tintwright.files.FileProblem;
import tintwright.logbook.disk.LogFailure;
import tintwright.reading.photo.file.PhotoException;

/**
 * The command line: finds the command word, runs it, and turns whatever happens into an exit code and, when it
 * went wrong, one sentence on the error stream.
 */
public final class Commands {
    /** Exit code: done. */
    public static final int DONE = 0;
    /** Exit code: anything else than unusable input, such as a full disk. */
    public static final int FAILED = 1;
    /** Exit code: the input cannot be used. */
    public static final int UNUSABLE = 2;

    /** Wide enough that an example stays on one line. */
    private static final int HELP_WIDTH = 118;

    /** Every command word, in the order of the job. */
    private static final List<String> WORDS = List.of(
            "shelf", "learn", "sheet", "read", "match", "cup", "correct", "fill", "phone", "boat", "log", "again",
            "near", "export", "import");

    private Commands() {}

    /** @return a fresh object for every command word, in the order of the job */
    static List<Command> all() {
        return WORDS.stream().map(Commands::named).toList();
    }

    private static Command named(String word) {
        return switch (word) {
            case "shelf" -> new ShelfCommand();
            case "learn" -> new LearnCommand();
            case "sheet" -> new SheetCommand();
            case "read" -> new ReadCommand();
            case "match" -> new MatchCommand();
            case "cup" -> new CupCommand();
            case "correct" -> new CorrectCommand();
            case "fill" -> new FillCommand();
            case "phone" -> new PhoneCommand();
            case "boat" -> new BoatCommand();
            case "log" -> new LogCommand();
            case "again" -> new AgainCommand();
            case "near" -> new NearCommand();
            case "export" -> new ExportCommand();
            case "import" -> new ImportCommand();
            default -> throw new IllegalArgumentException(word);
        };
    }

    /**
     * @param out  for the answer, written as UTF-8
     * @param err  for what went wrong, written as UTF-8
     * @param args a command word and its options, or options of the program itself
     * @return the exit code
     */
    public static int run(PrintStream out, PrintStream err, String... args) {
        // One word needs no other: to build them all takes longer than most of them take to answer.
        boolean known = args.length > 0 && WORDS.contains(args[0]);
        return run(known ? List.of(named(args[0])) : all(), out, err, args);
    }

    /**
     * The demo in words, where no window can be drawn.
     *
     * @return the exit code
     */
    public static int demo(PrintStream out, PrintStream err) {
        PrintWriter complaints = new PrintWriter(err, true, StandardCharsets.UTF_8);
        try {
            DemoInWords.lines().forEach(line -> out.print(PlainLine.of(line) + "\n"));
            return DONE;
        } catch (IOException | PhotoException e) {
            say(complaints, wordsFor(e));
            return codeFor(e);
        }
    }

    static int run(List<Command> commands, PrintStream out, PrintStream err, String... args) {
        PrintWriter answers = new PrintWriter(out, true, StandardCharsets.UTF_8);
        PrintWriter complaints = new PrintWriter(err, true, StandardCharsets.UTF_8);
        Optional<Command> asked = commands.stream()
                .filter(each -> args.length > 0 && words(each).name().equals(args[0]))
                .findFirst();
        CommandLine line = asked.map(Commands::alone).orElseGet(() -> line(commands, args));
        String[] rest = asked.isPresent() ? Arrays.copyOfRange(args, 1, args.length) : args;
        int code = line.setOut(answers).setErr(complaints).execute(rest);
        answers.flush();
        complaints.flush();
        return code;
    }

    private static CommandLine.Command words(Command command) {
        return command.getClass().getAnnotation(CommandLine.Command.class);
    }

    /** One word without the program around it, which takes as long to build as the word itself. */
    static CommandLine alone(Command command) {
        CommandLine line = new CommandLine(command);
        return dressed(line.setCommandName(Program.NAME + " " + line.getCommandName()));
    }

    /** The program; of words that nobody mentions its help needs one sentence, and no options. */
    private static CommandLine line(List<Command> commands, String... args) {
        CommandLine line = new CommandLine(new Program());
        List<String> said = List.of(args);
        for (Command command : commands) {
            CommandLine.Command words = words(command);
            if (said.contains(words.name())) {
                line.addSubcommand(command);
            } else {
                CommandSpec name = CommandSpec.create();
                name.usageMessage().description(words.description());
                line.addSubcommand(words.name(), name);
            }
        }
        return dressed(line);
    }

    private static CommandLine dressed(CommandLine line) {
        line.registerConverter(Double.class, Figures::parse);
        line.registerConverter(double.class, Figures::parse);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setUsageHelpWidth(HELP_WIDTH);
        line.setParameterExceptionHandler((problem, args) -> {
            say(problem.getCommandLine().getErr(), wordsFor(problem));
            return UNUSABLE;
        });
        line.setExecutionExceptionHandler((problem, command, parsed) -> {
            say(command.getErr(), wordsFor(problem));
            return codeFor(problem);
        });
        return line;
    }

    private static int codeFor(Exception problem) {
        if (problem instanceof FileProblem file) {
            return file.isAboutInput() ? UNUSABLE : FAILED;
        }
        if (problem instanceof LogFailure log) {
            return log.isAboutInput() ? UNUSABLE : FAILED;
        }
        boolean ofTheProgram = problem instanceof RuntimeException && !(problem instanceof IllegalArgumentException);
        return ofTheProgram || problem instanceof IOException ? FAILED : UNUSABLE;
    }

    private static String wordsFor(Exception problem) {
        if (problem instanceof IOException) {
            return "Reading or writing failed: " + problem.getMessage() + "; nothing else was changed";
        }
        if (problem instanceof RuntimeException && !(problem instanceof IllegalArgumentException)) {
            return "The program itself failed (" + problem.getClass().getSimpleName() + ": " + problem.getMessage()
                    + "): please report this with what was typed";
        }
        // The sentence of a file begins with its name, which stays as it is.
        return problem instanceof FileProblem ? problem.getMessage() : capital(String.valueOf(problem.getMessage()));
    }

    private static String capital(String sentence) {
        return sentence.isEmpty()
                ? sentence
                : sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    private static String wordsFor(ParameterException problem) {
        CommandLine at = problem.getCommandLine();
        String help = "\"" + at.getCommandSpec().qualifiedName() + " --help\" shows what it takes";
        if (problem instanceof UnmatchedArgumentException unmatched
                && at.getCommand() instanceof Program
                && !unmatched.getUnmatched().isEmpty()
                && !unmatched.getUnmatched().get(0).startsWith("-")) {
            return "There is no command \"" + unmatched.getUnmatched().get(0) + "\": the commands are "
                    + String.join(", ", at.getSubcommands().keySet());
        }
        if (problem instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption()) {
            return "\"" + unmatched.getUnmatched().get(0) + "\" is not understood here; " + help;
        }
        return capital(problem.getMessage()) + "; " + help;
    }

    /** One line that ends with a full stop, whatever came. */
    private static void say(PrintWriter err, String sentence) {
        String line = String.valueOf(sentence).strip().replaceAll("\\s+", " ");
        String tail = line.endsWith(".") || line.endsWith("?") ? "" : ".";
        err.print(PlainLine.of(line) + tail + "\n");
        err.flush();
    }
}
