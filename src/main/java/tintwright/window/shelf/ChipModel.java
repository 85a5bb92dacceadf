package tintwright.window.shelf;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tintwright.bench.top.BenchTop;
import tintwright.bench.top.PhonePhoto;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.files.LabRange;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.shelf.Chip;
import tintwright.shelf.Parts;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.Tint;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.window.frame.FailureWords;
import tintwright.window.frame.LatestAnswer;
import tintwright.window.job.JobModel;
import tintwright.window.picture.Shade;
import tintwright.window.pieces.Figures;

/** One chip as it is typed: a tint, its grams, the white's grams, and the colour it cured to. */
final class ChipModel {
    /** White drawn down alone; how much of it says nothing. */
    private static final double WHITE_GRAMS = 20;
    /** From this share on the white hardly tells in the chip any more; a judgement of ours. */
    private static final double STRONG = 0.05;
    /** Below this share the tint hardly tells; a judgement of ours. */
    private static final double WEAK = 0.001;

    private final JobModel job;
    private final LatestAnswer photos;
    private final Clock clock;
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Optional<ColourReading>> photo = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper photoWords = new ReadOnlyStringWrapper("");

    /**
     * What stands in the boxes.
     *
     * @param part       id of a tint, or of a white that is drawn down alone
     * @param grams      of the tint; not read for a white alone
     * @param white      grams of white
     * @param lightness  L* as a meter shows it; all three blank when the chip is read from a photo
     */
    record Typed(String part, String grams, String white, String lightness, String a, String b) {
        boolean metered() {
            return !(lightness.isBlank() && a.isBlank() && b.isBlank());
        }
    }

    /**
     * The chip drawn as far as it is typed.
     *
     * @param expected what it should cure to; empty when that cannot be told yet
     * @param read     what it cured to; empty before it is read
     * @param words    how strong it is, in a plain sentence; may be empty
     */
    record Sight(Optional<Shade> expected, Optional<Shade> read, String words) {}

    ChipModel(JobModel job, LatestAnswer photos, Clock clock) {
        this.job = job;
        this.photos = photos;
        this.clock = clock;
    }

    /** @return names by id: every tint, then the first white, to be drawn down alone */
    Map<String, String> parts() {
        Map<String, String> parts = new LinkedHashMap<>();
        Shelf shelf = job.now().shelf();
        shelf.tints().forEach(tint -> parts.put(tint.id(), tint.name()));
        parts.put(shelf.bases().get(0).id(), shelf.bases().get(0).name() + " alone");
        return parts;
    }

    boolean isWhite(String part) {
        return job.now().shelf().base(part).isPresent();
    }

    /** @return the chip as it is typed so far; what cannot be read yet is left out */
    Sight look(Typed typed) {
        Optional<Shade> read = Optional.empty();
        try {
            read = Optional.of(Shade.of(reading(typed).lab()));
        } catch (IllegalArgumentException notYet) {
            // It is still being typed.
        }
        try {
            Parts parts = parts(typed);
            Knowledge known = job.knowledgeProperty().get();
            boolean guessed = job.now()
                    .shelf()
                    .tint(typed.part())
                    .filter(tint -> known != null && unseen(tint, known))
                    .isPresent();
            Optional<Shade> expected =
                    known == null || guessed || !known.shelf().equals(job.now().shelf())
                            ? Optional.empty()
                            : Optional.of(Shade.of(known.colour(parts, Viewing.D65_10, Geometry.SPECULAR_EXCLUDED)));
            return new Sight(expected, read, strength(typed.part(), parts));
        } catch (IllegalArgumentException notYet) {
            return new Sight(Optional.empty(), read, "");
        }
    }

    /** @return true when nothing at all is known of its colour */
    static boolean unseen(Tint tint, Knowledge known) {
        return tint.family() == PigmentFamily.UNKNOWN && known.chipsWith(tint.id()) == 0;
    }

