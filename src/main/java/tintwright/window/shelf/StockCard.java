package tintwright.window.shelf;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import tintwright.shelf.PigmentFamily;
import tintwright.units.UnitSystem;
import tintwright.window.pieces.Pieces;

/** A tint put on the shelf in three fields, or what stands there put right. */
final class StockCard {
    private final ShelfModel model;
    private final UnitSystem units;
    private final Runnable done;
    private final VBox sheet = Pieces.sheet("");

    /** @param done called when what was to be changed is settled */
    StockCard(ShelfModel model, UnitSystem units, Runnable done) {
        this.model = model;
        this.units = units;
        this.done = done;
        fresh();
    }

    Node node() {
        return sheet;
    }

    private void settled() {
        fresh();
        done.run();
    }

    /** Three empty fields for another tint. */
    private void fresh() {
        TextField name = field("tint-name");
        TextField left = field("tint-left");
        ComboBox<PigmentFamily> family = pigments(PigmentFamily.UNKNOWN);
        Runnable add = () -> {
            if (model.addTint(name.getText(), family.getValue(), left.getText(), units)) {
                // A pigment left standing would silently become the next tint's.
                fresh();
                first().requestFocus();
            }
        };
        show(
                "Add a tint",
                List.of(
                        Pieces.asked("Name", name),
                        asked(family),
                        Pieces.asked("Left, if weighed", left),
                        said(),
                        Pieces.button("Put it on the shelf", add)),
                add,
                name,
                left);
    }

    /** The fields of what stands on the shelf. */
    void change(String id) {
        ShelfModel.Detail detail = model.detail(id);
        TextField name = field("tint-name");
        name.setText(detail.name());
        TextField left = field("tint-left");
        detail.left().ifPresent(grams -> left.setText(units.mass(grams)));
        ComboBox<PigmentFamily> family = pigments(detail.family().orElse(PigmentFamily.UNKNOWN));
        VBox fields = new VBox(Pieces.asked("Name", name));
        fields.getStyleClass().add("column");
        detail.family().ifPresent(pigment -> fields.getChildren().add(asked(family)));
        fields.getChildren().add(Pieces.asked("Left, if weighed", left));
        Runnable keep = () -> {
            if (model.change(id, name.getText(), family.getValue(), left.getText(), units)) {
                settled();
            }
        };
        Node deeds =
                Pieces.flow(Pieces.mainButton("Keep this", keep), Pieces.button("Leave it as it was", this::settled));
        VBox more = new VBox();
        more.getStyleClass().add("column");
        if (!detail.chips().isEmpty()) {
            more.getChildren().add(Pieces.wrapped("Its chips", "strong"));
        }
        detail.chips()
                .forEach((chip, words) -> more.getChildren()
                        .add(Pieces.flow(Pieces.plain(words), Pieces.quietButton("Forget this chip", () -> {
                            if (model.forget(chip)) {
                                change(id);
                            }
                        }))));
        if (detail.goes()) {
            more.getChildren()
                    .add(Pieces.quietButton(
                            detail.chips().isEmpty() ? "Take it off the shelf" : "Take it off the shelf, its chips too",
                            () -> {
                                if (model.takeOff(id)) {
                                    settled();
                                }
                            }));
        }
        show("Change " + detail.name(), List.of(fields, said(), deeds, more), keep, name, left);
        name.requestFocus();
    }

    /** A leftover can only go. */
    void leftover(String id) {
        String name = model.detail(id).name();
        show(
                name,
                List.of(
                        Pieces.plain("A cup that was set aside."),
                        said(),
                        Pieces.flow(
                                Pieces.button("Take it off the shelf", () -> {
                                    if (model.takeOff(id)) {
                                        fresh();
                                    }
                                }),
                                Pieces.button("Leave it as it was", this::settled))),
                this::settled);
    }

    private void show(String title, List<Node> content, Runnable onEnter, TextField... fields) {
        sheet.getChildren().setAll(Pieces.heading(title));
        sheet.getChildren().addAll(content);
        for (TextField field : fields) {
            field.setOnAction(event -> onEnter.run());
        }
    }

    private Node first() {
        return Optional.ofNullable(sheet.lookup("#tint-name")).orElse(sheet);
    }

    private Label said() {
        return Pieces.whenSaid(Pieces.bound(model.stockProblemProperty(), "caution"));
    }

    private static TextField field(String id) {
        TextField field = new TextField();
        field.setId(id);
        return field;
    }

    private static VBox asked(ComboBox<PigmentFamily> family) {
        Label asked = new Label("Pigment, if the label says");
        asked.getStyleClass().add("question");
        asked.setLabelFor(family);
        VBox pigment = new VBox(asked, family);
        pigment.getStyleClass().add("asked");
        return pigment;
    }

    private static ComboBox<PigmentFamily> pigments(PigmentFamily chosen) {
        ComboBox<PigmentFamily> family = new ComboBox<>();
        family.setId("tint-family");
        family.getItems().setAll(PigmentFamily.values());
        family.getSelectionModel().select(chosen);
        family.setAccessibleText("pigment");
        family.setConverter(new StringConverter<>() {
            @Override
            public String toString(PigmentFamily value) {
                return value == null ? "" : value.words();
            }

            @Override
            public PigmentFamily fromString(String text) {
                throw new UnsupportedOperationException("families are not typed");
            }
        });
        return family;
    }
}
