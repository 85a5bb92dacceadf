package tintwright.study;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How often ranges held that were stated for nine times in ten. A study fails when that leaves 80 to 97 % by more than
 * chance does in so many cases; it prints its table first.
 */
public final class Held {
    private static final double LEAST = 0.80;
    private static final double MOST = 0.97;
    /** Standard errors that one in twenty goes beyond, on one side. */
    private static final double CHANCE = 1.645;

    private final String name;
    private int cases;
    private int held;

    /** @param name of what was stated, for the sentence of a failure */
    public Held(String name) {
        this.name = name;
    }

    public void add(boolean inRange) {
        cases++;
        held += inRange ? 1 : 0;
    }

    /** @return 0 to 100 */
    public double percent() {
        return 100.0 * held / cases;
    }

    private boolean isHonest() {
        double share = held / (double) cases;
        return share >= LEAST - CHANCE * Math.sqrt(LEAST * (1 - LEAST) / cases)
                && share <= MOST + CHANCE * Math.sqrt(MOST * (1 - MOST) / cases);
    }

    /** @throws AssertionError with all that left the range */
    public static void mustBeHonest(List<Held> all) {
        List<String> wrong = new ArrayList<>();
        for (Held one : all) {
            if (!one.isHonest()) {
                wrong.add(String.format(
                        Locale.ROOT,
                        "%s: the stated 90 %% held %d of %d times (%.0f %%)",
                        one.name,
                        one.held,
                        one.cases,
                        one.percent()));
            }
        }
        if (!wrong.isEmpty()) {
            fail("ranges outside 80 to 97 %: " + String.join("; ", wrong));
        }
    }
}
