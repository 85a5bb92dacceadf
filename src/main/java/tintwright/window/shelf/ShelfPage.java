package tintwright.window.shelf;

import java.io.File;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import tintwright.shelf.ItemKind;
import tintwright.units.UnitSystem;
import tintwright.window.picture.Patches;
import tintwright.window.pieces.MeterFields;
import tintwright.window.pieces.MeterSetting;
import tintwright.window.pieces.Pieces;
import tintwright.window.pieces.Sides;

/** The shelf: everything on it as a row of colours and a list, and three short ways to add to it. */
public final class ShelfPage {
    private final ShelfModel model;
    private final Patches patches = new Patches();
    private final Label title = Pieces.heading("");
    private final Label next;
    private final UnitSystem units;
    private final GridPane table = new GridPane();
    private final VBox doubts = new VBox();
    private final StockCard stock;
    private boolean bare;
    private final VBox side = new VBox();
    private final TextField chip = new TextField();
    private final TextField white = new TextField();

    public ShelfPage(ShelfModel model, UnitSystem units) {
        this.model = model;
        this.units = units;
        stock = new StockCard(model, units, this::order);
        next = Pieces.bound(model.nextProperty().map(ShelfModel.Advice::words), "plain");
        table.getStyleClass().add("table");
        doubts.getStyleClass().addAll("caution-sheet", "asked");
    }

    public Region build() {
        VBox known = Pieces.sheet("", title, table);
        Button made = Pieces.mainButton("I have made it: type what it says", this::beginChip);
        made.setId("chip-made");
        VBox chipNext = Pieces.sheet(
                "What chip to make next",
                next,
                Pieces.onlyWhen(
                        model.nextProperty().map(advice -> !advice.line().isEmpty()), made));
        Node toBuy = Pieces.onlyWhen(
                model.standProperty().map(stand -> !stand.toBuy().isEmpty()),
                Pieces.sheet(
                        "To buy",
                        Pieces.bound(model.standProperty().map(stand -> String.join("\n", stand.toBuy())), "plain")));
        VBox wide = new VBox(chipNext, doubts, patches, known, toBuy);
        wide.getStyleClass().add("pictures");
        side.getChildren().setAll(chipEntry(), stock.node(), own());
        side.getStyleClass().addAll("column", "side");
        Pieces.follow(wide, model.standProperty(), (before, after) -> show(after));
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
        chip.setOnAction(event -> addChip());
        return Pieces.sheet(
                "Add a chip",
                Pieces.plain("In one line: grams and name of each tint, \u201cin\u201d, "
                        + "grams of white, a colon, then L*, a* and b* of the cured chip."),
                Pieces.asked("The chip", chip),
                Pieces.soft(MeterFields.MEANING + " " + MeterSetting.USUAL),
                Pieces.whenSaid(Pieces.bound(model.problemProperty(), "caution")),
                Pieces.button("Learn from it", this::addChip));
    }

    /** Takes over what is known of the proposed chip and leaves the rest to be typed. */
    private void beginChip() {
        chip.setText(model.nextProperty().get().line());
        chip.requestFocus();
        chip.end();
    }

    private void addChip() {
        if (model.addChip(chip.getText())) {
            chip.clear();
        }
    }

    private Node own() {
        white.setId("own-white");
        white.setPromptText("its name");
        return Pieces.sheet(
                "Another shelf",
                Pieces.asked("Your white gel coat", white),
                Pieces.flow(
                        Pieces.button("Begin with this white", () -> model.startOwn(white.getText())),
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
        boolean noTint = stand.lines().stream().noneMatch(line -> line.kind() == ItemKind.TINT);
        if (noTint != bare) {
            bare = noTint;
            order();
        }
        title.setText(stand.name());
        chip.setPromptText("0.2 "
                + stand.lines().stream()
                        .filter(line -> line.kind() == ItemKind.TINT)
                        .map(ShelfModel.Line::name)
                        .findFirst()
                        .orElse("black")
                + " in 19.8: 61.2 -0.4 -1.1");
        table.getChildren().clear();
        heads();
        List<Patches.Patch> shown = new ArrayList<>();
        StringBuilder words = new StringBuilder("The shelf as colours, each tint one part in a hundred of white:");
        for (ShelfModel.Line line : stand.lines()) {
            line.look().ifPresent(look -> shown.add(new Patches.Patch(look, line.name(), true)));
            line.look().ifPresent(look -> words.append(' ').append(line.name()).append('.'));
            row(line);
        }
        patches.show(shown, words.toString());
        doubts.getChildren().setAll(stand.doubts().stream().map(Pieces::plain).toList());
        doubts.setVisible(!stand.doubts().isEmpty());
        doubts.setManaged(!stand.doubts().isEmpty());
    }

    private void heads() {
        String[] words = {"", "How well its strength is known", "Chips", "Left", ""};
        for (int i = 0; i < words.length; i++) {
            Label head = Pieces.wrapped(words[i], "question");
            if (i != 1) {
                head.setMinWidth(Region.USE_PREF_SIZE);
            }
            table.add(head, i, 0);
        }
    }

    /** Name, what is known, chips, grams left; what is to be seen to stands on a line of its own below. */
    private void row(ShelfModel.Line line) {
        int row = table.getRowCount();
        Label named = Pieces.wrapped(line.name(), "strong");
        GridPane.setHgrow(named, Priority.SOMETIMES);
        Label known = Pieces.plain(line.known().isEmpty() ? line.kind().word() : line.known());
        GridPane.setHgrow(known, Priority.SOMETIMES);
        Label chips = Pieces.plain(line.chips());
        chips.setMinWidth(Region.USE_PREF_SIZE);
        GridPane.setHalignment(chips, HPos.RIGHT);
        Label grams =
                Pieces.plain(line.left().isPresent() ? units.mass(line.left().getAsDouble()) : "\u2013");
        grams.setMinWidth(Region.USE_PREF_SIZE);
        grams.setAccessibleText(line.left().isPresent() ? grams.getText() + " left" : "not weighed");
        Button change = Pieces.quietButton("Change", () -> open(line));
        change.setAccessibleText("Change " + line.name());
        table.addRow(row, named, known, chips, grams, change);
        if (!line.warnings().isEmpty()) {
            Label warned = Pieces.wrapped(line.warnings(), "caution");
            table.add(warned, 1, row + 1, 3, 1);
        }
    }

    /** The card that was at the top goes back to its place below the chip; without a tint it comes first. */
    private void order() {
        side.getChildren().remove(stock.node());
        side.getChildren().add(bare ? 0 : 1, stock.node());
    }

    private void open(ShelfModel.Line line) {
        if (line.kind() == ItemKind.LEFTOVER) {
            stock.leftover(line.id());
        } else {
            stock.change(line.id());
        }
        // To the top of its column, in sight wherever that was scrolled to.
        side.getChildren().remove(stock.node());
        side.getChildren().add(0, stock.node());
        for (Parent above = side.getParent(); above != null; above = above.getParent()) {
            if (above instanceof ScrollPane column) {
                column.setVvalue(0);
            }
        }
    }
}
