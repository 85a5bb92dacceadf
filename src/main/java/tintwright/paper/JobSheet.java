package tintwright.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tintwright.fill.Batch;
import tintwright.fill.Caution;
import tintwright.fill.Conditions;
import tintwright.fill.DayWords;
import tintwright.fill.FillOrder;
import tintwright.fill.FillPlan;
import tintwright.fill.Tools;
import tintwright.fill.WaxDose;
import tintwright.fill.catalyst.CureTimer;
import tintwright.fill.repair.RepairLine;
import tintwright.units.UnitSystem;

/** A fill job as one page for the bench: repairs, recipe, batches, catalyst, times, boxes to tick, cautions. */
public final class JobSheet {
    private JobSheet() {}

    /**
     * How the colour in the cup stands to the hull.
     *
     * @param sentence how far it is apart, and how that is known
     * @param first    what to do before it is used; empty when it is the colour
     */
    public record Colour(String sentence, String first) {}

    /**
     * The page, in the person's units.
     *
     * @param day    the day it is for
     * @param colour empty for a colour nobody has compared to the hull
     */
    public static Sheet of(FillOrder order, FillPlan plan, LocalDate day, UnitSystem units, Optional<Colour> colour) {
        List<Block> blocks = new ArrayList<>();
        Optional<Colour> another = colour.filter(seen -> !seen.first().isEmpty());
        another.ifPresent(seen ->
                blocks.add(new Block.Notice("Not the colour of the hull", List.of(seen.sentence(), seen.first()))));
        blocks.add(new Block.Facts(facts(plan, day, units)));
        if (another.isEmpty()) {
            colour.ifPresent(seen -> blocks.add(new Block.Text(seen.sentence())));
        }
        blocks.add(new Block.Text("Catalyst: " + plan.share().words() + ". Source: " + plan.origin() + "."));
        plan.enough().ifPresent(enough -> blocks.add(new Block.Text(enough.words(units))));
        List<String> before = plan.before(units);
        if (!before.isEmpty()) {
            blocks.add(new Block.Notice("Before you start", before));
        }
        blocks.add(new Block.Heading("Repairs"));
        blocks.add(repairs(plan, units));
        if (!order.recipe().isEmpty()) {
            blocks.add(new Block.Heading(
                    another.isPresent()
                            ? "Recipe of what is in the cup, for this job"
                            : "Recipe of the colour, for this job"));
            blocks.add(recipe(order, plan, units));
        }
        blocks.add(new Block.Heading("Batches, in this order"));
        blocks.add(batches(plan, units));
        blocks.add(new Block.Heading("From \"catalysed now\""));
        blocks.add(new Block.Facts(plan.timers().stream().map(JobSheet::time).toList()));
        blocks.add(new Block.Heading("The day, step by step"));
        blocks.add(new Block.Timeline(DayWords.of(plan, units).stream()
                .map(line -> new Block.Moment(line.when(), line.inOneLine()))
                .toList()));
        blocks.add(new Block.Notice(
                "Take care", plan.cautions().stream().map(Caution::words).toList()));
        return new Sheet(
                title(order),
                order.colour(),
                blocks,
                "Worked out with Tintwright. Times and shares are starting points; the data sheet decides.");
    }

    private static String title(FillOrder order) {
        String where = order.boat() + (order.boat().isBlank() || order.place().isBlank() ? "" : ", ") + order.place();
        return where.isBlank() ? "Fill job" : "Fill job: " + where;
    }

    private static List<Block.Fact> facts(FillPlan plan, LocalDate day, UnitSystem units) {
        Tools tools = plan.job().tools();
        Conditions weather = plan.job().conditions();
        List<Block.Fact> facts = new ArrayList<>();
        facts.add(new Block.Fact("Day", day.toString()));
        facts.add(new Block.Fact("At the hull", weather.words(units)));
        facts.add(new Block.Fact("Working time", plan.time().words()));
        facts.add(new Block.Fact("Coloured gel coat", tools.weighed(plan.gelCoatGrams(), units)));
        facts.add(new Block.Fact("Gel paste", tools.weighed(plan.pasteGrams(), units)));
        if (plan.waxMl() > 0) {
            facts.add(new Block.Fact(
                    "Wax solution in the last coats", units.volume(plan.waxMl()) + ", " + WaxDose.shareWords()));
        }
        plan.job()
                .materials()
                .hidingFilmMm()
                .ifPresent(mm -> facts.add(new Block.Fact("Hides from", hiding(plan, mm, units))));
        return facts;
    }

