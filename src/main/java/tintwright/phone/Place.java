package tintwright.phone;

import java.util.Arrays;
import java.util.Optional;

/** The pages of the phone. */
enum Place {
    PHOTO("photo", "Photo", 600, true),
    DOSE("dose", "Dose", 60, true),
    /** Behind the dose: the cup went too dark. */
    DARK("dark", "Too dark", 60, false),
    /** Behind the dose: what the eye sees of a dab. */
    EYE("eye", "What you see", 60, false),
    DAY("day", "Day", 60, true),
    /** The log of the boat in hand. */
    LOG("log", "Log", 60, true),
    /** Behind the log: what is in one of its cups. */
    RECIPE("recipe", "Recipe", 60, false);

    private final String path;
    private final String words;
    private final int saidSeconds;
    private final boolean atTheFoot;

    /**
     * @param saidSeconds how long the page goes on saying what came of the last deed done there
     * @param atTheFoot   whether every page leads to it
     */
    Place(String path, String words, int saidSeconds, boolean atTheFoot) {
        this.path = path;
        this.words = words;
        this.saidSeconds = saidSeconds;
        this.atTheFoot = atTheFoot;
    }

    static Optional<Place> at(String path) {
        return Arrays.stream(values()).filter(place -> place.path.equals(path)).findFirst();
    }

    boolean atTheFoot() {
        return atTheFoot;
    }

    int saidSeconds() {
        return saidSeconds;
    }

    String path() {
        return path;
    }

    String words() {
        return words;
    }
}
