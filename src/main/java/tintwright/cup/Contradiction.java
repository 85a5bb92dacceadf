package tintwright.cup;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.shelf.Parts;
import tintwright.shelf.knowledge.Knowledge;

/**
 * The last chip and the weights tell two stories. Either the chip was read wrongly or something was weighed otherwise
 * than written; only the person at the bench can know, so it is said and the slips that would explain it are named.
 *
 * @param entry   id of the reading's entry
 * @param apart   CIEDE2000 between the chip and what the weights foretell of it
 * @param read    what the chip read
 * @param foretold what it should have read, by all that is known
 * @param slips   one-entry slips that bring the two together, the likeliest first; may be empty
 */
public record Contradiction(String entry, double apart, Lab read, Lab foretold, List<Slip> slips) {
    /** Below this nobody would doubt a weighing, CIEDE2000: the cup follows the chip. A judgement of ours. */
    private static final double WORTH_ASKING = 2.5;
    /** In standard deviations of reading and model: chance one in four hundred on an axis for honest normal noise. */
    private static final double SURE = 3;
    /** A slip explains the chip when it leaves at most this share of the difference; a judgement of ours. */
    private static final double EXPLAINED = 0.34;
    /** What a slip by a factor of e must gain in CIEDE2000 over a smaller one; small slips are commoner; a judgement of ours. */
    private static final double PRICE = 0.3;

    /** A judgement of ours. */
    private static final int MOST = 2;
    /** Slips from a thirtieth to thirty times are looked for: a wrong decimal place and a double dose are inside; a judgement of ours. */
    private static final double WIDEST = Math.log(30);

    /** A bound on work, a judgement of ours. */
    private static final int STEPS = 60;

    /**
     * One entry that may have been weighed otherwise than written.
     *
     * @param entry   its id
     * @param part    id of what was weighed
     * @param written grams as written
     * @param really  grams that would explain the chip, in steps of the scale
     * @param left    CIEDE2000 that stays between chip and weights then
     */
    public record Slip(String entry, String part, double written, double really, double left) {}

    public Contradiction {
        slips = List.copyOf(slips);
    }

    /** @return empty when the last chip agrees with the weights, or there is none */
    static Optional<Contradiction> of(CupSight sight) {
        List<CupState.Sample> samples = sight.state().samples();
        if (samples.isEmpty() || samples.get(samples.size() - 1).parts().isEmpty()) {
            return Optional.empty();
        }
        CupState.Sample last = samples.get(samples.size() - 1);
        Reading reading = sight.aim().seen(last.read());
        Viewing viewing = reading.judgedUnder();
        Lab read = reading.colour(viewing).orElseThrow();
        Lab foretold = foretold(sight.knowledge(), last.parts().get(), reading, viewing);
        double apart = Ciede2000.between(read, foretold);
        var own = reading.doubt(viewing);
        double wet = reading.film() == FilmState.WET ? ReadingCheck.WET_STRAY * ReadingCheck.WET_STRAY : 0;
        double noise = Math.sqrt((own.ll() + own.aa() + own.bb()) / 3 + wet + ReadingCheck.MODEL * ReadingCheck.MODEL);
        if (apart < WORTH_ASKING || apart < SURE * noise) {
            return Optional.empty();
        }
        return Optional.of(new Contradiction(
                last.entry(), apart, read, foretold, slips(sight, last.entry(), reading, read, apart)));
    }

    /** What a chip of these parts reads: a wet one by the shift that is known. */
    static Lab foretold(Knowledge knowledge, Parts parts, Reading reading, Viewing viewing) {
        Lab cured = knowledge.colour(parts, viewing, reading.geometry());
        if (reading.film() != FilmState.WET) {
            return cured;
        }
        double[][] shift = knowledge.wetShift();
        return new Lab(cured.lightness() + shift[0][0], cured.a() + shift[1][0], cured.b() + shift[2][0], viewing);
    }

    private static List<Slip> slips(CupSight sight, String chip, Reading reading, Lab read, double apart) {
        List<Slip> found = new ArrayList<>();
        for (CupEntry entry : sight.cup().standing()) {
            if (entry.id().equals(chip)) {
                break;
            }
            if (entry.deed() instanceof Deed.Weighed || entry.deed() instanceof Deed.LetDown) {
                Search search = new Search(sight, entry, chip, reading, read);
                search.best().filter(slip -> slip.left() < EXPLAINED * apart).ifPresent(found::add);
            }
        }
        found.sort(Comparator.comparingDouble(
                slip -> slip.left() + PRICE * Math.abs(Math.log(slip.really() / slip.written()))));
        return found.subList(0, Math.min(MOST, found.size()));
    }

    /** Looks for the grams of one entry that bring weights and chip together. */
    private record Search(CupSight sight, CupEntry entry, String chip, Reading reading, Lab read) {
        Optional<Slip> best() {
            double written =
                    entry.deed() instanceof Deed.LetDown down ? down.grams() : ((Deed.Weighed) entry.deed()).grams();
            double step =
                    entry.deed() instanceof Deed.LetDown down ? down.step() : ((Deed.Weighed) entry.deed()).step();
            double nearest = 0;
            double least = left(written);
            double wide = 2 * WIDEST / STEPS;
            for (int i = 0; i <= STEPS; i++) {
                double there = i * wide - WIDEST;
                double left = left(written * Math.exp(there));
                if (left < least) {
                    least = left;
                    nearest = there;
                }
            }
            for (int i = 0; i < 12; i++) {
                wide /= 2;
                for (double there : new double[] {nearest - wide, nearest + wide}) {
                    double left = left(written * Math.exp(there));
                    if (left < least) {
                        least = left;
                        nearest = there;
                    }
                }
            }
            double really = Math.round(written * Math.exp(nearest) / step) * step;
            return really <= 0 || Math.abs(really - written) < step / 2
                    ? Optional.empty()
                    : Optional.of(new Slip(entry.id(), part(), written, really, left(really)));
        }

        private String part() {
            return entry.deed() instanceof Deed.LetDown down ? down.part() : ((Deed.Weighed) entry.deed()).part();
        }

        /**
         * CIEDE2000 between the chip and what it would be foretold with so many grams in this entry; without end where
         * the cup could not have come to the chip with them, as when more was set aside later than was in.
         */
        private double left(double grams) {
            Deed really = entry.deed() instanceof Deed.LetDown down
                    ? new Deed.LetDown(down.part(), down.oneIn(), grams, down.step())
                    : new Deed.Weighed(part(), grams, ((Deed.Weighed) entry.deed()).step());
            Cup other = sight.cup().correct(entry.id(), really, Instant.EPOCH);
            Optional<Parts> then = other.state().samples().stream()
                    .filter(sample -> sample.entry().equals(chip))
                    .findFirst()
                    .flatMap(CupState.Sample::parts);
            return then.map(parts ->
                            Ciede2000.between(read, foretold(sight.shelfAlone(), parts, reading, read.viewing())))
                    .orElse(Double.POSITIVE_INFINITY);
        }
    }

    /** @return the two stories in one sentence */
    public String words() {
        return String.format(
                Locale.ROOT,
                "The chip and the weights disagree by %.1f: it read L* %.1f, a* %.1f, "
                        + "b* %.1f, and by what went in it should be near L* %.1f, a* %.1f, b* %.1f.",
                apart,
                read.lightness(),
                read.a(),
                read.b(),
                foretold.lightness(),
                foretold.a(),
                foretold.b());
    }
}
