package tintwright.bench.top;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import tintwright.bench.PhotoBench;
import tintwright.bench.SheetBench;
import tintwright.reading.ColourReading;
import tintwright.reading.FilmState;
import tintwright.reading.photo.Flag;
import tintwright.reading.photo.PhotoReadings;
import tintwright.reading.photo.SpotReading;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Progress;
import tintwright.reading.photo.sheet.CupLabel;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.shelf.Shelf;

/** A photo that came from a phone, read with no hand at it. */
public sealed interface PhonePhoto {
    /**
     * The sheet is in the picture: the hull in its window, and the dab at the window's edge when a chip is wanted.
     *
     * @param hull  what was seen through the window
     * @param chip  the cured dab beside it; empty when none was wanted
     * @param words what was read and what a person should know, in plain sentences
     */
    record Colours(ColourReading hull, Optional<ColourReading> chip, String words) implements PhonePhoto {
        private static final String DAB = "dab";
    }

    /**
     * The label of a cup is in the picture: its recipe is wanted.
     *
     * @param cup which page of the log
     */
    record Label(UUID cup) implements PhonePhoto {}

    /**
     * Decodes; not for the thread that draws.
     *
     * @param wanted what the photo was taken for
     * @param shelf  whose sheet it is
     * @throws PhotoException when it cannot be read; the message says why and what to do
     */
    static PhonePhoto read(Path photo, BenchTop.Wanted wanted, Shelf shelf) throws PhotoException {
        try {
            return colours(photo, wanted, shelf);
        } catch (PhotoException noSheet) {
            PhotoFile file = PhotoFile.open(photo);
            return CupLabel.find(file.decode(0, 0, file.width(), file.height(), Progress.NONE))
                    .map(Label::new)
                    .orElseThrow(() -> noSheet);
        }
    }

    /**
     * The colours alone; not for the thread that draws.
     *
     * @param wanted what the photo was taken for
     * @param shelf  whose sheet it is
     * @throws PhotoException when there is no sheet to read them by; the message says what to do
     */
    static Colours colours(Path photo, BenchTop.Wanted wanted, Shelf shelf) throws PhotoException {
        boolean dab = wanted == BenchTop.Wanted.CHIP;
        SheetContents contents = dab
                ? new SheetContents(
                        List.of(), 0, Optional.of(new SheetContents.Chip(0, Colours.DAB, Map.of(), FilmState.CURED)))
                : SheetContents.PAPER_ALONE;
        PhotoReadings readings = SheetBench.read(photo, contents, Optional.of(shelf), PhotoBench.VIEWING, Progress.NONE)
                .readings();
        SpotReading hull = spot(readings, SheetContents.HULL, "The hull");
        StringBuilder words = new StringBuilder("The hull is read, " + hull.inWords() + ".");
        Optional<ColourReading> chip = Optional.empty();
        if (dab) {
            SpotReading beside = spot(readings, Colours.DAB, "The dab");
            chip = Optional.of(beside.reading());
            words.append(" The dab beside it too, ").append(beside.inWords()).append(".");
        }
        for (Flag flag : readings.flags()) {
            words.append(' ').append(flag.sentence());
        }
        return new Colours(hull.reading(), chip, words.toString());
    }

    private static SpotReading spot(PhotoReadings readings, String name, String what) throws PhotoException {
        Optional<SpotReading> found = readings.spot(name);
        if (found.isEmpty()) {
            throw new PhotoException(what + " cannot be read in this photo. "
                    + readings.flags().stream()
                            .filter(flag -> flag.where().equals(name))
                            .map(Flag::sentence)
                            .findFirst()
                            .orElse("Take it again, square on and out of the sun."));
        }
        return found.get();
    }
}
