package tintwright.window.cup;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tintwright.bench.CupBench;
import tintwright.bench.Cups;
import tintwright.bench.job.Job;
import tintwright.bench.top.CupNames;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.cup.Cup;
import tintwright.cup.CupDeeds;
import tintwright.cup.Deed;
import tintwright.cup.WayWords;
import tintwright.files.LabRange;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.EyeVerdict;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.window.frame.FailureWords;
import tintwright.window.frame.LatestAnswer;
import tintwright.window.frame.QueuedWork;
import tintwright.window.frame.ShellModel;
import tintwright.window.job.JobModel;
import tintwright.window.picture.DepthState;
import tintwright.window.picture.RoseState;
import tintwright.window.picture.Shade;
import tintwright.window.picture.SwatchState;
import tintwright.window.pieces.Figures;

/** The cup in hand: what is in it, how near it is, and the next thing to put in or to do. */
public final class CupModel {
    private final JobModel job;
    private final ShellModel shell;
    private final Cups cups;
    private final LatestAnswer asking;
    private final QueuedWork writing;
    private final Clock clock;
    private final Set<String> given = new HashSet<>();
    private Supplier<Optional<Set<String>>> inTheLog = () -> Optional.of(Set.of());
    private final Set<String> goneOn = new HashSet<>();
    private boolean writingNow;
    private final ReadOnlyObjectWrapper<Optional<InHand>> inHand = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper chipProblem = new ReadOnlyStringWrapper("");

    /** Everything shown of a cup, made in one piece off the screen's thread. */
    public record InHand(
            Cup cup,
            CupDeeds deeds,
            String contents,
            SwatchState swatch,
            DepthState depth,
            RoseState rose,
            String close,
            String closeWords,
            String sure,
            String sureWords,
            List<WayWords.Said> ways,
            Shade white,
            Optional<Dispute> dispute) {
        /** @return the colour of a cup on a way back */
        Shade of(WayWords.Inside inside) {
            SwatchState.UnderLight day = swatch.lights().values().iterator().next();
            return switch (inside) {
                case NOW -> day.mix();
                case WHITE -> white;
                case END -> day.hull();
            };
        }
    }

    public CupModel(JobModel job, ShellModel shell, Cups cups, LatestAnswer asking, QueuedWork writing, Clock clock) {
        this.cups = cups;
        this.writing = writing;
        this.job = job;
        this.shell = shell;
        this.asking = asking;
        this.clock = clock;
        job.jobProperty().addListener((property, before, after) -> {
            if (!before.cup().equals(after.cup())
                    || !before.off().equals(after.off())
                    || !before.ahead().equals(after.ahead())) {
                look();
            }
        });
        job.knowledgeProperty().addListener((property, before, after) -> look());
        look();
    }

    private void look() {
        Knowledge knowledge = job.knowledgeProperty().get();
        Job now = job.now();
        if (now.cup().isEmpty()) {
            inHand.set(Optional.empty());
            return;
        }
        if (knowledge == null || !knowledge.shelf().equals(now.shelf())) {
            return;
        }
        asking.ask(
                () -> CupLook.at(cups.at(knowledge, now.cup().orElseThrow()), now, goneOn),
                seen -> {
                    problem.set("");
                    inHand.set(Optional.of(seen));
                },
                failure -> problem.set(FailureWords.of(failure)));
    }

    /** Begins a cup for the place in hand. */
    public void begin() {
        PlaceReadings place = job.place().orElseThrow();
        Job now = job.now();
        String base = now.shelf().bases().get(0).id();
        job.change(before ->
                before.mixing(Optional.of(Cup.empty(nameOf(place), place, now.grams(), now.scaleStep(), base))));
    }

