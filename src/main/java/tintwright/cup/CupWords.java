package tintwright.cup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tintwright.colour.DifferenceWords;
import tintwright.colour.DifferenceWords.Said;
import tintwright.reading.FilmState;

/** What a cup has to say to the person in front of it: short sentences, grams, no colour science. */
public final class CupWords {
    /** From this chance on of being too dark the weights alone say it. */
    private static final double BEYOND_DOUBT = 0.95;

    private final CupSight sight;
    private final int decimals;

    public CupWords(CupSight sight) {
        this.sight = sight;
        double step = sight.cup().scaleStep();
        this.decimals = step >= 1 ? 0 : (int) Math.min(4, Math.max(1, Math.round(-Math.log10(step) + 0.2)));
    }

    /** @return how the cup as it is looks beside the hull, such as "Too dark and a touch red." */
    public String verdict() {
        if (sight.colour().isEmpty()) {
            return "Nothing is in the cup yet.";
        }
        if (sight.state().grams().size() == 1 && sight.state().white() > 0) {
            return "The cup is still white.";
        }
        String text = difference(DifferenceWords.of(sight.colour().get(), sight.hull()));
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
    }

    /** @return how a cup differs from its hull, such as "too dark and a touch red", without a full stop */
    public static String difference(DifferenceWords difference) {
        List<Said> said = difference.said();
        if (said.isEmpty()) {
            return "as close as eyes can tell";
        }
        List<String> words = new ArrayList<>();
        said.forEach(one -> words.add(word(one)));
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    private static String word(Said said) {
        return switch (said.word()) {
            case LIGHTER -> tooMuch(said, "light");
            case DARKER -> tooMuch(said, "dark");
            case CLEANER -> tooMuch(said, "clean");
            case DIRTIER -> tooMuch(said, "dirty");
            case REDDER -> tooMuch(said, "red");
            case YELLOWER -> tooMuch(said, "yellow");
            case GREENER -> tooMuch(said, "green");
            case BLUER -> tooMuch(said, "blue");
            case LESS_RED -> tooLittle(said, "red");
            case LESS_YELLOW -> tooLittle(said, "yellow");
            case LESS_GREEN -> tooLittle(said, "green");
            case LESS_BLUE -> tooLittle(said, "blue");
        };
    }

    private static String tooLittle(Said said, String plain) {
        return said.size() < DifferenceWords.PLAIN
                ? "a touch short of " + plain
                : (said.size() < DifferenceWords.MUCH ? "not " : "far from ") + plain + " enough";
    }

    private static String tooMuch(Said said, String plain) {
        return said.size() < DifferenceWords.PLAIN
                ? "a touch " + plain
                : said.size() < DifferenceWords.MUCH ? "too " + plain : "much too " + plain;
    }

    /** @return what to do next, one sentence a line */
    public List<String> plan(Plan plan) {
        List<String> lines = new ArrayList<>();
        if (plan instanceof Plan.Start start) {
            lines.add("Weigh " + grams(start.white()) + " " + name(sight.cup().base()) + " into the cup and hold back "
                    + grams(start.reserve()) + " of it.");
            if (start.climb() > start.reserve() * 0.95) {
                lines.add("So much is held back because these tints are not known well: make a chip of each first.");
            }
        } else if (plan instanceof Plan.Doses doses) {
            lines.add(verdict() + (doses.fillUp() ? " Bring in white from the reserve and its tints: add " : " Add ")
                    + list(doses.doses()) + "." + left(doses.doses()));
            doses.doses().forEach(dose -> lines.addAll(how(dose)));
            newcomers(doses.doses())
                    .forEach(part -> lines.add(name(part) + " is new in this cup: by the chip, the"
                            + " tints already in do not come as near without it."));
            lines.add(
                    "Then read a cured chip: the cup should be " + doses.after().words() + ".");
        } else if (plan instanceof Plan.TakeChip chip) {
            if (chip.now().chanceTooDark() > BEYOND_DOUBT) {
                lines.add("By what was written down it is too dark already. Look whether each weight was written as it"
                        + " was; then read it.");
            }
            lines.add(
                    chip.besideHull()
                            ? "Take a cured chip of the cup and photograph it beside the hull, both in one"
                                    + " photo: what the photo is off by then cancels."
                            : "Take a chip, let it cure and read it before anything else goes in.");
        } else if (plan instanceof Plan.Stop stop) {
            lines.add("Stop here: " + stop.now().words() + ", and another dose would help less than the readings can"
                    + " tell.");
            double missing = sight.cup().wantedGrams() - sight.state().mass();
            if (missing > 0.02 * sight.cup().wantedGrams()) {
                lines.add("The cup holds " + whole(sight.state().mass()) + ". For the "
                        + whole(sight.cup().wantedGrams())
                        + " wanted it takes about " + whole(missing)
                        + " more white than is held back: hold back more to"
                        + " be told its tints.");
            }
        } else if (plan instanceof Plan.WayBack) {
            lines.add(verdict() + " Tints alone do not bring it back: choose a way back.");
        } else {
            lines.add("There is no white in the cup: weigh white in first.");
        }
        lines.addAll(wet());
        return lines;
    }

    /** Tints that no recipe chose: what a chip of the cup has called for. */
    private List<String> newcomers(List<Dose> doses) {
        return doses.stream()
                .map(Dose::part)
                .filter(part -> sight.state().tintWasRead()
                        && !part.equals(sight.cup().base())
                        && !sight.state().grams().containsKey(part))
                .toList();
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

    private String left(List<Dose> doses) {
        double white = DosePlanner.sum(sight, doses).getOrDefault(sight.cup().base(), 0.0);
        double left = sight.state().reserve() - white;
        return left >= 0.5 ? " You have " + whole(left) + " of white left." : "";
    }

    private String list(List<Dose> doses) {
        if (doses.isEmpty()) {
            return "nothing";
        }
        List<String> parts = new ArrayList<>();
        doses.forEach(dose -> parts.add(
                dose.letDown().isPresent()
                        ? fine(dose.grams()) + " " + name(dose.part())
                        : grams(dose.grams()) + " " + name(dose.part())));
        int last = parts.size() - 1;
        return last == 0 ? parts.get(0) : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
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
        return List.of("  " + fine(dose.grams()) + " " + name(dose.part()) + " as a letdown 1 in " + mix.oneIn()
                + ": stir " + grams(mix.tintGrams()) + " of it into " + grams(mix.baseGrams()) + " "
                + name(sight.cup().base()) + " and weigh in " + grams(grams) + " of that." + drops);
    }

    String name(String id) {
        return sight.knowledge().shelf().nameOf(id);
    }

    String grams(double grams) {
        return String.format(Locale.ROOT, "%." + decimals + "f g", grams);
    }

    /** Finer than the scale: what is in a letdown. */
    static String fine(double grams) {
        return String.format(Locale.ROOT, grams < 0.01 ? "%.4f g" : "%.3f g", grams);
    }

    static String whole(double grams) {
        return String.format(Locale.ROOT, grams < 10 ? "%.1f g" : "%.0f g", grams);
    }
}
