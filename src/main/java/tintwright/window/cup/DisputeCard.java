package tintwright.window.cup;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import tintwright.window.pieces.Controls;

/** Asks what is wrong, the chip or a weight, and lets it be settled with one press. */
final class DisputeCard {
    private final CupModel model;
    private final VBox sheet = new VBox();

    DisputeCard(CupModel model) {
        this.model = model;
        sheet.getStyleClass().addAll("sheet", "caution-sheet");
        sheet.setId("dispute");
    }

    Node node() {
        return sheet;
    }

    void show(CupModel.InHand seen) {
        sheet.getChildren().clear();
        seen.dispute().ifPresent(this::ask);
        sheet.setVisible(seen.dispute().isPresent());
        sheet.setManaged(seen.dispute().isPresent());
    }

    private void ask(Dispute dispute) {
        sheet.getChildren()
                .addAll(Controls.wrapped("Chip and weights disagree", "caution"), Controls.plain(dispute.words()));
        if (!dispute.mends().isEmpty()) {
            sheet.getChildren().add(Controls.plain("They would agree if one of these happened. Did it?"));
        }
        for (int i = 0; i < dispute.mends().size(); i++) {
            Dispute.Mend mend = dispute.mends().get(i);
            add("Yes: " + mend.words(), "mend-" + i, () -> model.settle(dispute, mend));
        }
        add("The chip was read wrongly: cross it out", "cross-out", () -> model.crossOut(dispute.chip()));
        add("Neither: go on by the weights for now", "go-on", () -> model.goOn(dispute.chip()));
        sheet.getChildren()
                .add(Controls.soft(
                        "Not sure? Read the same chip once more, clean and flat, before you press " + "anything."));
        sheet.getChildren().stream()
                .filter(Button.class::isInstance)
                .findFirst()
                .ifPresent(first -> first.getStyleClass().add("do-now"));
    }

    private void add(String words, String id, Runnable deed) {
        Button button = Controls.button(words, deed);
        button.setId(id);
        button.setWrapText(true);
        button.setMinWidth(0);
        button.setMaxWidth(Double.MAX_VALUE);
        sheet.getChildren().add(button);
    }
}
