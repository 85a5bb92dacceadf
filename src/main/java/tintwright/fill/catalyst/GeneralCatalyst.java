package tintwright.fill.catalyst;

import tintwright.fill.repair.Published;

/**
 * Catalyst by temperature where nobody entered the product's own table.
 *
 * <p>What is published: 1.8 % by volume at 25 degrees Celsius, and a range of 1.2 to 3 % "depending on temperature". How
 * the share moves with temperature between those ends is common practice, no source: a little more when cold, a little
 * less when hot, so far inside the range that it also holds by mass.
 */
public final class GeneralCatalyst {
    private static final double[] CELSIUS = {10, 15, 20, 25, 30, 35};
    private static final double[] PERCENT = {2.5, 2.3, 2.0, Published.CATALYST_AT_25.low(), 1.6, 1.5};

    private GeneralCatalyst() {}

    /** @return the share by volume at this temperature; beyond the table that of its nearer end */
    public static CatalystShare shareAt(double celsius) {
        double inside = Math.max(CELSIUS[0], Math.min(CELSIUS[CELSIUS.length - 1], celsius));
        int above = 1;
        while (CELSIUS[above] < inside) {
            above++;
        }
        double part = (inside - CELSIUS[above - 1]) / (CELSIUS[above] - CELSIUS[above - 1]);
        return new CatalystShare(PERCENT[above - 1] + (PERCENT[above] - PERCENT[above - 1]) * part, Basis.VOLUME);
    }
}
