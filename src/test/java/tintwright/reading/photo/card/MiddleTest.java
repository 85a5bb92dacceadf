package tintwright.reading.photo.card;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The middle one is the one that sorting would put there, many equal numbers and all. */
class MiddleTest {
    @Test
    void isTheOneThatSortingPutsThere() {
        Random random = new Random(11);
        for (int round = 0; round < 2000; round++) {
            int count = 1 + random.nextInt(60);
            int different = 1 + random.nextInt(40);
            double[] values = new double[count + 3];
            Arrays.fill(values, count, count + 3, -1); // beyond the count: must not be looked at
            for (int i = 0; i < count; i++) {
                values[i] = random.nextInt(different) / 7.0;
            }
            double[] sorted = Arrays.copyOf(values, count);
            Arrays.sort(sorted);
            assertEquals(sorted[count / 2], Middle.of(values, count), "round " + round);
        }
    }
}
