package tintwright.cup;

import java.util.Locale;
import java.util.stream.Collectors;
import tintwright.colour.Lab;
import tintwright.colour.Looks;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.FilmState;
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
            return chip(read) + " (" + read(read).figures() + ")";
        } else if (deed instanceof Deed.Seen seen) {
            return trials(seen, shelf) + "seen "
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

    /** Such as "trial dab of 3 g with 0.08 g soot black, thinned 1 in 20, nearer than with 0.16 g soot black, ". */
    private static String trials(Deed.Seen seen, Shelf shelf) {
        String dab = seen.trial()
                .map(trial -> "trial dab of " + Grams.written(trial.grams()) + " with " + got(trial, shelf) + ", ")
                .orElse("");
        return dab
                + seen.farther().stream()
                        .map(far -> "nearer than with " + got(far, shelf) + ", ")
                        .collect(Collectors.joining());
    }

    /** What a trial dab got, such as "0.08 g soot black, thinned 1 in 20 and 0.2 g rust red". */
    static String got(Deed.Trial trial, Shelf shelf) {
        return trial.doses().stream().map(deed -> of(deed, shelf)).collect(Collectors.joining(" and "));
    }

    /** Such as "soot black, thinned 1 in 20". */
    static String letDown(Deed.LetDown down, Shelf shelf) {
        return shelf.nameOf(down.part()) + ", thinned 1 in " + down.oneIn();
    }

    /** Such as "chip read cured: dark greyish green". */
    static String chip(Deed.Read read) {
        return "chip read " + (read.reading().film() == FilmState.WET ? "wet" : "cured") + ": "
                + Looks.of(read(read).colour()) + (read.counts() ? "" : ", does not count");
    }

    static CupDeeds.ReadChip read(Deed.Read read) {
        Lab lab = read.reading() instanceof ColourReading colour
                ? colour.lab()
                : read.reading().colour(Viewing.D65_10).orElseThrow();
        return new CupDeeds.ReadChip(
                lab,
                String.format(Locale.ROOT, "L* %.1f a* %.1f b* %.1f", lab.lightness(), lab.a(), lab.b())
                        + (read.reading() instanceof ColourReading ? "" : ", from a whole curve"));
    }
}
