package tintwright.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tintwright.bench.CupBench;
import tintwright.colour.Ciede2000;
import tintwright.colour.DifferenceWords;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.cup.CupDeeds;
import tintwright.cup.CupEntry;
import tintwright.cup.Deed;
import tintwright.cup.Dose;
import tintwright.cup.Plan;
import tintwright.cup.Way;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.reading.SpectralReading;
import tintwright.shelf.knowledge.Knowledge;

/**
 * The worked example in docs/worked-cup.md: the invented boat, from the first dose to too dark and back. Every
 * number in it is worked out here again; {@code -Dwrite=true} writes the page anew.
 */
class WorkedCupTest {
    private static final Path PAGE = Path.of("docs/worked-cup.md");
    private static final Instant MORNING = Instant.parse("2026-05-31T08:00:00Z");
    private static final Map<String, HiddenPigment> INSIDE = Map.of(
            "plain-white",
            HiddenPigment.WHITE,
            "soot-black",
            HiddenPigment.BLACK,
            "brick-red",
            HiddenPigment.RED_OXIDE,
            "straw-yellow",
            HiddenPigment.YELLOW_OXIDE,
            "ink-blue",
            HiddenPigment.BLUE,
            "bottle-green",
            HiddenPigment.GREEN,
            "bark-brown",
            HiddenPigment.UMBER,
            "lemon-yellow",
            HiddenPigment.ORGANIC_YELLOW,
            "berry-red",
            HiddenPigment.ORGANIC_RED);

    private final StringBuilder page = new StringBuilder();
    private final HiddenBench bench = new HiddenBench(531);
    private int minutes;
    private int written;
    private CupBench cup;

    @Test
    void thePageSaysWhatTheProgramSays() throws Exception {
        cup = CupBench.start(
                Knowledge.of(MeteredShop.shelf()), "bow 1", MeteredShop.places().get(0), 100, 0.01, Optional.empty());
        say("# A cup, from the first dose to too dark and back\n");
        say(
                "Everything here is invented: the boat Tarrowmere, its shelf and what a meter read there. Words in"
                        + " quotes and all numbers are the program's own; `WorkedCupTest` works every one of them out again.\n");
        say("The port bow reads " + lab(cup.hull()) + ". Wanted: 100 g, on a scale that shows 0.01 g.\n");

        say("## White, and white held back\n");
        quote(cup.deeds().lines());
        Plan.Start start = (Plan.Start) cup.plan();
        cup = cup.asPlanned(next());
        say("So " + grams(start.white()) + " goes into the cup and " + grams(start.reserve())
                + " stays in a closed pot: "
                + Math.round(100 * start.reserve() / (start.white() + start.reserve()))
                + " % of all the white. The surface"
                + " of the depth gauge stands at L* " + one(cup.depth().white()) + ", the hull's mark at L* "
                + one(cup.depth().hull()) + ".\n");

        say("## The first doses, and a slip\n");
        quote(cup.deeds().lines());
        Plan.Doses doses = (Plan.Doses) cup.plan();
        Dose black = doses.doses().get(0);
        assertEquals("soot-black", black.part(), "value first");
        double slipped = Math.round(6 * black.grams() * 100) / 100.0;
        say("The lid of the black gives way: " + grams(slipped)
                + " is in before the hand stops. What happened is what is" + " written, then the others as advised.\n");
        cup = done(cup.weigh(next(), black.part(), slipped));
        for (Dose dose : doses.doses().subList(1, doses.doses().size())) {
            cup = done(cup.add(next(), dose.deed()));
        }
        table();
        Reading chip = chip();
        say("A cured chip reads " + lab(chip) + ".\n");
        cup = read(chip);
        say("> " + cup.verdict() + "\n");
        say("The float stands at L* " + one(cup.depth().cup().orElseThrow()) + ", "
                + one(cup.depth().hull() - cup.depth().cup().orElseThrow()) + " below the mark.\n");
        assertTrue(cup.depth().cup().orElseThrow() < cup.depth().hull() - 2, "too dark");

        say("## The ways back\n");
        say(
                "| way | final mass | white | beyond the reserve | expected | nine times in ten |\n|---|---|---|---|---|---|");
        Way.Split chosen = null;
        for (Way way : cup.ways()) {
            say("| " + kind(way) + " | " + grams(way.finalMass()) + " | " + grams(way.white()) + " | "
                    + grams(way.beyondReserve()) + " | " + two(way.after().expected()) + " | "
                    + DifferenceWords.within(way.after().within90()) + " |");
            if (chosen == null && way instanceof Way.Split split && split.beyondReserve() == 0) {
                chosen = split;
            }
        }
        say("");
        assertTrue(chosen != null, "a split within the reserve is offered");
        say("The split that the reserve is enough for:\n");
        quote(cup.wayWords(chosen));
        cup = cup.follow(chosen, next());
        table();

        for (int round = 2; round <= 4; round++) {
            Reading again = chip();
            cup = read(again);
            say("## Chip " + round + "\n");
            say("It reads " + lab(again) + ".\n");
            quote(cup.deeds().lines());
            if (!(cup.plan() instanceof Plan.Doses)) {
                break;
            }
            cup = cup.asPlanned(next());
            table();
        }
        assertTrue(cup.plan() instanceof Plan.Stop, cup.plan().toString());
        double miss = Ciede2000.between(truth(), cup.hull());
        say("## What nobody at the bench can know\n");
        say("The hidden pigments say what is really in range: the cup is " + two(miss)
                + " (CIEDE2000) from the hull as read, at " + grams(cup.state().mass()) + ", with "
                + grams(cup.state().reserve())
                + " of white still in the pot and "
                + grams(cup.state().aside().get(0).parts().total())
                + " of dark mix kept as \"" + cup.state().aside().get(0).name() + "\".\n");
        assertTrue(miss < 1.0, "back in range: " + miss);

        say("## Written down wrongly\n");
        CupEntry slip = cup.cup().standing().get(2);
        CupBench other = cup.correct(slip.id(), black.grams(), next());
        say("Had the slip been a slip of the pen, `cup fix --entry " + slip.id() + " --grams "
                + two(black.grams()) + "` would put it right, and everything after it follows: the cup would then hold "
                + String.format(Locale.ROOT, "%.3f", other.state().grams().get("soot-black"))
                + " g of black instead of "
                + String.format(Locale.ROOT, "%.3f", cup.state().grams().get("soot-black"))
                + " g, and undoing that brings the slip back.");
        assertEquals(cup.state(), other.undo(next()).orElseThrow().state());

        if (Boolean.getBoolean("write")) {
            Files.writeString(PAGE, page);
        }
        assertEquals(Files.readString(PAGE), page.toString());
    }

