package tintwright.window.hull;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import tintwright.window.picture.Patches;
import tintwright.window.picture.Shade;
import tintwright.window.pieces.Choices;
import tintwright.window.pieces.MeterFields;
import tintwright.window.pieces.MeterSetting;
import tintwright.window.pieces.Pieces;
import tintwright.window.pieces.Sides;

/** The hull: every reading of the place side by side, and the doors to add one: photo, meter, its file. */
final class HullPage {
    private final HullModel model;
    private final Runnable toThePhoto;
    private final Node phone;
    private final Patches patches = new Patches();
    private final Label title = Pieces.heading("");
    private final ComboBox<String> places = new ComboBox<>();
    private final VBox otherPlaces = Choices.asked("Place on the boat", places);
    private final List<ToggleButton> wayKeys = new ArrayList<>();
    private boolean filling;
    private final Label mean = Pieces.whenSaid(Pieces.wrapped("", "figure"));
    private final Label sure = Pieces.whenSaid(Pieces.soft(""));
    private final Label doubt = Pieces.whenSaid(Pieces.wrapped("", "caution"));
    private final GridPane lines = new GridPane();
    private final MeterFields numbers = new MeterFields("lightness", "red-green", "yellow-blue", this::add);
    private final MeterSetting setting = new MeterSetting();
    private final TextField place = new TextField();
    private final VBox chosen = new VBox();

    /**
     * @param toThePhoto opens the reading of a photo
     * @param phone      the door for photos from a phone
     */
    HullPage(HullModel model, Runnable toThePhoto, Node phone) {
        this.model = model;
        this.phone = phone;
        this.toThePhoto = toThePhoto;
        lines.getStyleClass().add("table");
        chosen.getStyleClass().add("column");
    }

    Region build() {
        numbers.first().getStyleClass().add("do-now");
        places.setId("hull-place");
        places.setMaxWidth(Double.MAX_VALUE);
        places.setOnAction(event -> {
            int index = places.getSelectionModel().getSelectedIndex();
            if (!filling && index >= 0) {
                model.take(index);
            }
        });
        VBox known = Pieces.sheet("", otherPlaces, title, mean, sure, doubt, lines, wrong(HullModel.Where.LINES));
        VBox left = new VBox(patches, known);
        left.getStyleClass().add("pictures");
        VBox right = new VBox(ways(), eyes());
        right.getStyleClass().addAll("column", "side");
        model.hullProperty().addListener((property, before, after) -> show(after));
        // A file may be dropped while another way to read is open: what was wrong with it is said at the files.
        model.problemProperty(HullModel.Where.FILE).addListener((property, before, after) -> {
            if (!after.isEmpty()) {
                wayKeys.get(2).fire();
            }
        });
        model.problemProperty(HullModel.Where.PHOTO).addListener((property, before, after) -> {
            if (!after.isEmpty()) {
                wayKeys.get(0).fire();
            }
        });
        show(model.hullProperty().get());
        return new Sides(left, right, true, 62);
    }

    /** Reads an instrument's file; what it does not say is as chosen on this page. */
    void open(Path file) {
        model.open(file, setting.viewing(), setting.geometry());
    }

    /** Three ways to a reading side by side, and below them what the chosen one asks. */
    private Node ways() {
        place.setId("new-place");
        place.setOnAction(event -> {
            if (numbers.lightness().isBlank()) {
                numbers.first().requestFocus();
            } else {
                add();
            }
        });
        numbers.first().getStyleClass().add("do-now");
        Map<String, List<Node>> ways = new LinkedHashMap<>();
        ways.put("Photo", fromPhoto());
        ways.put("Meter", typed());
        ways.put("Meter's file", fromFile());
        ToggleGroup group = new ToggleGroup();
        HBox keys = Pieces.row();
        ways.forEach((words, asks) -> {
            ToggleButton key = new ToggleButton(words);
            key.getStyleClass().setAll("choice-key");
            key.setId("way-to-read-" + keys.getChildren().size());
            key.setToggleGroup(group);
            key.setMaxWidth(Double.MAX_VALUE);
            key.setMinWidth(Region.USE_PREF_SIZE);
            HBox.setHgrow(key, Priority.ALWAYS);
            key.setOnAction(event -> {
                key.setSelected(true);
                chosen.getChildren().setAll(asks);
                // The one piece that says how the meter is set stands wherever it is needed.
                asks.stream()
                        .filter(VBox.class::isInstance)
                        .map(VBox.class::cast)
                        .filter(box -> "meter".equals(box.getId()))
                        .forEach(box -> box.getChildren().setAll(setting));
            });
            keys.getChildren().add(key);
            wayKeys.add(key);
        });
        // As this place was read before; a place that was not read yet begins with the photo.
        wayKeys.get(model.readByMeter() ? 1 : 0).fire();
        return Pieces.sheet("Read the hull", Pieces.asked("New place on the boat", place), keys, chosen);
    }

    /** Below the button, which so stays where it is while something is said. */
    private Label wrong(HullModel.Where where) {
        Label label = Pieces.whenSaid(Pieces.bound(model.problemProperty(where), "caution"));
        label.setId("wrong-" + where.name().toLowerCase(Locale.ROOT));
        return label;
    }

    private List<Node> typed() {
        return List.of(numbers, meter(), Pieces.mainButton("Add the reading", this::add), wrong(HullModel.Where.TYPED));
    }

    private static VBox meter() {
        VBox place = new VBox();
        place.setId("meter");
        return place;
    }

