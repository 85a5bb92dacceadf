package tintwright.window.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import org.junit.jupiter.api.Test;
import tintwright.window.Stagehand;

/** What each picture says and where it puts things. */
class PictureTest {
    private static final double RIGHT_TO_A_PIXEL = 1;

    private static Scene laidOut(Picture picture, double textShare) {
        Scene scene = Stagehand.dressed(new GridPane(), 700 * textShare, 480 * textShare, textShare, false);
        ((GridPane) scene.getRoot()).add(picture, 0, 0);
        picture.setMinSize(700 * textShare, 480 * textShare);
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        return scene;
    }

    @Test
    void theTwoFieldsTouch() {
        Stagehand.onScreen(() -> {
            SplitSwatch swatch = new SplitSwatch();
            swatch.show(Samples.swatch(false));
            laidOut(swatch, 1);
            Rectangle hull = (Rectangle) swatch.getChildrenUnmodifiable().get(0);
            Rectangle mix = (Rectangle) swatch.getChildrenUnmodifiable().get(1);
            assertEquals(hull.getX() + hull.getWidth(), mix.getX(), 0, "no gap between hull and mix");
            assertEquals(hull.getX(), Math.rint(hull.getX()), 0, "the edge stands on a whole pixel");
            assertTrue(hull.getWidth() > 300 && hull.getHeight() > 150, "the fields are large");
            return null;
        });
    }

    @Test
    void theHullStandsBetweenMixAndChip() {
        Stagehand.onScreen(() -> {
            SplitSwatch swatch = new SplitSwatch();
            swatch.show(Samples.swatch(true));
            laidOut(swatch, 1);
            Rectangle hull = (Rectangle) swatch.getChildrenUnmodifiable().get(0);
            Rectangle mix = (Rectangle) swatch.getChildrenUnmodifiable().get(1);
            Rectangle chip = swatch.getChildrenUnmodifiable().stream().skip(2).filter(Rectangle.class::isInstance)
                    .map(Rectangle.class::cast).findFirst().orElseThrow();
            assertEquals(chip.getX() + chip.getWidth(), hull.getX(), 0);
            assertEquals(hull.getX() + hull.getWidth(), mix.getX(), 0);
            return null;
        });
    }

    @Test
    void anArrowKeyChangesTheLight() {
        Stagehand.onScreen(() -> {
            SplitSwatch swatch = new SplitSwatch();
            swatch.show(Samples.swatch(false));
            laidOut(swatch, 1);
            swatch.fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.RIGHT, false, false, false, false));
            assertEquals(1, swatch.chosenLight());
            assertTrue(swatch.getAccessibleText().contains("under Lamp:"), swatch.getAccessibleText());
            Color field = (Color) ((Rectangle) swatch.getChildrenUnmodifiable().get(0)).getFill();
            assertEquals(Picture.paint(Samples.shade(62.5, -2, 12)), field);
            return null;
        });
    }

    @Test
    void aColourTheScreenCannotShowIsMarked() {
        Stagehand.onScreen(() -> {
            SplitSwatch swatch = new SplitSwatch();
            swatch.show(Samples.unshowable());
            laidOut(swatch, 1);
            assertTrue(swatch.getAccessibleText().contains("Outside what this screen can show"));
            swatch.show(Samples.swatch(false));
            assertFalse(swatch.getAccessibleText().contains("Outside"), "and only then");
            return null;
        });
    }

    @Test
    void darkerLiesDeeperAndTheFloatStandsAtItsLightness() {
        Stagehand.onScreen(() -> {
            DepthGauge gauge = new DepthGauge();
            gauge.show(Samples.tooLight());
            laidOut(gauge, 1);
            double hull = middle(gauge, "Hull 62.1");
            double cup = middle(gauge, "Cup 78.4 \u00b1 1.6");
            double white = middle(gauge, "White 95");
            assertTrue(white < cup && cup < hull, white + " " + cup + " " + hull);
            gauge.show(Samples.tooDark());
            laidOut(gauge, 1);
            assertTrue(middle(gauge, "Cup 58.3 \u00b1 0.8") > middle(gauge, "Hull 62.1"));
            assertTrue(gauge.getAccessibleText().contains("3.8 darker"), gauge.getAccessibleText());
            assertTrue(gauge.getAccessibleText().contains("38 g white"), gauge.getAccessibleText());
            return null;
        });
    }

    @Test
    void doseLabelsKeepApart() {
        Stagehand.onScreen(() -> {
            for (double share : new double[] {1, 2}) {
                DepthGauge gauge = new DepthGauge();
                gauge.show(Samples.tooLight());
                laidOut(gauge, share);
                assertTrue(middle(gauge, "3  0.84 g yellow") - middle(gauge, "2  0.11 g black") >= 15 * share, "at " + share);
            }
            return null;
        });
    }

    @Test
    void theRoseSaysWhichWayToSwing() {
        Stagehand.onScreen(() -> {
            HueRose rose = new HueRose();
            rose.show(Samples.rose());
            laidOut(rose, 1);
            String words = rose.getAccessibleText();
            assertTrue(words.contains("must swing 2.4 greener and 7.0 yellower"), words);
            assertTrue(words.contains("blue pulls bluer."), words);
            assertTrue(words.contains("red oxide pulls redder and yellower."), words);
            assertTrue(middle(rose, "Hull") < middle(rose, "Cup"), "yellower is up");
            return null;
        });
    }

    @Test
    void labelsAreMovedApartAsLittleAsNeeded() {
        double[] middles = {10, 11, 40};
        double[] heights = {4, 4, 6};
        assertTrue(Room.stack(middles, heights, 1, 0, 100));
        assertEquals(10, middles[0], 0);
        assertEquals(15, middles[1], 0);
        assertEquals(40, middles[2], 0);
        double[] low = {98, 99};
        assertTrue(Room.stack(low, new double[] {4, 4}, 1, 0, 100));
        assertEquals(98, low[1], 0, "whole above the lower edge");
        assertEquals(93, low[0], 0);
        assertFalse(Room.stack(new double[] {5, 5, 5}, new double[] {4, 4, 4}, 1, 0, 13), "13 is too little for 14");
        assertTrue(Room.stack(new double[] {5, 5, 5}, new double[] {4, 4, 4}, 1, 0, 14));
    }

    private static double middle(Picture picture, String words) {
        for (Node node : picture.getChildrenUnmodifiable()) {
            if (node instanceof Label label && label.getText().equals(words)) {
                return label.getLayoutY() + label.getHeight() / 2;
            }
        }
        throw new AssertionError("nothing says \"" + words + "\"");
    }
}
