package tintwright.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import tintwright.cup.CupSight;
import tintwright.cup.Deed;
import tintwright.cup.DosePlanner;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Chip;
import tintwright.shelf.Parts;
import tintwright.shelf.Tint;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.study.HiddenShop;

/**
 * A dose that goes into a cup after a chip of it was read, in a shop with a chip of each tint: all that the window
 * shows of it through the bench, beside the bare computation, one look at the cup and one plan.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class DoseBenchmark {
    private static final Instant AT = Instant.parse("2026-05-04T09:00:00Z");

    private CupBench before;
    private Deed dose;
    private int minutes;

    @Setup
    public void prepare() {
        HiddenShop shop = new HiddenShop(5);
        List<Chip> chips = new ArrayList<>();
        chips.add(shop.chip("base", Parts.of(Map.of("white", 20.0))));
        for (Tint tint : shop.tints()) {
            chips.add(shop.chip(tint.id(), Parts.of(Map.of("white", 20.0, tint.id(), 0.3))));
        }
        PlaceReadings hull = new PlaceReadings("", "side", List.of(shop.read(shop.hull())), "");
        CupBench begun = CupBench.start(Knowledge.of(shop.shelf(chips)), "side 1", hull, 150, 0.01, Optional.empty())
                .asPlanned(AT);
        begun = begun.readAnyway(
                AT.plusSeconds(600),
                shop.read(shop.colour(Parts.of(begun.state().grams()))),
                Optional.empty());
        before = begun;
        dose = new Deed.Weighed(shop.tints().get(0).id(), 0.05, 0.01);
    }

    private Instant next() {
        minutes++;
        return AT.plusSeconds(900 + 60L * minutes);
    }

    @Benchmark
    public Object bareComputation() {
        return DosePlanner.plan(CupSight.of(before.knows(), before.cup().add(next(), dose)));
    }

    @Benchmark
    public void doseAsShown(Blackhole shown) {
        CupBench after = ((CupBench.Added.Done) before.add(next(), dose)).bench();
        shown.consume(after.deeds());
        shown.consume(after.verdict());
        shown.consume(after.depth());
        shown.consume(after.hull());
        shown.consume(after.colour());
        shown.consume(after.outlook());
        shown.consume(after.contradiction());
    }
}
