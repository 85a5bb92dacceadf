package tintwright.window.cup;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tintwright.cup.CupDeeds;
import tintwright.cup.Deed;
import tintwright.window.pieces.Controls;

/**
 * The one thing to do now, as large as a hand: the grams, the part's name, one line of why, the field for what the
 * scale showed, one key. What is not weighed is one sentence with its key.
 */
final class DeedCard {
    private final CupModel model;
    private final Label step = Controls.whenSaid(Controls.wrapped("", "question"));
    private final Label figure = Controls.wrapped("", "big-figure");
    private final Label unit = new Label("g");
    private final Label of = Controls.wrapped("", "figure");
    private final Label sentence = Controls.wrapped("", "figure");
    private final Label why = Controls.whenSaid(Controls.soft(""));
    private final Label how = Controls.whenSaid(Controls.plain(""));
    private final TextField really = new TextField();
    private final Button accept;
    private final Button other;
    private final HBox weighed;
    private final VBox card;
    private Optional<Deed> advised = Optional.empty();
    private Runnable otherwise = () -> {};

    DeedCard(CupModel model) {
        this.model = model;
        figure.setId("dose");
        figure.setWrapText(false);
        figure.setMinWidth(Label.USE_PREF_SIZE);
        unit.getStyleClass().add("big-unit");
        HBox grams = new HBox(figure, unit);
        grams.getStyleClass().add("big-row");
        grams.managedProperty().bind(grams.visibleProperty());
        grams.visibleProperty().bind(figure.textProperty().isNotEmpty());
        really.setId("really");
        really.setAccessibleText("what the scale showed, grams");
        really.getStyleClass().add("field-large");
        really.setPrefColumnCount(5);
        really.setOnAction(event -> done());
        HBox.setHgrow(really, Priority.ALWAYS);
        accept = Controls.mainButton("It is in", this::done);
        accept.setId("it-is-in");
        weighed = new HBox(really, accept);
        weighed.getStyleClass().add("row");
        weighed.managedProperty().bind(weighed.visibleProperty());
        other = Controls.mainButton("", () -> otherwise.run());
        other.setId("do-it");
        Controls.onlyWhen(other.textProperty().isNotEmpty(), other);
        Label problem = Controls.whenSaid(Controls.bound(model.problemProperty(), "caution"));
        card = Controls.sheet("", step, grams, of, sentence, why, how, weighed, problem, other);
        card.getStyleClass().add("deed-card");
    }

    VBox node() {
        return card;
    }

    /** What was typed is what the scale showed; nothing typed, or the figure as it stood there, is as advised. */
    private void done() {
        String typed = really.getText().strip();
        if (typed.isEmpty() || typed.equals(figure.getText())) {
            model.accept();
        } else if (model.really(typed)) {
            really.clear();
        }
    }

    /**
     * @param key  what the key of a thing that is not weighed says; empty for none
     * @param then what that key does
     */
    void show(CupDeeds deeds, String key, Runnable then) {
        CupDeeds.Todo now = deeds.now();
        boolean weighing = now.amount().isPresent();
        boolean inHand = really.isFocused() || accept.isFocused() || other.isFocused();
        String shown = now.amount()
                .map(amount -> amount.shown().replace("g", "").strip())
                .orElse("");
        figure.setText(shown);
        of.setText(now.amount().map(CupDeeds.Amount::of).orElse(""));
        Controls.show(of, weighing);
        sentence.setText(weighing ? "" : now.sentence());
        Controls.show(sentence, !weighing);
        why.setText(now.why());
        how.setText(String.join("\n", now.details()));
        weighed.setVisible(weighing);
        doNow(really, weighing);
        doNow(other, !weighing && !key.isEmpty());
        accept.setText(CupStation.button(now.kind()));
        long more =
                deeds.next().stream().filter(todo -> todo.amount().isPresent()).count();
        step.setText(
                !weighing
                        ? ""
                        : (now.kind() == CupDeeds.Kind.POUR_OFF ? "Off the cup" : "On to the scale")
                                + (more == 0
                                        ? ""
                                        : more == 1
                                                ? " \u00b7 one more after it"
                                                : " \u00b7 " + more + " more after it"));
        otherwise = then;
        other.setText(weighing ? "" : key);
        if (!now.deed().equals(advised)) {
            // What was half typed for another dose must not be written for this one.
            advised = now.deed();
            really.setText(shown);
            if (inHand && weighing) {
                // Whoever did the last thing goes on with this one: what the scale shows is typed, or Enter takes it.
                really.requestFocus();
                really.selectAll();
            }
        }
    }

    /** Where the focus goes when the station opens. */
    private static void doNow(Node node, boolean here) {
        node.getStyleClass().remove("do-now");
        if (here) {
            node.getStyleClass().add("do-now");
        }
    }
}
