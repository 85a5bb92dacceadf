package tintwright.fill;

import java.util.List;
import java.util.Optional;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.catalyst.NotedTime;
import tintwright.fill.repair.Hull;
import tintwright.fill.repair.RepairLine;

/**
 * Everything that is known before the first cup is mixed.
 *
 * @param lines      the repairs, at least one, in the order they will be done; no name twice
 * @param materials  what is filled with
 * @param conditions the weather at the hull
 * @param catalyst   where the share of catalyst comes from
 * @param allowances what is mixed beyond the hole itself
 * @param tools      the person's tools and hand
 * @param supply     what stands on the bench, if the person wants to know whether it is enough
 * @param surface    how the fills (without fills: the sprayed areas) will look before sanding; empty for
 *                   proud fills and orange peel
 * @param hull       what is known of the hull around the repairs
 * @param noted      times this shop noted of earlier cups; may be empty
 */
public record FillJob(
        List<RepairLine> lines,
        Materials materials,
        Conditions conditions,
        CatalystChoice catalyst,
        Allowances allowances,
        Tools tools,
        Optional<Supply> supply,
        Optional<GritLadder.Surface> surface,
        Hull hull,
        List<NotedTime> noted) {
    public FillJob {
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("a fill job needs at least one repair");
        }
        lines = List.copyOf(lines);
        if (lines.stream().map(RepairLine::name).distinct().count() < lines.size()) {
            throw new IllegalArgumentException(
                    "two repairs have the same name; give each its own, such as " + "\"cleat holes, port\"");
        }
        noted = List.copyOf(noted);
    }

    /** The same job with other times noted in this shop. */
    public FillJob with(List<NotedTime> others) {
        return new FillJob(lines, materials, conditions, catalyst, allowances, tools, supply, surface, hull, others);
    }
}
