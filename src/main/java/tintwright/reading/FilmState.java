package tintwright.reading;

/** Whether the film had cured when it was read: the cured film does not look like the wet cup. */
public enum FilmState {
    WET,
    CURED
}
