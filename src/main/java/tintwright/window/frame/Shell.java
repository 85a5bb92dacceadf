package tintwright.window.frame;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.PauseTransition;
import javafx.animation.Timeline;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;
import javafx.util.Duration;
import tintwright.bench.Version;
import tintwright.units.UnitSystem;
import tintwright.window.pieces.Controls;

/** The frame around every station: which job, the stations, the one in hand, and what to do next. */
public final class Shell extends BorderPane {
    /** The usual text size in pixels; everything else is a multiple of it. */
    static final double USUAL_TEXT = 15;

    /** From this share of the usual text on, the frame gives its room to the work. */
    private static final double LARGE = 1.5;

    private static final Duration PATIENCE = Duration.millis(300);
    private static final String UNDO = "M9 4v-4l-8 7 8 7v-4c5 0 8 2 10 5 0-7-4-11-10-11z";
    private static final String REDO = "M11 4v-4l8 7-8 7v-4c-5 0-8 2-10 5 0-7 4-11 10-11z";
    private static final String MENU = "M0 0h18v2.200h-18z M0 6.500h18v2.200h-18z M0 13h18v2.200h-18z";
    private static final String KEYS = "Keys: Ctrl 1 to 6 go to a station. Ctrl Enter does what the sentence at "
            + "the foot says. Ctrl Z takes back, Ctrl Y does it again. Ctrl B goes back to the boat worked on before. Ctrl "
            + "plus, minus and 0 set the text, Ctrl L light or dark, Ctrl U the units. Left and right "
            + "change the light of the split swatch. F1 shows this.";

    private static final String ABOUT = "Tintwright " + Version.number()
            + ": a colour-matching bench for gel coat. Free under the Apache License 2.0. A screen is not a swatch: what "
            + "goes on the boat is decided by a cured chip held against the hull. For catalyst, styrene, acetone and dust "
            + "the product's data sheet and local rules come first.";

    private final BooleanProperty slow = new SimpleBooleanProperty(false);
    private final ShellModel model;
    private final Map<Step, Supplier<Node>> stations;
    private final Map<Step, Node> built = new EnumMap<>(Step.class);
    private final ScrollPane middle = new ScrollPane();
    private final VBox aside = new VBox();
    private final HBox right = new HBox();
    private final NowBar now;
    private final Journey journey;
    /** How often {@link #PATIENCE} has passed since something was asked for. */
    private int waited;

    private final ChangeListener<Node> focus = (property, was, now) -> keepOffTheTools(was, now);

    private final Runnable signal = this::oneSignal;

    /**
     * The frame; {@link #showStation} shows what it is around.
     *
     * @param stations the stations that can be worked, each built when it is first opened
     */
    public Shell(ShellModel model, Map<Step, Supplier<Node>> stations) {
        this.model = model;
        this.stations = new EnumMap<>(stations);
        middle.setFitToWidth(true);
        middle.setFitToHeight(true);
        middle.getStyleClass().add("middle");
        journey = new Journey(model, this.stations.keySet());
        setTop(new VBox(head(), aside));
        // What is said floats over the work: it never moves what a hand is about to press.
        StackPane work = new StackPane(middle, noticeLine());
        setCenter(work);
        now = new NowBar(model);
        setBottom(now);
        model.stepProperty().addListener((property, before, after) -> {
            open(after);
            focusHere();
        });
        model.unitsProperty().addListener((property, before, after) -> {
            built.keySet().removeIf(Step::showsUnits);
            open(model.stepProperty().get());
        });
        model.pointedProperty().addListener((property, before, after) -> pointOut());
        model.textShareProperty().addListener((property, before, after) -> size());
        model.darkProperty().addListener((property, before, after) -> dress());
        model.copyTo(text -> {
            ClipboardContent content = new ClipboardContent();
            content.putString(text);
            Clipboard.getSystemClipboard().setContent(content);
        });
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        sceneProperty().addListener((property, before, after) -> {
            if (before != null) {
                before.focusOwnerProperty().removeListener(focus);
                before.removePreLayoutPulseListener(signal);
            }
            if (after != null) {
                after.focusOwnerProperty().addListener(focus);
                after.addPreLayoutPulseListener(signal);
            }
        });
        size();
        dress();
    }

