package tintwright.fill.catalyst;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tintwright.fill.FillJob;
import tintwright.fill.FillPlan;
import tintwright.fill.FillPlanner;
import tintwright.fill.Jobs;
import tintwright.fill.repair.Densities;
import tintwright.units.Units;

/** The shop's own times teach the next plan, and the common rules of the trade come out of the table. */
class GelTimesTest {
    private static NotedTime noted(double celsius, double percent, double gel) {
        return new NotedTime(
                celsius,
                new CatalystShare(percent, Basis.VOLUME),
                OptionalDouble.of(gel),
                OptionalDouble.of(gel * 1.6));
    }

    private static GelTimes after(List<NotedTime> noted) {
        return new GelTimes(noted, Densities.USUAL);
    }

    private static double middle(WorkingTime time) {
        return Math.sqrt(time.leastMinutes() * time.mostMinutes());
    }

    /** Common practice, no source: in the nineties Fahrenheit tape comes off after about 20 minutes, low spots 15 later. */
    @Test
    void inTheNinetiesTapeComesOffInTwentyMinutesAndLowSpotsFollowInFifteen() {
        for (double fahrenheit = 90; fahrenheit <= 99; fahrenheit++) {
            double celsius = Units.celsius(fahrenheit);
            List<CureTimer> timers =
                    FillPlanner.plan(Jobs.at(celsius, OptionalDouble.of(40))).timers();
            CureTimer tape = timers.get(1);
            CureTimer again = timers.get(2);
            assertTrue(tape.fromMinutes() <= 20 && 20 <= tape.toMinutes(), fahrenheit + " F: " + tape.words());
            assertTrue(
                    again.fromMinutes() - tape.fromMinutes() <= 15 && 15 <= again.toMinutes() - tape.toMinutes(),
                    fahrenheit + " F: " + tape.words() + ", " + again.words());
        }
    }

    @Test
    void aNotedTimeDrawsTheNextOneToItAndNarrowsIt() {
        WorkingTime before = after(List.of()).at(25, 1.8);
        WorkingTime once = after(List.of(noted(25, 1.8, 20))).at(25, 1.8);
        WorkingTime often = after(Collections.nCopies(6, noted(25, 1.8, 20))).at(25, 1.8);
        assertTrue(Math.abs(Math.log(middle(once) / 20)) < Math.abs(Math.log(middle(before) / 20)));
        assertEquals(20, middle(often), 1.2);
        assertTrue(often.mostMinutes() / often.leastMinutes() < before.mostMinutes() / before.leastMinutes());
        assertTrue(often.leastMinutes() <= 20 && 20 <= often.mostMinutes());
    }

    @Test
    void whatWasNotedInTheColdIsReadForTheHeatAndForAnotherShare() {
        double known = middle(after(List.of()).at(32, 1.5));
        double slowShop =
                middle(after(Collections.nCopies(4, noted(18, 2.1, 60))).at(32, 1.5));
        double fastShop =
                middle(after(Collections.nCopies(4, noted(18, 2.1, 14))).at(32, 1.5));
        assertTrue(fastShop < known && known < slowShop, fastShop + " " + known + " " + slowShop);
    }

    /** A made-up shop with a level, a slope and a spread of its own: later cups gel within what was said, mostly. */
    @Test
    void laterCupsGelWithinWhatIsSaid() {
        Random random = new Random(5);
        int inside = 0;
        int cups = 0;
        for (int shop = 0; shop < 300; shop++) {
            double level = Math.log(13) + 0.2 * random.nextGaussian();
            double slope = 0.104 + 0.025 * random.nextGaussian();
            List<NotedTime> seen = new ArrayList<>();
            for (int cup = 0; cup < 8; cup++) {
                double celsius = 17 + 18 * random.nextDouble();
                double percent = 1.5 + random.nextDouble();
                double gel = Math.exp(level + slope * (25 - celsius) + 0.1 * random.nextGaussian()) * 1.8 / percent;
                WorkingTime said = after(seen).at(celsius, percent);
                inside += said.leastMinutes() <= gel && gel <= said.mostMinutes() ? 1 : 0;
                cups++;
                seen.add(noted(celsius, percent, gel));
            }
        }
        assertTrue(inside > 0.8 * cups, inside + " of " + cups);
    }

    @Test
    void tapeOffIsLearnedAsAMultipleOfTheGelTime() {
        GelTimes before = after(List.of());
        GelTimes often = after(Collections.nCopies(6, noted(25, 1.8, 13)));
        WorkingTime gel = new WorkingTime(13, 13);
        assertEquals(13 * Math.sqrt(1.2 * 3.5), middle(before.tapeOff(gel)), 1e-6);
        assertEquals(13 * 1.6, middle(often.tapeOff(gel)), 0.4);
    }

    @Test
    void theProductsOwnTableWins() {
        CatalystTable own = new CatalystTable(
                "Quay white",
                List.of(new CatalystTable.Row(22, new CatalystShare(2.2, Basis.MASS), new WorkingTime(19, 25))));
        FillJob job = Jobs.in(Jobs.MILD, new CatalystChoice.Own(own), Jobs.HOLES);
        FillPlan taught = FillPlanner.plan(job.with(Collections.nCopies(9, noted(22, 2, 60))));
        assertEquals(new WorkingTime(19, 25), taught.time());
        FillJob general = Jobs.in(Jobs.MILD, new CatalystChoice.General(), Jobs.HOLES);
        assertTrue(FillPlanner.plan(general.with(List.of(noted(22, 2, 60))))
                .origin()
                .contains("1 noted in this shop"));
    }

    @Test
    void refusesWhatCannotBe() {
        String message = assertThrows(
                        IllegalArgumentException.class,
                        () -> new NotedTime(
                                20, new CatalystShare(2, Basis.VOLUME), OptionalDouble.of(20), OptionalDouble.of(10)))
                .getMessage();
        assertTrue(message.contains("tape comes off after the gel"), message);
    }
}