    private String strength(String part, Parts parts) {
        if (isWhite(part)) {
            return "Nothing but white: all else is mixed from it.";
        }
        double share = parts.grams(part) / parts.total();
        String words = share >= 0.1
                ? String.format(Locale.ROOT, "One part in %.1f", 1 / share)
                : String.format(Locale.ROOT, "One part in %.0f", 1 / share);
        return words
                + (share > STRONG
                        ? ": strong. A weaker one tells more of a faded hull."
                        : share < WEAK ? ": very weak. A little more of it tells more." : ": a good strength.");
    }

    private Parts parts(Typed typed) {
        Map<String, Double> grams = new LinkedHashMap<>();
        if (isWhite(typed.part())) {
            grams.put(typed.part(), WHITE_GRAMS);
        } else {
            grams.put(job.now().shelf().bases().get(0).id(), above("the grams of white", typed.white()));
            grams.put(typed.part(), above("the grams of tint", typed.grams()));
        }
        return Parts.of(grams);
    }

    private static double above(String what, String typed) {
        double grams = Figures.number(what, typed.replace("g", ""));
        if (!(grams > 0)) {
            throw new IllegalArgumentException(what + " must be above 0, was " + typed.trim());
        }
        return grams;
    }

    private ColourReading reading(Typed typed) {
        if (!typed.metered()) {
            return photo.get()
                    .orElseThrow(() -> new IllegalArgumentException(
                            "say what colour it cured to: from a photo, or the three numbers of a meter"));
        }
        double lightness = Figures.number("L*", typed.lightness());
        double a = Figures.number("a*", typed.a());
        double b = Figures.number("b*", typed.b());
        LabRange.check(lightness, a, b);
        return new ColourReading(
                new Lab(lightness, a, b, Viewing.D65_10),
                Covariance.same(ColourReading.USUAL_NOISE),
                Geometry.SPECULAR_EXCLUDED,
                FilmState.CURED,
                Optional.empty());
    }

    /** Reads the chip from a photo of it in the window of the printed sheet, off the screen's thread. */
    void fromPhoto(Path file) {
        photos.ask(
                () -> PhonePhoto.colours(file, BenchTop.Wanted.HULL, job.now().shelf()),
                read -> {
                    problem.set("");
                    photoWords.set("Read from the photo.");
                    photo.set(Optional.of(read.hull()));
                },
                failure -> problem.set(FailureWords.of(failure)));
    }

    /**
     * Lets the chip teach the shelf.
     *
     * @return false when something in the boxes cannot be; {@link #problemProperty()} says what
     */
    boolean add(Typed typed) {
        try {
            Parts parts = parts(typed);
            ColourReading reading = reading(typed);
            Shelf shelf = job.now().shelf();
            if (shelf.chips().stream().anyMatch(chip -> same(chip, parts, reading))) {
                throw new IllegalArgumentException("this chip is on the shelf already, the same to the last digit; one "
                        + "made a second time reads a little differently");
            }
            int number = shelf.chips().size() + 1;
            while (taken(shelf, "chip-" + number)) {
                number++;
            }
            List<Chip> chips = new ArrayList<>(shelf.chips());
            chips.add(new Chip("chip-" + number, parts, List.of(reading), Optional.of(LocalDate.now(clock)), ""));
            forgetPhoto();
            problem.set("");
            job.change(before -> before.with(shelf.withChips(chips)));
            return true;
        } catch (IllegalArgumentException e) {
            problem.set(FailureWords.of(e));
            return false;
        }
    }

    private static boolean same(Chip chip, Parts parts, ColourReading reading) {
        return chip.parts().grams().equals(parts.grams())
                && chip.readings().stream()
                        .anyMatch(known -> known instanceof ColourReading other
                                && other.lab().equals(reading.lab()));
    }

    private static boolean taken(Shelf shelf, String id) {
        return shelf.chips().stream().anyMatch(chip -> chip.id().equals(id));
    }

    /** Another chip is in hand: what was read of the last one is not its colour. */
    void forgetPhoto() {
        photo.set(Optional.empty());
        photoWords.set("");
    }

    /** What a photo said of the chip in hand. */
    ReadOnlyObjectProperty<Optional<ColourReading>> photoProperty() {
        return photo.getReadOnlyProperty();
    }

    ReadOnlyStringProperty photoWordsProperty() {
        return photoWords.getReadOnlyProperty();
    }

    /** What was wrong with the last chip. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }
}
