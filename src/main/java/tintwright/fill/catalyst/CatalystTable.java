package tintwright.fill.catalyst;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import tintwright.fill.repair.Sizes;

/**
 * A product's own table, as the person copied it from the data sheet. Between two temperatures it is read along the
 * straight line; beyond them it gives the share of its nearer end and the time there, moved by the rule of thumb.
 *
 * @param product what the table belongs to
 * @param rows    all by mass or all by volume, no temperature twice; kept from cold to warm
 */
public record CatalystTable(String product, List<Row> rows) {
    /**
     * @param celsius temperature of hull, gel coat and air
     * @param share   how much catalyst
     * @param time    how long it can be worked
     */
    public record Row(double celsius, CatalystShare share, WorkingTime time) {
        public Row {
            Sizes.between("temperature in a catalyst table", celsius, -10, 60, "°C");
        }
    }

    public CatalystTable {
        if (product.isBlank()) {
            throw new IllegalArgumentException("a catalyst table must name its product, the name was empty");
        }
        List<Row> sorted = new ArrayList<>(rows);
        sorted.sort(Comparator.comparingDouble(Row::celsius));
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i).celsius() == sorted.get(i - 1).celsius()) {
                throw new IllegalArgumentException("the catalyst table of " + product + " has two rows for "
                        + Sizes.plain(sorted.get(i).celsius()) + " °C");
            }
            if (sorted.get(i).share().basis() != sorted.get(0).share().basis()) {
                throw new IllegalArgumentException(
                        "the catalyst table of " + product + " mixes percent by mass with percent by volume");
            }
        }
        rows = List.copyOf(sorted);
    }

    /** @return whether the table itself reaches this temperature */
    public boolean covers(double celsius) {
        return !rows.isEmpty()
                && celsius >= rows.get(0).celsius()
                && celsius <= rows.get(rows.size() - 1).celsius();
    }

    /** @return the temperature of the table's nearer end */
    public double nearest(double celsius) {
        return rows.get(celsius < rows.get(0).celsius() ? 0 : rows.size() - 1).celsius();
    }

    /** The table read at this temperature; it must have a row. */
    public Row at(double celsius) {
        if (!covers(celsius)) {
            Row end = at(nearest(celsius));
            return new Row(celsius, end.share(), GelTimes.moved(end.time(), end.celsius(), celsius));
        }
        int above = 0;
        while (rows.get(above).celsius() < celsius) {
            above++;
        }
        Row high = rows.get(above);
        if (above == 0 || high.celsius() == celsius) {
            return high;
        }
        Row low = rows.get(above - 1);
        double part = (celsius - low.celsius()) / (high.celsius() - low.celsius());
        return new Row(
                celsius,
                new CatalystShare(
                        between(low.share().percent(), high.share().percent(), part),
                        low.share().basis()),
                new WorkingTime(
                        between(low.time().leastMinutes(), high.time().leastMinutes(), part),
                        between(low.time().mostMinutes(), high.time().mostMinutes(), part)));
    }

    private static double between(double low, double high, double part) {
        return low + (high - low) * part;
    }
}