    /** A name to write on the cup, and no second one like it: by its name the log knows the page of a cup. */
    private String nameOf(PlaceReadings place) {
        Optional<Set<String>> logged = inTheLog.get();
        if (logged.isEmpty()) {
            // The log is not open, and what it holds not known: the moment makes the name one of its kind.
            return place.place() + ", "
                    + DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT)
                            .format(LocalDateTime.now(clock));
        }
        Set<String> used = new HashSet<>(logged.get());
        used.addAll(given);
        job.now().cup().ifPresent(cup -> used.add(cup.name()));
        job.now().shelf().leftovers().forEach(left -> used.add(left.name()));
        String name = CupNames.next(place.place(), used);
        given.add(name);
        return name;
    }

    /** @param names the names of cups and leftovers in the log; empty while it is not open */
    public void namesInTheLog(Supplier<Optional<Set<String>>> names) {
        inTheLog = names;
    }

    /** Puts the cup away; it comes back with undo. */
    public void putAway() {
        job.cupDone();
    }

    /** What was advised is in, exactly so. */
    public void accept() {
        inHand.get().flatMap(seen -> seen.deeds().now().deed()).ifPresent(deed -> write(deed, true));
    }

    /**
     * It was really so much.
     *
     * @param typed grams as the scale showed them
     * @return false when it cannot be a mass; {@link #problemProperty()} says why, there also when the can is too small
     */
    public boolean really(String typed) {
        return FailureWords.tried(problem::set, () -> {
            Deed advised = inHand.get()
                    .orElseThrow()
                    .deeds()
                    .now()
                    .deed()
                    .orElseThrow(() -> new IllegalArgumentException("there is nothing to weigh now"));
            write(CupDeeds.instead(advised, grams(typed)), true);
        });
    }

    private static double grams(String typed) {
        return Figures.number("grams", typed.replace("g", ""));
    }

    /** Something else went in than was advised. */
    public boolean alsoWeighed(String part, String typed) {
        return FailureWords.tried(
                problem::set,
                () -> write(new Deed.Weighed(part, grams(typed), job.now().scaleStep()), false));
    }

    /** An earlier weighing was written down wrongly. */
    public boolean correct(String entry, String typed) {
        return FailureWords.tried(problem::set, () -> {
            double grams = grams(typed);
            change(
                    bench -> bench.correct(entry, grams, clock.instant()),
                    job.now().ahead());
        });
    }

    /** A weight was written wrongly, and the chip that showed it counts. */
    void settle(Dispute dispute, Dispute.Mend mend) {
        change(
                bench -> {
                    CupBench right = bench.correct(mend.entry(), mend.grams(), clock.instant());
                    Deed.Read read = right.cup().standing().stream()
                            .filter(entry -> entry.id().equals(dispute.chip()))
                            .map(entry -> (Deed.Read) entry.deed())
                            .findFirst()
                            .orElseThrow();
                    return read.counts()
                            ? right
                            : right.correct(
                                    dispute.chip(), new Deed.Read(read.reading(), read.hull(), true), clock.instant());
                },
                List.of());
    }

    /** A chip was read wrongly: it does not hold any more. */
    void crossOut(String chip) {
        change(bench -> bench.undo(chip, clock.instant()), job.now().ahead());
    }

    /** The person goes on although chip and weights disagree; what is not sure stays said. */
    void goOn(String chip) {
        goneOn.add(job.now().cup().orElseThrow().name() + chip);
        look();
    }

    /** A chip of the cup was read, with the gloss taken as for the hull. */
    public boolean read(String lightness, String a, String b, Viewing viewing, FilmState film) {
        return read(
                List.of(lightness, a, b),
                List.of(),
                viewing,
                job.now().cup().orElseThrow().hull().readings().get(0).geometry(),
                film);
    }

    /**
     * A chip of the cup was read.
     *
     * @param chip L*, a*, b* as typed
     * @param hull the same of the hull, when the meter read it once more; else empty
     */
    boolean read(List<String> chip, List<String> hull, Viewing viewing, Geometry geometry, FilmState film) {
        return FailureWords.tried(
                chipProblem::set,
                () -> learn(
                        typed(chip, viewing, geometry, film),
                        hull.isEmpty()
                                ? Optional.empty()
                                : Optional.of(typed(hull, viewing, geometry, FilmState.CURED))));
    }

    private static ColourReading typed(List<String> lab, Viewing viewing, Geometry geometry, FilmState film) {
        double l = Figures.number("L*", lab.get(0));
        double red = Figures.number("a*", lab.get(1));
        double yellow = Figures.number("b*", lab.get(2));
        LabRange.check(l, red, yellow);
        return new ColourReading(
                new Lab(l, red, yellow, viewing),
                Covariance.same(ColourReading.USUAL_NOISE),
                geometry,
                film,
                Optional.empty());
    }

    /**
     * What the eye saw of a dab held against the hull.
     *
     * @param nearest of the trial dabs that are asked for, 1 for the first, 0 for the cup's own beside them; empty when only
     *     a dab of the cup was looked at
     */
    public void seen(EyeVerdict verdict, OptionalInt nearest) {
        learned(bench -> bench.seen(clock.instant(), verdict, nearest));
    }

    /** A chip of the cup was read in a photo, with the hull beside it or alone. */
    public void read(ColourReading chip, Optional<ColourReading> hull) {
        learn(chip, hull);
    }

    private void learn(Reading reading, Optional<ColourReading> hull) {
        // One that cannot be this cup is kept and does not count; the dispute then asks what is wrong.
        learned(bench -> bench.read(clock.instant(), reading, hull).bench());
    }

    private void learned(Function<CupBench, CupBench> edit) {
        List<Deed> ahead = job.now().ahead();
        change(edit, bench -> bench.still(ahead), () -> {});
    }

    /** @param advised true when this was the next thing to do */
    private void write(Deed deed, boolean advised) {
        List<Deed> ahead = job.now().ahead();
        // Weighed exactly, the doses of one plan follow one another; weighed otherwise, the rest is planned anew.
        boolean exactly = advised
                && inHand.get().flatMap(seen -> seen.deeds().now().deed()).equals(Optional.of(deed));
        List<Deed> rest =
                !ahead.isEmpty() ? advised ? ahead.subList(1, ahead.size()) : ahead : exactly ? more() : List.of();
        Optional<Deed> then = advised
                ? inHand.get()
                        .flatMap(seen ->
                                seen.deeds().now().writes().stream().skip(1).findFirst())
                : Optional.empty();
        CupBench.Added[] added = new CupBench.Added[1];
        change(
                bench -> {
                    added[0] = bench.add(clock.instant(), deed);
                    CupBench after = added[0] instanceof CupBench.Added.Done done
                            ? done.bench()
                            : ((CupBench.Added.SameAgain) added[0]).ifMeant();
                    return then.map(with -> after.also(clock.instant(), with)).orElse(after);
                },
                bench -> rest,
                () -> {
                    if (added[0] instanceof CupBench.Added.SameAgain again) {
                        shell.warn(again.question() + " If not, take it back with Undo.");
                    }
                });
    }

    /** The doses of the plan that follow when this one is done exactly as advised. */
    private List<Deed> more() {
        return inHand.get().orElseThrow().deeds().next().stream()
                .flatMap(todo -> todo.deed().stream())
                .toList();
    }

    private void change(Function<CupBench, CupBench> edit, List<Deed> ahead) {
        change(edit, bench -> ahead, () -> {});
    }

    /** A cup after a change, and the steps that were chosen before and still stand. */
    private record Changed(CupBench bench, List<Deed> ahead) {}

    /** Works the change out off the screen's thread; a second press before it is in is not taken for a second dose. */
    private void change(Function<CupBench, CupBench> edit, Function<CupBench, List<Deed>> ahead, Runnable then) {
        Knowledge knowledge = job.knowledgeProperty().get();
        if (writingNow || knowledge == null || job.now().cup().isEmpty()) {
            return;
        }
        writingNow = true;
        problem.set("");
        Cup cup = job.now().cup().get();
        writing.run(
                () -> {
                    CupBench after = edit.apply(cups.at(knowledge, cup));
                    return new Changed(after, ahead.apply(after));
                },
                changed -> {
                    writingNow = false;
                    cups.now(changed.bench());
                    job.change(before -> before.after(changed.bench().cup(), changed.ahead()));
                    then.run();
                },
                failure -> {
                    writingNow = false;
                    problem.set(FailureWords.of(failure));
                });
    }

    /** Follows one of the ways on; its steps then come one at a time. */
    public void choose(int way) {
        Knowledge knowledge = job.knowledgeProperty().get();
        Job now = job.now();
        problem.set("");
        writing.run(
                () -> cups.at(knowledge, now.cup().orElseThrow()).ways().get(way),
                chosen -> job.change(before -> FollowWay.following(
                        before, chosen, () -> nameOf(before.cup().orElseThrow().hull()), LocalDate.now(clock))),
                failure -> problem.set(FailureWords.of(failure)));
    }

    /** @return bases and tints that may go in, names by id */
    Map<String, String> shelf() {
        Map<String, String> names = new LinkedHashMap<>();
        job.now().shelf().items().stream()
                .filter(item -> item.kind().mixes())
                .forEach(item -> names.put(item.id(), item.name()));
        return names;
    }

    /** @return the cup's story as lines of text, for the clipboard */
    public String asText() {
        return inHand.get()
                .map(seen -> {
                    StringBuilder text = new StringBuilder(seen.cup().name()).append(System.lineSeparator());
                    seen.deeds()
                            .done()
                            .forEach(line -> text.append(line.words()).append(System.lineSeparator()));
                    return text.append(seen.contents())
                            .append(System.lineSeparator())
                            .append(seen.close())
                            .append(": ")
                            .append(seen.closeWords())
                            .append(System.lineSeparator())
                            .toString();
                })
                .orElse("");
    }

    /** @return whether what is shown is the cup in hand, and nothing is being written */
    public boolean settled() {
        return !writingNow && inHand.get().map(InHand::cup).equals(job.now().cup());
    }

    public ReadOnlyObjectProperty<Optional<InHand>> inHandProperty() {
        return inHand.getReadOnlyProperty();
    }

    /** What was wrong with the last chip that was typed. */
    ReadOnlyStringProperty chipProblemProperty() {
        return chipProblem.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    ShellModel shellModel() {
        return shell;
    }
}
