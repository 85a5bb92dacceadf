package tintwright.window.pieces;

import java.util.function.BiConsumer;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.beans.value.WeakChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The pieces every station is built from, so that they all look and read alike. */
public final class Controls {
    private Controls() {}

    public static Label heading(String words) {
        Label label = wrapped(words, "heading");
        return label;
    }

    public static Label plain(String words) {
        return wrapped(words, "plain");
    }

    public static Label soft(String words) {
        return wrapped(words, "soft");
    }

    public static Label bound(ObservableValue<String> words, String style) {
        Label label = wrapped("", style);
        label.textProperty().bind(words);
        return label;
    }

    public static Label wrapped(String words, String style) {
        Label label = new Label(words);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    public static Button button(String words, Runnable action) {
        Button button = new Button(words);
        button.setOnAction(event -> action.run());
        button.setMnemonicParsing(false);
        button.setMinWidth(Region.USE_PREF_SIZE);
        return button;
    }

    public static Button mainButton(String words, Runnable action) {
        Button button = button(words, action);
        button.getStyleClass().add("main-button");
        return button;
    }

    /** Makes a button the one to press, or an ordinary one. */
    public static void main(Button button, boolean now) {
        button.getStyleClass().remove("main-button");
        if (now) {
            button.getStyleClass().add("main-button");
        }
    }

    public static Button quietButton(String words, Runnable action) {
        Button button = button(words, action);
        button.getStyleClass().add("quiet-button");
        return button;
    }

    /** A sheet of its own with a title. */
    public static VBox sheet(String title, Node... content) {
        VBox sheet = new VBox();
        sheet.getStyleClass().add("sheet");
        sheet.setMinHeight(Region.USE_PREF_SIZE);
        if (!title.isEmpty()) {
            sheet.getChildren().add(heading(title));
        }
        sheet.getChildren().addAll(content);
        return sheet;
    }

    /** A colour as large as a letter, beside the words for it. */
    public static Region speck(String css) {
        Region speck = new Region();
        speck.getStyleClass().add("speck");
        speck.setStyle(css);
        return speck;
    }

    public static HBox row(Node... content) {
        HBox row = new HBox(content);
        row.getStyleClass().add("row");
        return row;
    }

    /** Side by side as far as there is room, the others below. */
    public static FlowPane flow(Node... content) {
        FlowPane flow = new FlowPane(content);
        flow.getStyleClass().add("fields");
        return flow;
    }

    /** What is seldom pressed, in as few lines as it takes. */
    public static FlowPane closeKeys(Node... keys) {
        FlowPane flow = flow(keys);
        flow.getStyleClass().add("close-keys");
        return flow;
    }

    public static VBox column(Node... content) {
        VBox column = new VBox(content);
        column.getStyleClass().add("column");
        return column;
    }

    /** A labelled place to type in. */
    public static VBox asked(String question, TextField field) {
        Label label = new Label(question);
        label.getStyleClass().add("question");
        label.setLabelFor(field);
        field.setAccessibleText(question);
        VBox asked = new VBox(label, field);
        asked.getStyleClass().add("asked");
        return asked;
    }

    /**
     * Tells a page of every change for as long as its node lives, and no longer: a page that was built anew must not
     * be kept, and shown to nobody, by the model it looks at.
     */
    public static <T> void follow(Node node, ObservableValue<T> value, BiConsumer<T, T> then) {
        ChangeListener<T> listener = (property, before, after) -> then.accept(before, after);
        // The node holds the listener, the model only knows of it.
        node.getProperties().put(listener, true);
        value.addListener(new WeakChangeListener<>(listener));
    }

    public static Region gap() {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        return gap;
    }

    /** Shows a node only while there is something to show, and takes no room otherwise. */
    public static <N extends Node> N onlyWhen(ObservableValue<Boolean> there, N node) {
        node.visibleProperty().bind(there);
        node.managedProperty().bind(node.visibleProperty());
        return node;
    }

    /** Shows or hides a node at once; hidden it takes no room. */
    public static void show(Node node, boolean there) {
        node.setVisible(there);
        node.setManaged(there);
    }

    /** Scrolls to a node that has just been shown, once it has its place. */
    public static void bringIntoSight(Node node) {
        Platform.runLater(() -> {
            Node above = node.getParent();
            while (above != null && !(above instanceof ScrollPane)) {
                above = above.getParent();
            }
            if (above instanceof ScrollPane pane && node.isVisible()) {
                pane.applyCss();
                pane.layout();
                double room = pane.getContent().getLayoutBounds().getHeight()
                        - pane.getViewportBounds().getHeight();
                double top =
                        pane.getContent().sceneToLocal(node.localToScene(0, 0)).getY();
                pane.setVvalue(room > 0 ? Math.min(1, top / room) : 0);
            }
        });
    }

    /** Shows a label only while it says something. */
    public static Label whenSaid(Label label) {
        label.visibleProperty().bind(label.textProperty().isNotEmpty());
        label.managedProperty().bind(label.visibleProperty());
        return label;
    }
}
