package tintwright.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tintwright.colour.Ciede2000;
import tintwright.colour.Viewing;
import tintwright.files.FileProblem;
import tintwright.files.SheetFile;
import tintwright.files.TextFile;
import tintwright.paper.HullSheet;
import tintwright.reading.ColourReading;
import tintwright.reading.photo.Flag;
import tintwright.reading.photo.PhotoReadings;
import tintwright.reading.photo.SheetReader;
import tintwright.reading.photo.SheetReadings;
import tintwright.reading.photo.SpotReading;
import tintwright.reading.photo.card.Spot;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Progress;
import tintwright.reading.photo.sheet.CornerCode;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.reading.photo.sheet.SheetLayout;
import tintwright.reading.photo.sheet.SheetSearch;
import tintwright.shelf.Chip;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;
import tintwright.shelf.knowledge.Doubt;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.shelf.knowledge.Prediction;

/** The sheet that lies on the hull while the photo is taken: print it, and read a photo by it. */
public final class SheetBench {
    /** So many times what nine in ten stay within: nobody's honest error; a judgement of ours. */
    private static final double CANNOT = 2;
    /** A smaller difference is never called another chip, CIEDE2000; a judgement of ours. */
    private static final double FAR = 10;

    private SheetBench() {}

    /** @return the sign that tells this shop's sheets from another's */
    public static String signOf(Shelf shelf) {
        return CornerCode.signOf(shelf.name());
    }

    /**
     * Writes the sheet as PDF; what stood there still stands when that fails.
     *
     * @param shelf whose sheet it is
     * @throws FileProblem when it cannot be written
     */
    public static void writePdf(Path file, PlanFill.PaperSize size, Shelf shelf) throws FileProblem {
        SheetLayout layout = size == PlanFill.PaperSize.A4 ? SheetLayout.A4 : SheetLayout.LETTER;
        TextFile.write(file, HullSheet.pdf(layout, signOf(shelf)));
    }

    /** @return what lies on the sheet, from its file */
    public static SheetContents contents(Path file) throws FileProblem {
        return SheetFile.read(file);
    }

    /**
     * A photo read by the sheet in it.
     *
     * @param readings the hull and what lies on the sheet; the hull as the chips have corrected it
     * @param hull     the same as the sheet alone shows it: what a place keeps, for with the chips on the shelf they
     *                 correct it whenever it is used, and what the photo is off by in both is known to be the same
     * @param found    where the sheet lies
     * @param chips    of known parts, as the shelf takes them in: they carry what the photo showed
     */
    public record Read(PhotoReadings readings, ColourReading hull, SheetSearch.Found found, List<Chip> chips) {
        /** @return the shelf with these chips on it, in place of those that an earlier look at this photo put there */
        public Shelf onto(Shelf shelf) {
            return shelf.withChips(together(shelf, chips));
        }
    }

    private static List<Chip> together(Shelf shelf, List<Chip> chips) {
        Set<String> ids = chips.stream().map(Chip::id).collect(Collectors.toSet());
        List<Chip> all = new ArrayList<>(shelf.chips());
        all.removeIf(old -> ids.contains(old.id()));
        all.addAll(chips);
        return all;
    }

