package tintwright.window.picture;

import javafx.geometry.Insets;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.RowConstraints;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tintwright.window.Stagehand;

/** Pictures of the pictures, to be looked at: {@code mvn test -Dwanted.groups=snapshot -Dtest=PictureSnapshots}. */
@Tag("snapshot")
class PictureSnapshots {
    @Test
    void draw() {
        Stagehand.onScreen(() -> {
            Stagehand.snapshot(Stagehand.dressed(board(), 1280, 800, 1, false), "pictures-1280");
            Stagehand.snapshot(Stagehand.dressed(board(), 1920, 1080, 1.2, true), "pictures-1920-dark");
            Stagehand.snapshot(Stagehand.dressed(board(), 2560, 1600, 2, false), "pictures-200");
            for (double[] size : new double[][] {{1024, 560, 1}, {1280, 700, 2}}) {
                Stagehand.snapshot(
                        Stagehand.dressed(crowded(), size[0], size[1], size[2], false),
                        "pictures-crowded-" + (int) size[0]);
            }
            return null;
        });
    }

    /** Crowded states in little room, and the note that says how to look. */
    private static GridPane crowded() {
        java.util.Random random = new java.util.Random(5);
        GridPane grid = new GridPane();
        for (int i = 0; i < 3; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(33.3);
            grid.getColumnConstraints().add(column);
            DepthGauge gauge = new DepthGauge();
            gauge.show(RandomStates.depth(random));
            HueRose rose = new HueRose();
            rose.show(RandomStates.rose(random));
            grid.add(i == 2 ? note() : gauge, i, 0);
            grid.add(rose, i, 1);
        }
        for (int i = 0; i < 2; i++) {
            RowConstraints row = new RowConstraints();
            row.setPercentHeight(50);
            grid.getRowConstraints().add(row);
        }
        return grid;
    }

    private static SplitSwatch note() {
        SplitSwatch swatch = new SplitSwatch();
        swatch.show(Samples.unshowable());
        swatch.openNote(true);
        return swatch;
    }

    private static GridPane board() {
        SplitSwatch plain = new SplitSwatch();
        plain.show(Samples.swatch(false));
        SplitSwatch chip = new SplitSwatch();
        chip.show(Samples.swatch(true));
        SplitSwatch beyond = new SplitSwatch();
        beyond.show(Samples.unshowable());
        DepthGauge light = new DepthGauge();
        light.show(Samples.tooLight());
        DepthGauge dark = new DepthGauge();
        dark.show(Samples.tooDark());
        HueRose rose = new HueRose();
        rose.show(Samples.rose());
        GridPane grid = new GridPane();
        grid.setHgap(12);
        grid.setVgap(12);
        grid.setPadding(new Insets(12));
        grid.addRow(0, plain, light, rose);
        grid.addRow(1, chip, dark, beyond);
        for (int i = 0; i < 3; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(33.3);
            grid.getColumnConstraints().add(column);
        }
        for (int i = 0; i < 2; i++) {
            RowConstraints row = new RowConstraints();
            row.setPercentHeight(50);
            grid.getRowConstraints().add(row);
        }
        return grid;
    }
}
