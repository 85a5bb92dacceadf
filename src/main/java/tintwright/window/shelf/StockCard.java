package tintwright.window.shelf;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tintwright.shelf.ItemKind;
import tintwright.shelf.PigmentFamily;
import tintwright.units.UnitSystem;
import tintwright.window.pieces.Controls;

/** A tint put on the shelf by its name and its looks, or what stands there put right. */
final class StockCard {
    private final ShelfModel model;
    private final UnitSystem units;
    private final Runnable done;
    private final VBox sheet = Controls.sheet("");
    private boolean fresh;

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

    /** A name and what it looks like, for another tint. */
    private void fresh() {
        TextField name = field("tint-name");
        name.getStyleClass().add("do-now");
        TextField left = field("tint-left");
        left.setPrefColumnCount(5);
        name.setPromptText("or empty: as it looks");
        Button put = Controls.button("Put it on the shelf", () -> {});
        FamilyPicker family = new FamilyPicker(model.standProperty().get().looks(), () -> Controls.main(put, true));
        Runnable add = () -> {
            if (model.addTint(name.getText(), family.chosen(), left.getText(), units)) {
                // What was chosen, left standing, would silently become the next tint's.
                fresh();
                first().requestFocus();
            }
        };
        VBox named = Controls.asked("A tint: what is it called?", name);
        HBox.setHgrow(named, Priority.ALWAYS);
        put.setOnAction(event -> add.run());
        put.setId("tint-add");
        // With tints on the shelf it is the thing to press only once another is being named.
        boolean first = model.standProperty().get().lines().stream().noneMatch(line -> line.kind() == ItemKind.TINT);
        if (first) {
            Controls.main(put, true);
        } else {
            name.textProperty().addListener((property, before, after) -> {
                Controls.main(put, !after.isBlank() || family.chosen().isPresent());
                sheet.requestLayout();
            });
        }
        show(
                "",
                List.of(Controls.row(named, Controls.asked("Left, if weighed", left)), family, said(), put),
                add,
                name,
                left);
    }

    /** What the families look like is known anew. */
    void redraw() {
        if (fresh
                && sheet.lookup("#tint-name") instanceof TextField name
                && name.getText().isBlank()) {
            boolean focused = name.isFocused();
            fresh();
            if (focused) {
                first().requestFocus();
            }
        }
    }

    /** The fields of what stands on the shelf. */
    void change(String id) {
        ShelfModel.Detail detail = model.detail(id);
        TextField name = field("tint-name");
        name.setText(detail.name());
        TextField left = field("tint-left");
        detail.left().ifPresent(grams -> left.setText(units.mass(grams)));
        left.setPrefColumnCount(5);
        FamilyPicker family = new FamilyPicker(model.standProperty().get().looks(), () -> {});
        family.choose(detail.family().orElse(PigmentFamily.UNKNOWN));
        VBox named = Controls.asked("Name", name);
        HBox.setHgrow(named, Priority.ALWAYS);
        VBox fields = Controls.column(Controls.row(named, Controls.asked("Left, if weighed", left)));
        if (detail.family().isPresent()) {
            fields.getChildren().add(family);
        }
        Runnable keep = () -> {
            PigmentFamily chosen = family.chosen().orElse(PigmentFamily.UNKNOWN);
            if (model.change(id, name.getText(), chosen, left.getText(), units)) {
                settled();
            }
        };
        Node deeds = Controls.flow(
                Controls.mainButton("Keep this", keep), Controls.button("Leave it as it was", this::settled));
        VBox more = new VBox();
        more.getStyleClass().add("column");
        if (!detail.chips().isEmpty()) {
            more.getChildren().add(Controls.wrapped("Its chips", "strong"));
        }
        detail.chips()
                .forEach((chip, words) -> more.getChildren()
                        .add(Controls.flow(Controls.plain(words), Controls.quietButton("Forget this chip", () -> {
                            if (model.forget(chip)) {
                                change(id);
                            }
                        }))));
        if (detail.goes()) {
            more.getChildren()
                    .add(Controls.quietButton(
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
                        Controls.plain("A cup that was set aside."),
                        said(),
                        Controls.flow(
                                Controls.button("Take it off the shelf", () -> {
                                    if (model.takeOff(id)) {
                                        fresh();
                                    }
                                }),
                                Controls.button("Leave it as it was", this::settled))),
                this::settled);
    }

    private void show(String title, List<Node> content, Runnable onEnter, TextField... fields) {
        fresh = title.isEmpty();
        sheet.getChildren().clear();
        if (!fresh) {
            sheet.getChildren().add(Controls.heading(title));
        }
        sheet.getChildren().addAll(content);
        for (TextField field : fields) {
            field.setOnAction(event -> onEnter.run());
        }
    }

    private Node first() {
        return Optional.ofNullable(sheet.lookup("#tint-name")).orElse(sheet);
    }

    private Label said() {
        return Controls.whenSaid(Controls.bound(model.stockProblemProperty(), "caution"));
    }

    private static TextField field(String id) {
        TextField field = new TextField();
        field.setId(id);
        return field;
    }
}
