package tintwright.window.shelf;

import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tintwright.shelf.ItemKind;
import tintwright.units.UnitSystem;
import tintwright.window.picture.Shade;
import tintwright.window.pieces.AskForFile;
import tintwright.window.pieces.Controls;
import tintwright.window.pieces.Doors;
import tintwright.window.pieces.SideBySide;

/** The shelf: everything on it with its colour, and beside it one thing to do with it at a time. */
public final class ShelfPage {
    /** What can be done at the shelf. */
    private enum Deed {
        TINT,
        CHIP,
        OTHER
    }

    private final ShelfModel model;
    private final Label title = Controls.heading("");
    private final UnitSystem units;
    private final GridPane table = new GridPane();
    private final VBox doubts = new VBox();
    private final StockCard stock;
    private final ChipCard chip;
    private final Doors<Deed> doors = new Doors<>(deed -> "shelf-" + deed.name().toLowerCase(Locale.ROOT));
    private final TextField white = new TextField();
    private Optional<ShelfModel.Proposed> asked = Optional.empty();

    public ShelfPage(ShelfModel model, UnitSystem units) {
        this.model = model;
        this.units = units;
        stock = new StockCard(model, units, () -> {});
        chip = new ChipCard(model.chip(), model.nextProperty());
        table.getStyleClass().add("shelf-table");
        doubts.getStyleClass().addAll("caution-sheet", "asked");
        doors.with(Deed.TINT, "Add a tint", stock.node())
                .with(Deed.CHIP, "Add a chip", chip.node())
                .with(Deed.OTHER, "Another shelf", other());
    }

    public Region build() {
        VBox known = Controls.sheet("", title, table);
        Node toBuy = Controls.onlyWhen(
                model.standProperty().map(stand -> !stand.toBuy().isEmpty()),
                Controls.sheet(
                        "To buy",
                        Controls.bound(model.standProperty().map(stand -> String.join("\n", stand.toBuy())), "plain"),
                        Controls.quietButton("Copy as text", model::copyToBuy)));
        VBox wide = new VBox(doubts, known, toBuy);
        wide.getStyleClass().add("pictures");
        VBox side = new VBox(doors);
        side.getStyleClass().add("side");
        Controls.follow(wide, model.standProperty(), (before, after) -> show(after));
        show(model.standProperty().get());
        Region page = new SideBySide(wide, side, false).narrowFirst();
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

    private Node other() {
        white.setId("own-white");
        white.setPromptText("its name");
        return Controls.sheet(
                "Another shelf",
                Controls.asked("Your white gel coat", white),
                Controls.flow(
                        Controls.mainButton("Begin with this white", () -> model.startOwn(white.getText())),
                        Controls.quietButton("Open a shelf file", this::choose)),
                Controls.whenSaid(Controls.bound(model.problemProperty(), "caution")),
                Controls.soft("The shelf in hand comes back with Undo."));
    }

    private void choose() {
        AskForFile.toRead(table, "A shelf", model::open);
    }

    private void show(ShelfModel.Stand stand) {
        title.setText(stand.name());
        table.getChildren().clear();
        heads();
        stand.lines().forEach(this::row);
        table.add(ground("shelf-foot"), 0, table.getRowCount());
        doubts.getChildren().setAll(stand.doubts().stream().map(Controls::plain).toList());
        Controls.show(doubts, !stand.doubts().isEmpty());
        stock.redraw();
        chip.refill();
        askForItsChip(stand);
    }

    /** A tint that nobody knows the colour of is asked for one chip, once, as soon as it stands there. */
    private void askForItsChip(ShelfModel.Stand stand) {
        Optional<ShelfModel.Proposed> unseen = stand.lines().stream()
                .filter(line -> line.kind() == ItemKind.TINT && line.look().isEmpty())
                .findFirst()
                .flatMap(line -> stand.next().chip())
                .filter(proposed -> stand.lines().stream()
                        .anyMatch(line ->
                                line.id().equals(proposed.part()) && line.look().isEmpty()));
        if (unseen.isPresent() && !unseen.equals(asked)) {
            chip.begin(unseen.get());
            doors.take(Deed.CHIP);
        }
        asked = unseen;
    }

    private void heads() {
        table.add(ground("shelf-head"), 0, 0);
        String[] words = {"", "", "Chips", "Left", ""};
        for (int i = 1; i < words.length; i++) {
            Label head = Controls.wrapped(words[i], "question");
            head.setMinWidth(Region.USE_PREF_SIZE);
            head.setMaxWidth(Double.MAX_VALUE);
            if (i == 2 || i == 3) {
                head.getStyleClass().add("right");
            }
            table.add(head, i, 0);
        }
    }

    /** Colour on the even neutral that runs below all of them, name and what is known of it, chips, grams left; what is to be seen to stands below the name. */
    private void row(ShelfModel.Line line) {
        int row = table.getRowCount();
        Label known = Controls.soft(line.known().isEmpty() ? line.kind().word() : "strength " + line.known());
        if (!line.figure().isEmpty()) {
            known.setTooltip(new Tooltip("Strength known " + line.figure()));
        }
        VBox named = new VBox(Controls.wrapped(line.name(), "strong"), known);
        named.getStyleClass().add("shelf-name");
        if (!line.warnings().isEmpty()) {
            named.getChildren().add(Controls.wrapped(line.warnings(), "caution"));
        }
        GridPane.setHgrow(named, Priority.ALWAYS);
        Label chips = figure(line.chips());
        Label grams = figure(line.left().isPresent() ? units.mass(line.left().getAsDouble()) : "\u2013");
        grams.setAccessibleText(line.left().isPresent() ? grams.getText() + " left" : "not weighed");
        Button change = Controls.quietButton("Change", () -> open(line));
        change.setAccessibleText("Change " + line.name());
        table.addRow(row, swatch(line), named, chips, grams, change);
    }

    private static Label figure(String words) {
        Label label = Controls.wrapped(words, "plain");
        label.getStyleClass().add("right");
        label.setMinWidth(Region.USE_PREF_SIZE);
        label.setMaxWidth(Double.MAX_VALUE);
        return label;
    }

    /** Edge to edge with its neighbours on the even neutral; nothing is drawn of what nobody knows. */
    private static Region swatch(ShelfModel.Line line) {
        StackPane field = new StackPane();
        line.look().map(Shade::css).ifPresent(field::setStyle);
        boolean unknown = line.look().isEmpty() && line.kind() == ItemKind.TINT;
        if (unknown) {
            field.getChildren().add(Controls.wrapped("?", "shelf-unknown"));
        }
        line.look()
                .filter(shade -> !shade.shown())
                .ifPresent(shade -> Tooltip.install(
                        field, new Tooltip("Stronger than a screen can show: this is the nearest it comes.")));
        StackPane place = new StackPane(field);
        place.getStyleClass().add("shelf-swatch");
        place.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        return place;
    }

    /** The neutral above the first and below the last colour. */
    private static Region ground(String style) {
        Region ground = new Region();
        ground.getStyleClass().add(style);
        ground.setMaxHeight(Double.MAX_VALUE);
        return ground;
    }

    private void open(ShelfModel.Line line) {
        if (line.kind() == ItemKind.LEFTOVER) {
            stock.leftover(line.id());
        } else {
            stock.change(line.id());
        }
        doors.take(Deed.TINT);
    }
}
