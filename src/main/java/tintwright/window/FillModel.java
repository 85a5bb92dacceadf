package tintwright.window;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tintwright.bench.PlanFill;
import tintwright.cup.Cup;
import tintwright.fill.Allowances;
import tintwright.fill.CatalystChoice;
import tintwright.fill.Conditions;
import tintwright.fill.CureTimer;
import tintwright.fill.Densities;
import tintwright.fill.FillJob;
import tintwright.fill.FillOrder;
import tintwright.fill.Lie;
import tintwright.fill.Materials;
import tintwright.fill.RepairKind;
import tintwright.fill.RepairLine;
import tintwright.fill.Supply;
import tintwright.fill.Tools;
import tintwright.units.Entry;
import tintwright.units.UnitSystem;

/** The list of repairs and what follows from it: batches, catalyst, times, grits. */
public final class FillModel {
    private final JobModel job;
    private final ShellModel shell;
    private final InOrder writing;
    private final Clock clock;
    private final ReadOnlyObjectWrapper<Optional<PlanFill>> plan = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<List<Running>> running = new ReadOnlyObjectWrapper<>(List.of());
    private final Map<Integer, Instant> catalysed = new TreeMap<>();

    /**
     * One cue of a catalysed batch as it stands now.
     *
     * @param batch   number of the batch
     * @param cue     what it is time for
     * @param minutes minutes until its earliest moment; negative when that has passed
     * @param words   the same in words
     * @param due     true between its earliest and its latest moment
     * @param test    what to look for
     */
    public record Running(int batch, String cue, double minutes, String words, boolean due, String test) {
    }

    FillModel(JobModel job, ShellModel shell, InOrder writing, Clock clock) {
        this.job = job;
        this.shell = shell;
        this.writing = writing;
        this.clock = clock;
        job.jobProperty().addListener((property, before, after) -> {
            if (!before.fill().equals(after.fill()) || before.grams() != after.grams() || !before.cup().equals(after.cup())
                    || !before.shelf().equals(after.shelf())) {
                work();
            }
        });
        work();
    }

    /** Works the list out; done here and now, it takes well under a millisecond. */
    private void work() {
        FillDraft draft = job.now().fill();
        if (draft.lines().isEmpty()) {
            plan.set(Optional.empty());
            return;
        }
        try {
            plan.set(Optional.of(PlanFill.of(order(job.now()))));
            problem.set("");
        } catch (IllegalArgumentException e) {
            plan.set(Optional.empty());
            problem.set(Said.of(e));
        }
    }

    /** @return the list of a job that has at least one line, as an order */
    static FillOrder order(Job now) {
        FillDraft draft = now.fill();
        var base = now.shelf().bases().get(0);
        double paste = now.shelf().pastes().isEmpty() ? Densities.USUAL.paste()
                : now.shelf().pastes().get(0).density();
        Materials materials = new Materials(new Densities(base.density(), paste, Densities.USUAL.catalyst(),
                Densities.USUAL.wax()), base.waxed(), OptionalDouble.empty());
        double colour = now.cup().map(cup -> cup.state().mass()).filter(mass -> mass > 0).orElse(now.grams());
        double reserve = now.cup().map(cup -> cup.state().reserve()).orElse(0.0);
        FillJob fill = new FillJob(draft.lines(), materials, new Conditions(draft.celsius(), draft.humidity()),
                new CatalystChoice.General(), Allowances.USUAL, Tools.USUAL,
                Optional.of(new Supply(colour, reserve, draft.paste())), Optional.empty(), OptionalDouble.empty());
        return new FillOrder(now.boat(), now.place() < 0 ? "" : now.places().get(now.place()).place(),
                now.cup().map(Cup::name).orElse(""), List.of(), fill);
    }

    /**
     * Adds a line as typed.
     *
     * @param sizes the size fields by name as typed; a blank one is left out
     * @return false when something typed cannot be; {@link #problemProperty()} says what
     */
    public boolean add(String name, RepairKind kind, Map<String, String> sizes, Lie lie, String count,
            UnitSystem units) {
        try {
            Map<String, Double> read = new LinkedHashMap<>();
            sizes.forEach((size, typed) -> {
                if (!typed.isBlank()) {
                    read.put(size, RepairKind.ANGLE.equals(size) ? degrees(typed)
                            : "film".equals(size) ? Entry.filmMm(size, typed, units)
                            : Entry.lengthMm(size, typed, units));
                }
            });
            String called = name.isBlank() ? unusedName(kind) : name.trim();
            RepairLine line = new RepairLine(called, kind.make(read, OptionalDouble.empty()), lie, whole(count));
            if (job.now().fill().lines().stream().anyMatch(other -> other.name().equals(called))) {
                throw new IllegalArgumentException("\"" + called + "\" is on the list already; give this one its own "
                        + "name");
            }
            problem.set("");
            job.change(before -> before.filling(before.fill().plus(line)));
            return true;
        } catch (IllegalArgumentException e) {
            problem.set(Said.of(e));
            return false;
        }
    }

