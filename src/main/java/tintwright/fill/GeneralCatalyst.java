package tintwright.fill;

/**
 * Catalyst and working time by temperature where nobody entered the product's own table.
 *
 * <p>What is published: 1.8 % by volume and a gel time of 10 to 17 minutes at 25 degrees Celsius, and a range of
 * 1.2 to 3 % "depending on temperature". How the share moves with temperature between those ends is common practice,
 * no source: a little more when cold, a little less when hot, so far inside the range that it also holds by mass. The
 * working time is the published one stretched by a factor of 2 per 10 degrees at the least and 2 per 5 degrees at the
 * most, and in inverse proportion to the share: common practice, no source, and the range widens the further it is
 * from the published point.
 */
public final class GeneralCatalyst {
    /** Colder or hotter than this no share of catalyst gives a sound cure; common practice, no source. */
    static final double COLDEST = 10;

    static final double HOTTEST = 35;
    private static final double PUBLISHED_AT = 25;
    private static final double[] CELSIUS = {COLDEST, 15, 20, PUBLISHED_AT, 30, HOTTEST};
    private static final double[] PERCENT = {2.5, 2.3, 2.0, Published.CATALYST_AT_25.low(), 1.6, 1.5};

    private GeneralCatalyst() {}

    /** @throws IllegalArgumentException where gel coat does not cure soundly */
    public static void checkCures(double celsius) {
        if (!(celsius >= COLDEST && celsius <= HOTTEST)) {
            throw new IllegalArgumentException("gel coat cures soundly from " + Sizes.plain(COLDEST) + " to "
                    + Sizes.plain(HOTTEST) + " °C, it is " + Sizes.plain(celsius) + " °C; "
                    + (celsius < COLDEST ? "warm the hull and the cup first" : "wait for shade or the evening"));
        }
    }

    /** @return the share by volume at this temperature */
    public static CatalystShare shareAt(double celsius) {
        checkCures(celsius);
        int above = 1;
        while (CELSIUS[above] < celsius) {
            above++;
        }
        double part = (celsius - CELSIUS[above - 1]) / (CELSIUS[above] - CELSIUS[above - 1]);
        return new CatalystShare(PERCENT[above - 1] + (PERCENT[above] - PERCENT[above - 1]) * part, Basis.VOLUME);
    }

    /** @return how long a cup with this share by volume can be worked at this temperature */
    public static WorkingTime timeAt(double celsius, double percentByVolume) {
        checkCures(celsius);
        double colder = PUBLISHED_AT - celsius;
        double slow = Math.pow(2, colder / 10);
        double fast = Math.pow(2, colder / 5);
        double share = Published.CATALYST_AT_25.low() / percentByVolume;
        return new WorkingTime(
                Published.GEL_TIME_AT_25.low() * Math.min(slow, fast) * share,
                Published.GEL_TIME_AT_25.high() * Math.max(slow, fast) * share);
    }
}
