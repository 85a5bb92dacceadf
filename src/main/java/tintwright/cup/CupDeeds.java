package tintwright.cup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tintwright.colour.DifferenceWords;
import tintwright.colour.DifferenceWords.Said;
import tintwright.colour.Lab;
import tintwright.shelf.Shelf;

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

    /**
     * @param plan      what to do by the engine
     * @param ahead     steps of a way or of an earlier plan that were begun and come first; mostly empty
     * @param unsettled true while chip and weights disagree and nobody has said which is right
     */
    static CupDeeds of(CupSight sight, Plan plan, List<Deed> ahead, boolean unsettled) {
        List<Todo> todo = new ArrayList<>();
        PlanWords words = new PlanWords(sight);
        if (unsettled) {
            todo.add(PlanWords.plain(
                    Kind.SETTLE,
                    "Chip and weights disagree: settle it first.",
                    "Either the chip was read wrongly or something was weighed otherwise than written."));
        }
        if (ahead.isEmpty()) {
            words.of(plan, todo);
        } else {
            ahead.forEach(deed -> todo.add(words.step(deed, "")));
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
                words.verdict(),
                todo.get(0),
                todo.subList(1, todo.size()),
                done,
                sight.state().reserve(),
                outlook.map(seen -> DifferenceWords.off(seen.deltaE())).orElse(""),
                outlook.map(seen -> DifferenceWords.likely(seen.within90())).orElse(""),
                words.notes(plan));
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
}
