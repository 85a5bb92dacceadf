package tintwright.window.holes;

import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tintwright.bench.job.FillFacts;
import tintwright.fill.Conditions;
import tintwright.fill.GritLadder;
import tintwright.fill.Materials;
import tintwright.fill.Tools;
import tintwright.fill.catalyst.CatalystMeasure;
import tintwright.units.Entry;
import tintwright.units.UnitSystem;
import tintwright.window.frame.FailureWords;
import tintwright.window.job.JobModel;

/** The weather at the hull and what else is known there, as typed; what cannot be is said and not taken. */
public final class AtTheHullModel {
    private final JobModel job;
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

    /** What is typed beside the list; a blank text says nothing is known. */
    public record Known(
            String baseHides,
            String oldFilm,
            String hull,
            String paste,
            Optional<GritLadder.Surface> surface,
            String dropsPerMl,
            String spoon) {}

    AtTheHullModel(JobModel job) {
        this.job = job;
    }

    /** Takes the weather as typed; a cup or air left blank is as warm as the hull, a blank humidity is unknown. */
    public boolean weather(String hull, String cup, String air, String humidity, UnitSystem units) {
        return FailureWords.tried(problem::set, () -> {
            double celsius = celsius("the temperature", hull, units);
            Conditions typed = new Conditions(
                    celsius,
                    cup.isBlank() ? celsius : celsius("the temperature of the cup", cup, units),
                    air.isBlank() ? celsius : celsius("the temperature of the air", air, units),
                    humidity.isBlank()
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(FillTyped.number("relative humidity", humidity, "0 to 100 %")));
            job.change("weather", before -> before.filling(before.fill().at(typed)));
        });
    }

    /** Hundredths of a degree: finer than any thermometer, and short enough to be read back in a sentence. */
    private static double celsius(String what, String typed, UnitSystem units) {
        return Math.round(Entry.celsius(what, typed, units) * 100) / 100.0;
    }

    /** Takes what else is known, as typed. */
    public boolean know(Known typed, UnitSystem units) {
        return FailureWords.tried(problem::set, () -> {
            Tools now = job.now().fill().facts().tools();
            CatalystMeasure measure = !typed.dropsPerMl().isBlank()
                    ? CatalystMeasure.dropper(
                            FillTyped.number("drops in a millilitre", typed.dropsPerMl(), "a number, such as 24"))
                    : typed.spoon().isBlank()
                            ? now.catalyst()
                            : new CatalystMeasure(
                                    CatalystMeasure.By.SPOON, Entry.ml("what the spoon holds", typed.spoon(), units));
            FillFacts before = job.now().fill().facts();
            FillFacts facts = new FillFacts(
                    film("the film at which the base hides", typed.baseHides(), units),
                    film("the old gel coat", typed.oldFilm(), units),
                    typed.hull().isBlank()
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(Entry.lengthMm("the thickness of the hull", typed.hull(), units)),
                    typed.paste().isBlank()
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(Entry.grams("the gel paste", typed.paste(), units)),
                    typed.surface(),
                    now.with(measure),
                    before.waxedPaste(),
                    before.seal());
            job.change("known", job -> job.filling(job.fill().knowing(facts)));
        });
    }

    /** Says whether the paste holds wax, and what keeps the air from the last coat. */
    void seal(boolean waxedPaste, Materials.Seal by) {
        FillFacts facts = job.now().fill().facts().sealed(waxedPaste, by);
        job.change(before -> before.filling(before.fill().knowing(facts)));
    }

    /** @return what the catalyst is measured with */
    CatalystTool measuredWith() {
        return CatalystTool.of(job.now().fill().facts().tools().catalyst());
    }

    /** A finer measure of the catalyst lets a cup be smaller. */
    boolean measureWith(CatalystTool tool) {
        return tool == measuredWith()
                || FailureWords.tried(problem::set, () -> {
                    Tools now = job.now().fill().facts().tools();
                    FillFacts facts = job.now().fill().facts().with(now.with(tool.measure(OptionalDouble.empty())));
                    job.change(before -> before.filling(before.fill().knowing(facts)));
                });
    }

    private static OptionalDouble film(String what, String typed, UnitSystem units) {
        return typed.isBlank() ? OptionalDouble.empty() : OptionalDouble.of(Entry.filmMm(what, typed, units));
    }

    /** @return what was typed and cannot be */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }
}