    private void add() {
        boolean taken = place.getText().isBlank()
                ? model.type(numbers.lightness(), numbers.a(), numbers.b(), setting.viewing(), setting.geometry())
                : model.newPlace(
                        place.getText(),
                        numbers.lightness(),
                        numbers.a(),
                        numbers.b(),
                        setting.viewing(),
                        setting.geometry());
        if (taken) {
            place.clear();
            numbers.clear();
            numbers.first().requestFocus();
        }
    }

    private List<Node> fromFile() {
        return List.of(
                Pieces.plain("Drop the file of your meter anywhere here, or open it: CSV, CGATS text or CxF. "
                        + "Several samples in one file become several places."),
                Pieces.mainButton("Open a file", this::choose),
                wrong(HullModel.Where.FILE),
                Pieces.soft("Where the file does not say how the meter was set:"),
                meter());
    }

    private void choose() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Readings of a meter");
        File chosen = chooser.showOpenDialog(patches.getScene().getWindow());
        if (chosen != null) {
            open(chosen.toPath());
        }
    }

    private List<Node> fromPhoto() {
        Button open = Pieces.mainButton("Open the photo", this::openPhoto);
        open.setId("open-photo");
        return List.of(
                Pieces.plain("Print the sheet once. Lay it on the hull, in the shade, so that the hull shows through"
                        + " its window, and photograph it from above. Drop the photo anywhere here, or open it."),
                open,
                phone,
                wrong(HullModel.Where.PHOTO),
                Pieces.flow(
                        Pieces.quietButton("Print the sheet", this::printSheet),
                        Pieces.quietButton("Mark the spots by hand", toThePhoto)));
    }

    private void openPhoto() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("A photo of the hull with the sheet on it");
        File chosen = chooser.showOpenDialog(patches.getScene().getWindow());
        if (chosen != null) {
            read(chosen.toPath());
        }
    }

    /** Reads a photo with the sheet on it, into the place whose name was typed or else the one in hand. */
    void read(Path photo) {
        model.photoWithSheet(photo, place.getText());
        place.clear();
    }

    private void printSheet() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("The sheet, to print");
        chooser.setInitialFileName("hull-sheet.pdf");
        File chosen = chooser.showSaveDialog(patches.getScene().getWindow());
        if (chosen != null) {
            model.printSheet(chosen.toPath());
        }
    }

    private static Node eyes() {
        return Pieces.sheet(
                "Before you trust it",
                Pieces.plain("Read a clean, dry, flat spot, three times, a hand's "
                        + "breadth apart. A screen is no swatch: judge the cured chip edge to edge on the hull, in daylight, "
                        + "and turn it once."));
    }

    /** Whoever stood on a line's Remove stands on that of the line that took its place. */
    private void show(HullModel.Hull hull) {
        int stood = -1;
        List<Node> before = removeKeys();
        for (int i = 0; i < before.size(); i++) {
            stood = before.get(i).isFocused() ? i : stood;
        }
        draw(hull);
        List<Node> after = removeKeys();
        if (stood >= 0 && !after.isEmpty()) {
            after.get(Math.min(stood, after.size() - 1)).requestFocus();
        }
    }

    private List<Node> removeKeys() {
        return lines.getChildren().stream().filter(Button.class::isInstance).toList();
    }

    private void draw(HullModel.Hull hull) {
        filling = true;
        if (!places.getItems().equals(model.places())) {
            places.getItems().setAll(model.places());
        }
        places.getSelectionModel().select(model.inHand());
        filling = false;
        Pieces.show(otherPlaces, model.places().size() > 1);
        Pieces.show(title, model.places().size() < 2);
        title.setText(hull.place().isEmpty() ? "No place read yet" : hull.place());
        place.setPromptText(hull.place().isEmpty() ? "such as: port bow" : "leave empty for the place in hand");
        mean.setText(hull.mean()
                .map(lab ->
                        String.format(Locale.ROOT, "L* %.1f   a* %.1f   b* %.1f", lab.lightness(), lab.a(), lab.b()))
                .orElse(""));
        sure.setText(hull.sure());
        doubt.setText(hull.doubt());
        List<Patches.Patch> shown = new ArrayList<>();
        lines.getChildren().clear();
        StringBuilder words = new StringBuilder("Readings of " + hull.place() + " side by side.");
        for (int i = 0; i < hull.lines().size(); i++) {
            int index = i;
            HullModel.Line line = hull.lines().get(i);
            if (i < HullModel.mostShown()) {
                shown.add(new Patches.Patch(Shade.of(line.colour()), Integer.toString(i + 1), line.counts()));
            }
            String said = line.counts() ? line.words() : line.words() + ", left out";
            words.append(" Reading ").append(i + 1).append(": ").append(said).append('.');
            Label number = Pieces.wrapped(Integer.toString(i + 1), "strong");
            Label figures = Pieces.plain(line.figures());
            Label from = Pieces.soft(line.counts() ? line.from() : line.from() + ", left out");
            Button remove = Pieces.quietButton("Remove", () -> model.remove(index));
            remove.setAccessibleText("Remove reading " + (i + 1));
            GridPane.setHgrow(from, Priority.ALWAYS);
            number.setMinWidth(Region.USE_PREF_SIZE);
            figures.setMinWidth(Region.USE_PREF_SIZE);
            GridPane.setHalignment(remove, HPos.RIGHT);
            lines.addRow(i, number, figures, from, remove);
        }
        hull.mean().ifPresent(lab -> shown.add(new Patches.Patch(Shade.of(lab), "together", true)));
        Pieces.show(patches, !shown.isEmpty());
        patches.show(shown, words.toString());
    }
}
