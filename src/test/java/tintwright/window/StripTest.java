package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import javafx.scene.Scene;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import tintwright.window.frame.Shell;

/** The strip keeps its place and size whatever it says. */
class StripTest {
    private static final String SHORT = "Weigh in 0.31 g soot black.";
    private static final String LONG = "Batch 2 of 3 is in the holes. Cover it with film, let it cure, and only then"
            + " catalyse the next: the catalysed cup keeps no longer than nine minutes.";

    private static double height(double share, String sentence, String words) {
        Desk desk = Desks.demo(Clock.systemUTC());
        Scene scene = new Scene(desk.view(), 1280, 800);
        scene.getStylesheets()
                .add(Shell.class.getResource("/tintwright/window/bench.css").toExternalForm());
        desk.shell().setTextShare(share);
        desk.shell().next(sentence, "It is in", () -> {});
        desk.shell().answer("23.0 apart", words, "within 0.4", "nine times in ten");
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        return ((Region) scene.getRoot().lookup(".strip")).getHeight();
    }

    @Test
    void staysAsHighWhateverItSays() {
        Stagehand.onScreen(() -> {
            for (double share : new double[] {0.8, 1, 1.4, 2}) {
                double usual = height(share, SHORT, "Too dark.");
                assertTrue(usual > 40, "there is a strip: " + usual);
                assertEquals(usual, height(share, LONG, "Too dark."), 1.5, "long sentence at " + share);
                assertEquals(
                        usual,
                        height(share, "", "Much too dark, too dirty and a touch blue and green."),
                        1.5,
                        "long words at " + share);
            }
            return null;
        });
    }
}
