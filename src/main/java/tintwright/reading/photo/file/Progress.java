package tintwright.reading.photo.file;

/** Watches the decoding of a photo and may end it. Called on the decoding thread, many times. */
public interface Progress {
    /** Neither shown nor ended. */
    Progress NONE = new Progress() {
        @Override
        public void at(double part) {
            // Nobody watches.
        }

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    /** @param part how much is decoded, 0 to 1 */
    void at(double part);

    /** @return true to end the decoding; it then ends with a {@link PhotoException} that says so */
    boolean cancelled();
}
