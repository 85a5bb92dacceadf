package tintwright.window.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import tintwright.window.picture.Patches;
import tintwright.window.pieces.AskForFile;
import tintwright.window.pieces.Choices;
import tintwright.window.pieces.Controls;
import tintwright.window.pieces.MeterFields;
import tintwright.window.pieces.MeterSetting;

/** A chip in three boxes, drawn as it is typed, and the colour it cured to. */
final class ChipCard {
    private final ChipModel model;
    private final ComboBox<String> part = new ComboBox<>();
    private final TextField grams = field("chip-grams");
    private final TextField white = field("chip-white");
    private final MeterFields meter = new MeterFields("chip-lightness", "chip-a", "chip-b", this::add);
    private final VBox metered;
    private final Patches drawn = new Patches();
    private final Label strength = Controls.whenSaid(Controls.soft(""));
    private final HBox weighed;
    private final VBox sheet;

    ChipCard(ChipModel model, ObservableValue<ShelfModel.Advice> next) {
        this.model = model;
        part.setId("chip-part");
        refill();
        part.valueProperty().addListener((property, before, after) -> {
            model.forgetPhoto();
            show();
        });
        for (TextField each : List.of(grams, white)) {
            each.textProperty().addListener((property, before, after) -> show());
            each.setOnAction(event -> add());
            each.setPrefColumnCount(4);
        }
        meter.onTyped(this::show);
        Controls.follow(part, model.photoProperty(), (before, after) -> show());
        weighed = Controls.row(Controls.asked("Tint, g", grams), Controls.asked("White, g", white));
        Label set = Controls.soft(MeterSetting.USUAL);
        set.setTooltip(new Tooltip(MeterSetting.USUAL_CODES));
        metered = new VBox(meter, set);
        metered.getStyleClass().add("asked");
        Controls.show(metered, false);
        drawn.getStyleClass().add("low");
        Button photo = Controls.button("From a photo", this::choose);
        photo.setId("chip-photo");
        Button numbers = Controls.button("A meter says", () -> {
            Controls.show(metered, !metered.isVisible());
            if (metered.isVisible()) {
                meter.first().requestFocus();
            }
        });
        numbers.setId("chip-meter");
        Button learn = Controls.mainButton("Learn from it", this::add);
        learn.setId("chip-learn");
        sheet = Controls.sheet(
                "",
                Controls.bound(next.map(ShelfModel.Advice::words), "plain"),
                Controls.row(Choices.asked("A chip of", part), weighed),
                drawn,
                strength,
                Controls.wrapped("Spread thick on card and cured, what is its colour?", "question"),
                Controls.flow(photo, numbers),
                Controls.whenSaid(Controls.bound(model.photoWordsProperty(), "good")),
                metered,
                Controls.soft("For the photo lay the printed sheet on the chip, so that it fills the window, in the "
                        + "shade."),
                Controls.whenSaid(Controls.bound(model.problemProperty(), "caution")),
                learn);
        Controls.follow(sheet, next, (before, after) -> after.chip().ifPresent(this::offer));
        next.getValue().chip().ifPresent(this::offer);
        show();
    }

    /** What is advised stands in the boxes as long as nobody has typed anything else. */
    private void offer(ShelfModel.Proposed proposed) {
        ChipModel.Typed typed = typed();
        if (typed.grams().isBlank() && typed.white().isBlank() && !typed.metered()) {
            begin(proposed);
        }
    }

    private static TextField field(String id) {
        TextField field = new TextField();
        field.setId(id);
        return field;
    }

    Node node() {
        return sheet;
    }

    /** The shelf is another: so are the tints a chip can be of. */
    void refill() {
        String chosen = part.getValue();
        Choices.fill(
                part,
                model.parts().keySet(),
                id -> Optional.ofNullable(model.parts().get(id)).orElse(""));
        part.setValue(
                model.parts().containsKey(chosen)
                        ? chosen
                        : model.parts().keySet().iterator().next());
    }

    /** Takes over what is proposed and leaves the rest to be filled in. */
    void begin(ShelfModel.Proposed proposed) {
        refill();
        part.setValue(proposed.part());
        grams.setText(proposed.grams());
        white.setText(proposed.white());
        meter.clear();
        show();
    }

    private ChipModel.Typed typed() {
        return new ChipModel.Typed(
                part.getValue(), grams.getText(), white.getText(), meter.lightness(), meter.a(), meter.b());
    }

    private void show() {
        if (weighed == null || part.getValue() == null) {
            return;
        }
        Controls.show(weighed, !model.isWhite(part.getValue()));
        ChipModel.Sight sight = model.look(typed());
        List<Patches.Patch> patches = new ArrayList<>();
        sight.expected().ifPresent(shade -> patches.add(new Patches.Patch(shade, "expected", true)));
        sight.read().ifPresent(shade -> patches.add(new Patches.Patch(shade, "as it cured", true)));
        drawn.show(
                patches,
                patches.isEmpty()
                        ? ""
                        : "The chip: "
                                + String.join(
                                        ", beside it ",
                                        patches.stream()
                                                .map(Patches.Patch::name)
                                                .toList()));
        Controls.show(drawn, !patches.isEmpty());
        strength.setText(sight.words());
    }

    private void choose() {
        AskForFile.toRead(sheet, "A photo of the chip", model::fromPhoto);
    }

    private void add() {
        if (model.add(typed())) {
            grams.clear();
            white.clear();
            meter.clear();
            Controls.show(metered, false);
            show();
        }
    }
}
