package tintwright.window.cup;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import tintwright.cup.Cup;
import tintwright.cup.Deed;
import tintwright.cup.Dose;
import tintwright.cup.Plan;
import tintwright.cup.Way;
import tintwright.shelf.Leftover;
import tintwright.shelf.Shelf;
import tintwright.window.job.Job;
import tintwright.window.pieces.Figures;

/** From the engine's plan to one sentence and one button. */
final class NextStep {
    private final Shelf shelf;
    private final Cup cup;

    NextStep(Shelf shelf, Cup cup) {
        this.shelf = shelf;
        this.cup = cup;
    }

    CupModel.Next of(Plan plan) {
        if (plan instanceof Plan.Start start) {
            String white = Figures.scale(start.white(), cup.scaleStep());
            return new CupModel.Next(
                    say("Weigh %s %s into a clean cup.", white, shelf.nameOf(cup.base())),
                    "It is in",
                    white,
                    shelf.nameOf(cup.base()),
                    say(
                            "Keep %s more of it back, closed: only white lifts a cup that went too dark.",
                            Figures.grams(start.reserve())),
                    "",
                    Optional.of(new Deed.Weighed(cup.base(), start.white(), cup.scaleStep())),
                    Optional.of(new Deed.Held(start.reserve())),
                    List.of(),
                    false);
        }
        if (plan instanceof Plan.Doses doses) {
            return dose(doses.doses().get(0), doses);
        }
        if (plan instanceof Plan.TakeChip chip) {
            return chip.besideHull()
                    ? plain("Photograph a cured chip beside the hull.", "Read a chip")
                    : plain("Draw down a chip, let it cure, read it.", "Read a chip");
        }
        if (plan instanceof Plan.Stop) {
            return new CupModel.Next(
                    "Stop here: another dose would not help.",
                    "On to the fill",
                    "",
                    "",
                    "",
                    "",
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    true);
        }
        if (plan instanceof Plan.WayBack) {
            return new CupModel.Next(
                    "Choose a way back.",
                    "Show the ways",
                    "",
                    "",
                    "",
                    "",
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    false);
        }
        return plain("Weigh white in first: there is none in the cup.", "");
    }

    /** The next step of a way that was chosen. */
    CupModel.Next ahead(List<Deed> ahead) {
        Deed deed = ahead.get(0);
        String more = more(ahead.size() - 1);
        if (deed instanceof Deed.SetAside aside) {
            return new CupModel.Next(
                    say("Pour off %s; write \u201c%s\u201d on it.", Figures.grams(aside.grams()), aside.name()),
                    "It is poured off",
                    Figures.scale(aside.grams(), cup.scaleStep()),
                    say("to set aside as \u201c%s\u201d", aside.name()),
                    "",
                    more,
                    Optional.of(deed),
                    Optional.empty(),
                    List.of(),
                    false);
        }
        double grams = deed instanceof Deed.LetDown down ? down.grams() : ((Deed.Weighed) deed).grams();
        String id = deed instanceof Deed.LetDown down ? down.part() : ((Deed.Weighed) deed).part();
        String what = deed instanceof Deed.LetDown down
                ? say("%s letdown, 1 in %d", shelf.nameOf(id), down.oneIn())
                : shelf.nameOf(id);
        String figure = Figures.scale(grams, cup.scaleStep());
        String how = deed instanceof Deed.LetDown down ? stir(down) : "";
        return new CupModel.Next(
                say("Weigh in %s %s.", figure, what),
                "It is in",
                figure,
                what,
                how,
                more,
                Optional.of(deed),
                Optional.empty(),
                List.of(),
                false);
    }

    /**
     * @param freshName a name for a clean cup
     * @return the job once a way is chosen: its steps stand ahead, and for a fresh cup the dark one is set aside
     */
    static Job following(Job before, Way way, Supplier<String> freshName, LocalDate today) {
        Cup cup = before.cup().orElseThrow();
        if (way instanceof Way.Climb climb) {
            return before.after(cup, climb.doses().stream().map(Dose::deed).toList());
        }
        if (way instanceof Way.Split split) {
            List<Deed> ahead = new ArrayList<>(List.of(new Deed.SetAside(split.setAside(), split.name())));
            split.doses().forEach(dose -> ahead.add(dose.deed()));
            return before.after(cup, ahead);
        }
        if (way instanceof Way.Fresh fresh) {
            return fresh(before, cup, fresh, freshName.get(), today);
        }
        return before;
    }

