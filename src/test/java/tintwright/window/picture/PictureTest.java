package tintwright.window.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;
import org.junit.jupiter.api.Test;
import tintwright.colour.JudgedLight;
import tintwright.window.Stagehand;

/** What each picture says and where it puts things. */
class PictureTest {
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
            Rectangle chip = swatch.getChildrenUnmodifiable().stream()
                    .skip(2)
                    .filter(Rectangle.class::isInstance)
                    .map(Rectangle.class::cast)
                    .findFirst()
                    .orElseThrow();
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
            assertEquals(JudgedLight.LAMP, swatch.chosenLight());
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
    void howToLookIsOneKeyAway() {
        Stagehand.onScreen(() -> {
            SplitSwatch swatch = new SplitSwatch();
            swatch.show(Samples.swatch(false));
            laidOut(swatch, 1);
            Button look = (Button) swatch.lookup(".note-key");
            assertTrue(look.isFocusTraversable(), "reached with the keyboard");
            Label note = (Label) swatch.lookup(".picture-note");
            assertFalse(note.isVisible());
            look.fire();
            laidOut(swatch, 1);
            assertTrue(note.isVisible()
                    && note.getText().contains("daylight")
                    && note.getText().contains("edge to edge"));
            assertTrue(
                    note.getLayoutY() >= 0 && note.getLayoutY() + note.getHeight() <= swatch.getHeight(),
                    "the whole note is in the picture");
            assertFalse(look.getBoundsInParent().intersects(note.getBoundsInParent()), "and can be closed again");
            look.fire();
            assertFalse(note.isVisible());
            return null;
        });
    }

    @Test
    void onlyTheFieldTheScreenCannotShowIsMarked() {
        Stagehand.onScreen(() -> {
            SplitSwatch swatch = new SplitSwatch();
            swatch.show(new SwatchState(
                    "Hull",
                    "Mix",
                    "",
                    "Hull and mix",
                    Map.of(
                            JudgedLight.DAYLIGHT,
                            new SwatchState.UnderLight(
                                    Samples.shade(60, -90, 10),
                                    Samples.shade(60, 1, 10),
                                    Optional.empty(),
                                    20,
                                    "much too dirty",
                                    OptionalDouble.empty()))));
            laidOut(swatch, 1);
            Rectangle hull = (Rectangle) swatch.getChildrenUnmodifiable().get(0);
            assertEquals(1, swatch.lookupAll(".unshown-words").size());
            assertTrue(swatch.lookup(".unshown-words").getBoundsInParent().getMaxX() <= hull.getX() + hull.getWidth());
            return null;
        });
    }

    @Test
    void dosesThatLiftTheCupGoUp() {
        Stagehand.onScreen(() -> {
            DepthGauge gauge = new DepthGauge();
            gauge.show(new DepthState(
                    94.6,
                    62.1,
                    Samples.HULL,
                    55,
                    Samples.CUP,
                    "Cup",
                    0.5,
                    55,
                    List.of(new DepthState.Step("38 g white", 64), new DepthState.Step("0.21 g black", 62.2)),
                    Optional.empty()));
            laidOut(gauge, 1);
            String words = gauge.getAccessibleText();
            assertTrue(words.contains("Then 38 g white, up to 64.0. Then 0.21 g black, down to 62.2."), words);
            assertTrue(tip(sign(gauge)) > base(sign(gauge)), "the way ends going down");
            gauge.show(Samples.tooDark());
            laidOut(gauge, 1);
            assertTrue(tip(sign(gauge)) < base(sign(gauge)), "white points up");
            return null;
        });
    }

