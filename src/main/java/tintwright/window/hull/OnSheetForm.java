package tintwright.window.hull;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.window.pieces.Choices;
import tintwright.window.pieces.Controls;

/** Which chips lie in the numbered places of the sheet, by weight: they teach the camera and the tints at once. */
final class OnSheetForm extends VBox {
    private final SheetModel model;
    private final GridPane lines = new GridPane();
    private final ComboBox<String> what = new ComboBox<>();
    private final TextField grams = new TextField();
    private final TextField white = new TextField();
    private final TextField layers = new TextField();
    private final Node tinted;

    OnSheetForm(SheetModel model) {
        this.model = model;
        getStyleClass().add("column");
        lines.getStyleClass().add("table");
        what.setId("on-sheet-what");
        what.setMaxWidth(Double.MAX_VALUE);
        grams.setId("on-sheet-grams");
        white.setId("on-sheet-white");
        layers.setId("on-sheet-tape");
        grams.setOnAction(event -> lay());
        white.setOnAction(event -> lay());
        layers.setOnAction(event -> model.tape(layers.getText()));
        layers.focusedProperty().addListener((property, before, after) -> {
            if (!after) {
                model.tape(layers.getText());
            }
        });
        tinted = Controls.row(Controls.asked("Grams of tint", grams), Controls.asked("in grams of white", white));
        what.setOnAction(event -> Controls.show(tinted, what.getValue() != null && !model.isWhite(what.getValue())));
        // Tints come and go at the shelf: the choice is as it stands whenever it is opened.
        what.setOnShowing(event -> fill());
        fill();
        Button lay = Controls.button("Lay it in the next place", this::lay);
        lay.setId("lay-chip");
        getChildren()
                .addAll(
                        Controls.soft("Chips of your own on the sheet teach camera and tints in the same photo: white,"
                                + " black at three loadings, one of each other tint. Weighed is enough."),
                        lines,
                        Choices.asked("A chip of", what),
                        tinted,
                        lay,
                        Controls.asked("Layers of white plumber's tape", layers));
        Controls.follow(this, model.contentsProperty(), (before, after) -> show(after));
        show(model.contentsProperty().get());
    }

    private void fill() {
        String before = what.getValue();
        Map<String, String> parts = model.parts();
        Choices.fill(what, parts.keySet(), id -> parts.getOrDefault(id, id));
        what.setValue(
                before != null && parts.containsKey(before)
                        ? before
                        : parts.keySet().iterator().next());
    }

    private void lay() {
        if (model.lay(what.getValue(), grams.getText(), white.getText())) {
            grams.clear();
        }
    }

    private void show(SheetContents now) {
        lines.getChildren().clear();
        int row = 0;
        for (SheetContents.Chip chip : now.chips()) {
            Label number = Controls.wrapped(Integer.toString(chip.place()), "strong");
            number.setMinWidth(Region.USE_PREF_SIZE);
            Label name = Controls.plain(chip.name());
            Label weighed = Controls.soft(weighed(chip));
            GridPane.setHgrow(weighed, Priority.ALWAYS);
            Button off = Controls.quietButton("Take off", () -> model.takeOff(chip.place()));
            off.setAccessibleText("Take " + chip.name() + " off place " + chip.place());
            GridPane.setHalignment(off, HPos.RIGHT);
            lines.addRow(row++, number, name, weighed, off);
        }
        Controls.show(lines, !now.chips().isEmpty());
        if (!layers.isFocused()) {
            layers.setText(now.tapeLayers() == 0 ? "" : Integer.toString(now.tapeLayers()));
        }
    }

    /** @return such as "0.25 g in 50 g"; a white alone has no weight to name */
    private static String weighed(SheetContents.Chip chip) {
        if (chip.parts().size() < 2) {
            return "";
        }
        return chip.parts().entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .map(part -> String.format(Locale.ROOT, "%s g", figure(part.getValue())))
                .collect(Collectors.joining(" in "));
    }

    private static String figure(double grams) {
        return grams == Math.rint(grams)
                ? String.format(Locale.ROOT, "%.0f", grams)
                : String.format(Locale.ROOT, "%.2f", grams);
    }
}