    private static Job fresh(Job before, Cup cup, Way.Fresh fresh, String name, LocalDate today) {
        String id = "aside-" + (before.shelf().leftovers().size() + 1);
        while (!before.shelf().nameOf(id).equals(id)) {
            id = id + "-b";
        }
        Leftover aside =
                new Leftover(id, fresh.name(), cup.state().parts().orElseThrow(), List.of(), Optional.of(today));
        Cup clean = Cup.empty(name, cup.hull(), cup.wantedGrams(), cup.scaleStep(), cup.base());
        return before.with(before.shelf().with(aside))
                .after(
                        clean,
                        List.of(
                                new Deed.Weighed(cup.base(), fresh.white(), cup.scaleStep()),
                                new Deed.Weighed(id, fresh.darkFirst(), cup.scaleStep())));
    }

    /** @return the same deed with what the scale really showed */
    static Deed instead(Deed advised, double grams) {
        if (advised instanceof Deed.LetDown down) {
            return new Deed.LetDown(down.part(), down.oneIn(), grams, down.step());
        }
        if (advised instanceof Deed.Weighed weighed) {
            return new Deed.Weighed(weighed.part(), grams, weighed.step());
        }
        if (advised instanceof Deed.SetAside aside) {
            return new Deed.SetAside(grams, aside.name());
        }
        throw new IllegalArgumentException("there is nothing to weigh now");
    }

    /** How to stir a letdown, or that it stands there. */
    private String stir(Deed.LetDown dose) {
        Dose.LetDownMix mix = Dose.LetDownMix.of(dose);
        String stirring = say(
                "tir %s of %s well into %s of white",
                Figures.scale(mix.tintGrams(), dose.step()),
                shelf.nameOf(dose.part()),
                Figures.scale(mix.baseGrams(), dose.step()));
        return cup.stirred(dose.part()).contains(dose.oneIn())
                ? say("From the 1 in %d letdown you have stirred; if it is used up, s%s.", dose.oneIn(), stirring)
                : say("Too little to weigh straight: s%s, then weigh the dose from that.", stirring);
    }

    private static String more(int doses) {
        return doses == 0 ? "" : doses == 1 ? "Then one more dose." : say("Then %d more doses.", doses);
    }

    /** Before anything goes in, it must be known whether the chip or the weights are right. */
    static CupModel.Next settle() {
        return plain("Chip and weights disagree: settle it first.", "Show me");
    }

    private static CupModel.Next plain(String sentence, String button) {
        return new CupModel.Next(
                sentence, button, "", "", "", "", Optional.empty(), Optional.empty(), List.of(), false);
    }

    private CupModel.Next dose(Dose dose, Plan.Doses all) {
        String name = shelf.nameOf(dose.part());
        double grams = dose.deed() instanceof Deed.LetDown down ? down.grams() : dose.grams();
        String figure = Figures.scale(grams, cup.scaleStep());
        String what = dose.letDown().isPresent()
                ? say("%s letdown, 1 in %d", name, dose.letDown().get().oneIn())
                : name;
        StringBuilder how = new StringBuilder();
        if (dose.deed() instanceof Deed.LetDown down) {
            how.append(stir(down));
        }
        dose.drops()
                .ifPresent(drops -> how.append(say(
                        "%s%d drops are about %s, give or take %s.",
                        how.length() == 0 ? "" : " ",
                        drops.count(),
                        Figures.grams(drops.grams()),
                        Figures.grams(drops.within()))));
        return new CupModel.Next(
                say("Weigh in %s %s.", figure, what),
                "It is in",
                figure,
                what,
                how.toString(),
                more(all.doses().size() - 1),
                Optional.of(dose.deed()),
                Optional.empty(),
                all.doses().stream().skip(1).map(Dose::deed).toList(),
                false);
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
