package tintwright.window.hull;

import java.io.File;
import java.util.List;
import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import javafx.stage.FileChooser.ExtensionFilter;
import javafx.util.StringConverter;
import tintwright.colour.Lab;
import tintwright.colour.RgbSpace;
import tintwright.reading.FilmState;
import tintwright.reading.photo.Flag;
import tintwright.reading.photo.PhotoReadings;
import tintwright.reading.photo.SpotReading;
import tintwright.reading.photo.card.CardFinder;
import tintwright.reading.photo.card.ReferenceCard;
import tintwright.window.pieces.AskForFile;
import tintwright.window.pieces.Controls;

/** The photo station: the picture with its marks, what to do next, and the readings beside it. */
public final class PhotoView extends StackPane {
    private static final String HOW = "Clean and polish the spot. Open shade, no flash. Lay the card flat on the hull "
            + "beside the spot. Hold the phone square to it, half a metre off, no reflection in it. Tap the card's "
            + "white so that it is not burnt out. Take three.";

    private static final String CHIP = "Lay the cured chip on the polished hull, edge to edge, and the card beside "
            + "both. Open shade, no flash, no shine. One photo for all three: what the phone gets wrong, it then gets "
            + "wrong for chip and hull alike.";

    private final PhotoModel model;
    private final PhotoPane pane;
    private final VBox readings = new VBox();
    private final VBox flags = new VBox();

    public PhotoView(PhotoModel model) {
        this.model = model;
        this.pane = new PhotoPane(model);
        getStyleClass().add("photo-view");
        BorderPane page = new BorderPane(pane);
        page.setTop(tools());
        page.setRight(side());
        BorderPane.setMargin(pane, new javafx.geometry.Insets(8, 12, 0, 0));
        getChildren().add(page);
        model.readingsProperty().addListener((property, before, after) -> show(after));
        show(model.readingsProperty().get());
        setOnDragOver(event -> {
            if (event.getDragboard().hasFiles()) {
                event.acceptTransferModes(TransferMode.COPY);
            }
            event.consume();
        });
        setOnDragDropped(event -> {
            List<File> files = event.getDragboard().getFiles();
            if (!files.isEmpty()) {
                model.open(files.get(0).toPath());
            }
            event.setDropCompleted(!files.isEmpty());
            event.consume();
        });
    }

    private Node tools() {
        ComboBox<ReferenceCard> card = new ComboBox<>();
        card.setId("photo-card");
        card.setAccessibleText("the card in the photo");
        card.setConverter(new StringConverter<>() {
            @Override
            public String toString(ReferenceCard shown) {
                return shown == null ? "" : "Card: " + shown.name();
            }

            @Override
            public ReferenceCard fromString(String text) {
                throw new UnsupportedOperationException("cards are chosen, not typed");
            }
        });
        Runnable refresh = () -> {
            card.getItems().setAll(model.cards());
            if (!card.getItems().contains(model.marksProperty().get().card())) {
                card.getItems().add(model.marksProperty().get().card());
            }
            card.setValue(model.marksProperty().get().card());
        };
        refresh.run();
        model.marksProperty().addListener((property, before, after) -> {
            if (!after.card().equals(card.getValue())) {
                refresh.run();
            }
        });
        card.setOnAction(event -> {
            if (card.getValue() != null
                    && !card.getValue().equals(model.marksProperty().get().card())) {
                model.choose(card.getValue());
            }
        });
        FlowPane row = new FlowPane(
                8,
                8,
                button("Open a photo", "open-photo", this::openPhoto),
                card,
                button("Another card", "open-card", this::openCard),
                finder(),
                needsPhoto(button("Corners by hand", "by-hand", model::placeByHand)),
                needsPhoto(button("Turn the card", "turn-card", model::turnCard)),
                needsPhoto(button("Whole picture", "fit-photo", pane::fit)),
                onHull());
        model.film().ifPresent(film -> row.getChildren().add(film(film)));
        row.getStyleClass().add("row");
        return row;
    }

    private Node onHull() {
        CheckBox said = new CheckBox("The card lies on the hull, in the spot's light");
        said.setId("card-on-hull");
        said.disableProperty().bind(model.previewProperty().isNull());
        model.marksProperty()
                .addListener((property, before, after) ->
                        said.setSelected(after.rest().cardOnHull()));
        said.setOnAction(event -> model.cardOnHull(said.isSelected()));
        return said;
    }

    private Node film(FilmState now) {
        ComboBox<String> film = new ComboBox<>();
        film.setId("photo-film");
        film.setAccessibleText("whether the chip in the photo is wet or cured");
        film.getItems().setAll("The chip is cured", "The chip is wet");
        film.getSelectionModel().select(now == FilmState.CURED ? 0 : 1);
        film.setOnAction(event ->
                model.film(film.getSelectionModel().getSelectedIndex() == 0 ? FilmState.CURED : FilmState.WET));
        return film;
    }