    /** Shows the station in hand; until then there is the frame alone, which is drawn in a fraction of the time. */
    public void showStation() {
        if (middle.getContent() == null) {
            open(model.stepProperty().get());
        }
    }

    /** One key alone is in the signal colour: while the station shows one of its own, the foot's steps back. */
    public void oneSignal() {
        // A station that is still to come mostly brings a key of its own.
        now.stepBack(middle.getContent() == null
                || middle.getContent().lookupAll(".main-button").stream().anyMatch(Shell::inSight));
    }

    private static boolean inSight(Node node) {
        for (Node each = node; each != null; each = each.getParent()) {
            if (!each.isVisible()) {
                return false;
            }
        }
        return true;
    }

    /** Puts something between the stations and the work, such as the first walk. */
    public void aside(Node node) {
        aside.getChildren().setAll(node);
    }

    private Node head() {
        Label job = Controls.bound(model.jobProperty(), "job");
        job.setMinWidth(0);
        HBox left = new HBox(job);
        left.setAlignment(Pos.CENTER_LEFT);
        left.setMinWidth(0);
        left.setPrefWidth(0);
        HBox.setHgrow(left, Priority.ALWAYS);
        right.getChildren()
                .setAll(
                        tool("Take back the last step (Ctrl and Z)", UNDO, model::undo, model.canUndoProperty()),
                        tool("Do it again after all (Ctrl and Y)", REDO, model::redo, model.canRedoProperty()),
                        menu());
        right.getStyleClass().add("head-right");
        right.setMinWidth(USE_PREF_SIZE);
        HBox tools = new HBox(right);
        tools.setAlignment(Pos.CENTER_RIGHT);
        tools.setMinWidth(USE_PREF_SIZE);
        tools.setPrefWidth(0);
        HBox.setHgrow(tools, Priority.ALWAYS);
        journey.setMinWidth(USE_PREF_SIZE);
        HBox head = new HBox(left, journey, tools);
        head.getStyleClass().add("head");
        return head;
    }

    /** All that is set and seldom: text, light, units, keys. */
    private MenuButton menu() {
        MenuButton menu = new MenuButton();
        menu.setGraphic(sign(MENU));
        menu.getStyleClass().setAll("tool");
        menu.setId("menu");
        named(menu, "More: text size, light or dark, units, movement, keys");
        MenuItem units = item("", this::units);
        MenuItem dark =
                item("", () -> model.darkProperty().set(!model.darkProperty().get()));
        MenuItem moves =
                item("", () -> model.movesProperty().set(!model.movesProperty().get()));
        menu.getItems()
                .setAll(
                        item("Larger text   Ctrl +", model::largerText),
                        item("Smaller text   Ctrl \u2212", model::smallerText),
                        item("Usual text   Ctrl 0", () -> model.setTextShare(1)),
                        dark,
                        units,
                        moves,
                        item("What the keys do   F1", () -> model.warn(KEYS)),
                        item("About Tintwright " + Version.number(), () -> model.warn(ABOUT)));
        menu.setOnShowing(event -> {
            boolean metric = model.unitsProperty().get() == UnitSystem.METRIC;
            units.setText(metric ? "Ounces, inches, Fahrenheit   Ctrl U" : "Grams, millimetres, Celsius   Ctrl U");
            moves.setText(model.movesProperty().get() ? "Keep pictures still" : "Let the cup sink when a dose goes in");
            dark.setText(model.darkProperty().get() ? "Light window   Ctrl L" : "Dark window   Ctrl L");
        });
        return menu;
    }

    private static MenuItem item(String words, Runnable action) {
        MenuItem item = new MenuItem(words);
        item.setMnemonicParsing(false);
        item.setOnAction(event -> action.run());
        return item;
    }

