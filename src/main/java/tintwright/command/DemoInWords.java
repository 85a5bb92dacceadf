package tintwright.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tintwright.bench.CupBench;
import tintwright.bench.MatchBench;
import tintwright.bench.PhotoBench;
import tintwright.bench.SheetBench;
import tintwright.bench.Weighing;
import tintwright.colour.DifferenceWords;
import tintwright.command.pieces.Figures;
import tintwright.files.Demo;
import tintwright.match.Aim;
import tintwright.match.Recipe;
import tintwright.match.Wish;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.EyeVerdict.Hue;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.reading.photo.Flag;
import tintwright.reading.photo.SpotReading;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.Progress;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.shelf.Shelf;
import tintwright.shelf.knowledge.Knowledge;

/**
 * The invented boat in words, where no window can be drawn: her port bow read from the photo that travels with the
 * program, the recipe, the first doses, what an eye sees of the dab, and the doses after it.
 */
final class DemoInWords {
    private static final double GRAMS = 100;
    private static final double SCALE = 0.01;
    /** What the made-up world's own dab looks like beside its hull after the first doses; a test holds that it does. */
    private static final EyeVerdict SEEN = new EyeVerdict(
            Optional.of(Depth.A_LITTLE_TOO_LIGHT), Optional.of(Hue.NONE), Amount.NOT_SAID, FilmState.CURED);

    private final List<String> lines = new ArrayList<>();

    private DemoInWords() {}

    /**
     * Reads the photo and works all of it out; nothing is kept.
     *
     * @throws IOException when the photo cannot be laid down to be read
     */
    static List<String> lines() throws IOException, PhotoException {
        return new DemoInWords().told();
    }

    private List<String> told() throws IOException, PhotoException {
        PlaceReadings place = Demo.places().get(0);
        SheetBench.Read read = read();
        Shelf shelf = read.onto(Demo.shelf());
        lines.add("The " + place.place() + " of the " + place.boat() + ", photographed with the printed sheet on it");
        SpotReading hull = read.readings().spot(SheetContents.HULL).orElseThrow();
        lines.add("  The hull reads " + Figures.colour(hull.reading().lab()) + ",");
        lines.add("  " + hull.inWords() + ", " + read.readings().correction() + " (" + chips(read) + ").");
        for (Flag flag : read.readings().flags()) {
            lines.add("  Look: " + flag.sentence());
        }
        Knowledge knowledge = Knowledge.of(shelf);
        PlaceReadings here = new PlaceReadings(place.boat(), place.place(), List.of(read.hull()), place.note());
        recipe(knowledge, here);
        cup(knowledge, here);
        lines.add("");
        lines.add("Dabs and looks go on until your eye can tell no more. What goes on the boat is decided by a cured"
                + " dab held against the hull.");
        return lines;
    }

    private static SheetBench.Read read() throws IOException, PhotoException {
        Path folder = Files.createTempDirectory("tintwright-demo");
        Path photo = folder.resolve(Demo.PHOTO);
        try {
            Demo.copyPhoto(photo);
            return SheetBench.read(photo, Demo.onSheet(), Optional.of(Demo.shelf()), PhotoBench.VIEWING, Progress.NONE);
        } finally {
            Files.deleteIfExists(photo);
            Files.deleteIfExists(folder);
        }
    }

    private static String chips(SheetBench.Read read) {
        return read.chips().size() + " of them, weighed and nothing more";
    }

    private void recipe(Knowledge knowledge, PlaceReadings here) {
        MatchBench bench = MatchBench.of(knowledge);
        Aim aim = Aim.of(here).through(knowledge);
        Recipe best = bench.match(Wish.of(aim.target(), GRAMS, SCALE)).best();
        lines.add("");
        lines.add("The recipe for " + Figures.fixed(GRAMS, 0) + " g");
        for (Weighing each : bench.order(best, SCALE)) {
            lines.add("  "
                    + " ".repeat(Math.max(0, 6 - Figures.fixed(each.grams(), 2).length()))
                    + Figures.fixed(each.grams(), 2) + " g  " + each.name());
        }
        lines.add("  How sure: " + DifferenceWords.likely(best.within90())
                + "; about 1 is what a practised eye finds edge to edge.");
    }

    private void cup(Knowledge knowledge, PlaceReadings here) {
        CupBench cup = CupBench.start(knowledge, "bow 1", here, GRAMS, SCALE, Optional.empty());
        heard("So small steps: the white, and some of it held back", cup);
        cup = cup.asPlanned(Instant.EPOCH);
        heard("The first doses", cup);
        cup = cup.asPlanned(Instant.EPOCH);
        cup = cup.seen(Instant.EPOCH, SEEN, OptionalInt.empty());
        heard("The cured dab held against the hull is " + SEEN.words() + ". The doses after it", cup);
    }

    private void heard(String heading, CupBench cup) {
        lines.add("");
        lines.add(heading);
        cup.deeds().lines().forEach(line -> lines.add("  " + line));
    }
}
