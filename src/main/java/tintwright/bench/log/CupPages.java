package tintwright.bench.log;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import tintwright.cup.Cup;
import tintwright.cup.CupEntry;
import tintwright.cup.CupState;
import tintwright.cup.Deed;
import tintwright.logbook.Page;
import tintwright.reading.Reading;
import tintwright.shelf.Chip;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;

/** A cup with its whole story, as the pages the log keeps of it. */
final class CupPages {
    /** Shares that differ by less than this are the same mix: far below what any scale shows. */
    private static final double SAME_SHARE = 1e-6;

    private final Cup cup;
    private final CupState state;
    private final Shelf shelf;

    CupPages(Cup cup, Shelf shelf) {
        this.cup = cup;
        this.state = cup.state();
        this.shelf = shelf;
    }

    /**
     * The cup itself: what is in it now, everything that was weighed, and what was read since the last of it.
     *
     * @throws IllegalArgumentException for an empty cup
     */
    Page.Cup cup(Optional<UUID> place, LocalDate day, String note) {
        Parts parts = state.parts()
                .orElseThrow(() -> new IllegalArgumentException(
                        "the cup \"" + cup.name() + "\" is empty; weigh something into it first"));
        Parts plain = WriteLog.withoutLeftovers(parts, shelf);
        List<Reading> readings = new ArrayList<>();
        for (CupState.Sample sample : state.samples()) {
            if (sample.read().counts()
                    && sample.parts().filter(then -> sameMix(then, parts)).isPresent()) {
                readings.add(sample.read().reading());
            }
        }
        return new Page.Cup(
                cup.name(), day, place, plain, WriteLog.ingredients(plain, shelf), weighings(), readings, note);
    }

    private static boolean sameMix(Parts one, Parts other) {
        return one.grams().keySet().equals(other.grams().keySet())
                && one.grams().keySet().stream().allMatch(id -> Math.abs(one.share(id) - other.share(id)) < SAME_SHARE);
    }

    private List<Page.Weighing> weighings() {
        List<Page.Weighing> all = new ArrayList<>();
        for (CupEntry entry : cup.standing()) {
            Deed deed = entry.deed();
            if (deed instanceof Deed.Weighed weighed) {
                all.add(new Page.Weighing(weighed.part(), weighed.grams(), ""));
            } else if (deed instanceof Deed.LetDown down) {
                all.add(new Page.Weighing(down.part(), down.grams(), "as 1:" + down.oneIn() + " letdown"));
            } else if (deed instanceof Deed.Dropped drops) {
                all.add(new Page.Weighing(
                        drops.part(),
                        drops.count() * drops.dropGrams(),
                        drops.count() + (drops.count() == 1 ? " drop" : " drops")));
            } else if (deed instanceof Deed.Found found) {
                found.parts()
                        .grams()
                        .forEach((id, grams) -> all.add(new Page.Weighing(id, grams, "worked out from a reading")));
            } else if (deed instanceof Deed.SetAside away) {
                all.add(new Page.Weighing("set aside", -away.grams(), away.name()));
            }
        }
        return all;
    }

    /** What was read before the cup was what it is now: chips of other mixes. */
    List<Page.ChipMade> chips(UUID logged) {
        List<Page.ChipMade> chips = new ArrayList<>();
        for (CupState.Sample sample : state.samples()) {
            boolean earlier = state.parts()
                    .flatMap(now -> sample.parts().filter(then -> !sameMix(then, now)))
                    .isPresent();
            if (sample.read().counts() && earlier) {
                LocalDate day = cup.entry(sample.entry())
                        .map(entry -> LocalDate.ofInstant(entry.at(), ZoneOffset.UTC))
                        .orElseThrow();
                chips.add(new Page.ChipMade(
                        Optional.of(logged),
                        new Chip(
                                cup.name() + ", " + sample.entry(),
                                WriteLog.withoutLeftovers(sample.parts().get(), shelf),
                                List.of(sample.read().reading()),
                                Optional.of(day),
                                ""),
                        ""));
            }
        }
        return chips;
    }

    List<Page.LeftOver> leftovers(UUID logged, LocalDate day) {
        List<Page.LeftOver> all = new ArrayList<>();
        for (CupState.Aside aside : state.aside()) {
            Parts plain = WriteLog.withoutLeftovers(aside.parts(), shelf);
            all.add(new Page.LeftOver(
                    Optional.of(logged),
                    new Leftover(aside.name(), aside.name(), plain, List.of(), Optional.of(day)),
                    WriteLog.ingredients(plain, shelf),
                    false));
        }
        return all;
    }
}