    private static Region sign(String path) {
        SVGPath outline = new SVGPath();
        outline.setContent(path);
        Region sign = new Region();
        sign.setShape(outline);
        sign.getStyleClass().add("tool-sign");
        return sign;
    }

    private static void named(ButtonBase button, String meaning) {
        button.setAccessibleText(meaning);
        button.setTooltip(new Tooltip(meaning));
    }

    private static Button tool(String meaning, String path, Runnable action, BooleanProperty possible) {
        Button button = Controls.button("", action);
        button.setGraphic(sign(path));
        button.getStyleClass().add("tool");
        button.disableProperty().bind(possible.not());
        named(button, meaning);
        return button;
    }

    private Node noticeLine() {
        Label words = Controls.whenSaid(Controls.bound(model.noticeProperty(), "notice"));
        // The toolkit has no live region; a change of a text that can be focused is what it passes on.
        words.setFocusTraversable(true);
        Label doing = Controls.bound(model.doingProperty(), "plain");
        doing.setId("doing");
        ProgressBar bar = new ProgressBar(ProgressBar.INDETERMINATE_PROGRESS);
        bar.accessibleTextProperty().bind(model.doingProperty());
        HBox busy = Controls.onlyWhen(slow, new HBox(doing, bar, Controls.quietButton("Cancel", model::cancel)));
        busy.getStyleClass().add("row");
        Button gone = Controls.quietButton("Close", () -> model.say(""));
        Controls.onlyWhen(model.noticeProperty().isNotEmpty(), gone);
        HBox line = new HBox(words, gone, busy);
        line.getStyleClass().add("notice-line");
        // What is done in the blink of an eye shows no bar; what takes longer says how much of it is left.
        Timeline waiting = new Timeline();
        waiting.getKeyFrames().setAll(new KeyFrame(PATIENCE, event -> {
            slow.set(model.busyProperty().get());
            waited++;
            bar.setProgress(model.working((long) (waited * PATIENCE.toMillis())));
        }));
        waiting.setCycleCount(Animation.INDEFINITE);
        Runnable wait = () -> {
            waited = 0;
            if (model.busyProperty().get()) {
                waiting.playFromStart();
            } else {
                waiting.stop();
                slow.set(false);
            }
        };
        model.busyProperty().addListener((property, before, after) -> wait.run());
        wait.run();
        line.setId("notice-line");
        line.setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
        words.maxWidthProperty().bind(widthProperty().multiply(0.6));
        StackPane.setAlignment(line, Pos.BOTTOM_CENTER);
        StackPane.setMargin(line, new Insets(0, 0, 14, 0));
        letGo(line);
        return Controls.onlyWhen(model.noticeProperty().isNotEmpty().or(slow), line);
    }

    /** A notice goes by itself, but not from under somebody who is on it. */
    private void letGo(HBox line) {
        PauseTransition reading = new PauseTransition();
        reading.setOnFinished(event -> {
            if (!model.noticeStaysProperty().get() && !line.isHover() && !line.isFocusWithin()) {
                model.say("");
            }
        });
        Runnable again = () -> {
            reading.stop();
            if (!model.noticeStaysProperty().get()
                    && !model.noticeProperty().get().isEmpty()) {
                reading.setDuration(timeToRead(model.noticeProperty().get()));
                reading.playFromStart();
            }
        };
        model.noticeProperty().addListener((property, before, after) -> again.run());
        model.noticeStaysProperty().addListener((property, before, after) -> again.run());
        line.hoverProperty().addListener((property, before, after) -> again.run());
        line.focusWithinProperty().addListener((property, before, after) -> again.run());
    }

    /** Eight seconds, more for what takes longer to read: a tenth of a second a letter. */
    public static Duration timeToRead(String words) {
        return Duration.millis(Math.max(8000, 100 * words.length()));
    }

    private void open(Step step) {
        Supplier<Node> station = stations.get(step);
        if (station == null) {
            return;
        }
        middle.setContent(new StationPage(built.computeIfAbsent(step, key -> station.get())));
        middle.setVvalue(0);
    }

