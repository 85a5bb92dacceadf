package tintwright.reading;

/**
 * One sample of an instrument's file.
 *
 * @param name    what the instrument or the person called it; may be empty
 * @param reading what was measured
 */
public record NamedReading(String name, Reading reading) {}
