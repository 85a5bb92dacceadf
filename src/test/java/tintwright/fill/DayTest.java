package tintwright.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.catalyst.CatalystMeasure;
import tintwright.fill.repair.CountersunkHole;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Finding;
import tintwright.fill.repair.Gouge;
import tintwright.fill.repair.Hull;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.PlainHole;
import tintwright.fill.repair.Repair;
import tintwright.fill.repair.RepairLine;
import tintwright.fill.repair.ScratchGroove;
import tintwright.fill.repair.SprayArea;
import tintwright.fill.repair.Triage;
import tintwright.fill.repair.WornArea;

/** No day holds a step that its surface forbids, judged here by rules of their own and not by the table of deeds. */
class DayTest {
    /** How many random plans are looked through in a check; the hundred thousand of a study with -Dplans=100000. */
    private static final int PLANS = Integer.getInteger("plans", 20_000);

    private static final Set<Deed> COATS = EnumSet.of(Deed.COAT, Deed.LAST_COAT);

    private static FillJob job(Random random) {
        List<RepairLine> lines = new ArrayList<>();
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            Set<Finding> found = EnumSet.noneOf(Finding.class);
            for (Finding one : Finding.values()) {
                if (random.nextInt(6) == 0) {
                    found.add(one);
                }
            }
            lines.add(new RepairLine(
                    "line " + i, repair(random), Lie.values()[random.nextInt(4)], 1 + random.nextInt(5), found));
        }
        double celsius = 5 + 40 * random.nextDouble();
        Materials materials = new Materials(
                Densities.USUAL,
                random.nextInt(3) == 0,
                random.nextInt(3) == 0,
                OptionalDouble.of(0.35),
                random.nextBoolean() ? Materials.Seal.WAX : Materials.Seal.FILM);
        CatalystMeasure[] measures = {
            new CatalystMeasure(CatalystMeasure.By.SCALE, random.nextBoolean() ? 0.01 : 0.1),
            new CatalystMeasure(CatalystMeasure.By.SYRINGE, 0.02),
            CatalystMeasure.dropper(13.5 + 20 * random.nextDouble())
        };
        return new FillJob(
                lines,
                materials,
                new Conditions(celsius + 5 * random.nextDouble(), celsius, celsius, OptionalDouble.empty()),
                new CatalystChoice.General(),
                new Allowances(0.15, 0.35, random.nextBoolean() ? 0.1 : 0, 0.2),
                Tools.USUAL.with(measures[random.nextInt(3)]),
                Optional.empty(),
                random.nextBoolean() ? Optional.empty() : Optional.of(GritLadder.Surface.values()[random.nextInt(5)]),
                new Hull(
                        random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(0.4 + random.nextDouble()),
                        random.nextInt(4) == 0 ? OptionalDouble.of(4) : OptionalDouble.empty()),
                List.of());
    }

    private static Repair repair(Random random) {
        double size = 1 + 10 * random.nextDouble();
        return switch (random.nextInt(6)) {
            case 0 -> new CountersunkHole(size, size * 2, 1, 1 + size / 2, 0.5);
            case 1 -> new PlainHole(size, 1 + size / 4, 0);
            case 2 -> new Gouge(size * 4, size, size / 5);
            case 3 -> new ScratchGroove(size * 20, 3, 0.3 + size / 6);
            case 4 -> new WornArea(size * 30, size * 4, 0.5);
            default -> new SprayArea(size * 30, size * 10, 0.2 + random.nextDouble());
        };
    }

    /** @return what is wrong with the order in which one line is worked on; empty when nothing is */
    private static String wrong(List<Day.Step> steps, String line) {
        boolean washed = false;
        boolean primed = false;
        boolean taped = false;
        boolean closed = false;
        boolean hard = false;
        int grit = 0;
        Optional<Stage> coat = Optional.empty();
        for (Day.Step step : steps) {
            if (!step.on().contains(line)) {
                continue;
            }
            boolean sameCoat = step.stage().isPresent() && step.stage().equals(coat);
            switch (step.deed()) {
                case WASH -> washed = true;
                case PRIME -> {
                    if (!washed || coat.isPresent() && !hard) {
                        return "sanded for a coat unwashed or soft";
                    }
                    primed = true;
                    closed = false;
                    hard = false;
                    grit = 0;
                }
                case TAPE -> taped = true;
                case COAT, LAST_COAT -> {
                    if (!primed || hard || closed && !sameCoat) {
                        return "coated unsanded, hard, waxed or filmed";
                    }
                    closed = step.deed() == Deed.LAST_COAT;
                    coat = step.stage();
                }
                case TAPE_OFF -> {
                    if (!taped || hard || coat.isEmpty()) {
                        return "no tape to take off, or cured with it";
                    }
                    taped = false;
                }
                case PRESS_PATTERN -> {
                    if (coat.isEmpty() || hard) {
                        return "pattern into what is not soft";
                    }
                    closed = true;
                }
                case FILM_OVER -> {
                    if (coat.isEmpty() || closed) {
                        return "film over what needs none";
                    }
                    closed = true;
                }
                case CURE -> {
                    if (!closed) {
                        return "left to cure in the air without wax or film";
                    }
                    hard = true;
                }
                case SAND -> {
                    if (!hard || step.grit() <= grit) {
                        return "sanded soft, or coarser than before";
                    }
                    grit = step.grit();
                }
                case POLISH -> {
                    if (grit < 1000) {
                        return "polished over coarse scratches";
                    }
                }
                case STAIN_OUT, OPEN, FLARE, LAMINATE, PUTTY, PLUG -> {
                    if (primed) {
                        return "opened or plugged after it was primed";
                    }
                }
                case CHIP, WIPE_EDGE, CLEAR_UP -> {}
            }
        }
        return grit >= 1000 ? "" : "never finished";
    }

    @Test
    void noPlanHoldsAForbiddenOrder() {
        Random random = new Random(19);
        int coats = 0;
        for (int n = 0; n < PLANS; n++) {
            FillPlan plan = FillPlanner.plan(job(random));
            double from = 0;
            int sitting = 0;
            for (Day.Step step : plan.day().steps()) {
                assertTrue(
                        step.sitting() > sitting || step.sitting() == sitting && step.fromMinutes() >= from,
                        () -> "earlier than the step before: " + step);
                sitting = step.sitting();
                from = step.fromMinutes();
                coats += COATS.contains(step.deed()) ? 1 : 0;
            }
            for (FillPlan.Amount amount : plan.amounts()) {
                if (amount.triage().below() != Triage.Below.MEASURE_AGAIN) {
                    String line = amount.line().name();
                    String wrong = wrong(plan.day().steps(), line);
                    assertEquals(
                            "", wrong, () -> line + " of plan: " + plan.day().steps());
                }
            }
        }
        assertTrue(coats > 2 * PLANS, "coats: " + coats);
    }

    /** Steps thrown into another order are refused, or are an order that the rules allow too. */
    @Test
    void noOtherOrderCanBeMadeEither() {
        Random random = new Random(23);
        int refused = 0;
        int allowed = 0;
        for (int n = 0; n < PLANS / 5; n++) {
            FillPlan plan = FillPlanner.plan(job(random));
            List<Day.Step> steps = new ArrayList<>(plan.day().steps());
            if (steps.size() < 4) {
                continue;
            }
            Day.Step moved = steps.remove(random.nextInt(steps.size()));
            steps.add(random.nextInt(steps.size()), moved);
            if (random.nextBoolean()) {
                steps.remove(random.nextInt(steps.size()));
            }
            try {
                new Day(steps);
            } catch (IllegalArgumentException e) {
                assertTrue(e.getMessage().contains("needs a surface that is"), e.getMessage());
                refused++;
                continue;
            }
            allowed++;
            for (FillPlan.Amount amount : plan.amounts()) {
                // What the surface does not know (tape, washing, being finished) the planner sees to.
                String wrong = wrong(steps, amount.line().name());
                assertTrue(
                        wrong.isEmpty()
                                || wrong.startsWith("never")
                                || wrong.startsWith("no tape")
                                || wrong.startsWith("sanded for a coat unwashed"),
                        () -> wrong + ": " + steps.stream().map(Day.Step::deed).toList());
            }
        }
        assertTrue(refused > 0.03 * PLANS && allowed > 0.01 * PLANS, refused + " refused, " + allowed + " allowed");
    }

    @Test
    void everyRefusalSaysWhatTheSurfaceIsAndWhatItShouldBe() {
        Day.Step early = new Day.Step(Deed.SAND, List.of("gouge"), Optional.empty(), 0, 400, 0, 0, 0);
        assertEquals(
                "\"Sand\" needs a surface that is cured or sanded to P1000, gouge is bare",
                assertThrows(IllegalArgumentException.class, () -> new Day(List.of(early)))
                        .getMessage());
    }

    @Test
    void timesAreShownAsRangesNoFinerThanTheyAreKnown() {
        assertEquals("now", when(0, 0));
        assertEquals("+40 min", when(40, 40));
        assertEquals("+45 to 70 min", when(46, 66));
        assertEquals("+5 to 28 h", when(301, 1650));
    }

    private static String when(double from, double to) {
        return new Day.Step(Deed.WASH, List.of(), Optional.empty(), 0, 0, 0, from, to).when();
    }

    @Test
    void theTableNamesEverySurfaceOnce() {
        // Each kind of surface is needed by some deed and left by some other, but the bare one nobody makes.
        for (Skin.Kind kind : Skin.Kind.values()) {
            Skin skin = new Skin(kind, kind == Skin.Kind.SANDED ? 400 : 0);
            assertTrue(
                    Arrays.stream(Deed.values())
                                    .filter(deed -> deed.on(skin, 1000).isPresent())
                                    .count()
                            > 2,
                    skin.words());
        }
    }
}