    private void size() {
        setStyle("-fx-font-size: " + USUAL_TEXT * model.textShareProperty().get() + "px;");
        getStyleClass().remove("large");
        if (model.textShareProperty().get() >= LARGE) {
            getStyleClass().add("large");
        }
    }

    private void dress() {
        getStyleClass().remove("dark");
        if (model.darkProperty().get()) {
            getStyleClass().add("dark");
        }
    }

    /** Puts the cursor where the thing to do now is done. */
    private void pointOut() {
        showStation();
        laidOut();
        Node where = middle.getContent().lookup(".do-now");
        if (where != null) {
            where.requestFocus();
        }
    }

    private void units() {
        model.unitsProperty().set(model.unitsProperty().get() == UnitSystem.METRIC ? UnitSystem.US : UnitSystem.METRIC);
    }

    /**
     * When what had the focus is gone, the toolkit gives it to the first button of the window or to the next one it
     * finds. That may be Undo, and a further press of the same key would take back what was just done, or another
     * station's key, and the press would lead away; the station in hand gets it instead.
     */
    private void keepOffTheTools(Node was, Node now) {
        boolean tool = right.getChildren().contains(now);
        boolean otherStation =
                now instanceof ToggleButton key && journey.getChildren().contains(key) && !key.isSelected();
        if (was == null && (tool || otherStation)) {
            journey.focusChosen();
        }
    }

    /**
     * After a change of station the focus is where something is done there, else on the station's key; whoever walks
     * along the keys by the keyboard stays on them.
     */
    private void focusHere() {
        Node owner = getScene() == null ? null : getScene().getFocusOwner();
        if (getScene() == null
                || owner != null
                        && journey.getChildren().contains(owner)
                        && ((ToggleButton) owner).isSelected()
                        && !owner.isHover()) {
            return;
        }
        laidOut();
        Node useful = middle.getContent().lookup(".do-now");
        if (useful != null) {
            useful.requestFocus();
        }
        if (useful == null || !useful.isFocused()) {
            journey.focusChosen();
        }
    }

    /**
     * What scrolls holds nothing that can be found before it is dressed; laid out without a size it would be arranged
     * for the narrowest of windows.
     */
    private void laidOut() {
        if (getWidth() > 0) {
            applyCss();
            layout();
        }
    }

    private void key(KeyEvent event) {
        if (event.getCode() == KeyCode.F1) {
            model.warn(KEYS);
        }
        if (!event.isShortcutDown()) {
            return;
        }
        boolean ownUndo = event.getTarget() instanceof TextInputControl field && field.isUndoable();
        boolean ownRedo = event.getTarget() instanceof TextInputControl field && field.isRedoable();
        KeyCode code = event.getCode();
        if (code.isDigitKey() && digit(code) >= 1 && digit(code) <= Step.values().length) {
            Step step = List.of(Step.values()).get(digit(code) - 1);
            if (stations.containsKey(step)) {
                model.stepProperty().set(step);
            }
        } else if (code == KeyCode.PLUS || code == KeyCode.EQUALS || code == KeyCode.ADD) {
            model.largerText();
        } else if (code == KeyCode.MINUS || code == KeyCode.SUBTRACT) {
            model.smallerText();
        } else if (code == KeyCode.DIGIT0 || code == KeyCode.NUMPAD0) {
            model.setTextShare(1);
        } else if (code == KeyCode.ENTER) {
            model.doNow();
        } else if (code == KeyCode.Z && !ownUndo && !event.isShiftDown()) {
            model.undo();
        } else if ((code == KeyCode.Y || code == KeyCode.Z && event.isShiftDown()) && !ownRedo) {
            model.redo();
        } else if (code == KeyCode.U) {
            units();
        } else if (code == KeyCode.B) {
            model.lastBoat();
        } else if (code == KeyCode.L) {
            model.darkProperty().set(!model.darkProperty().get());
        } else {
            return;
        }
        event.consume();
    }

    private static int digit(KeyCode code) {
        return code.getChar().charAt(0) - '0';
    }
}
