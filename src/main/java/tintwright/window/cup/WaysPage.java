package tintwright.window.cup;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tintwright.cup.WayWords;
import tintwright.units.Grams;
import tintwright.window.picture.LevelsPicture;
import tintwright.window.picture.Shade;
import tintwright.window.pieces.Cards;
import tintwright.window.pieces.Controls;

/** The ways back from a cup that went too far, side by side, each drawn as the cup falls and rises on it. */
final class WaysPage extends VBox {
    /** A way needs this width, in text sizes, for its cups and its rows. */
    private static final double CARD = 19;

    private static final String[] COUNTED = {"No way", "One way", "Two ways", "Three ways", "Four ways", "Five ways"};

    private final CupModel model;
    private final Cards cards = new Cards(CARD);
    private final Label title = Controls.wrapped("", "title");
    private final Label held = Controls.soft("");
    private final HBox pair = new HBox();

    /** @param toTheCup shows the cup first */
    WaysPage(CupModel model, Runnable toTheCup) {
        this.model = model;
        getStyleClass().add("ways-page");
        VBox words = new VBox(title, held);
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMinWidth(0);
        pair.getStyleClass().add("ways-pair");
        pair.setMaxHeight(USE_PREF_SIZE);
        HBox head = Controls.row(words, pair);
        getChildren()
                .setAll(
                        head,
                        cards,
                        Controls.row(
                                Controls.quietButton("See the cup first", toTheCup),
                                Controls.gap(),
                                Controls.quietButton("Done: into the log", model::putAway)));
    }

    void show(CupModel.InHand seen) {
        List<WayWords.Said> ways = seen.ways();
        title.setText(seen.closeWords() + " " + COUNTED[Math.min(ways.size(), COUNTED.length - 1)] + " on.");
        double reserve = seen.deeds().heldBack();
        held.setText((reserve > 0 ? "You have " + Grams.about(reserve) + " of white held back. " : "")
                + "Nothing is lost: what is poured off keeps its name on the shelf.");
        pair.getChildren()
                .setAll(field("Hull", seen.of(WayWords.Inside.END)), field("Cup", seen.of(WayWords.Inside.NOW)));
        double fullest = ways.stream()
                .flatMap(way -> way.levels().stream())
                .mapToDouble(WayWords.Level::grams)
                .max()
                .orElse(1);
        List<VBox> shown = new ArrayList<>();
        for (int i = 0; i < ways.size(); i++) {
            int index = i;
            LevelsPicture drawn = new LevelsPicture(
                    ways.get(i).levels().stream()
                            .map(level -> new LevelsPicture.Level(seen.of(level.inside()), level.grams()))
                            .toList(),
                    fullest);
            shown.add(new WayCard(ways.get(i), drawn, i, () -> model.choose(index)));
        }
        cards.show(shown);
    }

    private static Region field(String words, Shade shade) {
        StackPane field = new StackPane(Controls.wrapped(words, "ways-name"));
        field.setStyle(shade.css());
        field.getStyleClass().add("ways-field");
        return field;
    }
}
