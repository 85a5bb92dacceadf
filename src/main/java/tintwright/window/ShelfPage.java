package tintwright.window;

import java.io.File;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.util.StringConverter;
import tintwright.shelf.PigmentFamily;
import tintwright.window.picture.Patches;

/** The shelf: everything on it as a row of colours and a list, and three short ways to add to it. */
final class ShelfPage {
    private final ShelfModel model;
    private final Patches patches = new Patches();
    private final Label title = Pieces.heading("");
    private final Label next;
    private final VBox lines = new VBox();
    private final VBox doubts = new VBox();
    private final TextField name = new TextField();
    private final TextField left = new TextField();
    private final ComboBox<PigmentFamily> family = new ComboBox<>();
    private final TextField chip = new TextField();
    private final TextField white = new TextField();

    ShelfPage(ShelfModel model) {
        this.model = model;
        next = Pieces.bound(model.nextProperty(), "plain");
        lines.getStyleClass().add("lines");
        doubts.getStyleClass().addAll("caution-sheet", "asked");
    }

    Region build() {
        VBox known = Pieces.sheet("", title, lines);
        VBox chipNext = Pieces.sheet("What chip to make next", next);
        VBox wide = new VBox(patches, chipNext, doubts, known);
        wide.getStyleClass().add("pictures");
        VBox side = new VBox(chipEntry(), tintEntry(), own());
        side.getStyleClass().addAll("column", "side");
        model.standProperty().addListener((property, before, after) -> show(after));
        show(model.standProperty().get());
        Region page = new Sides(wide, side, true, 62);
        page.setOnDragOver(event -> {
            if (event.getDragboard().hasFiles()) {
                event.acceptTransferModes(TransferMode.COPY);
            }
            event.consume();
        });
        page.setOnDragDropped(event -> {
            event.getDragboard().getFiles().forEach(file -> model.open(file.toPath()));
            event.setDropCompleted(true);
            event.consume();
        });
        return page;
    }

    private Node chipEntry() {
        chip.setId("chip-line");
        chip.setPromptText("0.2 soot black in 19.8: 61.2 -0.4 -1.1");
        chip.setOnAction(event -> addChip());
        return Pieces.sheet("Add a chip", Pieces.plain("One line: grams and name of each tint, \u201cin\u201d, grams "
                + "of white, a colon, then L*, a*, b* as read (D65, 10\u00b0)."), Pieces.asked("The chip", chip),
                Pieces.whenSaid(Pieces.bound(model.problemProperty(), "caution")),
                Pieces.mainButton("Learn from it", this::addChip));
    }

    private void addChip() {
        if (model.addChip(chip.getText())) {
            chip.clear();
        }
    }

    private Node tintEntry() {
        name.setId("tint-name");
        left.setId("tint-left");
        left.setPrefColumnCount(5);
        family.setId("tint-family");
        family.getItems().setAll(PigmentFamily.values());
        family.getSelectionModel().select(PigmentFamily.UNKNOWN);
        family.setAccessibleText("pigment");
        family.setConverter(new StringConverter<>() {
            @Override
            public String toString(PigmentFamily value) {
                return value == null ? "" : value.words();
            }

            @Override
            public PigmentFamily fromString(String text) {
                throw new UnsupportedOperationException("families are not typed");
            }
        });
        Label asked = new Label("Pigment, as on the label or by its look");
        asked.getStyleClass().add("question");
        asked.setLabelFor(family);
        VBox pigment = new VBox(asked, family);
        pigment.getStyleClass().add("asked");
        return Pieces.sheet("Add a tint", Pieces.asked("Name", name), pigment,
                Pieces.asked("Grams left, if weighed", left),
                Pieces.button("Put it on the shelf", () -> {
                    if (model.addTint(name.getText(), family.getValue(), left.getText())) {
                        name.clear();
                        left.clear();
                    }
                }));
    }

    private Node own() {
        white.setId("own-white");
        white.setPromptText("name of your white gel coat");
        return Pieces.sheet("Another shelf", Pieces.asked("Your white", white),
                Pieces.row(Pieces.button("Clear for my own white", () -> model.startOwn(white.getText())),
                        Pieces.quietButton("Open a shelf file", this::choose)),
                Pieces.soft("The shelf in hand comes back with Undo."));
    }

    private void choose() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("A shelf");
        File chosen = chooser.showOpenDialog(patches.getScene().getWindow());
        if (chosen != null) {
            model.open(chosen.toPath());
        }
    }

    private void show(ShelfModel.Stand stand) {
        title.setText(stand.name());
        lines.getChildren().clear();
        List<Patches.Patch> shown = new ArrayList<>();
        StringBuilder words = new StringBuilder("The shelf as colours, each tint one part in a hundred of white:");
        for (ShelfModel.Line line : stand.lines()) {
            line.look().ifPresent(look -> shown.add(new Patches.Patch(look, line.name(), true)));
            line.look().ifPresent(look -> words.append(' ').append(line.name()).append('.'));
            Label named = Pieces.wrapped(line.name(), "strong");
            named.setMinWidth(Region.USE_PREF_SIZE);
            Label kind = Pieces.soft(line.kind());
            kind.setMinWidth(Region.USE_PREF_SIZE);
            Label said = Pieces.plain(line.words());
            said.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(said, Priority.ALWAYS);
            HBox row = Pieces.row(named, kind, said);
            if (!line.warnings().isEmpty()) {
                row.getChildren().add(Pieces.wrapped(line.warnings(), "caution"));
            }
            lines.getChildren().add(row);
        }
        patches.show(shown, words.toString());
        doubts.getChildren().setAll(stand.doubts().stream().map(Pieces::plain).toList());
        doubts.setVisible(!stand.doubts().isEmpty());
        doubts.setManaged(!stand.doubts().isEmpty());
    }
}
