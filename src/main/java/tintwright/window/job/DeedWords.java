package tintwright.window.job;

import java.util.Locale;
import tintwright.colour.Lab;
import tintwright.cup.Deed;
import tintwright.reading.ColourReading;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.shelf.Shelf;
import tintwright.window.pieces.Figures;

/** What was done to a cup, in a few words. */
public final class DeedWords {
    private DeedWords() {}

    /** @return a deed as a line of the cup's story */
    public static String of(Deed deed, Shelf shelf) {
        if (deed instanceof Deed.Weighed weighed) {
            return say("%s %s", Figures.scale(weighed.grams(), weighed.step()), shelf.nameOf(weighed.part()));
        }
        if (deed instanceof Deed.LetDown down) {
            return say(
                    "%s of %s letdown, 1 in %d",
                    Figures.scale(down.grams(), down.step()), shelf.nameOf(down.part()), down.oneIn());
        }
        if (deed instanceof Deed.Dropped dropped) {
            return say("%d drops of %s", dropped.count(), shelf.nameOf(dropped.part()));
        }
        if (deed instanceof Deed.Held held) {
            return say("%s of white held back", Figures.grams(held.grams()));
        }
        if (deed instanceof Deed.SetAside aside) {
            return say("%s set aside as \u201c%s\u201d", Figures.grams(aside.grams()), aside.name());
        }
        if (deed instanceof Deed.Found found) {
            return say("found: %s", found.parts());
        }
        return deed instanceof Deed.Read read ? reading(read) : "put right";
    }

    private static String reading(Deed.Read read) {
        Reading reading = read.reading();
        String film = reading.film() == FilmState.WET ? "wet" : "cured";
        String counts = read.counts() ? "" : ", does not count";
        if (reading instanceof ColourReading colour) {
            Lab lab = colour.lab();
            return say("chip read %s: L* %.1f a* %.1f b* %.1f%s", film, lab.lightness(), lab.a(), lab.b(), counts);
        }
        return say("chip read %s, spectrum%s", film, counts);
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
