package tintwright.window.holes;

import java.util.Map;
import tintwright.fill.repair.CountersunkHole;
import tintwright.fill.repair.Gouge;
import tintwright.fill.repair.PlainHole;
import tintwright.fill.repair.Repair;
import tintwright.fill.repair.RepairKind;
import tintwright.fill.repair.ScratchGroove;
import tintwright.fill.repair.SprayArea;
import tintwright.fill.repair.WornArea;

/**
 * A hole that is being measured.
 *
 * @param drawn    as far as it is measured; until then one like it, to show what is measured where
 * @param names    what its sizes are called, by their names in {@link RepairKind}
 * @param sentence what is still to be measured, or how much it takes
 * @param put      puts it on the list, or goes where something is missing
 */
record Measuring(Repair drawn, Map<String, String> names, String sentence, Runnable put) {
    Measuring {
        names = Map.copyOf(names);
    }

    /** @return one of a kind, mm, in sizes that are good to look at */
    static Repair like(RepairKind kind) {
        return switch (kind) {
            case COUNTERSUNK -> new CountersunkHole(5, 10, 2.5, 8, 0);
            case HOLE -> new PlainHole(6, 8, 0);
            case GOUGE -> new Gouge(60, 12, 3);
            case SCRATCH -> new ScratchGroove(200, 2, 0.6);
            case WORN -> new WornArea(200, 120, 0.4);
            case SPRAY -> new SprayArea(300, 200, 0.5);
        };
    }
}
