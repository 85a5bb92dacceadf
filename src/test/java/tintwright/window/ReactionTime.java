package tintwright.window;

import java.time.Clock;
import java.util.Arrays;

/** How long from a switch to a whole new plan, pictures and all; its figures stand in docs/performance.md. */
public final class ReactionTime {
    private static final int WARM = 60;
    private static final int RUNS = 120;

    private ReactionTime() {}

    public static void main(String[] args) {
        Desk desk = Desks.demo(Clock.systemUTC());
        double[] milliseconds = new double[RUNS];
        for (int i = 0; i < WARM + RUNS; i++) {
            String tint = desk.job().now().shelf().tints().get(i / 2 % 8).id();
            boolean used = i % 2 == 1;
            long start = System.nanoTime();
            desk.plan().use(tint, used);
            if (i >= WARM) {
                milliseconds[i - WARM] = (System.nanoTime() - start) / 1e6;
            }
        }
        Arrays.sort(milliseconds);
        System.out.printf(
                "a tint switched: fastest %.1f ms, median %.1f ms, nine of ten below %.1f ms%n",
                milliseconds[0], milliseconds[RUNS / 2], milliseconds[RUNS * 9 / 10]);
    }
}
