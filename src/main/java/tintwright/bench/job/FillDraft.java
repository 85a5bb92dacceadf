package tintwright.bench.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import tintwright.fill.Allowances;
import tintwright.fill.Conditions;
import tintwright.fill.FillJob;
import tintwright.fill.Materials;
import tintwright.fill.Supply;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.repair.RepairLine;

/**
 * What was typed at the fill so far: the repairs are those of the place in hand, the day and the tools are the shop's.
 *
 * @param lines     repairs in the order they will be done; may be empty
 * @param weather   temperature and humidity at the hull
 * @param catalyst  where the share of catalyst comes from
 * @param facts     what else is known there
 * @param elsewhere what was typed at the boat's other places, by their names; those have no other places of their own
 */
public record FillDraft(
        List<RepairLine> lines,
        Conditions weather,
        CatalystChoice catalyst,
        FillFacts facts,
        Map<String, FillDraft> elsewhere) {
    /** An ordinary day in a shed. */
    public static final FillDraft NONE = new FillDraft(
            List.of(),
            new Conditions(20, OptionalDouble.empty()),
            new CatalystChoice.General(),
            FillFacts.NONE,
            Map.of());

    public FillDraft {
        lines = List.copyOf(lines);
        elsewhere = Map.copyOf(elsewhere);
        elsewhere.forEach((place, draft) -> {
            if (!draft.elsewhere().isEmpty()) {
                throw new IllegalArgumentException("what was typed at " + place + " has no other places of its own");
            }
        });
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
                        job.materials().seal()),
                Map.of());
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

    /** @return these repairs on the day and in the shop of another draft */
    FillDraft inTheShopOf(FillDraft other) {
        return new FillDraft(lines, other.weather, other.catalyst, facts.inTheShopOf(other.facts), elsewhere);
    }

    /**
     * Goes to another place of the same boat: what was typed at this one stays with it and comes back with it, and so
     * does what was left there. What was typed before any place was read goes with the first.
     *
     * @param from the place in hand until now; empty when there was none
     * @param to   the place in hand from now on; empty when there is none
     */
    FillDraft going(Optional<String> from, Optional<String> to) {
        if (from.equals(to) || from.isEmpty() && !lines.isEmpty()) {
            return this;
        }
        Map<String, FillDraft> left = new TreeMap<>(elsewhere);
        FillDraft here = new FillDraft(lines, weather, catalyst, facts, Map.of());
        if (!here.equals(NONE.inTheShopOf(here))) {
            from.ifPresent(place -> left.put(place, here));
        }
        FillDraft there = to.map(left::remove).orElse(NONE).inTheShopOf(this);
        return new FillDraft(there.lines, weather, catalyst, there.facts, left);
    }

    public FillDraft plus(RepairLine line) {
        List<RepairLine> more = new ArrayList<>(lines);
        more.add(line);
        return new FillDraft(more, weather, catalyst, facts, elsewhere);
    }

    public FillDraft without(int index) {
        List<RepairLine> fewer = new ArrayList<>(lines);
        fewer.remove(index);
        return new FillDraft(fewer, weather, catalyst, facts, elsewhere);
    }

    public FillDraft at(Conditions other) {
        return new FillDraft(lines, other, catalyst, facts, elsewhere);
    }

    public FillDraft with(CatalystChoice other) {
        return new FillDraft(lines, weather, other, facts, elsewhere);
    }

    public FillDraft knowing(FillFacts others) {
        return new FillDraft(lines, weather, catalyst, others, elsewhere);
    }
}
