package tintwright.fill.repair;

import tintwright.units.Units;

/**
 * Published figures the fill is worked out from, each with the kind of source that states it. Full references stand in
 * {@code docs/sources.md}.
 *
 * @param low    lower end; the same as {@code high} where the source gives one figure
 * @param high   upper end
 * @param unit   unit of both
 * @param source what kind of publisher states it, and how surely
 */
public record Published(double low, double high, String unit, String source) {
    /** Peroxide catalyst, the range that must never be left; the source does not say by mass or by volume. */
    public static final Published CATALYST_RANGE =
            new Published(1.2, 3, "%", "fibreglass supplier's technical page, basis not stated");
    /** Peroxide catalyst at 25 degrees Celsius (77 F). */
    public static final Published CATALYST_AT_25 =
            new Published(1.8, 1.8, "% by volume", "gel coat manufacturer's application page");
    /** Gel time at 25 degrees Celsius (77 F) with 1.8 % catalyst. */
    public static final Published GEL_TIME_AT_25 = new Published(10, 17, "min", "fibreglass supplier's technical page");
    /** Temperature of mould, gel coat and air: 60 to 80 F. */
    public static final Published WORKING_CELSIUS =
            new Published(Units.celsius(60), Units.celsius(80), "°C", "fibreglass supplier's technical page");
    /** The best of that range: 70 to 75 F. */
    public static final Published BEST_CELSIUS =
            new Published(Units.celsius(70), Units.celsius(75), "°C", "fibreglass supplier's technical page");
    /** The thinnest film a standard gel coat cures in: 12 mil. */
    public static final Published LEAST_FILM_MM =
            new Published(12 * Units.MM_PER_MIL, 12 * Units.MM_PER_MIL, "mm", "fibreglass supplier's technical page");
    /** Wet film of one spray pass in a repair: 8 to 12 mil. */
    public static final Published SPRAY_PASS_MM =
            new Published(8 * Units.MM_PER_MIL, 12 * Units.MM_PER_MIL, "mm", "trade association magazine");
    /** Usual thickness of a boat's gel coat: 15 to 35 mil. */
    public static final Published USUAL_FILM_MM =
            new Published(15 * Units.MM_PER_MIL, 35 * Units.MM_PER_MIL, "mm", "trade association magazine");
    /** Gel coat as an independent guide has it: 0.5 mm, about 500 g to the square metre. */
    public static final Published GUIDE_FILM_MM = new Published(0.5, 0.5, "mm", "independent composites guide");
    /** What is sanded and polished off a sprayed film until its orange peel is gone: 5 to 10 mil. */
    public static final Published SPRAY_SANDED_MM = new Published(
            5 * Units.MM_PER_MIL, 10 * Units.MM_PER_MIL, "mm", "gel coat makers' repair guides, from memory");
    /** Cured film against the wet one: the resin shrinks by about 7 % and styrene leaves. */
    public static final Published CURED_OF_WET =
            new Published(0.8, 0.9, "of the wet film", "gel coat makers' guides, from memory");
    /** Hull above the dew point, degrees: below it moisture settles. */
    public static final Published ABOVE_DEW_POINT =
            new Published(3, 3, "°C", "coating practice after ISO 8502-4, from memory");
    /** Wax solution in the last coat: 2 to 4 US fluid ounces per US gallon. */
    public static final Published WAX_RANGE = new Published(
            2 / 1.28,
            4 / 1.28,
            "% by volume",
            "chemical distributor's page; its upper end also gel coat manufacturer's application page");
    /** Styrene to thin for the gun; never acetone. */
    public static final Published STYRENE_RANGE = new Published(5, 8, "% by volume", "gel coat retailer's guide");

    public Published {
        if (!(low <= high)) {
            throw new IllegalArgumentException(
                    "a published range must not end below its start, was " + low + " to " + high);
        }
    }

    /** @return halfway between the ends */
    public double middle() {
        return (low + high) / 2;
    }

    /** @return true when the value lies in the range, ends included */
    public boolean holds(double value) {
        return value >= low && value <= high;
    }
}