    private Instant next() {
        return MORNING.plusSeconds(60L * minutes++);
    }

    private static CupBench done(CupBench.Added added) {
        return ((CupBench.Added.Done) added).bench();
    }

    private CupBench read(Reading chip) {
        CupBench.Learned learned = cup.read(next(), chip, Optional.empty());
        return learned instanceof CupBench.Learned.Done
                ? learned.bench()
                : cup.readAnyway(next(), chip, Optional.empty());
    }

    private double[] hidden() {
        Map<HiddenPigment, Double> mix = new EnumMap<>(HiddenPigment.class);
        cup.state().grams().forEach((id, grams) -> mix.put(INSIDE.get(id), grams));
        return HiddenBench.reflectance(mix);
    }

    private Lab truth() {
        return Lab.of(Spectrum.of(Grid.INSIDE, hidden()), Viewing.D65_10);
    }

    /** A chip as the instrument of the invented world reads it. */
    private Reading chip() {
        double[] read = bench.read(hidden(), nm -> 1);
        return new SpectralReading(
                Spectrum.of(Grid.INSIDE, read), HiddenBench.NOISE, Geometry.SPECULAR_INCLUDED, FilmState.CURED);
    }

    private void say(String line) {
        page.append(line).append('\n');
    }

    private void quote(List<String> words) {
        words.forEach(line -> say("> " + line.strip() + "  "));
        say("");
    }

    /** What went in since the last table. */
    private void table() {
        List<CupEntry> standing = cup.cup().standing();
        say("| entry | what was done |\n|---|---|");
        for (CupEntry entry : standing.subList(written, standing.size())) {
            if (!(entry.deed() instanceof Deed.Read)) {
                say("| " + entry.id() + " | " + CupDeeds.words(entry.deed(), cup.shelf()) + " |");
            }
        }
        written = standing.size();
        Map<String, Double> in = new LinkedHashMap<>(cup.state().grams());
        List<String> parts = new ArrayList<>();
        in.forEach((id, grams) -> parts.add(
                String.format(Locale.ROOT, "%.3f g %s", grams, cup.shelf().nameOf(id))));
        say("\nIn the cup: " + String.join(", ", parts) + "; "
                + grams(cup.state().mass()) + " in all, " + grams(cup.state().reserve()) + " of white held back.\n");
    }

    private static String kind(Way way) {
        return way instanceof Way.StopHere
                ? "stop here"
                : way instanceof Way.Climb ? "climb" : way instanceof Way.Split ? "split" : "fresh";
    }

    private static String lab(Reading reading) {
        return lab(reading.colour(Viewing.D65_10).orElseThrow());
    }

    private static String lab(Lab lab) {
        return "L* " + one(lab.lightness()) + ", a* " + one(lab.a()) + ", b* " + one(lab.b());
    }

    private static String grams(double grams) {
        return two(grams) + " g";
    }

    private static String one(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private static String two(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
