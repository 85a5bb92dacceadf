package tintwright.cup;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tintwright.colour.DifferenceWords;
import tintwright.cup.CupDeeds.Amount;
import tintwright.cup.CupDeeds.Kind;
import tintwright.cup.CupDeeds.Todo;
import tintwright.shelf.Shelf;
import tintwright.units.Grams;

/** From the engine's plan to sentences. */
final class PlanWords {
    /** From this chance on of being too dark the weights alone say it; a judgement of ours. */
    private static final double BEYOND_DOUBT = 0.95;
    /** A reserve of which the first doses may need nearly all is held back for want of chips; a judgement of ours. */
    private static final double NEARLY_ALL = 0.95;
    /** What is wanted counts as made from here on, as a share of it; a judgement of ours. */
    private static final double MADE = 0.98;

    private final CupSight sight;
    private final Cup cup;
    private final Shelf shelf;
    private final CupWords words;

    PlanWords(CupSight sight) {
        this.sight = sight;
        this.cup = sight.cup();
        this.shelf = sight.knowledge().shelf();
        this.words = new CupWords(sight);
    }

    String verdict() {
        return words.verdict();
    }

    void of(Plan plan, List<Todo> todo) {
        if (plan instanceof Plan.Start start) {
            todo.add(start(start));
        } else if (plan instanceof Plan.Doses doses) {
            for (Dose dose : doses.doses()) {
                Todo step = step(dose.deed(), why(dose, doses));
                String drops = dose.drops()
                        .map(all -> (dose.letDown().isPresent() ? "Or straight from the pot: " : "") + drops(all))
                        .orElse("");
                todo.add(new Todo(
                        step.kind(),
                        step.sentence(),
                        step.amount(),
                        step.why(),
                        (step.how() + " " + drops).strip(),
                        step.writes()));
            }
            todo.add(plain(
                    Kind.READ_CHIP,
                    "Then look at a cured dab: the cup should be "
                            + doses.after().words() + ".",
                    ""));
        } else if (plan instanceof Plan.TryDabs row) {
            todo.add(tryDabs(row));
        } else if (plan instanceof Plan.TakeChip chip) {
            String first = chip.now().chanceTooDark() > BEYOND_DOUBT
                    ? "By what was written down it is too dark already: look whether each weight was written as it"
                            + " was. "
                    : "";
            if (sight.state().photosOfThis() > 0) {
                todo.add(plain(
                        Kind.READ_CHIP,
                        "Photograph the same dab once more beside the hull, or hold it there and look.",
                        "It has cured already, and each photo errs in its own way: together they tell more."));
                return;
            }
            if (sight.byEye() && !sight.state().unjudged()) {
                todo.add(plain(
                        Kind.READ_CHIP,
                        "Look at the same dab once more, held to the hull, and say again what you see.",
                        "Much is still to gain, and no dose is safe yet. A photo of it beside the hull would tell"
                                + " more."));
                return;
            }
            if (chip.besideHull() && cup.hullReadOnce()) {
                todo.add(plain(
                        Kind.READ_CHIP,
                        "Put a dab on a card, let it cure, read it, and read the hull once more with it.",
                        first + "One reading of the hull is off by as much as the cup will be: two count together."));
                return;
            }
            todo.add(
                    chip.besideHull()
                            ? plain(
                                    Kind.READ_CHIP,
                                    "Photograph a cured dab beside the hull, both in one photo, or look at it there.",
                                    first + "What the photo is off by then cancels.")
                            : plain(
                                    Kind.READ_CHIP,
                                    "Put a dab on a card, let it cure, hold it to the hull or read it.",
                                    first + "Nothing more goes in before that."));
        } else if (plan instanceof Plan.Stop stop) {
            todo.add(plain(
                    Kind.STOP,
                    "Stop here: another dose would not help.",
                    seenAlike()
                            ? "You saw no difference. By all else that is known it is "
                                    + DifferenceWords.likely(stop.now().within90()) + ", too little for a dose to mend."
                            : "It is " + stop.now().words()
                                    + ", and a dose would gain less than the readings can tell."));
        } else if (plan instanceof Plan.WayBack) {
            todo.add(plain(Kind.CHOOSE_WAY, "Choose a way back.", "Tints alone do not bring it back."));
        } else {
            todo.add(plain(Kind.WHITE_FIRST, "Weigh white in first: there is none in the cup.", ""));
        }
    }

    /** The last that was said of a dab is that it looks like the hull. */
    private boolean seenAlike() {
        List<CupState.Look> looks = sight.state().looks();
        return !looks.isEmpty() && looks.get(looks.size() - 1).verdict().alike();
    }

    private Todo start(Plan.Start start) {
        String why = "Keep " + onScale(start.reserve())
                + " more of it back, closed: only white lifts a cup that went too dark."
                + (start.climb() > start.reserve() * NEARLY_ALL
                        ? " So much because these tints are not known well: make a chip of each first."
                        : "");
        Deed.Weighed white = new Deed.Weighed(cup.base(), start.white(), cup.scaleStep());
        Amount amount = amount(start.white(), shelf.nameOf(cup.base()));
        return new Todo(
                Kind.WEIGH,
                "Weigh " + amount.shown() + " " + amount.of() + " into a clean cup.",
                Optional.of(amount),
                why,
                "",
                List.of(white, new Deed.Held(start.reserve())));
    }

