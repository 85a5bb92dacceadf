package tintwright.window.frame;

import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tintwright.window.pieces.Controls;

/**
 * What to do next, in one sentence with one button, at the foot of every station that has no large deed of its own.
 * Below it stands how near the colour is, while there is something to compare.
 */
final class NowBar extends HBox {
    /** Letters that have room in one line of the larger size. */
    private static final int SHORT = 62;

    private static final String QUIET = "now-quiet";

    private final Button button;

    NowBar(ShellModel model) {
        getStyleClass().add("now-bar");
        Label sentence = Controls.bound(model.nowProperty(), "now-sentence");
        Tooltip whole = new Tooltip();
        whole.textProperty().bind(model.nowProperty());
        sentence.setTooltip(whole);
        javafx.css.PseudoClass wordy = javafx.css.PseudoClass.getPseudoClass("long");
        model.nowProperty()
                .addListener(
                        (property, before, after) -> sentence.pseudoClassStateChanged(wordy, after.length() > SHORT));
        sentence.pseudoClassStateChanged(wordy, model.nowProperty().get().length() > SHORT);
        Label answer = new Label();
        answer.getStyleClass().add("now-answer");
        answer.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> model.comparing()
                                ? beginning(model.closeWordsProperty().get()) + " ("
                                        + model.closeProperty().get() + ") \u00b7 "
                                        + model.sureProperty().get()
                                : "",
                        model.closeProperty(),
                        model.closeWordsProperty(),
                        model.sureProperty(),
                        model.sureWordsProperty()));
        answer.setWrapText(true);
        answer.setMinHeight(USE_PREF_SIZE);
        Controls.whenSaid(answer);
        VBox words = new VBox(sentence, answer);
        words.getStyleClass().add("now-words");
        HBox.setHgrow(words, Priority.ALWAYS);
        button = Controls.mainButton("", model::doNow);
        button.setId("now-button");
        button.textProperty().bind(model.nowButtonProperty());
        Controls.onlyWhen(model.nowButtonProperty().isNotEmpty(), button);
        getChildren().addAll(words, button);
        Controls.onlyWhen(model.stepProperty().isNotEqualTo(Step.CUP).or(model.elsewhereProperty()), this);
    }

    /** @return as the beginning of a sentence that goes on */
    private static String beginning(String words) {
        String first = words.substring(0, 1).toUpperCase(Locale.ROOT);
        return first + words.substring(1, words.endsWith(".") ? words.length() - 1 : words.length());
    }

    /** @param other true while something else in sight is the one thing to press: then this key steps back */
    void stepBack(boolean other) {
        if (other != button.getStyleClass().contains(QUIET)) {
            if (other) {
                button.getStyleClass().add(QUIET);
            } else {
                button.getStyleClass().remove(QUIET);
            }
        }
    }
}