    /** What the paste does to hiding: every mix of the job with its film. */
    private static String hiding(FillPlan plan, double neatMm, UnitSystem units) {
        List<String> films = new ArrayList<>(List.of(units.film(neatMm) + " neat"));
        plan.amounts().stream()
                .map(amount -> amount.line().mix())
                .distinct()
                .filter(mix -> mix.paste() > 0)
                .forEach(mix -> films.add(units.film(mix.hidingFilmMm(neatMm)) + " at " + mix.ratio()));
        return String.join(", ", films);
    }

    private static Block.Fact time(CureTimer timer) {
        return new Block.Fact(timer.cue(), timer.words() + " (" + timer.test() + ")");
    }

    private static Block repairs(FillPlan plan, UnitSystem units) {
        List<List<String>> rows = new ArrayList<>();
        for (FillPlan.Amount amount : plan.amounts()) {
            RepairLine line = amount.line();
            rows.add(List.of(
                    line.name(),
                    line.count() + " × " + line.repair().kind() + ", "
                            + line.lie().words(),
                    line.repair().sizeWords(units),
                    line.mix().words(),
                    amount.triage().belowMl() > 0 ? units.volume(amount.triage().belowMl()) : "",
                    units.volume(amount.netMl()),
                    units.volume(amount.mixedMl())));
        }
        return new Block.Table(
                List.of(
                        new Block.Column("What", 2.2, false),
                        new Block.Column("Kind", 2.9, false),
                        new Block.Column("Size", 4.5, false),
                        new Block.Column("Gel coat to paste", 2.3, false),
                        new Block.Column("Below it", 1.3, true),
                        new Block.Column("Colour", 1.3, true),
                        new Block.Column("To mix", 1.3, true)),
                rows);
    }

    private static Block recipe(FillOrder order, FillPlan plan, UnitSystem units) {
        double needed = plan.gelCoatGrams();
        List<FillOrder.Ingredient> hundred = order.recipeFor(100);
        List<Block.Fact> facts = new ArrayList<>();
        for (FillOrder.Ingredient part : order.recipeFor(needed)) {
            facts.add(new Block.Fact(
                    part.name(),
                    String.format(
                            Locale.ROOT,
                            "%s (%.2f in 100)",
                            plan.job().tools().weighed(part.grams(), units),
                            hundred.get(facts.size()).grams())));
        }
        return new Block.Facts(facts);
    }

    private static Block batches(FillPlan plan, UnitSystem units) {
        List<List<String>> rows = new ArrayList<>();
        Tools tools = plan.job().tools();
        for (Batch batch : plan.batches()) {
            String use = batch.stage().words() + ": "
                    + String.join(
                            ", ", batch.parts().stream().map(Batch.Part::words).toList());
            rows.add(List.of(
                    "" + batch.number(),
                    use,
                    tools.weighed(batch.gelCoatGrams(), units),
                    batch.pasteGrams() > 0 ? tools.weighed(batch.pasteGrams(), units) : "none",
                    batch.catalyst().words(units),
                    batch.wax().map(wax -> wax.words(tools, units)).orElse(""),
                    String.format(Locale.ROOT, "%.0f min", batch.minutes())));
        }
        return new Block.Table(
                List.of(
                        new Block.Column("No", 0.6, false),
                        new Block.Column("For", 3.2, false),
                        new Block.Column("Gel coat", 1.4, true),
                        new Block.Column("Paste", 1.4, true),
                        new Block.Column("Catalyst", 5.6, false),
                        new Block.Column("Wax solution", 1.7, false),
                        new Block.Column("Takes", 1, true)),
                rows);
    }
}
