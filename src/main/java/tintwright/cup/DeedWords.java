package tintwright.cup;

import java.util.Locale;
import java.util.stream.Collectors;
import tintwright.colour.Lab;
import tintwright.reading.ColourReading;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.shelf.Shelf;
import tintwright.units.Grams;

/** What was done to a cup, in few words. */
final class DeedWords {
    private DeedWords() {}

    /** @return a deed that was done, in few words, such as "0.31 g soot black" */
    static String of(Deed deed, Shelf shelf) {
        if (deed instanceof Deed.Weighed weighed) {
            return Grams.written(weighed.grams()) + " " + shelf.nameOf(weighed.part());
        } else if (deed instanceof Deed.LetDown down) {
            return Grams.written(down.grams()) + " " + letDown(down, shelf);
        } else if (deed instanceof Deed.Dropped dropped) {
            return dropped.count() + " drops of " + shelf.nameOf(dropped.part());
        } else if (deed instanceof Deed.Held held) {
            return Grams.written(held.grams()) + " of white held back";
        } else if (deed instanceof Deed.SetAside aside) {
            return Grams.written(aside.grams()) + " set aside as \u201c" + aside.name() + "\u201d";
        } else if (deed instanceof Deed.Read read) {
            return reading(read);
        } else if (deed instanceof Deed.Seen seen) {
            return seen.trial().map(trial -> trial(trial, shelf)).orElse("") + "seen "
                    + (seen.verdict().film() == FilmState.WET ? "wet" : "cured") + " beside the hull: "
                    + seen.verdict().words();
        } else if (deed instanceof Deed.Found found) {
            return "contents worked out, " + Grams.about(found.parts().total());
        } else if (deed instanceof Deed.Undone undone) {
            return "took back " + undone.entry();
        }
        Deed.Corrected corrected = (Deed.Corrected) deed;
        return "put right " + corrected.entry() + ": " + of(corrected.deed(), shelf);
    }

    /** Such as "trial dab of 4 g with 0.08 g soot black, thinned 1 in 20, ". */
    private static String trial(Deed.Trial trial, Shelf shelf) {
        return "trial dab of " + Grams.written(trial.grams()) + " with " + got(trial, shelf) + ", ";
    }

    /** What a trial dab got, such as "0.08 g soot black, thinned 1 in 20 and 0.2 g rust red". */
    static String got(Deed.Trial trial, Shelf shelf) {
        return trial.doses().stream().map(deed -> of(deed, shelf)).collect(Collectors.joining(" and "));
    }

    /** Such as "soot black, thinned 1 in 20". */
    static String letDown(Deed.LetDown down, Shelf shelf) {
        return shelf.nameOf(down.part()) + ", thinned 1 in " + down.oneIn();
    }

    private static String reading(Deed.Read read) {
        Reading reading = read.reading();
        String film = "chip read " + (reading.film() == FilmState.WET ? "wet" : "cured");
        String counts = read.counts() ? "" : ", does not count";
        if (reading instanceof ColourReading colour) {
            Lab lab = colour.lab();
            return String.format(
                    Locale.ROOT, "%s: L* %.1f a* %.1f b* %.1f%s", film, lab.lightness(), lab.a(), lab.b(), counts);
        }
        return film + ", spectrum" + counts;
    }
}