    private String unusedName(RepairKind kind) {
        List<String> taken = job.now().fill().lines().stream().map(RepairLine::name).toList();
        int number = 1;
        while (taken.contains(kind.code() + " " + number)) {
            number++;
        }
        return kind.code() + " " + number;
    }

    private static double degrees(String typed) {
        try {
            return Double.parseDouble(typed.trim().replace(',', '.'));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("the angle must be degrees, such as 90, was \"" + typed.trim() + "\"");
        }
    }

    private static int whole(String typed) {
        try {
            return typed.isBlank() ? 1 : Integer.parseInt(typed.trim());
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("how many must be a whole number, such as 6, was \"" + typed.trim()
                    + "\"");
        }
    }

    public void remove(int index) {
        job.change(before -> before.filling(before.fill().without(index)));
    }

    /** Takes the weather as typed; a blank humidity is unknown. */
    public void weather(String temperature, String humidity, UnitSystem units) {
        try {
            double celsius = Entry.celsius("the temperature", temperature, units);
            OptionalDouble damp = humidity.isBlank() ? OptionalDouble.empty()
                    : OptionalDouble.of(percent(humidity));
            new Conditions(celsius, damp);
            problem.set("");
            job.change("weather", before -> before.filling(before.fill().at(celsius, damp)));
        } catch (IllegalArgumentException e) {
            problem.set(Said.of(e));
        }
    }

    private static double percent(String typed) {
        try {
            return Double.parseDouble(typed.replace("%", "").trim().replace(',', '.'));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("relative humidity must be 0 to 100 %, was \"" + typed.trim() + "\"");
        }
    }

    /** Puts the job sheet on the clipboard as plain lines. */
    public void copy(UnitSystem units) {
        plan.get().ifPresent(made -> shell.copy(String.join(System.lineSeparator(), made.lines(units))));
    }

    /** Writes the job sheet: PDF when the name ends so, else one HTML page. */
    public void writeSheet(Path file, UnitSystem units) {
        PlanFill made = plan.get().orElseThrow();
        writing.run(() -> {
            if (file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
                made.writePdf(file, units == UnitSystem.US ? PlanFill.PaperSize.LETTER : PlanFill.PaperSize.A4, units);
            } else {
                made.writeHtml(file, units);
            }
            return file;
        }, written -> shell.say("Written to " + written + "."), failure -> problem.set(Said.of(failure)));
    }

    /** The catalyst of a batch went in just now. */
    public void catalysed(int batch) {
        catalysed.put(batch, clock.instant());
        tick();
    }

    public void stopTimers(int batch) {
        catalysed.remove(batch);
        tick();
    }

    /** Brings the timers up to now. */
    public void tick() {
        List<Running> now = new ArrayList<>();
        plan.get().ifPresent(made -> catalysed.forEach((batch, start) -> {
            double gone = Duration.between(start, clock.instant()).toMillis() / 60_000.0;
            for (CureTimer timer : made.plan().timers()) {
                if (gone <= timer.toMinutes()) {
                    now.add(cue(batch, timer, gone));
                }
            }
        }));
        running.set(List.copyOf(now));
    }

    private static Running cue(int batch, CureTimer timer, double gone) {
        double left = timer.fromMinutes() - gone;
        boolean due = left <= 0;
        String words = due ? String.format(Locale.ROOT, "now: %s", timer.cue())
                : String.format(Locale.ROOT, "%s in %s", timer.cue(), clockWords(left));
        return new Running(batch, timer.cue(), left, words, due, timer.test());
    }

    private static String clockWords(double minutes) {
        long seconds = Math.round(minutes * 60);
        return seconds >= 7200 ? String.format(Locale.ROOT, "%d h %02d min", seconds / 3600, seconds % 3600 / 60)
                : String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
    }

    ReadOnlyObjectProperty<Optional<PlanFill>> planProperty() {
        return plan.getReadOnlyProperty();
    }

    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<List<Running>> runningProperty() {
        return running.getReadOnlyProperty();
    }

    JobModel job() {
        return job;
    }

    boolean isRunning(int batch) {
        return catalysed.containsKey(batch);
    }
}
