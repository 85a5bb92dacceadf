package tintwright.window.cup;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import tintwright.cup.WayWords;
import tintwright.window.pieces.Controls;

/** One way back as a card: what it is for, the deeds, and the same questions as on its neighbours. */
final class WayCard extends VBox {
    /**
     * @param drawn  the cup on this way
     * @param number of the card, from 0
     * @param take   follows this way
     */
    WayCard(WayWords.Said way, Node drawn, int number, Runnable take) {
        getStyleClass().addAll("sheet", "way");
        setMinHeight(Region.USE_PREF_SIZE);
        Label mark = Controls.wrapped(
                way.why()
                        .map(why -> "Recommended: " + why)
                        .orElse(way.whiteShort() ? "Needs more white than is held back" : ""),
                way.whiteShort() ? "way-short" : "way-mark");
        getChildren().add(Controls.wrapped(way.title(), "way-title"));
        if (!mark.getText().isEmpty()) {
            getChildren().add(1, mark);
        }
        if (way.why().isPresent()) {
            getStyleClass().add("way-first");
        }
        getChildren().addAll(drawn, Controls.soft(way.purpose()), deeds(way), rows(way));
        Button button = way.why().isPresent()
                ? Controls.mainButton("Take this way", take)
                : Controls.button(way.deeds().isEmpty() ? "Leave it so" : "Take this way", take);
        button.setAccessibleText(String.join(" ", way.lines()));
        button.setId("way-" + number);
        if (number == 0) {
            button.getStyleClass().add("do-now");
        }
        Region gap = new Region();
        setVgrow(gap, Priority.ALWAYS);
        button.setMaxWidth(Double.MAX_VALUE);
        getChildren().addAll(gap, button);
    }

    private static GridPane deeds(WayWords.Said way) {
        GridPane list = grid("way-deeds");
        for (int i = 0; i < way.deeds().size(); i++) {
            WayWords.Deed deed = way.deeds().get(i);
            TextFlow words = new TextFlow();
            for (String[] piece :
                    new String[][] {{deed.lead(), "way-text"}, {deed.figure(), "way-figure"}, {deed.rest(), "way-text"}
                    }) {
                if (!piece[0].isEmpty()) {
                    Text text = new Text(piece[0] + " ");
                    text.getStyleClass().add(piece[1]);
                    words.getChildren().add(text);
                }
            }
            Label number = new Label(Integer.toString(i + 1));
            number.getStyleClass().add("way-number");
            number.setMinWidth(Region.USE_PREF_SIZE);
            list.addRow(i, number, words);
        }
        return list;
    }

    private static GridPane rows(WayWords.Said way) {
        GridPane list = grid("way-rows");
        for (int i = 0; i < way.rows().size(); i++) {
            Label question = new Label(way.rows().get(i).question());
            question.getStyleClass().add("question");
            question.setMinWidth(Region.USE_PREF_SIZE);
            boolean white = way.whiteShort() && way.rows().get(i).question().equals("White");
            list.addRow(i, question, Controls.wrapped(way.rows().get(i).answer(), white ? "way-short" : "way-answer"));
        }
        return list;
    }

    private static GridPane grid(String style) {
        GridPane list = new GridPane();
        list.getStyleClass().add(style);
        ColumnConstraints wide = new ColumnConstraints();
        wide.setHgrow(Priority.ALWAYS);
        list.getColumnConstraints().setAll(new ColumnConstraints(), wide);
        return list;
    }
}
