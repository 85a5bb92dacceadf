package tintwright.command.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import tintwright.bench.log.BoatStory;
import tintwright.bench.log.ShopLog;
import tintwright.bench.log.WriteLog;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.command.pieces.Figures;
import tintwright.files.Demo;
import tintwright.files.Fields;
import tintwright.files.FileProblem;
import tintwright.files.ShelfFile;
import tintwright.files.TargetFile;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.logbook.disk.LogFailure;
import tintwright.logbook.disk.Saved;
import tintwright.reading.Reading;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;

/** {@code log}: what was written down of a boat, and one more line of it. */
@CommandLine.Command(
        name = "log",
        sortOptions = false,
        description = {
            "Shows what was written down of a boat, or writes one more thing down: a reading, a cup, a",
            "verdict, a note. Without a boat it looks whether the files of the log are sound."
        },
        footer = {
            "",
            "Examples:",
            "  tintwright log --demo --boat Tarrowmere",
            "  tintwright log --demo",
            "  tintwright log --demo --boat Tarrowmere --place transom-left --read swatches/tarrowmere/port-bow.json",
            "  tintwright log --demo --boat Tarrowmere --cup may-1 --parts plain-white=58.2,soot-black=0.31",
            "  tintwright log --demo --boat Tarrowmere --chip may-1a --parts plain-white=49,soot-black=1 --read"
                    + " swatches/tarrowmere/port-bow.json",
            "  tintwright log --demo --boat Tarrowmere --filled gouge;sanded-600 --grams 34",
            "  tintwright log --demo --boat Tarrowmere --verdict invisible --note hardly-found",
            "  tintwright log --demo --boat Tarrowmere --withdraw 1c2d3e4f --note wrong-boat"
        })
public final class LogCommand extends Command {
    @Option(names = "--boat", paramLabel = "BOAT", description = "Which boat.")
    private String boat;

    @Option(names = "--place", paramLabel = "PLACE", description = "The place on it that a reading or a cup is for.")
    private String place;

    @Option(
            names = "--read",
            paramLabel = "FILE",
            description = "A target file with what was read: of the --place, or" + " of the cup with --cup.")
    private Path read;

    @Option(names = "--cup", paramLabel = "NAME", description = "Name of the cup; the last for a verdict.")
    private String cup;

    @Option(
            names = "--parts",
            paramLabel = "ID=G,...",
            description = "With --cup: what went in, grams by id on the" + " shelf, in the order it was weighed.")
    private String parts;

    @Option(names = "--chip", paramLabel = "NAME", description = "A chip of these --parts, read in the --read file.")
    private String chip;

    @Option(names = "--leftover", paramLabel = "NAME", description = "A cup of these --parts that was set aside.")
    private String leftover;

    @Option(
            names = "--filled",
            paramLabel = "STEPS",
            description = "What was done at the --place, steps separated by" + " semicolons.")
    private String filled;

    @Option(names = "--grams", paramLabel = "G", description = "With --filled: how much was mixed for it.")
    private Double grams;

    @Option(
            names = "--shelf",
            paramLabel = "FILE",
            description = "With --parts: your shelf; the demo shelf when not" + " said.")
    private Path shelf;

    @Option(
            names = "--verdict",
            paramLabel = "WORD",
            description = "How the cup came out: invisible, \"seen from a" + " metre\" or redo.")
    private String verdict;

    @Option(names = "--note", paramLabel = "TEXT", description = "Words to go with it, or alone.")
    private String note;

    @Option(
            names = "--withdraw",
            paramLabel = "ID",
            description = "Take an entry back, by the letters in front of its" + " line; it stays on disk.")
    private String withdraw;

    @Option(names = "--accept-losses", description = "Stop naming files and lines that will not come back.")
    private boolean acceptLosses;

    @Mixin
    private LogOptions options;

    @Override
    protected Answer answer() throws LogFailure, FileProblem {
        try (ShopLog log = options.open()) {
            if (acceptLosses) {
                log.book().acceptLosses();
            }
            if (boat == null) {
                return look(log);
            }
            Noted<Page.Boat> whose = log.boat(boat);
            Optional<String> done = write(log, whose);
            return done.isPresent() ? LogOptions.done(log, done.get()) : show(log, whose);
        }
    }

