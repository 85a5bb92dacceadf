package tintwright.fill.catalyst;

/** Where the share of catalyst comes from. */
public sealed interface CatalystChoice {
    /** The general table by temperature. */
    record General() implements CatalystChoice {}

    /** The product's own table, copied by the person. */
    record Own(CatalystTable table) implements CatalystChoice {}

    /** Typed by hand; only values inside the limit exist. */
    record Typed(CatalystShare share) implements CatalystChoice {}
}
