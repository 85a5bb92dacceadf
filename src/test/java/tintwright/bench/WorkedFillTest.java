package tintwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tintwright.files.Demo;
import tintwright.fill.Batch;
import tintwright.fill.FillPlan;
import tintwright.units.UnitSystem;

/** The worked job in docs/worked-fill.md, recomputed. */
class WorkedFillTest {
    private static String page;
    private static FillPlan plan;

    @BeforeAll
    static void readThePage() throws Exception {
        page = Files.readString(Path.of("docs/worked-fill.md"));
        plan = fill().plan();
    }

    private static PlanFill fill() {
        return PlanFill.of(Demo.fillOrder(), Optional.empty(), LocalDate.of(2026, 5, 3));
    }

    private static double printed(String repair) {
        Matcher row =
                Pattern.compile("\\| " + repair + " \\| .* \\| ([0-9.]+) \\|").matcher(page);
        assertTrue(row.find(), "no row for " + repair);
        return Double.parseDouble(row.group(1));
    }

    /** Half of the last printed digit. */
    private static final double PRINTED = 0.0005;

    @Test
    void theVolumesByHandAreTheProgramsAndAreRight() {
        double[] byHand = {
            8 * (Math.PI / 12 * 3 * (12 * 12 + 12 * 6 + 6 * 6) + Math.PI / 4 * 36 * 2) / 1000,
            2 * Math.PI / 4 * 60 * 12 * (0.55 - 0.55 * 0.55 * 0.55 / 27) / 1000,
            450 * 3 * (0.55 - 0.55 * 0.55 / 3) / 1000,
            700 * 40 * 0.8 / 1000,
            200 * 150 * (0.40 + 0.254) / 0.85 / 1000
        };
        assertEquals(byHand.length, plan.amounts().size());
        for (int i = 0; i < byHand.length; i++) {
            FillPlan.Amount amount = plan.amounts().get(i);
            assertEquals(byHand[i], amount.netMl(), 1e-9, amount.line().name());
            assertEquals(
                    byHand[i],
                    printed(amount.line().name()),
                    PRINTED,
                    amount.line().name());
        }
    }

    private static void says(String format, double value) {
        String words = String.format(Locale.ROOT, format, value);
        assertTrue(page.contains(words), "the page does not say " + words);
    }

    @Test
    void theArithmeticOfThePageIsThePlans() {
        says("× 1.10 / 0.85. Of a sprayed cup 35 %% is lost: / %.2f", 0.65);
        says("takes 22.400 · 1.10 / 0.85 = %.3f ml", plan.amounts().get(3).mixedMl());
        says("%.3f ml first", 22.4 / 0.85);
        says("%.3f ml for the low spots", 2.24 / 0.85);
        Batch cup = plan.batches().get(1);
        double gouges = plan.amounts().get(1).netMl();
        double scratch = plan.amounts().get(2).netMl();
        assertEquals((gouges + scratch + 22.4) / 0.85, cup.mixMl(), 1e-6);
        says("/ 0.85 = %.3f ml, half of it", cup.mixMl());
        says("1.3 g/ml = %.3f g", cup.gelCoatGrams());
        says("0.7 g/ml = %.3f g", cup.pasteGrams());
        says("ml · 2 %% = %.3f ml", cup.catalyst().ml());
        says("· 1.1 = %.3f g", cup.catalyst().grams());
        says("on the scale %.2f g", cup.catalyst().said().orElseThrow());
        double middle = Math.sqrt(10 * 17) * Math.pow(2, 2.0 / 3) * 0.9;
        double spread = Math.hypot(Math.log(1.7) / 2, Math.log(2) / 6);
        assertEquals(middle * Math.exp(-spread), plan.time().leastMinutes(), 1e-9);
        says("0.9 = %.2f min", middle);
        says("in the logarithm: %.2f to", plan.time().leastMinutes());
        says("to %.2f min.", plan.time().mostMinutes());
        assertTrue(plan.batches().stream()
                .allMatch(batch -> batch.surplusMl() == 0 && batch.mixMl() >= 0.05 / 1.1 / 0.02));
    }

    @Test
    void theSheetOnThePageIsTheProgramsWordByWord() {
        List<String> lines = fill().lines(UnitSystem.METRIC);
        String sheet = page.substring(page.indexOf("```\nFill job") + 4, page.lastIndexOf("```"));
        assertEquals(String.join("\n", lines) + "\n", sheet);
    }
}
