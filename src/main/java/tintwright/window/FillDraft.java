package tintwright.window;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import tintwright.fill.RepairLine;

/**
 * The list of repairs as typed so far, and the weather at the hull.
 *
 * @param lines    repairs in the order they will be done; may be empty
 * @param celsius  the coldest of hull, gel coat and air
 * @param humidity relative humidity in percent; empty when not known
 * @param paste    grams of gel paste on the shelf; empty when nobody looked
 */
record FillDraft(List<RepairLine> lines, double celsius, OptionalDouble humidity, OptionalDouble paste) {
    /** An ordinary day in a shed. */
    static final FillDraft NONE = new FillDraft(List.of(), 20, OptionalDouble.empty(), OptionalDouble.empty());

    FillDraft {
        lines = List.copyOf(lines);
    }

    FillDraft plus(RepairLine line) {
        List<RepairLine> more = new ArrayList<>(lines);
        more.add(line);
        return new FillDraft(more, celsius, humidity, paste);
    }

    FillDraft without(int index) {
        List<RepairLine> fewer = new ArrayList<>(lines);
        fewer.remove(index);
        return new FillDraft(fewer, celsius, humidity, paste);
    }

    FillDraft at(double otherCelsius, OptionalDouble otherHumidity) {
        return new FillDraft(lines, otherCelsius, otherHumidity, paste);
    }
}
