package tintwright.window.hull;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import tintwright.bench.PhotoBench;
import tintwright.bench.PlanFill;
import tintwright.bench.SheetBench;
import tintwright.files.FileProblem;
import tintwright.files.SheetFile;
import tintwright.files.TextFile;
import tintwright.reading.FilmState;
import tintwright.reading.photo.Flag;
import tintwright.reading.photo.SpotReading;
import tintwright.reading.photo.card.Spot;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.Preview;
import tintwright.reading.photo.file.Progress;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.shelf.Shelf;
import tintwright.window.frame.FailureWords;
import tintwright.window.frame.LatestAnswer;
import tintwright.window.frame.QueuedWork;
import tintwright.window.job.JobModel;
import tintwright.window.pieces.Figures;

/** The printed sheet at this bench: what the person lays on it, and the photo that was read by it last. */
public final class SheetModel {
    /** Pixels of the longer side of the photo as it is shown: enough for half a window. */
    private static final int SHOWN_SIDE = 1200;
    /** White that is drawn down alone; how much of it says nothing. */
    private static final double WHITE_ALONE = 20;

    private final JobModel job;
    private final HullModel hull;
    private final LatestAnswer reading;
    private final LatestAnswer looking;
    private final QueuedWork queue;
    private final ReadOnlyObjectWrapper<SheetContents> contents =
            new ReadOnlyObjectWrapper<>(SheetContents.PAPER_ALONE);
    private final ReadOnlyObjectWrapper<Optional<Sight>> sight = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<Path> kept = Optional.empty();
    private Optional<Path> toShow = Optional.empty();
    private boolean inSight;

    /**
     * One place that is read in the photo, in pixels of the preview.
     *
     * @param name   what lies there
     * @param radius of what is read
     */
    record Mark(String name, boolean hull, double x, double y, double radius) {}

    /**
     * A photo that was read by the sheet in it.
     *
     * @param photo its name, which the readings carry too
     * @param words what was found, in short
     * @param good  false when there is something to look at
     */
    record Sight(String photo, Preview preview, List<Mark> marks, String words, boolean good) {}

    private record Read(SheetBench.Read read, Sight sight) {}

    /**
     * @param hull    takes what was read
     * @param reading for a photo that is read
     * @param looking for one that is only shown
     * @param queue   for waiting until what is being worked out is done
     */
    public SheetModel(JobModel job, HullModel hull, LatestAnswer reading, LatestAnswer looking, QueuedWork queue) {
        this.job = job;
        this.hull = hull;
        this.reading = reading;
        this.looking = looking;
        this.queue = queue;
    }

    /** Keeps what lies on the sheet there, and takes up what was kept. */
    public void keepIn(Path file) {
        kept = Optional.of(file);
        if (Files.exists(file)) {
            try {
                contents.set(SheetBench.contents(file));
            } catch (FileProblem e) {
                hull.wrong(HullModel.Where.PHOTO, FailureWords.of(e));
            }
        }
    }

    private void lies(SheetContents now) {
        contents.set(now);
        hull.allRight();
        kept.ifPresent(file -> {
            try {
                TextFile.write(file, SheetFile.text(now));
            } catch (FileProblem e) {
                hull.wrong(HullModel.Where.PHOTO, FailureWords.of(e));
            }
        });
    }

    /** Takes all of it at once. */
    public void lay(SheetContents all) {
        lies(all);
    }

    /** @return names by id of what a chip may be of: the first white alone, then every tint */
    Map<String, String> parts() {
        Map<String, String> parts = new LinkedHashMap<>();
        Shelf shelf = job.now().shelf();
        parts.put(shelf.bases().get(0).id(), shelf.bases().get(0).name() + " alone");
        shelf.tints().forEach(tint -> parts.put(tint.id(), tint.name()));
        return parts;
    }

    boolean isWhite(String part) {
        return job.now().shelf().base(part).isPresent();
    }

    /**
     * Says that a chip lies in the next free place.
     *
     * @param part  of the shelf; a white lies there alone and its grams are not read
     * @param grams of the tint
     * @param white grams of white it was stirred into
     * @return false when it cannot be; what is wrong is said
     */
    boolean lay(String part, String grams, String white) {
        try {
            String base = job.now().shelf().bases().get(0).id();
            Map<String, Double> weighed = new LinkedHashMap<>();
            String name = job.now().shelf().nameOf(part);
            if (isWhite(part)) {
                weighed.put(part, WHITE_ALONE);
            } else {
                weighed.put(base, above("the grams of white", white));
                weighed.put(part, above("the grams of tint", grams));
                name += String.format(
                        Locale.ROOT, " %.3g %%", 100 * weighed.get(part) / (weighed.get(base) + weighed.get(part)));
            }
            List<SheetContents.Chip> chips = new ArrayList<>(contents.get().chips());
            chips.add(new SheetContents.Chip(free(), name, weighed, FilmState.CURED));
            chips.sort((a, b) -> Integer.compare(a.place(), b.place()));
            lies(new SheetContents(
                    chips, contents.get().tapeLayers(), contents.get().dab()));
            return true;
        } catch (IllegalArgumentException e) {
            hull.wrong(HullModel.Where.PHOTO, FailureWords.of(e));
            return false;
        }
    }

