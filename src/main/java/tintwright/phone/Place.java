package tintwright.phone;

import java.util.Arrays;
import java.util.Optional;

/** The pages at the foot of the phone. */
enum Place {
    PHOTO("photo", "Photo", 600);

    private final String path;
    private final String words;
    private final int saidSeconds;

    /** @param saidSeconds how long the page goes on saying what came of the last deed done there */
    Place(String path, String words, int saidSeconds) {
        this.path = path;
        this.words = words;
        this.saidSeconds = saidSeconds;
    }

    static Optional<Place> at(String path) {
        return Arrays.stream(values()).filter(place -> place.path.equals(path)).findFirst();
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
