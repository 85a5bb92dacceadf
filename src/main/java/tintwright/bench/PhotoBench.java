package tintwright.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tintwright.colour.Viewing;
import tintwright.files.CardFile;
import tintwright.files.FileProblem;
import tintwright.files.MarksFile;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.reading.photo.Flag;
import tintwright.reading.photo.PhotoReader;
import tintwright.reading.photo.PhotoReadings;
import tintwright.reading.photo.SpotReading;
import tintwright.reading.photo.card.CardFinder;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.ReferenceCard;
import tintwright.reading.photo.card.Spot;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Preview;
import tintwright.reading.photo.file.Progress;

/** Read a photo: open it, look at it, find the card, mark the spots, read. Not for use by two threads at once. */
public final class PhotoBench {
    /** What readings are stated for: what a repair is judged under. */
    public static final Viewing VIEWING = Viewing.D65_10;

    private final PhotoFile photo;
    private Marks kept = Marks.NONE;

    private PhotoBench(PhotoFile photo) {
        this.photo = photo;
    }

    /**
     * Looks at the file without decoding it.
     *
     * @throws PhotoException when it is no photo that can be read; the message says what to do
     */
    public static PhotoBench open(Path file) throws PhotoException {
        return new PhotoBench(PhotoFile.open(file));
    }

    /** @return where the photo lies */
    public Path path() {
        return photo.path();
    }

    /** @return pixels across, upright */
    public int width() {
        return photo.width();
    }

    /** @return pixels down, upright */
    public int height() {
        return photo.height();
    }

    /**
     * The photo small enough for the screen. Decodes; not for the thread that draws.
     *
     * @param longestSide pixels of the longer side at most, 100 to 8000
     * @param progress    told how far it is; may end it
     */
    public Preview preview(int longestSide, Progress progress) throws PhotoException {
        return photo.preview(longestSide, progress);
    }

    /** @return where the card lies in the photo, to be confirmed by a person; empty when it is not found */
    public Optional<CardFinder.Found> findCard(ReferenceCard card, Progress progress) throws PhotoException {
        return CardFinder.find(photo.preview(CardFinder.PREVIEW_SIDE, progress), card);
    }

    /**
     * The readings, how sure they are, and what a person should know. Decodes; not for the thread that draws.
     *
     * @throws PhotoException when nothing can be read; the message says why and what to do
     */
    public PhotoReadings read(Marks marks, Progress progress) throws PhotoException {
        return read(marks, VIEWING, progress);
    }

    /** As {@link #read(Marks, Progress)}, for another light or observer. */
    public PhotoReadings read(Marks marks, Viewing viewing, Progress progress) throws PhotoException {
        return PhotoReader.read(photo, marks, viewing, progress);
    }

    /** @return the marks kept beside the photo; empty when there are none yet */
    public Optional<Marks> savedMarks() throws FileProblem {
        Path file = MarksFile.beside(photo.path());
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        kept = MarksFile.read(file);
        return Optional.of(kept);
    }

    /** Keeps the marks beside the photo. @throws FileProblem when another window marked it otherwise meanwhile */
    public void saveMarks(Marks marks) throws FileProblem {
        MarksFile.keep(MarksFile.beside(photo.path()), kept, marks);
        kept = marks;
    }

    /** @return the cards that travel with the program; a shop fills in its own */
    public static List<ReferenceCard> cards() {
        return CardFile.SHIPPED.stream().map(CardFile::shipped).toList();
    }

    /** @return a card from its file */
    public static ReferenceCard card(Path file) throws FileProblem {
        return CardFile.read(file);
    }

    /**
     * All hull spots of one or several photos as readings of one place.
     *
     * @param boat  may be empty
     * @param place what the place is called
     * @throws IllegalArgumentException when no photo holds a spot that could be read
     */
    public static PlaceReadings asPlace(String boat, String place, List<PhotoReadings> photos) {
        List<Reading> readings = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (PhotoReadings one : photos) {
            for (SpotReading spot : one.spots()) {
                if (spot.spot().purpose() == Spot.Purpose.HULL) {
                    readings.add(spot.reading());
                }
            }
            for (Flag flag : one.flags()) {
                notes.add(flag.message());
            }
        }
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("no spot on the hull could be read; mark one that is not clipped");
        }
        return new PlaceReadings(boat, place, readings, String.join(" ", notes));
    }
}