    /**
     * Reads a photo by the sheet in it. Chips of known parts teach the camera, and the camera teaches the chips, in one
     * estimate with everything the shelf knows. Decodes; not for the thread that draws.
     *
     * @param contents what lies on the sheet
     * @param shelf    whose chips they are; empty when only the paper shall count
     * @throws PhotoException           when it is no photo, no sheet is found or the hull cannot be read; the message
     *                                  says what to do
     * @throws IllegalArgumentException when a chip holds what is not on the shelf
     */
    public static Read read(
            Path photo, SheetContents contents, Optional<Shelf> shelf, Viewing viewing, Progress progress)
            throws PhotoException {
        PhotoFile file = PhotoFile.open(photo);
        SheetReadings sheet = SheetReader.read(file, shelf.map(SheetBench::signOf), contents, viewing, progress);
        List<Flag> flags = new ArrayList<>(sheet.readings().flags());
        String sign = sheet.found().shop();
        boolean ours = shelf.isEmpty() || signOf(shelf.get()).equals(sign);
        if (!ours) {
            flags.add(new Flag(
                    Flag.Kind.ANOTHER_SHOP,
                    "sheet",
                    "The sheet carries the sign " + sign + ", yours is " + signOf(shelf.get())
                            + ", so only its paper was used and not the chips on it."));
        }
        List<Chip> chips = shelf.isPresent() && ours ? chips(sheet.readings()) : List.of();
        ColourReading hull =
                sheet.readings().spot(SheetContents.HULL).orElseThrow().reading();
        if (chips.isEmpty()) {
            return new Read(with(sheet.readings(), sheet.readings().spots(), flags), hull, sheet.found(), chips);
        }
        List<Chip> misplaced = misplaced(shelf.get(), chips);
        for (Chip one : misplaced) {
            chips.remove(one);
            flags.add(new Flag(
                    Flag.Kind.WRONG_PLACE,
                    one.id(),
                    "\"" + one.id()
                            + "\" is far from what was weighed into it, so it was not learned from: another chip"
                            + " may lie in its place."));
        }
        Knowledge knowledge = Knowledge.of(shelf.get().withChips(together(shelf.get(), chips)));
        for (Doubt doubt : knowledge.doubts()) {
            flags.add(new Flag(Flag.Kind.DOES_NOT_FIT, "chips", doubt.words()));
        }
        List<SpotReading> spots = sheet.readings().spots().stream()
                .map(one -> one.spot().parts().isEmpty()
                        ? new SpotReading(one.spot(), knowledge.throughChips(one.reading()))
                        : one)
                .toList();
        return new Read(with(sheet.readings(), spots, flags), hull, sheet.found(), chips);
    }

    /** Chips that by all that is known without them cannot look as they do. */
    private static List<Chip> misplaced(Shelf shelf, List<Chip> chips) {
        Set<String> ids = chips.stream().map(Chip::id).collect(Collectors.toSet());
        Knowledge without = Knowledge.of(shelf.withChips(
                shelf.chips().stream().filter(old -> !ids.contains(old.id())).toList()));
        return chips.stream()
                .filter(chip -> {
                    ColourReading seen = (ColourReading) chip.readings().get(0);
                    Prediction expected =
                            without.predict(chip.parts(), seen.lab().viewing(), seen.geometry());
                    double within = SpotReading.goodTo(
                            expected.lab(),
                            expected.covariance().plus(seen.doubt(seen.lab().viewing())));
                    return Ciede2000.between(seen.lab(), expected.lab()) > Math.max(FAR, CANNOT * within);
                })
                .toList();
    }

    /** The chips of known parts in a photo, named after it. */
    private static List<Chip> chips(PhotoReadings readings) {
        List<Chip> chips = new ArrayList<>();
        for (SpotReading one : readings.spots()) {
            if (one.spot().purpose() == Spot.Purpose.CHIP && !one.spot().parts().isEmpty()) {
                chips.add(new Chip(
                        one.spot().name() + " in " + readings.photo(),
                        Parts.of(one.spot().parts()),
                        List.of(one.reading()),
                        Optional.empty(),
                        ""));
            }
        }
        return chips;
    }

    private static PhotoReadings with(PhotoReadings readings, List<SpotReading> spots, List<Flag> flags) {
        boolean taught = spots.stream()
                .anyMatch(one -> one.spot().purpose() == Spot.Purpose.HULL
                        && readings.spot(one.spot().name()).filter(one::equals).isEmpty());
        return new PhotoReadings(
                readings.photo(),
                spots,
                flags,
                readings.references(),
                readings.correction() + (taught ? " and your chips" : ""),
                readings.leaveOneOut());
    }
}
