package tintwright.window.hull;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tintwright.bench.SheetBench;
import tintwright.bench.job.Job;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.files.FileProblem;
import tintwright.files.LabRange;
import tintwright.files.TargetFile;
import tintwright.files.instrument.InstrumentFile;
import tintwright.reading.ColourReading;
import tintwright.reading.Conditions;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.HullFamily;
import tintwright.reading.NamedReading;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.reading.SpectralReading;
import tintwright.window.frame.FailureWords;
import tintwright.window.frame.LatestAnswer;
import tintwright.window.job.JobModel;
import tintwright.window.pieces.Figures;

/** What was read on the hull at the place in hand: by photo, by a meter, by eye. */
public final class HullModel {
    private static final int MOST_SHOWN = 12;
    private final JobModel job;
    private final LatestAnswer reading;
    private final ReadOnlyObjectWrapper<Hull> hull = new ReadOnlyObjectWrapper<>();
    private final Map<Where, ReadOnlyStringWrapper> problems = new EnumMap<>(Where.class);
    private Consumer<String> news = sentence -> {};

    /** What went wrong is said where it was tried. */
    public enum Where {
        LINES,
        TYPED,
        FILE,
        PHOTO,
        EYE
    }

    /**
     * One reading as shown.
     *
     * @param colour what it says under the light of the mean
     * @param figures its three numbers
     * @param from    where they come from and what they are stated for
     * @param counts  false when it lies far from the others and is left out
     */
    public record Line(Lab colour, String figures, String from, boolean counts) {
        /** @return all of it in one line */
        public String words() {
            return figures + ", " + from;
        }
    }

    /**
     * The place as shown.
     *
     * @param lines readings in the order they were taken
     * @param mean  all that count together; empty when there are none or they cannot be combined
     * @param looks the mean in plain words
     * @param sure  how sure the mean is, in words
     * @param doubt what is odd about the readings; empty when nothing is
     * @param photos names of the photos that any of it was read from
     */
    public record Hull(
            String place,
            List<Line> lines,
            Optional<Lab> mean,
            String looks,
            String sure,
            String doubt,
            Set<String> photos) {}

    public HullModel(JobModel job, LatestAnswer reading) {
        this.job = job;
        this.reading = reading;
        for (Where each : Where.values()) {
            problems.put(each, new ReadOnlyStringWrapper(""));
        }
        job.jobProperty().addListener((property, before, after) -> {
            if (before.place() != after.place() || !before.places().equals(after.places())) {
                look();
            }
        });
        job.knowledgeProperty().addListener((property, before, after) -> look());
        look();
    }

    /** @param to told what was done where that is not plain to see */
    public void tell(Consumer<String> to) {
        news = to;
    }

    void wrong(Where where, String sentence) {
        problems.values().forEach(each -> each.set(""));
        problems.get(where).set(sentence);
    }

    void allRight() {
        problems.values().forEach(each -> each.set(""));
    }

