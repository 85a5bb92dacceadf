package tintwright.cup;

import java.util.List;
import java.util.Locale;
import tintwright.colour.DifferenceWords;
import tintwright.reading.FilmState;
import tintwright.units.Grams;

/**
 * What a cup has to say to the person in front of it: short sentences, grams, no colour science.
 */
public final class CupWords {
    private final CupSight sight;

    public CupWords(CupSight sight) {
        this.sight = sight;
    }

    /** @return how the cup as it is looks beside the hull, such as "Too dark and a touch red." */
    public String verdict() {
        if (sight.colour().isEmpty()) {
            return "Nothing is in the cup yet.";
        }
        if (sight.state().grams().size() == 1 && sight.state().white() > 0) {
            return "The cup is still white.";
        }
        String text = CupDeeds.difference(DifferenceWords.of(sight.colour().get(), sight.hull()));
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
    }

    /** @return a word of caution while what went in was not read; otherwise nothing */
    List<String> notRead() {
        return sight.state().unread().isEmpty()
                ? List.of()
                : List.of("This is computed from the weights, not read: a chip would make it surer.");
    }

    /** @return a warning while the cup was only read wet and the shift to cured is not known; otherwise nothing */
    List<String> wet() {
        boolean wet = sight.state()
                .lastSample()
                .map(s -> s.read().reading().film() == FilmState.WET)
                .orElse(false);
        if (!wet) {
            return List.of();
        }
        return List.of(
                sight.wetShiftKnown()
                        ? "Read wet; the cured colour is worked out from earlier pairs. Read a cured"
                                + " chip before filling."
                        : "Read wet, and how this paint shifts when it cures is not known yet: read a cured chip before"
                                + " filling.");
    }

    /** @return how to weigh a dose too small for the scale; nothing for a dose weighed straight */
    public List<String> how(Dose dose) {
        if (dose.letDown().isEmpty()) {
            return List.of();
        }
        Dose.LetDownMix mix = dose.letDown().get();
        double grams = ((Deed.LetDown) dose.deed()).grams();
        String drops = dose.drops()
                .map(d -> String.format(
                        Locale.ROOT,
                        " Or %d drop%s (about %.2f g, give or take" + " %.2f).",
                        d.count(),
                        d.count() == 1 ? "" : "s",
                        d.grams(),
                        d.within()))
                .orElse("");
        return List.of("  " + Grams.fine(dose.grams()) + " " + name(dose.part()) + " thinned 1 in " + mix.oneIn()
                + ": stir " + grams(mix.tintGrams()) + " of it into " + grams(mix.baseGrams()) + " "
                + name(sight.cup().base()) + " and weigh in " + grams(grams) + " of that." + drops);
    }

    String name(String id) {
        return sight.knowledge().shelf().nameOf(id);
    }

    String grams(double grams) {
        return Grams.onScale(grams, sight.cup().scaleStep());
    }
}