    private static double above(String what, String typed) {
        double grams = Figures.number(what, typed.replace("g", ""));
        if (!(grams > 0)) {
            throw new IllegalArgumentException(what + " must be above 0, was " + typed.trim());
        }
        return grams;
    }

    /** @return number of the next place with nothing on it */
    private int free() {
        for (int place = 1; place <= SheetContents.PLACES; place++) {
            int here = place;
            if (contents.get().chips().stream().noneMatch(chip -> chip.place() == here)) {
                return place;
            }
        }
        throw new IllegalArgumentException(
                "all " + SheetContents.PLACES + " places of the sheet are taken: take a chip off that tells less");
    }

    void takeOff(int place) {
        List<SheetContents.Chip> chips = new ArrayList<>(contents.get().chips());
        chips.removeIf(chip -> chip.place() == place);
        lies(new SheetContents(
                chips, contents.get().tapeLayers(), contents.get().dab()));
    }

    /** @param layers of white plumber's tape in its place; nothing or 0 for none */
    void tape(String layers) {
        try {
            int count = layers.isBlank() ? 0 : (int) Figures.number("layers of tape", layers);
            lies(new SheetContents(contents.get().chips(), count, contents.get().dab()));
        } catch (IllegalArgumentException e) {
            hull.wrong(HullModel.Where.PHOTO, FailureWords.of(e));
        }
    }

    /**
     * Reads the hull from a photo with the sheet on it; nobody marks anything. Chips that lie on the sheet go onto the
     * shelf: the same photo teaches the tints. What is wrong with the photo, and what to do about it, is said beside
     * the key.
     *
     * @param place the place that is read; blank for the one in hand
     */
    public void read(Path photo, String place) {
        Shelf shelf = job.now().shelf();
        SheetContents lying = contents.get();
        toShow = Optional.empty();
        reading.ask(
                () -> look(photo, lying, Optional.of(shelf)),
                done -> {
                    sight.set(Optional.of(done.sight()));
                    String flags = done.read().readings().flags().stream()
                            .map(Flag::sentence)
                            .collect(Collectors.joining(" "));
                    hull.fromSheet(done.read(), place, flags.isEmpty() ? said(done.read()) : flags);
                },
                this::wrong);
    }

    private static String said(SheetBench.Read read) {
        String how = read.readings()
                .spot(SheetContents.HULL)
                .map(SpotReading::inWords)
                .orElseThrow();
        return "The sheet was found and the hull read, " + how + "."
                + (read.chips().isEmpty() ? "" : " Your chips in the photo have taught the tints.");
    }

    /** Only shows a photo that was read before, as soon as somebody looks: finding the sheet in it takes a while. */
    public void show(Path photo) {
        toShow = Optional.of(photo);
        if (inSight) {
            find();
        }
    }

    /** Somebody looks at what was read. */
    void inSight() {
        inSight = true;
        find();
    }

    private void find() {
        // At the start the first mix is asked for meanwhile, and comes before the picture.
        if (toShow.isPresent()) {
            queue.run(() -> true, done -> toShow.ifPresent(this::find), this::wrong);
        }
    }

    private void find(Path photo) {
        toShow = Optional.empty();
        SheetContents lying = contents.get();
        looking.ask(
                () -> look(photo, lying, Optional.empty()), done -> sight.set(Optional.of(done.sight())), this::wrong);
    }

    private void wrong(Exception failure) {
        hull.wrong(HullModel.Where.PHOTO, FailureWords.of(failure));
    }

    private static Read look(Path photo, SheetContents contents, Optional<Shelf> shelf) throws PhotoException {
        SheetBench.Read read = SheetBench.read(photo, contents, shelf, PhotoBench.VIEWING, Progress.NONE);
        Preview preview = PhotoBench.open(photo).preview(SHOWN_SIDE, Progress.NONE);
        List<Mark> marks = new ArrayList<>();
        for (SpotReading one : read.readings().spots()) {
            Spot spot = one.spot();
            marks.add(new Mark(
                    spot.name(),
                    spot.purpose() == Spot.Purpose.HULL,
                    spot.centre().x() * preview.scale(),
                    spot.centre().y() * preview.scale(),
                    spot.radius() * preview.scale()));
        }
        int flags = read.readings().flags().size();
        String found = "Sheet found, " + read.found().codes() + " of 4 corners \u00b7 ";
        return new Read(
                read,
                new Sight(
                        photo.getFileName().toString(),
                        preview,
                        marks,
                        found + (flags == 0 ? "sharp, nothing burnt out, light even" : "something to look at"),
                        flags == 0));
    }

    /** Writes the sheet as PDF, on A4. */
    void print(Path file) {
        Shelf shelf = job.now().shelf();
        reading.ask(
                () -> {
                    SheetBench.writePdf(file, PlanFill.PaperSize.A4, shelf);
                    return file;
                },
                written -> hull.say("Print " + written + " at full size, without fitting it to the page."),
                this::wrong);
    }

    /** @return what lies on the sheet */
    public ReadOnlyObjectProperty<SheetContents> contentsProperty() {
        return contents.getReadOnlyProperty();
    }

    /** @return the photo that was read by its sheet last */
    ReadOnlyObjectProperty<Optional<Sight>> sightProperty() {
        return sight.getReadOnlyProperty();
    }
}
