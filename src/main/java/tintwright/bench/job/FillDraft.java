package tintwright.bench.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tintwright.fill.Allowances;
import tintwright.fill.Conditions;
import tintwright.fill.FillJob;
import tintwright.fill.Materials;
import tintwright.fill.Supply;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.repair.RepairLine;

/**
 * What was typed at the fill so far.
 *
 * @param lines    repairs in the order they will be done; may be empty
 * @param weather  temperature and humidity at the hull
 * @param catalyst where the share of catalyst comes from
 * @param facts    what else is known there
 */
public record FillDraft(List<RepairLine> lines, Conditions weather, CatalystChoice catalyst, FillFacts facts) {
    /** An ordinary day in a shed. */
    public static final FillDraft NONE = new FillDraft(
            List.of(), new Conditions(20, OptionalDouble.empty()), new CatalystChoice.General(), FillFacts.NONE);

    public FillDraft {
        lines = List.copyOf(lines);
    }

    /** @return what was typed for a job that was kept; {@code baseHides} mm stands beside the job, not in it */
    public static FillDraft of(FillJob job, OptionalDouble baseHides) {
        return new FillDraft(
                job.lines(),
                job.conditions(),
                job.catalyst(),
                new FillFacts(
                        baseHides,
                        job.hull().gelCoatMm(),
                        job.hull().thicknessMm(),
                        job.supply().map(supply -> supply.paste()).orElse(OptionalDouble.empty()),
                        job.surface(),
                        job.tools(),
                        job.materials().waxedPaste(),
                        job.materials().seal()));
    }

    /**
     * @param materials densities and hiding of what is in the cup; wax of the paste and the seal are the draft's own
     * @param cup       grams of colour that stand there, and grams of white held back
     * @throws IllegalArgumentException when nothing is on the list
     */
    FillJob job(Materials materials, double cup, double reserve) {
        return new FillJob(
                lines,
                new Materials(
                        materials.densities(),
                        materials.waxed(),
                        facts.waxedPaste(),
                        materials.hidingFilmMm(),
                        facts.seal()),
                weather,
                catalyst,
                Allowances.USUAL,
                facts.tools(),
                Optional.of(new Supply(cup, reserve, facts.paste())),
                facts.surface(),
                facts.hull(),
                List.of());
    }

    /** @return the day and the shop as they are, for another boat: nothing of the last one comes along */
    FillDraft forAnotherBoat() {
        return new FillDraft(List.of(), weather, catalyst, facts.ofTheShop());
    }

    public FillDraft plus(RepairLine line) {
        List<RepairLine> more = new ArrayList<>(lines);
        more.add(line);
        return new FillDraft(more, weather, catalyst, facts);
    }

    public FillDraft without(int index) {
        List<RepairLine> fewer = new ArrayList<>(lines);
        fewer.remove(index);
        return new FillDraft(fewer, weather, catalyst, facts);
    }

    public FillDraft at(Conditions other) {
        return new FillDraft(lines, other, catalyst, facts);
    }

    public FillDraft with(CatalystChoice other) {
        return new FillDraft(lines, weather, other, facts);
    }

    public FillDraft knowing(FillFacts others) {
        return new FillDraft(lines, weather, catalyst, others);
    }
}
