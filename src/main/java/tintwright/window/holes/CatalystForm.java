package tintwright.window.holes;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tintwright.fill.catalyst.Basis;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.catalyst.CatalystTable;
import tintwright.units.UnitSystem;
import tintwright.window.pieces.Choices;
import tintwright.window.pieces.Controls;

/** Where the catalyst's share comes from; limit, basis and caution stand beside wherever one is typed. */
final class CatalystForm {
    private enum From {
        GENERAL("a general table by temperature"),
        OWN("the product's own table"),
        TYPED("a share of my own");

        private final String words;

        From(String words) {
            this.words = words;
        }
    }

    private final CatalystModel model;
    private final UnitSystem units;
    private final ComboBox<From> from = new ComboBox<>();
    private final ComboBox<Basis> basis = new ComboBox<>();
    private final VBox details = new VBox();
    private final TextField share = field("catalyst-share");
    private final TextField product = field("catalyst-product");
    private final TextField celsius = field("catalyst-celsius");
    private final TextField least = field("catalyst-least");
    private final TextField most = field("catalyst-most");

    CatalystForm(CatalystModel model, UnitSystem units) {
        this.model = model;
        this.units = units;
    }

    private static TextField field(String id) {
        TextField field = new TextField();
        field.setId(id);
        field.setPrefColumnCount(5);
        return field;
    }

    Node build() {
        details.getStyleClass().add("column");
        Choices.fill(from, List.of(From.values()), one -> one.words);
        Choices.fill(basis, List.of(Basis.values()), Basis::words);
        from.setId("catalyst-from");
        basis.setId("catalyst-basis");
        basis.setValue(Basis.MASS);
        show(model.choice());
        from.valueProperty().addListener((property, before, after) -> choose(after));
        Controls.follow(details, model.job().jobProperty(), (before, after) -> {
            if (!before.fill().catalyst().equals(after.fill().catalyst())) {
                show(after.fill().catalyst());
            }
        });
        // The figures with limit and caution stand at each batch; here they are said only where one is typed.
        Label first = Controls.onlyWhen(
                from.valueProperty().map(chosen -> chosen == From.GENERAL),
                Controls.soft("The product's data sheet comes first: where there is one, take its table."));
        return Controls.sheet(
                "Catalyst",
                Choices.asked("How much comes from", from),
                details,
                Controls.whenSaid(Controls.bound(model.problemProperty(), "caution")),
                first,
                Controls.onlyWhen(
                        from.valueProperty().map(chosen -> chosen != From.GENERAL),
                        Controls.wrapped(CatalystModel.ALWAYS, "caution")));
    }

    private void show(CatalystChoice choice) {
        if (choice instanceof CatalystChoice.Typed typed) {
            share.setText(typed.share().entry());
            basis.setValue(typed.share().basis());
        } else if (choice instanceof CatalystChoice.Own own) {
            basis.setValue(own.table().rows().get(0).share().basis());
            product.setText(own.table().product());
        }
        From now = choice instanceof CatalystChoice.Typed
                ? From.TYPED
                : choice instanceof CatalystChoice.Own ? From.OWN : From.GENERAL;
        from.setValue(now);
        ask(now);
    }

    private void choose(From chosen) {
        switch (chosen) {
            case GENERAL -> model.general();
            case OWN -> model.own();
            case TYPED -> model.byHand();
        }
        ask(chosen);
    }

    /** Until something is entered, what was chosen before goes on holding, and that is said. */
    private void ask(From chosen) {
        details.getChildren().clear();
        if (chosen == From.TYPED) {
            share.setOnAction(event -> model.share(share.getText(), basis.getValue()));
            details.getChildren()
                    .setAll(
                            fields(Controls.asked("Catalyst, %", share), Choices.asked("a share", basis)),
                            Controls.button("Use this share", () -> model.share(share.getText(), basis.getValue())));
        } else if (chosen == From.OWN) {
            Optional<CatalystTable> table = model.table();
            table.ifPresent(there -> details.getChildren().add(rows(there)));
            most.setOnAction(event -> addRow());
            String degrees = units == UnitSystem.METRIC ? "At, \u00b0C" : "At, \u00b0F";
            details.getChildren()
                    .addAll(
                            fields(
                                    Controls.asked("Product", product),
                                    Choices.asked("Its percent are", basis),
                                    Controls.asked(degrees, celsius),
                                    Controls.asked("Catalyst, %", share),
                                    Controls.asked("Workable, min", least),
                                    Controls.asked("to, min", most)),
                            Controls.button("Add this row", this::addRow));
        }
        boolean waiting = chosen == From.OWN && model.table().isEmpty()
                || chosen == From.TYPED && !(model.choice() instanceof CatalystChoice.Typed);
        if (waiting) {
            details.getChildren().add(Controls.soft("Until it is entered, what was chosen before holds."));
        }
    }

    private static FlowPane fields(Node... asked) {
        FlowPane pane = new FlowPane(asked);
        pane.getStyleClass().add("fields");
        return pane;
    }

    private VBox rows(CatalystTable table) {
        VBox list = new VBox();
        list.getStyleClass().add("lines");
        for (int i = 0; i < table.rows().size(); i++) {
            int index = i;
            CatalystTable.Row row = table.rows().get(i);
            Label words = Controls.plain(units.temperature(row.celsius()) + ": "
                    + row.share().words() + "; workable " + row.time().words());
            HBox.setHgrow(words, Priority.ALWAYS);
            words.setMaxWidth(Double.MAX_VALUE);
            list.getChildren().add(Controls.row(words, Controls.quietButton("Remove", () -> model.removeRow(index))));
        }
        return list;
    }

    private void addRow() {
        if (model.row(
                product.getText(),
                celsius.getText(),
                share.getText(),
                basis.getValue(),
                least.getText(),
                most.getText(),
                units)) {
            List.of(celsius, share, least, most).forEach(TextField::clear);
            celsius.requestFocus();
        }
    }
}
