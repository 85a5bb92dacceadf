package tintwright.shelf;

import java.time.Period;
import java.util.Optional;

/** What a thing on the shelf is. A switch over these has no default, so that a new kind asks every place what it does. */
public enum ItemKind {
    BASE("base", 300),
    TINT("tint", 20),
    PASTE("paste", 100),
    LEFTOVER("leftover", 0),
    CATALYST("catalyst", 50),
    WAX("wax", 50),
    KIT("repair kit", 50);

    private final String word;
    private final double usualLowGrams;

    ItemKind(String word, double usualLowGrams) {
        this.word = word;
        this.usualLowGrams = usualLowGrams;
    }

    /** @return such as "repair kit" */
    public String word() {
        return word;
    }

    /**
     * @return below this it runs low where nobody said otherwise, grams: of a tint a dozen small cups, of a catalyst what
     *         two and a half kilograms take; a judgement of ours. Nothing of a leftover, which nobody can buy
     */
    public double usualLowGrams() {
        return usualLowGrams;
    }

    /**
     * @return how long it keeps once opened, or once mixed, where no data sheet said; empty where nothing is usual. A kit
     *         about two weeks, catalyst and wax solution a year, a mixed cup without catalyst three months: common
     *         practice, no source
     */
    public Optional<Period> usuallyKeeps() {
        return switch (this) {
            case KIT -> Optional.of(Period.ofDays(14));
            case LEFTOVER -> Optional.of(Period.ofDays(90));
            case CATALYST, WAX -> Optional.of(Period.ofDays(365));
            case BASE, TINT, PASTE -> Optional.empty();
        };
    }

    /** @return whether chips and leftovers may hold it */
    public boolean mixes() {
        return switch (this) {
            case BASE, TINT, LEFTOVER -> true;
            case PASTE, CATALYST, WAX, KIT -> false;
        };
    }
}
