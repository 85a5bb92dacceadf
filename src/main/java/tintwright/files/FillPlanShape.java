package tintwright.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tintwright.fill.Batch;
import tintwright.fill.Caution;
import tintwright.fill.Day;
import tintwright.fill.DayWords;
import tintwright.fill.Enough;
import tintwright.fill.FillPlan;
import tintwright.fill.GritLadder;
import tintwright.fill.Warning;
import tintwright.fill.catalyst.CureTimer;
import tintwright.fill.catalyst.WorkingTime;
import tintwright.fill.repair.RepairKind;
import tintwright.units.UnitSystem;

/** A fill plan for machines; amounts in grams, millilitres, millimetres and minutes, words in the person's units. */
public final class FillPlanShape {
    private FillPlanShape() {}

    /** @return the plan as a tree of maps, lists, texts and numbers, as {@code docs/formats.md} describes it */
    public static Map<String, Object> toTree(FillPlan plan, UnitSystem units) {
        Map<String, Object> tree = new LinkedHashMap<>();
        List<Object> repairs = new ArrayList<>();
        plan.amounts().forEach(amount -> repairs.add(tree(amount, units)));
        tree.put("repairs", repairs);
        tree.put("gelCoatGrams", plan.gelCoatGrams());
        tree.put("pasteGrams", plan.pasteGrams());
        tree.put("waxMl", plan.waxMl());
        Map<String, Object> share = CatalystShape.toTree(plan.share());
        share.put("origin", plan.origin());
        tree.put("catalyst", share);
        tree.put("workingMinutes", minutes(plan.time()));
        List<Object> batches = new ArrayList<>();
        plan.batches().forEach(batch -> batches.add(tree(batch)));
        tree.put("batches", batches);
        plan.enough().ifPresent(enough -> tree.put("enough", tree(enough, units)));
        List<Object> sandings = new ArrayList<>();
        for (FillPlan.Sanding sanding : plan.finish().sandings()) {
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("what", sanding.what());
            entry.put(
                    "grits",
                    sanding.ladder().steps().stream()
                            .map(GritLadder.Step::words)
                            .toList());
            entry.put("takesOffMm", List.of(sanding.takesLeastMm(), sanding.takesMostMm()));
            sandings.add(entry);
        }
        tree.put("sanding", sandings);
        tree.put("tapeMm", plan.tapeMm());
        List<Object> timers = new ArrayList<>();
        for (CureTimer timer : plan.timers()) {
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("cue", timer.cue());
            entry.put("minutes", List.of(timer.fromMinutes(), timer.toMinutes()));
            entry.put("test", timer.test());
            timers.add(entry);
        }
        tree.put("timersFromCatalysed", timers);
        List<Object> warnings = new ArrayList<>();
        for (Warning warning : plan.warnings()) {
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("kind", warning.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            entry.put("words", warning.words(units));
            warnings.add(entry);
        }
        tree.put("warnings", warnings);
        tree.put("workForbidden", plan.forbidden());
        List<Object> steps = new ArrayList<>();
        List<DayWords.Line> lines = DayWords.of(plan, units);
        for (int i = 0; i < lines.size(); i++) {
            Day.Step step = plan.day().steps().get(i);
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("sitting", step.sitting());
            entry.put("fromMinutes", List.of(step.fromMinutes(), step.toMinutes()));
            entry.put("words", lines.get(i).words());
            entry.put("why", step.deed().why());
            entry.put("source", step.deed().source());
            steps.add(entry);
        }
        tree.put("steps", steps);
        tree.put("cautions", plan.cautions().stream().map(Caution::words).toList());
        return tree;
    }

    private static Map<String, Object> tree(FillPlan.Amount amount, UnitSystem units) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", amount.line().name());
        tree.put("kind", RepairKind.of(amount.line().repair()).code());
        tree.put("count", amount.line().count());
        tree.put("lie", amount.line().lie().words());
        tree.put("netMl", amount.netMl());
        tree.put("mixedMl", amount.mixedMl());
        tree.put(
                "below", amount.triage().below().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        tree.put("belowMl", amount.triage().belowMl());
        tree.put("colourMm", amount.triage().colourMm());
        tree.put("trainedPerson", amount.triage().trained());
        amount.triage().words(units).ifPresent(words -> tree.put("words", words));
        return tree;
    }

    private static List<Double> minutes(WorkingTime time) {
        return List.of(time.leastMinutes(), time.mostMinutes());
    }

    private static Map<String, Object> tree(Batch batch) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("number", batch.number());
        tree.put("stage", batch.stage().words());
        tree.put("mix", batch.mix().words());
        tree.put("for", batch.parts().stream().map(Batch.Part::words).toList());
        tree.put("mixMl", batch.mixMl());
        tree.put("gelCoatGrams", batch.gelCoatGrams());
        tree.put("gelCoatMl", batch.gelCoatMl());
        tree.put("pasteGrams", batch.pasteGrams());
        tree.put("surplusMl", batch.surplusMl());
        tree.put("minutes", batch.minutes());
        tree.put("catalyst", CatalystShape.toTree(batch.catalyst()));
        batch.wax().ifPresent(wax -> {
            Map<String, Object> dose = new LinkedHashMap<>();
            dose.put("ml", wax.ml());
            dose.put("grams", wax.grams());
            dose.put("percentByVolume", wax.percentByVolume());
            tree.put("wax", dose);
        });
        return tree;
    }

    private static Map<String, Object> tree(Enough enough, UnitSystem units) {
        Map<String, Object> tree = new LinkedHashMap<>();
        if (enough instanceof Enough.WithSpare) {
            tree.put("verdict", "with-spare");
        } else if (enough instanceof Enough.WithoutSpare) {
            tree.put("verdict", "without-spare");
        } else {
            tree.put("verdict", enough instanceof Enough.FromReserve ? "from-reserve" : "too-little");
        }
        tree.put("words", enough.words(units));
        return tree;
    }
}
