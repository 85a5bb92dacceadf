package tintwright.files;

import java.util.ArrayList;
import java.util.List;
import tintwright.fill.Batch;
import tintwright.fill.Caution;
import tintwright.fill.Day;
import tintwright.fill.DayWords;
import tintwright.fill.Enough;
import tintwright.fill.FillPlan;
import tintwright.fill.GritLadder;
import tintwright.fill.catalyst.WorkingTime;
import tintwright.fill.repair.RepairKind;
import tintwright.units.UnitSystem;

/** A fill plan for machines; amounts in grams, millilitres, millimetres and minutes, words in the person's units. */
public final class FillPlanShape {
    private FillPlanShape() {}

    /** @return the plan as a tree of maps, lists, texts and numbers, as {@code docs/formats.md} describes it */
    public static Fields toTree(FillPlan plan, UnitSystem units) {
        List<DayWords.Line> lines = DayWords.of(plan, units);
        List<Fields> steps = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Day.Step step = plan.day().steps().get(i);
            steps.add(Fields.of("sitting", step.sitting())
                    .with("fromMinutes", List.of(step.fromMinutes(), step.toMinutes()))
                    .with("words", lines.get(i).words())
                    .with("why", step.deed().why())
                    .with("source", step.deed().source()));
        }
        return Fields.none()
                .each("repairs", plan.amounts(), amount -> tree(amount, units))
                .with("gelCoatGrams", plan.gelCoatGrams())
                .with("pasteGrams", plan.pasteGrams())
                .with("waxMl", plan.waxMl())
                .with("catalyst", CatalystShape.toTree(plan.share()).with("origin", plan.origin()))
                .with("workingMinutes", minutes(plan.time()))
                .each("batches", plan.batches(), FillPlanShape::tree)
                .with("enough", plan.enough().map(enough -> tree(enough, units)))
                .each("sanding", plan.finish().sandings(), FillPlanShape::tree)
                .with("tapeMm", plan.tapeMm())
                .each("timersFromCatalysed", plan.timers(), ClocksFile::tree)
                .each(
                        "warnings",
                        plan.warnings(),
                        warning -> Fields.of("kind", warning.kind()).with("words", warning.words(units)))
                .with("workForbidden", plan.forbidden())
                .with("steps", steps)
                .each("cautions", plan.cautions(), Caution::words);
    }

    private static Fields tree(FillPlan.Sanding sanding) {
        return Fields.of("what", sanding.what())
                .each("grits", sanding.ladder().steps(), GritLadder.Step::words)
                .with("takesOffMm", List.of(sanding.takesLeastMm(), sanding.takesMostMm()));
    }

    private static Fields tree(FillPlan.Amount amount, UnitSystem units) {
        return Fields.of("name", amount.line().name())
                .with("kind", RepairKind.of(amount.line().repair()).code())
                .with("count", amount.line().count())
                .with("lie", amount.line().lie().words())
                .with("netMl", amount.netMl())
                .with("mixedMl", amount.mixedMl())
                .with("below", amount.triage().below())
                .with("belowMl", amount.triage().belowMl())
                .with("colourMm", amount.triage().colourMm())
                .with("trainedPerson", amount.triage().trained())
                .with("words", amount.triage().words(units));
    }

    private static List<Double> minutes(WorkingTime time) {
        return List.of(time.leastMinutes(), time.mostMinutes());
    }

    private static Fields tree(Batch batch) {
        return Fields.of("number", batch.number())
                .with("stage", batch.stage().words())
                .with("mix", batch.mix().words())
                .each("for", batch.parts(), Batch.Part::words)
                .with("mixMl", batch.mixMl())
                .with("gelCoatGrams", batch.gelCoatGrams())
                .with("gelCoatMl", batch.gelCoatMl())
                .with("pasteGrams", batch.pasteGrams())
                .with("surplusMl", batch.surplusMl())
                .with("minutes", batch.minutes())
                .with("catalyst", CatalystShape.toTree(batch.catalyst()))
                .with(
                        "wax",
                        batch.wax()
                                .map(wax -> Fields.of("ml", wax.ml())
                                        .with("grams", wax.grams())
                                        .with("percentByVolume", wax.percentByVolume())));
    }

    private static Fields tree(Enough enough, UnitSystem units) {
        String verdict = enough instanceof Enough.WithSpare
                ? "with-spare"
                : enough instanceof Enough.WithoutSpare
                        ? "without-spare"
                        : enough instanceof Enough.FromReserve ? "from-reserve" : "too-little";
        return Fields.of("verdict", verdict).with("words", enough.words(units));
    }
}