    private void look() {
        if (job.place().isEmpty()) {
            hull.set(new Hull("", List.of(), Optional.empty(), "", "", "", Set.of()));
            return;
        }
        hull.set(HullSight.of(job.place().get(), job.knowledgeProperty().get()));
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    /**
     * Takes a colour as typed.
     *
     * @return false when it cannot be; the problem beside the form says why
     */
    public boolean type(String lightness, String a, String b, Viewing viewing, Geometry geometry) {
        try {
            add(List.of(typed(lightness, a, b, viewing, geometry)));
            return true;
        } catch (IllegalArgumentException e) {
            wrong(Where.TYPED, FailureWords.of(e));
            return false;
        }
    }

    private static ColourReading typed(String lightness, String a, String b, Viewing viewing, Geometry geometry) {
        Lab colour =
                new Lab(Figures.number("L*", lightness), Figures.number("a*", a), Figures.number("b*", b), viewing);
        LabRange.check(colour.lightness(), colour.a(), colour.b());
        return new ColourReading(
                colour, Covariance.same(ColourReading.USUAL_NOISE), geometry, FilmState.CURED, Optional.empty());
    }

    /** Adds readings to the place in hand. */
    public void add(List<? extends Reading> readings) {
        allRight();
        replace(HullPlaces.more(
                job.place().orElseThrow(() -> new IllegalArgumentException("there is no place yet: name one first")),
                readings));
    }

    /**
     * Takes what a photo gave. Readings that cannot stand beside those of the place in hand, such as a photo's beside
     * an instrument's with gloss, become a place of their own.
     */
    public void fromPhoto(List<Reading> readings) {
        fromPhoto(readings, before -> before);
    }

    private void fromPhoto(List<Reading> readings, UnaryOperator<Job> first) {
        try {
            if (job.place().isPresent()) {
                allRight();
                PlaceReadings changed = HullPlaces.more(job.place().get(), readings);
                job.change(before -> HullPlaces.replaced(first.apply(before), changed));
                return;
            }
        } catch (IllegalArgumentException notTogether) {
            wrong(Where.LINES, "The photo's readings stand as a place of their own: " + FailureWords.of(notTogether));
        }
        job.change(known -> {
            Job before = first.apply(known);
            String beside = before.place() < 0
                    ? "by photo"
                    : before.places().get(before.place()).place() + ", by photo";
            long taken = before.places().stream()
                    .filter(place -> place.place().startsWith(beside))
                    .count();
            List<PlaceReadings> places = new ArrayList<>(before.places());
            places.add(
                    new PlaceReadings(before.boat(), taken == 0 ? beside : beside + " " + (taken + 1), readings, ""));
            return before.withPlaces(before.boat(), places, places.size() - 1);
        });
    }

    /**
     * Takes what the sheet in a photo gave: the hull for a place, the chips for the shelf, both in one step.
     *
     * @param name the place that is read; blank for the one in hand
     * @param news what is said of it when it is taken
     */
    void fromSheet(SheetBench.Read read, String name, String news) {
        allRight();
        List<Reading> readings = List.of(read.hull());
        try {
            if (name.isBlank()) {
                fromPhoto(readings, before -> taught(before, read));
            } else {
                job.change(before -> HullPlaces.with(taught(before, read), name, readings));
            }
            say(news);
        } catch (IllegalArgumentException notTogether) {
            wrong(Where.PHOTO, FailureWords.of(notTogether));
        }
    }

    private static Job taught(Job before, SheetBench.Read read) {
        return read.chips().isEmpty() ? before : before.with(read.onto(before.shelf()));
    }

    /** Says what was done. */
    void say(String sentence) {
        news.accept(sentence);
    }

    /**
     * Takes a picked family for the hull. It says only where to begin, so it stands for a place that was not read; a
     * later pick, or a reading, takes its place.
     *
     * @param name the place; blank for the one in hand
     */
    void pick(HullFamily family, String name) {
        allRight();
        int known = name.isBlank()
                ? job.now().place()
                : HullPlaces.placeOf(name, job.now().places());
        if (known >= 0 && !HullPlaces.onlyPicked(job.now().places().get(known))) {
            wrong(
                    Where.EYE,
                    job.now().places().get(known).place() + " was read, which says more than a pick. Begin"
                            + " a cup and say what you see of its dabs, or name another place above.");
            return;
        }
        job.change(before -> {
            List<PlaceReadings> places = new ArrayList<>(before.places());
            if (known < 0) {
                places.add(family.place(before.boat(), name.isBlank() ? "by eye" : name.trim()));
            } else {
                places.set(known, family.place(before.boat(), places.get(known).place()));
            }
            return before.withPlaces(before.boat(), places, known < 0 ? places.size() - 1 : known);
        });
    }

    /** @return the family that the place in hand was picked to be like, when it was only picked */
    Optional<HullFamily> picked() {
        return job.place()
                .filter(HullPlaces::onlyPicked)
                .flatMap(place -> HullFamily.of(place.readings().get(0)));
    }

    /** @return true when the place in hand was read by a meter */
    boolean readByMeter() {
        return job.place().filter(PlaceReadings::metered).isPresent();
    }

    /** @return what a meter last read of the place in hand: it is set so still */
    Optional<Reading> lastMetered() {
        return job.place().stream()
                .flatMap(place -> place.readings().stream())
                .filter(each -> each.photo().isEmpty() && HullFamily.of(each).isEmpty())
                .reduce((one, later) -> later);
    }

    private void replace(PlaceReadings changed) {
        job.change(before -> HullPlaces.replaced(before, changed));
    }

    /** Takes a reading away; the last one stays, a place without any is none. */
    public void remove(int index) {
        PlaceReadings place = job.place().orElseThrow();
        if (place.readings().size() == 1) {
            wrong(Where.LINES, "This is the only reading of the place. Add the better one first, then remove this.");
            return;
        }
        List<Reading> fewer = new ArrayList<>(place.readings());
        fewer.remove(index);
        allRight();
        replace(new PlaceReadings(place.boat(), place.place(), fewer, place.note()));
    }

    /**
     * Reads an instrument's file, or a target of our own, off the screen's thread.
     *
     * @param viewing  light and observer of its colours, where the file does not say
     * @param geometry with or without gloss, where the file does not say
     */
    public void open(Path file, Viewing viewing, Geometry geometry) {
        Conditions unsaid = new Conditions(
                Optional.of(viewing),
                Optional.of(geometry),
                FilmState.CURED,
                SpectralReading.USUAL_NOISE,
                ColourReading.USUAL_NOISE);
        reading.ask(() -> read(file, unsaid), this::take, failure -> wrong(Where.FILE, FailureWords.of(failure)));
    }

    private static Map<String, List<Reading>> read(Path file, Conditions unsaid) throws FileProblem {
        Map<String, List<Reading>> named = new LinkedHashMap<>();
        if (file.getFileName().toString().endsWith(".json")) {
            PlaceReadings target = TargetFile.read(file);
            named.put(target.place(), target.readings());
            return named;
        }
        for (NamedReading each : InstrumentFile.read(file, unsaid)) {
            named.computeIfAbsent(each.name(), name -> new ArrayList<>()).add(each.reading());
        }
        return named;
    }

    /** One sample belongs to the place in hand; several are places of their own. */
    private void take(Map<String, List<Reading>> named) {
        try {
            if (named.size() == 1 && job.place().isPresent()) {
                add(named.values().iterator().next());
                return;
            }
            Job made = job.now();
            Set<String> read = new LinkedHashSet<>();
            for (Map.Entry<String, List<Reading>> each : named.entrySet()) {
                made = HullPlaces.with(made, each.getKey(), each.getValue());
                read.add(made.places().get(made.place()).place());
            }
            Job all = made.at(HullPlaces.placeOf(read.iterator().next(), made.places()));
            allRight();
            job.change(before -> all);
            if (read.size() > 1) {
                news.accept(say("%d places read: %s.", read.size(), String.join(", ", read)));
            }
        } catch (IllegalArgumentException e) {
            wrong(Where.FILE, FailureWords.of(e));
        }
    }

    /** Begins a place with its first reading as typed; a place that is there already gets one more reading. */
    public boolean newPlace(String name, String lightness, String a, String b, Viewing viewing, Geometry geometry) {
        try {
            boolean there = HullPlaces.placeOf(name, job.now().places()) >= 0;
            Job made = HullPlaces.with(job.now(), name, List.of(typed(lightness, a, b, viewing, geometry)));
            allRight();
            job.change(before -> made);
            if (there) {
                PlaceReadings place = made.places().get(made.place());
                news.accept(say(
                        "There is a place of that name: now %d readings of %s.",
                        place.readings().size(), place.place()));
            }
            return true;
        } catch (IllegalArgumentException e) {
            wrong(Where.TYPED, FailureWords.of(e));
            return false;
        }
    }

    /** @return the names of the boat's places, in order */
    List<String> places() {
        return job.now().places().stream().map(PlaceReadings::place).toList();
    }

    /** @return which of the places is in hand; -1 for none */
    int inHand() {
        return job.now().place();
    }

    void take(int place) {
        job.change(before -> before.at(place));
    }

    static int mostShown() {
        return MOST_SHOWN;
    }

    public ReadOnlyObjectProperty<Hull> hullProperty() {
        return hull.getReadOnlyProperty();
    }

    /** @return what went wrong there; empty when nothing did */
    public ReadOnlyStringProperty problemProperty(Where where) {
        return problems.get(where).getReadOnlyProperty();
    }
}
