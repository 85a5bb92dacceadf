package tintwright.window;

import java.util.OptionalLong;

/**
 * How long a start took, for docs/performance.md: started with {@code -Dtintwright.timing=$(date +%s%3N)}, the program
 * prints it. The moment is taken outside, because the start the system reports for a process can be a second off.
 */
final class StartTime {
    static final String PROPERTY = "tintwright.timing";

    private StartTime() {}

    /** @return the moment of the start in milliseconds since 1970, if it was given and is one */
    static OptionalLong given() {
        try {
            long began = Long.parseLong(System.getProperty(PROPERTY, ""));
            return began > 0 ? OptionalLong.of(began) : OptionalLong.empty();
        } catch (NumberFormatException e) {
            return OptionalLong.empty();
        }
    }

    /** Prints what has happened by now, and after how long; nothing when no moment was given. */
    static void say(String what) {
        given().ifPresent(began -> System.out.println(what + " after " + (System.currentTimeMillis() - began) + " ms"));
    }
}
