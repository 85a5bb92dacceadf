package tintwright.fill;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.repair.CountersunkHole;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Gouge;
import tintwright.fill.repair.Hull;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairLine;
import tintwright.fill.repair.SprayArea;
import tintwright.fill.repair.WornArea;

/** Jobs for tests: one with everything in it, and ways to change one thing. */
public final class Jobs {
    static final Materials UNWAXED = new Materials(new Densities(1.3, 1.1, 1.1, 0.91), false, OptionalDouble.of(0.35));
    public static final Conditions MILD = new Conditions(22, OptionalDouble.of(60));
    public static final RepairLine HOLES =
            new RepairLine("cleat holes", new CountersunkHole(5, 10, 2.5, 8, 3), Lie.FACING_UP, 24);
    static final RepairLine GOUGE = new RepairLine("gouge", new Gouge(60, 12, 3), Lie.VERTICAL, 2);
    static final RepairLine STRIP = new RepairLine("keel strip", new WornArea(1200, 40, 0.6), Lie.OVERHEAD, 1);
    static final RepairLine SPRAY = new RepairLine("scratch to spray", new SprayArea(400, 150, 0.5), Lie.VERTICAL, 1);
    static final List<RepairLine> ALL = List.of(HOLES, GOUGE, STRIP, SPRAY);

    private Jobs() {}

    static FillJob job(
            List<RepairLine> lines,
            Materials materials,
            Conditions conditions,
            CatalystChoice catalyst,
            Allowances allowances,
            Optional<Supply> supply,
            OptionalDouble oldFilm) {
        return new FillJob(
                lines,
                materials,
                conditions,
                catalyst,
                allowances,
                Tools.USUAL,
                supply,
                Optional.empty(),
                new Hull(oldFilm, OptionalDouble.empty()),
                List.of());
    }

    static FillJob of(RepairLine... lines) {
        return job(
                List.of(lines),
                UNWAXED,
                MILD,
                new CatalystChoice.General(),
                Allowances.USUAL,
                Optional.empty(),
                OptionalDouble.of(0.6));
    }

    /** The same job on a hull of which more is known. */
    static FillJob on(Hull hull, RepairLine... lines) {
        FillJob job = of(lines);
        return new FillJob(
                job.lines(),
                job.materials(),
                job.conditions(),
                job.catalyst(),
                job.allowances(),
                job.tools(),
                job.supply(),
                job.surface(),
                hull,
                job.noted());
    }

    /** The same job in other weather. */
    public static FillJob in(Conditions weather, CatalystChoice catalyst, RepairLine... lines) {
        return job(
                List.of(lines), UNWAXED, weather, catalyst, Allowances.USUAL, Optional.empty(), OptionalDouble.of(0.6));
    }

    /** The same job with other tools. */
    static FillJob with(Tools tools, RepairLine... lines) {
        FillJob job = of(lines);
        return new FillJob(
                job.lines(),
                job.materials(),
                job.conditions(),
                job.catalyst(),
                job.allowances(),
                tools,
                job.supply(),
                job.surface(),
                job.hull(),
                job.noted());
    }

    static FillJob all() {
        return of(ALL.toArray(new RepairLine[0]));
    }

    public static FillJob at(double celsius, OptionalDouble humidity) {
        return job(
                ALL,
                UNWAXED,
                new Conditions(celsius, humidity),
                new CatalystChoice.General(),
                Allowances.USUAL,
                Optional.empty(),
                OptionalDouble.of(0.6));
    }

    static FillJob with(Materials materials, CatalystChoice catalyst) {
        return job(ALL, materials, MILD, catalyst, Allowances.USUAL, Optional.empty(), OptionalDouble.of(0.6));
    }

    static FillJob with(Allowances allowances, Supply supply) {
        return job(
                ALL,
                UNWAXED,
                MILD,
                new CatalystChoice.General(),
                allowances,
                Optional.of(supply),
                OptionalDouble.of(0.6));
    }
}