    private static Polygon sign(DepthGauge gauge) {
        return gauge.getChildrenUnmodifiable().stream()
                .filter(node -> node.getStyleClass().contains("sign"))
                .map(Polygon.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static double tip(Polygon sign) {
        return sign.getPoints().get(5);
    }

    private static double base(Polygon sign) {
        return sign.getPoints().get(1);
    }

    @Test
    void theRoseTellsThePlanAndTheReach() {
        Stagehand.onScreen(() -> {
            HueRose rose = new HueRose();
            rose.show(Samples.rose());
            assertTrue(
                    rose.getAccessibleText().contains("green, in the plan, pulls greener."), rose.getAccessibleText());
            assertTrue(rose.getAccessibleText().contains("The hull lies inside the reach of today's tints."));
            RoseState state = Samples.rose();
            rose.show(new RoseState(
                    new RoseState.Point(30, 30),
                    state.hullShade(),
                    state.cup(),
                    state.cupShade(),
                    "Cup",
                    0,
                    state.pulls(),
                    state.reach()));
            assertTrue(rose.getAccessibleText().contains("The hull lies outside the reach of today's tints."));
            laidOut(rose, 1);
            middle(rose, "the hull lies outside the reach");
            return null;
        });
    }

    @Test
    void darkerLiesDeeperAndTheFloatStandsAtItsLightness() {
        Stagehand.onScreen(() -> {
            DepthGauge gauge = new DepthGauge();
            gauge.show(Samples.tooLight());
            laidOut(gauge, 1);
            double hull = middle(gauge, "hull");
            double cup = middle(gauge, "cup");
            double white = middle(gauge, "white");
            assertTrue(white < cup && cup < hull, white + " " + cup + " " + hull);
            gauge.show(Samples.tooDark());
            laidOut(gauge, 1);
            assertTrue(middle(gauge, "cup") > middle(gauge, "hull"));
            assertTrue(gauge.getAccessibleText().contains("3.8 darker"), gauge.getAccessibleText());
            assertTrue(gauge.getAccessibleText().contains("38 g white"), gauge.getAccessibleText());
            return null;
        });
    }

    @Test
    void theCupSinksToWhereItLiesAndStandsThereAtOnceWhenNothingIsToMove() {
        DepthGauge gauge = Stagehand.onScreen(() -> {
            DepthGauge made = new DepthGauge();
            made.show(Samples.tooLight(), true);
            laidOut(made, 1);
            double before = middle(made, "cup");
            made.show(Samples.tooDark(), true);
            laidOut(made, 1);
            double begun = middle(made, "cup");
            made.show(Samples.tooLight(), false);
            laidOut(made, 1);
            assertEquals(before, middle(made, "cup"), 0.01, "it stands there at once");
            made.show(Samples.tooDark(), false);
            laidOut(made, 1);
            assertTrue(middle(made, "cup") > begun + 1, "it had not sunk yet when its way began");
            made.show(Samples.tooLight(), false);
            made.show(Samples.tooDark(), true);
            return made;
        });
        double goal = Stagehand.onScreen(() -> {
            DepthGauge still = new DepthGauge();
            still.show(Samples.tooDark());
            laidOut(still, 1);
            return middle(still, "cup");
        });
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            while (Math.abs(Stagehand.onScreen(() -> {
                                laidOut(gauge, 1);
                                return middle(gauge, "cup");
                            })
                            - goal)
                    > 0.01) {
                Thread.sleep(20);
            }
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
            assertTrue(middle(rose, "hull") < middle(rose, "cup"), "yellower is up");
            return null;
        });
    }

    @Test
    void labelsAreMovedApartAsLittleAsNeeded() {
        double[] middles = {10, 11, 40};
        assertTrue(HueRose.stack(middles, 5, 2, 98));
        assertEquals(10, middles[0], 0);
        assertEquals(15, middles[1], 0);
        assertEquals(40, middles[2], 0);
        double[] low = {98, 99};
        assertTrue(HueRose.stack(low, 5, 2, 98));
        assertEquals(98, low[1], 0, "whole above the lower edge");
        assertEquals(93, low[0], 0);
        assertFalse(HueRose.stack(new double[] {5, 5, 5}, 5, 0, 9), "9 is too little for 10");
        assertTrue(HueRose.stack(new double[] {5, 5, 5}, 5, 0, 10));
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
