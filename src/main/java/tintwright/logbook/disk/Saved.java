package tintwright.logbook.disk;

import java.nio.file.Path;
import java.util.Optional;

/** What became of an entry that was handed over to be written. */
public sealed interface Saved {
    /** @return the entry, with the name it has from now on */
    Entry entry();

    /** It is in the log folder, forced to the disk. */
    record OnDisk(Entry entry) implements Saved {}

    /**
     * The log folder did not take it. It counts in this window and is offered to the folder again with every next
     * entry.
     *
     * @param why    one or two sentences: what happened, what to do
     * @param keptIn where it lies on this machine's own disk until then; empty if it is in this window only
     */
    record Waiting(Entry entry, String why, Optional<Path> keptIn) implements Saved {
        /** @return what happened, what still stands, what to do */
        public String sentence() {
            return why
                    + (keptIn.isPresent()
                            ? " What you entered is kept in " + keptIn.get()
                                    + " and goes into the log as soon as it can."
                            : " What you entered is kept in this window only: do not close it before the log can be written.");
        }
    }
}