    private Todo tryDabs(Plan.TryDabs plan) {
        Set<String> there = new LinkedHashSet<>();
        Set<String> fresh = new LinkedHashSet<>();
        List<String> pots = new ArrayList<>();
        for (Plan.TrialDab dab : plan.dabs()) {
            Deed.Trial trial = dab.trial();
            pots.add(DeedWords.got(trial, shelf));
            for (Deed dose : trial.doses()) {
                if (dose instanceof Deed.LetDown down) {
                    (cup.stirred(down.part()).contains(down.oneIn()) ? there : fresh).add(parts(down));
                }
            }
        }
        String grams = Grams.written(plan.dabs().get(0).grams()) + " of the cup in ";
        return new Todo(
                Kind.TRY_DAB,
                pots.size() == 1
                        ? "Make a trial dab, " + grams + "a small pot, and hold it cured to the hull."
                        : "Make " + pots.size() + " trial dabs, " + grams
                                + "a small pot each, and hold them cured to the hull, side by side.",
                Optional.empty(),
                "It shows where the cup is going: a dab may be too dark, and the cup is not. Nothing of a pot goes"
                        + " back.",
                ((fresh.isEmpty() ? "" : "To thin, stir " + String.join(", ", fresh) + " well, and weigh from that. ")
                                + (there.isEmpty()
                                        ? ""
                                        : "What you have stirred will do; if it is used up: " + String.join(", ", there)
                                                + "."))
                        .strip(),
                List.of(),
                pots);
    }

    private String why(Dose dose, Plan.Doses doses) {
        boolean white = dose.part().equals(cup.base());
        if (!white && sight.state().tintWasJudged() && !sight.state().grams().containsKey(dose.part())) {
            return "It is new in this cup: by the chip, the tints already in do not come as near without it.";
        }
        if (!white) {
            return "";
        }
        return doses.fillUp() ? "It is from the white held back, with its tints: there is more to make." : "";
    }

    Todo step(Deed deed, String why) {
        if (deed instanceof Deed.SetAside aside) {
            Amount amount = amount(aside.grams(), "to set aside as \u201c" + aside.name() + "\u201d");
            return new Todo(
                    Kind.POUR_OFF,
                    "Pour off " + amount.shown() + "; write \u201c" + aside.name() + "\u201d on it.",
                    Optional.of(amount),
                    why,
                    "",
                    List.of(deed));
        }
        Amount amount = deed instanceof Deed.LetDown down
                ? amount(down.grams(), DeedWords.letDown(down, shelf))
                : amount(((Deed.Weighed) deed).grams(), shelf.nameOf(((Deed.Weighed) deed).part()));
        return new Todo(
                Kind.WEIGH,
                "Weigh in " + amount.shown() + " " + amount.of() + ".",
                Optional.of(amount),
                why,
                deed instanceof Deed.LetDown down ? stir(down) : "",
                List.of(deed));
    }

    private Amount amount(double grams, String of) {
        return new Amount(grams, onScale(grams), of);
    }

    private String onScale(double grams) {
        return Grams.onScale(grams, cup.scaleStep());
    }

    /** What a thinned tint is stirred from, in a few words. */
    private String parts(Deed.LetDown dose) {
        Dose.LetDownMix mix = Dose.LetDownMix.of(dose);
        return onScale(mix.tintGrams()) + " of " + shelf.nameOf(dose.part()) + " into " + onScale(mix.baseGrams())
                + " of white";
    }

    /** How to stir a letdown, or that it stands there. */
    private String stir(Deed.LetDown dose) {
        Dose.LetDownMix mix = Dose.LetDownMix.of(dose);
        String stirring = "tir " + onScale(mix.tintGrams()) + " of " + shelf.nameOf(dose.part()) + " well into "
                + onScale(mix.baseGrams()) + " of white";
        return cup.stirred(dose.part()).contains(dose.oneIn())
                ? "From what you have stirred, thinned 1 in " + dose.oneIn() + "; if it is used up, s" + stirring + "."
                : "Too little to weigh straight: s" + stirring + ", then weigh the dose from that.";
    }

    private String drops(Dose.Drops drops) {
        return drops.count() + (drops.count() == 1 ? " drop is about " : " drops are about ")
                + Grams.about(drops.grams()) + ", give or take " + Grams.about(drops.within()) + ".";
    }

    List<String> notes(Plan plan) {
        List<String> notes = new ArrayList<>();
        double wanted = cup.wantedGrams();
        double mass = sight.state().mass();
        if (plan instanceof Plan.Stop && mass < MADE * wanted) {
            notes.add("The cup holds " + Grams.about(mass) + ". For the " + Grams.about(wanted)
                    + " wanted it takes about " + Grams.about(wanted - mass)
                    + " more white than is held back: hold back more to be told its tints.");
        }
        notes.addAll(sight.eye().notes());
        notes.addAll(words.wet());
        return notes;
    }

    static Todo plain(Kind kind, String sentence, String why) {
        return plain(kind, sentence, why, "");
    }

    private static Todo plain(Kind kind, String sentence, String why, String how) {
        return new Todo(kind, sentence, Optional.empty(), why, how, List.of());
    }
}
