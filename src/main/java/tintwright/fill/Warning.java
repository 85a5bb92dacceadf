package tintwright.fill;

import tintwright.fill.catalyst.CatalystShare;
import tintwright.fill.catalyst.WorkingTime;
import tintwright.fill.repair.Published;
import tintwright.fill.repair.Sizes;
import tintwright.units.UnitSystem;

/**
 * Something the person must know before the catalyst goes in.
 *
 * @param kind  what it is about
 * @param where the line, batch or product it is about; may be empty
 * @param value what was found, in the program's metric units
 * @param limit what it is held against, in the same units
 */
public record Warning(Kind kind, String where, double value, double limit) {
    /** What a warning is about. */
    public enum Kind {
        /** Colder than the published working range. */
        TOO_COLD,
        /** The hull is no safe way above the dew point. */
        CONDENSATION,
        /** The cup is warmer than the published working range. */
        HOT_CUP,
        /** The hull is warmer than the published working range. */
        HOT_HULL,
        /** The product has no table. */
        NO_TABLE,
        /** The product's table does not reach this temperature. */
        OUTSIDE_TABLE,
        /** Damp enough to spoil the cure. */
        TOO_HUMID,
        /** Nobody said how humid it is. */
        HUMIDITY_UNKNOWN,
        /** The working time leaves less than a minute or so for spreading. */
        SHORT_TIME,
        /** One piece takes longer than the working time. */
        PIECE_TOO_LONG,
        /** The batch stands deep in its cup and will heat up. */
        DEEP_CUP,
        /** A deep fill overhead in the ordinary stiff mix. */
        DEEP_OVERHEAD,
        /** The film there will not hide what is below. */
        SHOWS_THROUGH,
        /** Nobody knows what film hides. */
        HIDING_UNKNOWN,
        /** Thinner than gel coat cures in. */
        FILM_TOO_THIN,
        /** Thicker than gel coat usually is. */
        FILM_TOO_THICK,
        /** More was mixed than is needed, so that the catalyst can be measured. */
        TOPPED_UP,
        /** The share leaves the limit when it is taken on the other basis. */
        OTHER_BASIS,
        /** Waxed gel coat does not bond to itself unsanded. */
        WAX_BETWEEN_COATS,
        /** The gel paste on the shelf is too little. */
        TOO_LITTLE_PASTE,
        /** The ladder leaves little of the old gel coat. */
        OLD_FILM_THIN,
        /** Nobody measured the old gel coat. */
        OLD_FILM_UNKNOWN;

        /** @return whether nothing may be filled until it has changed */
        public boolean forbids() {
            return this == TOO_COLD || this == CONDENSATION;
        }
    }

    /** @return the warning in plain words, with what to do */
    public String words(UnitSystem units) {
        return switch (kind) {
            case TOO_COLD ->
                "Not today: the " + where + " is at " + units.temperature(value) + ", gel coat cures soundly from "
                        + units.temperature(limit) + " (" + Published.WORKING_CELSIUS.source()
                        + "). Warm hull, cup and air to that and keep them there; the times below are for then.";
            case CONDENSATION ->
                "Not today: the hull is at " + units.temperature(value) + ", moisture settles on it below "
                        + units.temperature(limit) + " (a safe way above the dew point, "
                        + Published.ABOVE_DEW_POINT.source() + "). Warm the hull to that, or dry the air.";
            case HOT_CUP ->
                "The cup is at " + units.temperature(value) + ", best is up to " + units.temperature(limit)
                        + ": stand gel coat and cup in cold water, pour it out in a thin tray, mix small batches.";
            case HOT_HULL ->
                "The hull is at " + units.temperature(value) + ", best is up to " + units.temperature(limit)
                        + ": work in the shade or the evening; the film gels soon after it is on.";
            case NO_TABLE -> where + " has no table of its own here: general figures stand in; look in its data sheet.";
            case OUTSIDE_TABLE ->
                "The table of " + where + " ends at " + units.temperature(limit) + ", it is "
                        + units.temperature(value)
                        + ": its last line stands in, moved by the rule of thumb; look in its "
                        + "data sheet.";
            case TOO_HUMID ->
                "Too humid: " + Sizes.plain(value) + " %, best below " + Sizes.plain(limit)
                        + " %. Damp spoils bond and gloss; wait, or dry and warm the place.";
            case HUMIDITY_UNKNOWN ->
                "Humidity was not entered: never on a damp surface; best below " + Sizes.plain(limit) + " %.";
            case SHORT_TIME ->
                "The cup may gel in " + WorkingTime.minutes(value, value).replaceFirst("to .* ", "")
                        + ": have everything taped and at hand before the catalyst goes in.";
            case PIECE_TOO_LONG ->
                where + " takes about " + Sizes.plain(Math.rint(value)) + " min, the working time " + "leaves "
                        + Sizes.plain(Math.rint(limit)) + ": work with a second pair of hands or when cooler.";
            case DEEP_CUP ->
                where + " stands " + units.length(value) + " deep in the cup and will heat up; pour it "
                        + "out flat, no deeper than " + units.length(limit) + ".";
            case DEEP_OVERHEAD ->
                where + ": " + units.length(value) + " deep overhead; enter it as deep overhead "
                        + "for a stiffer mix.";
            case SHOWS_THROUGH ->
                where + ": " + units.film(value) + " of it may show what is below, it hides from "
                        + units.film(limit) + "; "
                        + (value > 0
                                ? "leave a fill low and finish with neat gel coat, spray " + "more."
                                : "spray more.");
            case HIDING_UNKNOWN ->
                "The film that hides is not known: draw the cup down over black and white and "
                        + "look before you fill.";
            case FILM_TOO_THIN ->
                where + ": a film of " + units.film(value) + " is thinner than gel coat cures in, " + units.film(limit)
                        + " (12 mil).";
            case FILM_TOO_THICK ->
                where + ": a film of " + units.film(value) + " is thicker than gel coat usually " + "is, "
                        + units.film(limit) + "; it may sag, wrinkle or crack.";
            case TOPPED_UP ->
                where + ": raised by " + units.volume(value) + " in all, so that the catalyst can be "
                        + "measured: five steps of your tool at the least, or one too many is more than a fifth.";
            case OTHER_BASIS ->
                "Taken on the other basis (by mass against by volume) this catalyst lies outside "
                        + CatalystShare.limitWords() + ": look in the data sheet which is meant; "
                        + CatalystShare.CAUTION + ".";
            case WAX_BETWEEN_COATS ->
                "Gel coat or paste holds wax: each coat cures, is sanded and wiped before the next.";
            case TOO_LITTLE_PASTE ->
                "Gel paste: " + units.mass(limit) + " are needed, " + units.mass(value) + " are there.";
            case OLD_FILM_THIN ->
                "After the grit ladder about " + units.film(value) + " of the old gel coat would "
                        + "be left, less than " + units.film(limit) + ": tape close to the repair, start finer, stop "
                        + "early.";
            case OLD_FILM_UNKNOWN ->
                "The old gel coat was not measured: look at the edge of a hole; the ladder may "
                        + "take up to " + units.film(value) + ", usual is " + units.film(Published.USUAL_FILM_MM.low())
                        + " to " + units.film(limit) + ".";
        };
    }
}
