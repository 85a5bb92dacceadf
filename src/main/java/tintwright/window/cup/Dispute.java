package tintwright.window.cup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tintwright.bench.CupBench;
import tintwright.colour.Ciede2000;
import tintwright.colour.DifferenceWords;
import tintwright.colour.Lab;
import tintwright.cup.Contradiction;
import tintwright.cup.CupEntry;
import tintwright.cup.Deed;
import tintwright.units.Grams;

/**
 * The last chip and the weights that cannot both be right, as the person is asked about it.
 *
 * @param chip  id of the reading's entry
 * @param words what disagrees
 * @param mends what would settle it, the likeliest first; may be empty
 * @param byChip how far the hull is from what the chip read, in words
 */
public record Dispute(String chip, String words, List<Mend> mends, String byChip) {
    /**
     * One weighing that may have been written wrongly.
     *
     * @param entry its id
     * @param grams what it would have to be
     * @param words such as "1.20 g soot black went in, not 0.30 g"
     */
    public record Mend(String entry, double grams, String words) {}

    public Dispute {
        mends = List.copyOf(mends);
    }

    static Dispute of(Contradiction found, CupBench bench) {
        List<Mend> mends = new ArrayList<>();
        for (Contradiction.Slip slip : found.slips()) {
            CupEntry entry = bench.cup().entry(slip.entry()).orElseThrow();
            String form = entry.deed() instanceof Deed.LetDown down ? " thinned 1 in " + down.oneIn() + "," : "";
            double step = bench.cup().scaleStep();
            mends.add(new Mend(
                    slip.entry(),
                    slip.really(),
                    String.format(
                            Locale.ROOT,
                            "%s %s%s went in, not %s",
                            Grams.onScale(slip.really(), step),
                            bench.shelf().nameOf(slip.part()),
                            form,
                            Grams.onScale(slip.written(), step))));
        }
        Lab hull = bench.hull();
        String byChip = hull.viewing().equals(found.read().viewing())
                ? DifferenceWords.size(Ciede2000.between(found.read(), hull))
                : "";
        return new Dispute(found.entry(), found.words(), mends, byChip);
    }
}
