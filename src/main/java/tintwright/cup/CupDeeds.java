package tintwright.cup;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tintwright.colour.DifferenceWords;
import tintwright.colour.DifferenceWords.Said;
import tintwright.colour.Lab;
import tintwright.shelf.Shelf;
import tintwright.units.Grams;

/**
 * All that is to be done to a cup and was done, in plain words and values: whatever shows a cup shows this, so that no
 * two faces ever say two things of one cup.
 *
 * @param verdict  the cup beside the hull, such as "Too dark and a touch red."
 * @param now      the one thing to do
 * @param next     what comes after it, in order; may be empty
 * @param done     what stands in the cup, in its order
 * @param heldBack grams of white held back, 0 or more
 * @param close    how far it is from the hull, such as "about 1.2"; empty for an empty cup
 * @param sure     how sure that is, such as "likely within 2.1: seen side by side"; empty for an empty cup
 * @param notes    what else must be known before it is filled from; mostly none
 */
public record CupDeeds(
        String verdict,
        Todo now,
        List<Todo> next,
        List<Done> done,
        double heldBack,
        String close,
        String sure,
        List<String> notes) {
    /** What there can be to do to a cup. */
    public enum Kind {
        /** Something goes in, by the scale. */
        WEIGH,
        /** Some of it is poured off and kept. */
        POUR_OFF,
        /** A chip is drawn down and read. */
        READ_CHIP,
        /** A few grams of the cup alone get more tint, and a dab of that is looked at. */
        TRY_DAB,
        /** One of the ways back is chosen. */
        CHOOSE_WAY,
        /** There is no white in it, and nothing can be advised before there is. */
        WHITE_FIRST,
        /** Chip and weights disagree, and only the person can know which is right. */
        SETTLE,
        /** Nothing more is to be done to it. */
        STOP
    }

    /**
     * What the scale is to show.
     *
     * @param grams above 0
     * @param shown the same as that scale shows it, such as "0.42 g"
     * @param of    what is weighed, such as "soot black" or "soot black, thinned 1 in 20"
     */
    public record Amount(double grams, String shown, String of) {}

    /**
     * One thing to do.
     *
     * @param sentence the deed in one short sentence
     * @param amount   empty when nothing is weighed
     * @param why      one line; may be empty
     * @param how      how to weigh what is too small to be weighed straight; mostly empty
     * @param writes   what is written when it is done as advised: the deed itself first; may be empty
     * @param pots     what each small pot of a row of trial dabs gets, the lightest first; empty for all else
     */
    public record Todo(
            Kind kind,
            String sentence,
            Optional<Amount> amount,
            String why,
            String how,
            List<Deed> writes,
            List<String> pots) {
        public Todo {
            writes = List.copyOf(writes);
            pots = List.copyOf(pots);
        }

        Todo(Kind kind, String sentence, Optional<Amount> amount, String why, String how, List<Deed> writes) {
            this(kind, sentence, amount, why, how, writes, List.of());
        }

        /** @return line by line what goes into each small pot, and how to weigh what is too small; mostly none */
        public List<String> details() {
            List<String> lines = new ArrayList<>();
            for (String pot : pots) {
                lines.add((pots.size() == 1 ? "Into the pot: " : "Into pot " + (lines.size() + 1) + ": ") + pot + ".");
            }
            if (!how.isEmpty()) {
                lines.add(how);
            }
            return lines;
        }

        /** @return what is written when it is done as advised; empty when there is nothing to write */
        public Optional<Deed> deed() {
            return writes.stream().findFirst();
        }
    }

    /**
     * One entry that stands.
     *
     * @param entry   its id
     * @param weighed true when its grams can be put right
     * @param chip    the chip, for one that was read
     */
    public record Done(String entry, String words, boolean weighed, Optional<ReadChip> chip) {}

    /**
     * A chip that was read.
     *
     * @param colour  as the reading states it, or for D65 and 10 degrees
     * @param figures the same in numbers
     */
    public record ReadChip(Lab colour, String figures) {}

    public CupDeeds {
        next = List.copyOf(next);
        done = List.copyOf(done);
        notes = List.copyOf(notes);
    }

    /** From this chance on of being too dark the weights alone say it; a judgement of ours. */
    private static final double BEYOND_DOUBT = 0.95;
    /** A reserve of which the first doses may need nearly all is held back for want of chips; a judgement of ours. */
    private static final double NEARLY_ALL = 0.95;
    /** What is wanted counts as made from here on, as a share of it; a judgement of ours. */
    private static final double MADE = 0.98;

    /**
     * @param plan      what to do by the engine
     * @param ahead     steps of a way or of an earlier plan that were begun and come first; mostly empty
     * @param unsettled true while chip and weights disagree and nobody has said which is right
     */
    static CupDeeds of(CupSight sight, Plan plan, List<Deed> ahead, boolean unsettled) {
        List<Todo> todo = new ArrayList<>();
        Maker maker = new Maker(sight);
        if (unsettled) {
            todo.add(plain(
                    Kind.SETTLE,
                    "Chip and weights disagree: settle it first.",
                    "Either the chip was read wrongly or something was weighed otherwise than written."));
        }
        if (ahead.isEmpty()) {
            maker.of(plan, todo);
        } else {
            ahead.forEach(deed -> todo.add(maker.step(deed, "")));
        }
        Shelf shelf = sight.knowledge().shelf();
        List<Done> done = new ArrayList<>();
        for (CupEntry entry : sight.cup().standing()) {
            Deed deed = entry.deed();
            done.add(new Done(
                    entry.id(),
                    deed instanceof Deed.Read read ? DeedWords.chip(read) : DeedWords.of(deed, shelf),
                    deed instanceof Deed.Weighed || deed instanceof Deed.LetDown,
                    deed instanceof Deed.Read read ? Optional.of(DeedWords.read(read)) : Optional.empty()));
        }
        Optional<Outlook> outlook = sight.outlook();
        return new CupDeeds(
                maker.words.verdict(),
                todo.get(0),
                todo.subList(1, todo.size()),
                done,
                sight.state().reserve(),
                outlook.map(seen -> DifferenceWords.off(seen.deltaE())).orElse(""),
                outlook.map(seen -> DifferenceWords.likely(seen.within90())).orElse(""),
                maker.notes(plan));
    }

    /** @return what to do in order, and why, one sentence a line */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(verdict);
        List<Todo> all = new ArrayList<>(next);
        all.add(0, now);
        for (Todo todo : all) {
            lines.add(todo.sentence() + (todo.why().isEmpty() ? "" : " " + todo.why()));
            todo.details().forEach(line -> lines.add("  " + line));
        }
        lines.addAll(notes);
        return lines;
    }

    /** @return the same deed with what the scale really showed */
    public static Deed instead(Deed advised, double grams) {
        if (advised instanceof Deed.LetDown down) {
            return new Deed.LetDown(down.part(), down.oneIn(), grams, down.step());
        } else if (advised instanceof Deed.Weighed weighed) {
            return new Deed.Weighed(weighed.part(), grams, weighed.step());
        } else if (advised instanceof Deed.SetAside aside) {
            return new Deed.SetAside(grams, aside.name());
        } else if (advised instanceof Deed.Held) {
            return new Deed.Held(grams);
        }
        throw new IllegalArgumentException("there is nothing to weigh now");
    }

    /** @return a deed that was done, in few words, such as "0.31 g soot black" */
    public static String words(Deed deed, Shelf shelf) {
        return DeedWords.of(deed, shelf);
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

    private static Todo plain(Kind kind, String sentence, String why) {
        return plain(kind, sentence, why, "");
    }

    private static Todo plain(Kind kind, String sentence, String why, String how) {
        return new Todo(kind, sentence, Optional.empty(), why, how, List.of());
    }

    /** From the engine's plan to sentences. */
    private static final class Maker {
        private final CupSight sight;
        private final Cup cup;
        private final Shelf shelf;
        private final CupWords words;

        Maker(CupSight sight) {
            this.sight = sight;
            this.cup = sight.cup();
            this.shelf = sight.knowledge().shelf();
            this.words = new CupWords(sight);
        }

        void of(Plan plan, List<Todo> todo) {
            if (plan instanceof Plan.Start start) {
                todo.add(start(start));
            } else if (plan instanceof Plan.Doses doses) {
                for (Dose dose : doses.doses()) {
                    Todo step = step(dose.deed(), why(dose, doses));
                    String drops = dose.drops().map(this::drops).orElse("");
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
                    todo.add(
                            plain(
                                    Kind.READ_CHIP,
                                    "Draw down a chip, let it cure, read it, and read the hull once more with it.",
                                    first
                                            + "One reading of the hull is off by as much as the cup will be: two count together."));
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
                        "It is " + stop.now().words() + ", and a dose would gain less than the readings can tell."));
            } else if (plan instanceof Plan.WayBack) {
                todo.add(plain(Kind.CHOOSE_WAY, "Choose a way back.", "Tints alone do not bring it back."));
            } else {
                todo.add(plain(Kind.WHITE_FIRST, "Weigh white in first: there is none in the cup.", ""));
            }
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
            Set<String> how = new LinkedHashSet<>();
            List<String> pots = new ArrayList<>();
            for (Plan.TrialDab dab : plan.dabs()) {
                Deed.Trial trial = dab.trial();
                pots.add(DeedWords.got(trial, shelf));
                for (Deed dose : trial.doses()) {
                    if (dose instanceof Deed.LetDown down) {
                        how.add(stir(down));
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
                    String.join(" ", how),
                    List.of(),
                    pots);
        }

        private String why(Dose dose, Plan.Doses doses) {
            boolean white = dose.part().equals(cup.base());
            if (!white
                    && sight.state().tintWasJudged()
                    && !sight.state().grams().containsKey(dose.part())) {
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

        /** How to stir a letdown, or that it stands there. */
        private String stir(Deed.LetDown dose) {
            Dose.LetDownMix mix = Dose.LetDownMix.of(dose);
            String stirring = "tir " + onScale(mix.tintGrams()) + " of " + shelf.nameOf(dose.part()) + " well into "
                    + onScale(mix.baseGrams()) + " of white";
            return cup.stirred(dose.part()).contains(dose.oneIn())
                    ? "From what you have stirred, thinned 1 in " + dose.oneIn() + "; if it is used up, s" + stirring
                            + "."
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
    }
}
