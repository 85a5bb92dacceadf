package tintwright.window.frame;

import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.geometry.HPos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tintwright.window.pieces.Pieces;

/** The strip at the foot that is always in sight: how close, how sure, and what to do now. */
final class Strip extends GridPane {
    /** Letters that have room in two lines of the usual size. */
    private static final int SHORT = 52;
    /** Letters of a sentence, of words and of a figure that have room when the text is set large. */
    private static final int SHORT_WHEN_LARGE = 34;

    private static final int SHORT_WORDS = 30;
    private static final int MANY_WORDS = 38;
    private static final int SHORT_FIGURE = 12;
    private static final PseudoClass LONG = PseudoClass.getPseudoClass("long");
    private static final PseudoClass LONGER = PseudoClass.getPseudoClass("longer");

    Strip(ShellModel model) {
        getStyleClass().add("strip");
        setAccessibleRole(AccessibleRole.PARENT);
        add(answer("How close", model.closeProperty(), model.closeWordsProperty()), 0, 0);
        add(answer("How sure", model.sureProperty(), model.sureWordsProperty()), 1, 0);
        add(now(model), 2, 0);
        double[] shares = {23, 23, 54};
        for (double share : shares) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(share);
            column.setHalignment(HPos.LEFT);
            getColumnConstraints().add(column);
        }
    }

    private static VBox answer(String question, ObservableValue<String> figure, ObservableValue<String> words) {
        Label asked = new Label(question);
        asked.getStyleClass().add("strip-question");
        Label big = Pieces.bound(figure, "strip-figure");
        Label said = Pieces.bound(words, "strip-words");
        smaller(said, LONG, SHORT_WORDS);
        smaller(said, LONGER, MANY_WORDS);
        smaller(big, LONG, SHORT_FIGURE);
        VBox box = new VBox(asked, big, said);
        box.getStyleClass().add("strip-cell");
        box.setFocusTraversable(true);
        box.setAccessibleRole(AccessibleRole.TEXT);
        box.accessibleTextProperty()
                .bind(Bindings.createStringBinding(
                        () -> question + ": " + figure.getValue() + ", " + words.getValue(), figure, words));
        return box;
    }

    /** The style sheet sets what is longer in smaller letters. */
    private static void smaller(Label label, PseudoClass style, int letters) {
        label.textProperty()
                .addListener(
                        (property, before, after) -> label.pseudoClassStateChanged(style, after.length() > letters));
        label.pseudoClassStateChanged(style, label.getText().length() > letters);
    }

    private static HBox now(ShellModel model) {
        Label asked = new Label("Now");
        asked.getStyleClass().add("strip-question");
        Label sentence = Pieces.bound(model.nowProperty(), "strip-now");
        // The strip keeps its height: a longer sentence is set smaller, and what is still cut stands in the tip.
        Tooltip whole = new Tooltip();
        whole.textProperty().bind(model.nowProperty());
        sentence.setTooltip(whole);
        smaller(sentence, LONG, SHORT_WHEN_LARGE);
        smaller(sentence, LONGER, SHORT);
        VBox words = new VBox(asked, sentence);
        words.getStyleClass().add("strip-cell");
        HBox.setHgrow(words, Priority.ALWAYS);
        Button button = Pieces.button("", model::doNow);
        button.getStyleClass().add("now-button");
        button.setId("now-button");
        button.setWrapText(true);
        button.textProperty().bind(model.nowButtonProperty());
        Pieces.onlyWhen(model.nowButtonProperty().isNotEmpty(), button);
        HBox box = new HBox(words, button);
        box.getStyleClass().add("strip-now-cell");
        return box;
    }
}
