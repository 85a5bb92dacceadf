package tintwright.logbook.disk;

/**
 * Something in the log folder that is not as it should be. It is named and left alone; everything else is read.
 *
 * @param file the name of the file inside the log folder
 * @param line the line it begins at, counted from 1; 0 when it is the whole file
 * @param kind what sort of trouble
 * @param what one sentence in plain words
 */
public record Trouble(String file, int line, Kind kind, String what) {
    /** The sorts of trouble, from harmless to grave. */
    public enum Kind {
        /** The last line was cut off while it was written: what it said was never reported as saved. */
        TORN,
        /** Not there, or shorter than it was, while the folder is just being changed: look again in a minute. */
        ARRIVING,
        /** Written by a newer Tintwright: it is read as far as it can be, and nothing is added to this log. */
        NEWER,
        /** Two entries carry one name and differ. */
        CLASH,
        /** Lines that were there are not there any more. */
        MISSING,
        /** Bytes are not those that were written. */
        DAMAGED,
        /** The file cannot be opened. */
        UNREADABLE
    }

    /** @return the whole of it on one line, beginning with where it is */
    public String sentence() {
        return (line > 0 ? file + ", line " + line : file) + ": " + what;
    }
}