    private Optional<String> write(ShopLog log, Noted<Page.Boat> whose) throws FileProblem {
        WriteLog pen = new WriteLog(log);
        String words = note == null ? "" : note;
        String of = " of the " + whose.page().name();
        if (withdraw != null) {
            UUID id = entry(log, whose, withdraw);
            return Optional.of(LogOptions.sentence(log.book().withdraw(id, words), "Taken back; it stays on disk"));
        }
        if (verdict != null) {
            Page.Outcome outcome = Page.Outcome.of(verdict);
            Noted<Page.Cup> judged = log.cup(whose, LogOptions.text(cup));
            Saved saved = pen.verdict(whose, judged.id(), outcome, words);
            return Optional.of(LogOptions.sentence(
                    saved, "Written down how \"" + judged.page().name() + "\" came out"));
        }
        Optional<Noted<Page.Place>> where = place == null ? Optional.empty() : Optional.of(log.place(whose, place));
        List<Reading> readings =
                read == null ? List.of() : TargetFile.read(read).readings();
        if (filled != null) {
            List<String> steps = Stream.of(filled.split(";"))
                    .map(String::strip)
                    .filter(step -> !step.isEmpty())
                    .toList();
            OptionalDouble mixed = grams == null ? OptionalDouble.empty() : OptionalDouble.of(grams);
            return Optional.of(LogOptions.sentence(
                    pen.fill(whose, where, mixed, steps, words), "Written down what was filled" + of));
        }
        if (parts != null) {
            return Optional.of(writeMix(pen, whose, where, readings, words));
        }
        if (read != null) {
            Noted<Page.Place> there =
                    where.orElseThrow(() -> new IllegalArgumentException("say which place was read with --place NAME"));
            return Optional.of(LogOptions.sentence(
                    pen.reading(whose, there, readings, words),
                    "Written down what was read at the " + there.page().name() + of));
        }
        return note == null
                ? Optional.empty()
                : Optional.of(LogOptions.sentence(
                        pen.page(whose, new Page.Remark(Optional.empty(), note)), "Written down a note" + of));
    }

    private String writeMix(
            WriteLog pen,
            Noted<Page.Boat> whose,
            Optional<Noted<Page.Place>> where,
            List<Reading> readings,
            String words)
            throws FileProblem {
        if (Stream.of(cup, chip, leftover).filter(Objects::nonNull).count() != 1) {
            throw new IllegalArgumentException("say what the --parts are: --cup NAME, --chip NAME or --leftover NAME");
        }
        Shelf stands = shelf == null ? Demo.shelf() : ShelfFile.read(shelf);
        List<Page.Weighing> weighings = weighings();
        Parts mixed = sum(weighings);
        if (chip != null) {
            return LogOptions.sentence(
                    pen.chip(whose, chip, mixed, stands, readings, words), "Written down the chip \"" + chip + "\"");
        }
        if (leftover != null) {
            Leftover left = new Leftover(leftover, leftover, mixed, readings, Optional.empty());
            return LogOptions.sentence(
                    pen.leftover(whose, Optional.empty(), left, stands),
                    "Written down the leftover \"" + leftover + "\"");
        }
        return LogOptions.sentence(
                pen.cup(whose, where, cup, mixed, stands, weighings, readings, words),
                "Written down the cup \"" + cup + "\"");
    }

    private List<Page.Weighing> weighings() {
        List<Page.Weighing> weighings = new ArrayList<>();
        for (String part : parts.split(",", -1)) {
            String[] sides = part.split("=", -1);
            if (sides.length != 2) {
                throw new IllegalArgumentException(
                        "--parts must be like plain-white=58.2,soot-black=0.31, was \"" + parts + "\"");
            }
            try {
                weighings.add(new Page.Weighing(sides[0].strip(), Figures.parse(sides[1]), ""));
            } catch (CommandLine.TypeConversionException e) {
                throw new IllegalArgumentException("--parts must be grams by id, but " + e.getMessage(), e);
            }
        }
        return weighings;
    }

    private static Parts sum(List<Page.Weighing> weighings) {
        Map<String, Double> grams = new LinkedHashMap<>();
        weighings.forEach(weighing -> grams.merge(weighing.part(), weighing.grams(), Double::sum));
        return Parts.of(grams);
    }

    private static UUID entry(ShopLog log, Noted<Page.Boat> whose, String ending) {
        List<UUID> found = log.book().of(whose.id()).stream()
                .map(Noted::id)
                .filter(id -> id.toString().endsWith(ending.strip().toLowerCase(Locale.ROOT)))
                .toList();
        if (found.size() != 1) {
            throw new IllegalArgumentException((found.isEmpty() ? "no entry of the " : "more than one entry of the ")
                    + whose.page().name() + " ends with \"" + ending + "\"; the letters stand in front of each line");
        }
        return found.get(0);
    }

    private static Answer show(ShopLog log, Noted<Page.Boat> whose) {
        BoatStory story = BoatStory.of(log, whose);
        List<String> lines = new ArrayList<>(LogWords.entries(story));
        if (lines.isEmpty()) {
            lines.add("Nothing was written down of the " + whose.page().name() + " yet.");
        }
        return LogOptions.answer(
                log, lines, Fields.of("boat", whose.page().name()).with("entries", LogWords.entryFields(story)));
    }

    private static String count(int number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    private static Answer look(ShopLog log) {
        List<String> lines = new ArrayList<>();
        int entries = log.book().all().size();
        lines.add("The log " + log.book().folder() + ": "
                + count(log.book().boats().size(), "boat", "boats") + ", "
                + count(entries, "entry that counts", "entries that count") + ".");
        if (log.book().isReadOnly()) {
            lines.add("A newer Tintwright has written here, so this one only reads it.");
        }
        if (LogOptions.troubles(log).isEmpty()) {
            lines.add("Every line is as it was written.");
        }
        return LogOptions.answer(
                log,
                lines,
                Fields.of("folder", log.book().folder())
                        .with("boats", log.book().boats().size())
                        .with("entries", entries)
                        .with("readOnly", log.book().isReadOnly())
                        .with("waiting", log.book().waiting()));
    }
}