    /** Not offered for a card that is not looked for. */
    private Button finder() {
        Button finder = button("Find the card", "find-card", model::findCard);
        finder.disableProperty()
                .bind(model.previewProperty()
                        .isNull()
                        .or(Bindings.createBooleanBinding(
                                () -> CardFinder.byHand(
                                                model.marksProperty().get().card())
                                        .isPresent(),
                                model.marksProperty())));
        return finder;
    }

    private Button needsPhoto(Button button) {
        button.disableProperty().bind(model.previewProperty().isNull());
        return button;
    }

    private static Button button(String words, String id, Runnable action) {
        Button button = Controls.button(words, action);
        button.setId(id);
        return button;
    }

    private static Label said(Label label) {
        label.visibleProperty().bind(label.textProperty().isNotEmpty());
        label.managedProperty().bind(label.visibleProperty());
        return label;
    }

    private Node side() {
        Label message = Controls.wrapped("", "plain");
        message.textProperty().bind(model.messageProperty());
        Label problem = Controls.wrapped("", "caution");
        problem.setId("photo-problem");
        problem.textProperty().bind(model.problemProperty());
        ProgressBar bar = new ProgressBar();
        bar.progressProperty().bind(model.progressProperty());
        bar.setAccessibleText("how much of the photo is read");
        bar.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(bar, Priority.ALWAYS);
        HBox working = new HBox(8, bar, button("Stop", "stop-photo", model::stop));
        working.visibleProperty().bind(model.busyProperty());
        working.managedProperty().bind(model.busyProperty());
        Button use =
                button(model.film().isPresent() ? "Take this chip" : "Use these readings", "use-readings", model::use);
        use.getStyleClass().add("main-button");
        use.disableProperty().bind(model.readingsProperty().isNull().or(model.busyProperty()));
        VBox now =
                sheet(Controls.wrapped("The photo", "heading"), said(message), said(problem), working, readings, use);
        VBox how = sheet(
                Controls.wrapped("How to take it", "heading"),
                Controls.wrapped(model.film().isPresent() ? CHIP : HOW, "soft"),
                Controls.wrapped(
                        "A card is a sheet of known colours. The cards named here are invented: print one and have it "
                                + "measured, or open the file of your own.",
                        "soft"));
        VBox column = new VBox(now, flags, how);
        column.getStyleClass().add("column");
        column.setSpacing(10);
        ScrollPane scroll = new ScrollPane(column);
        scroll.setFitToWidth(true);
        scroll.setPrefWidth(380);
        scroll.setMinWidth(280);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        return scroll;
    }

    private static VBox sheet(Node... content) {
        VBox sheet = new VBox(content);
        sheet.getStyleClass().add("sheet");
        sheet.setMinHeight(Region.USE_PREF_SIZE);
        return sheet;
    }

    private void openPhoto() {
        AskForFile.toRead(
                this,
                "A photo of the hull",
                model::open,
                new ExtensionFilter(
                        "Photos", "*.jpg", "*.jpeg", "*.png", "*.tif", "*.tiff", "*.JPG", "*.JPEG", "*.PNG", "*.TIF"));
    }

    private void openCard() {
        AskForFile.toRead(this, "A card of known colours", model::openCard, new ExtensionFilter("Cards", "*.json"));
    }

    private void show(PhotoReadings now) {
        readings.getChildren().clear();
        flags.getChildren().clear();
        flags.setSpacing(6);
        if (now == null) {
            return;
        }
        for (SpotReading one : now.spots()) {
            readings.getChildren().add(line(one));
        }
        String how = Double.isNaN(now.leaveOneOut())
                ? "No reference in use."
                : String.format(
                        Locale.ROOT,
                        "%d reference patches in use, each predicted from the others to %.1f.",
                        now.references(),
                        now.leaveOneOut());
        readings.getChildren().add(Controls.wrapped(how, "soft"));
        for (Flag flag : now.flags()) {
            flags.getChildren()
                    .add(sheet(
                            Controls.wrapped(flag.message(), "plain"),
                            Controls.wrapped(flag.kind().advice(), "soft")));
        }
    }

    private Node line(SpotReading one) {
        Lab lab = one.reading().lab();
        RgbSpace.Code code = RgbSpace.SRGB.encode(lab);
        Rectangle swatch = new Rectangle(34, 34, Color.color(code.red(), code.green(), code.blue()));
        swatch.setStroke(Color.gray(0.5));
        VBox words = new VBox(
                Controls.wrapped(one.spot().name() + ": " + one.inWords(), "plain"),
                Controls.wrapped(
                        String.format(Locale.ROOT, "L* %.1f   a* %.1f   b* %.1f", lab.lightness(), lab.a(), lab.b()),
                        "soft"));
        if (!code.inGamut()) {
            words.getChildren().add(Controls.wrapped("The screen cannot show this colour.", "soft"));
        }
        HBox row = new HBox(10, swatch, words);
        row.getStyleClass().add("row");
        HBox.setHgrow(words, Priority.ALWAYS);
        return row;
    }
}
