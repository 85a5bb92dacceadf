package tintwright.window.hull;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tintwright.colour.DifferenceWords;
import tintwright.reading.ColourReading;
import tintwright.reading.HullFamily;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.window.picture.Patches;
import tintwright.window.picture.Shade;
import tintwright.window.picture.SheetPicture;
import tintwright.window.pieces.AskForFile;
import tintwright.window.pieces.Choices;
import tintwright.window.pieces.Controls;
import tintwright.window.pieces.Doors;
import tintwright.window.pieces.Figures;
import tintwright.window.pieces.MeterFields;
import tintwright.window.pieces.MeterSetting;
import tintwright.window.pieces.SideBySide;

/** The hull: what was read of the place, and three doors of equal rank to it: photo with the sheet, meter, eye. */
final class HullPage {
    private final HullModel model;
    private final SheetModel sheet;
    private final Runnable toThePhoto;
    private final Node phone;
    private final Patches patches = new Patches();
    private final Label title = Controls.heading("");
    private final ComboBox<String> places = new ComboBox<>();
    private final VBox otherPlaces = Choices.asked("Place on the boat", places);
    private final Doors<Door> doors = new Doors<>(door -> "way-to-read-" + door.ordinal());
    private final Map<HullFamily, ToggleButton> families = new EnumMap<>(HullFamily.class);
    private final ReadPhoto photo = new ReadPhoto();
    private boolean filling;
    private final Label mean = Controls.whenSaid(Controls.wrapped("", "figure"));
    private final Label figures = Controls.whenSaid(Controls.plain(""));
    private final Button numbersToo = Controls.quietButton("", () -> {});
    /** Whoever reads with a meter knows its numbers; to everybody else they are one press away. */
    private boolean otherwise;

    private final Label sure = Controls.whenSaid(Controls.plain(""));
    private final Label doubt = Controls.whenSaid(Controls.wrapped("", "caution"));
    private final GridPane lines = new GridPane();
    private final VBox before = eyes();
    private final VBox known = Controls.sheet("");
    private final SheetPicture drawn = new SheetPicture();
    private final Button open = Controls.mainButton("Open the photo", this::openPhoto);
    private final MeterFields numbers = new MeterFields("lightness", "red-green", "yellow-blue", this::add);
    private final MeterSetting setting = new MeterSetting();
    /** The place whose readings the meter was last set by. */
    private String setFor = "";

    private final TextField place = new TextField();

    private enum Door {
        PHOTO,
        METER,
        EYE
    }

    /**
     * @param toThePhoto opens the reading of a photo
     * @param phone      the door for photos from a phone
     */
    HullPage(HullModel model, SheetModel sheet, Runnable toThePhoto, Node phone) {
        this.model = model;
        this.sheet = sheet;
        this.phone = phone;
        this.toThePhoto = toThePhoto;
        lines.getStyleClass().add("table");
    }

    Region build() {
        places.setId("hull-place");
        places.setMaxWidth(Double.MAX_VALUE);
        places.setOnAction(event -> {
            int index = places.getSelectionModel().getSelectedIndex();
            if (!filling && index >= 0) {
                model.take(index);
            }
        });
        mean.setId("hull-looks");
        sure.setTooltip(new Tooltip(DifferenceWords.LIKELY_MEANS));
        mean.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(mean, Priority.ALWAYS);
        numbersToo.setId("hull-numbers");
        numbersToo.setOnAction(event -> {
            otherwise = !otherwise;
            show(model.hullProperty().get());
        });
        known.getChildren()
                .setAll(
                        otherPlaces,
                        title,
                        Controls.row(mean, numbersToo),
                        figures,
                        sure,
                        doubt,
                        lines,
                        wrong(HullModel.Where.LINES));
        VBox left = new VBox(photo, drawn, patches, known, before);
        VBox.setVgrow(drawn, Priority.ALWAYS);
        left.getStyleClass().add("pictures");
        VBox right = new VBox(ways());
        right.getStyleClass().addAll("column", "side");
        model.hullProperty().addListener((property, before, after) -> show(after));
        // A file may be dropped while another door is open: what was wrong with it is said behind its own.
        opens(HullModel.Where.FILE, Door.METER);
        opens(HullModel.Where.PHOTO, Door.PHOTO);
        Controls.follow(
                left,
                sheet.sightProperty(),
                (before, after) -> show(model.hullProperty().get()));
        SideBySide sides = new SideBySide(left, right, false);
        // Until something is read the doors to it come before the picture that explains them.
        Controls.follow(
                sides,
                model.hullProperty(),
                (was, hull) -> sides.narrowAbove(hull.lines().isEmpty()));
        sides.narrowAbove(model.hullProperty().get().lines().isEmpty());
        show(model.hullProperty().get());
        sheet.inSight();
        return sides;
    }

    /** Reads an instrument's file; what it does not say is as chosen on this page. */
    void open(Path file) {
        model.open(file, setting.viewing(), setting.geometry());
    }

    private void opens(HullModel.Where where, Door door) {
        model.problemProperty(where).addListener((property, before, after) -> {
            if (!after.isEmpty()) {
                doors.take(door);
            }
        });
    }

    /** Three doors to the hull's colour, and below them what the open one asks. */
    private Node ways() {
        place.setId("new-place");
        place.setOnAction(event -> {
            if (doors.isOpen(Door.METER) && numbers.lightness().isBlank()) {
                numbers.first().requestFocus();
            } else if (doors.isOpen(Door.METER)) {
                add();
            } else if (doors.isOpen(Door.PHOTO)) {
                open.requestFocus();
            }
        });
        numbers.first().getStyleClass().add("do-now");
        doors.with(Door.PHOTO, "Photo", column(fromPhoto()))
                .with(Door.METER, "Meter", column(metered()))
                .with(Door.EYE, "Eye", column(byEye()));
        // As this place was read before; a place that was not read yet begins with the photo.
        doors.take(model.picked().isPresent() ? Door.EYE : model.readByMeter() ? Door.METER : Door.PHOTO);
        return Controls.sheet("Read the hull", Controls.asked("New place on the boat", place), doors);
    }

    private static Node column(List<Node> content) {
        return Controls.column(content.toArray(Node[]::new));
    }

    /** Below the button, which so stays where it is while something is said. */
    private Label wrong(HullModel.Where where) {
        Label label = Controls.whenSaid(Controls.bound(model.problemProperty(where), "caution"));
        label.setId("wrong-" + where.name().toLowerCase(Locale.ROOT));
        return label;
    }

    private List<Node> metered() {
        return List.of(
                numbers,
                setting,
                Controls.mainButton("Add the reading", this::add),
                wrong(HullModel.Where.TYPED),
                Controls.soft(
                        "Or drop the meter's file anywhere here: CSV, CGATS text or CxF. Several samples in one file"
                                + " become several places."),
                Controls.button("Open its file", this::choose),
                wrong(HullModel.Where.FILE));
    }

    /** Drawn families of faded hulls: it is only where to begin. */
    private List<Node> byEye() {
        FlowPane keys = new FlowPane();
        keys.getStyleClass().add("families");
        for (HullFamily family : HullFamily.values()) {
            StackPane field = new StackPane();
            field.getStyleClass().add("hull-family-field");
            if (family == HullFamily.ANY) {
                field.getChildren().add(Controls.wrapped("?", "shelf-unknown"));
            } else {
                field.setStyle(Shade.of(family.middle()).css());
            }
            Label name = new Label(family == HullFamily.ANY ? "another" : family.words());
            name.getStyleClass().add("family-name");
            VBox card = new VBox(field, name);
            card.getStyleClass().add("hull-family-card");
            ToggleButton key = new ToggleButton();
            key.setGraphic(card);
            key.getStyleClass().setAll("choice-key", "hull-family");
            key.setId("hull-like-" + family.name().toLowerCase(Locale.ROOT).replace('_', '-'));
            key.setAccessibleText("The hull is " + name.getText());
            key.setOnAction(event -> {
                model.pick(family, place.getText());
                place.clear();
                chosen();
            });
            families.put(family, key);
            keys.getChildren().add(key);
        }
        return List.of(
                Controls.plain("No photo and no meter: press what the hull looks like. It is only where to begin. After"
                        + " each dab you say what you see beside the hull, and that does the rest."),
                keys,
                wrong(HullModel.Where.EYE));
    }

    private void chosen() {
        Optional<HullFamily> picked = model.picked();
        families.forEach(
                (family, key) -> key.setSelected(picked.filter(family::equals).isPresent()));
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

    private void choose() {
        AskForFile.toRead(patches, "Readings of a meter", this::open);
    }

    private List<Node> fromPhoto() {
        open.setId("open-photo");
        OnSheetForm form = new OnSheetForm(sheet);
        Controls.show(form, false);
        Button lying = Controls.quietButton("", () -> Controls.show(form, !form.isVisible()));
        lying.setId("on-sheet");
        Controls.follow(lying, sheet.contentsProperty(), (before, after) -> lying.setText(lying(after)));
        lying.setText(lying(sheet.contentsProperty().get()));
        return List.of(
                Controls.plain(
                        "Lay the printed sheet on the hull, in the shade, so that the hull shows through its window."
                                + " Photograph it from above, and drop the photo here or open it."),
                Controls.flow(open, phone),
                wrong(HullModel.Where.PHOTO),
                Controls.closeKeys(
                        lying,
                        Controls.quietButton("Print the sheet", this::printSheet),
                        Controls.quietButton("Mark the spots by hand", toThePhoto)),
                form);
    }

    private static String lying(SheetContents now) {
        int chips = now.chips().size();
        String tape = now.tapeLayers() == 0 ? "" : " and tape";
        return "On the sheet: "
                + (chips == 0
                        ? tape.isEmpty() ? "paper alone" : "paper and tape"
                        : chips == 1 ? "1 chip" + tape : chips + " chips" + tape)
                + " \u203a";
    }

    private void openPhoto() {
        AskForFile.toRead(patches, "A photo of the hull with the sheet on it", this::read);
    }

    /** Reads a photo with the sheet on it, into the place whose name was typed or else the one in hand. */
    void read(Path photo) {
        sheet.read(photo, place.getText());
        place.clear();
    }

    private void printSheet() {
        AskForFile.toWrite(patches, "The sheet, to print", "hull-sheet.pdf", sheet::print);
    }

    private static VBox eyes() {
        return Controls.sheet(
                "",
                Controls.soft("Read a clean, dry, flat spot; with a meter three times, "
                        + "a hand's breadth apart. A screen is no swatch: judge the cured chip edge to edge on the hull, in daylight, "
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
        if (!hull.place().equals(setFor)) {
            setFor = hull.place();
            model.lastMetered()
                    .ifPresent(read -> setting.setTo(
                            read instanceof ColourReading typed ? typed.lab().viewing() : setting.viewing(),
                            read.geometry()));
        }
        filling = true;
        if (!places.getItems().equals(model.places())) {
            places.getItems().setAll(model.places());
        }
        places.getSelectionModel().select(model.inHand());
        filling = false;
        Controls.show(otherPlaces, model.places().size() > 1);
        Controls.show(title, model.places().size() < 2);
        title.setText(hull.place().isEmpty() ? "" : hull.place());
        place.getStyleClass().remove("do-now");
        if (hull.place().isEmpty()) {
            place.getStyleClass().add("do-now");
        }
        place.setPromptText(hull.place().isEmpty() ? "such as: port bow" : "leave empty for the place in hand");
        boolean withNumbers = model.readByMeter() != otherwise;
        mean.setText(
                hull.looks().isEmpty()
                        ? ""
                        : hull.looks().substring(0, 1).toUpperCase(Locale.ROOT)
                                + hull.looks().substring(1));
        figures.setText(hull.mean()
                .filter(any -> withNumbers)
                .map(lab -> Figures.lab(lab) + ", for " + lab.viewing())
                .orElse(""));
        numbersToo.setText(withNumbers ? "Without numbers" : "Its numbers");
        Controls.show(numbersToo, hull.mean().isPresent());
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
            Label number = Controls.wrapped(Integer.toString(i + 1), "strong");
            String origin = withNumbers ? line.words() : line.from();
            Label from = Controls.plain(line.counts() ? origin : origin + ", left out");
            Button remove = Controls.quietButton("Remove", () -> model.remove(index));
            remove.setAccessibleText("Remove reading " + (i + 1));
            GridPane.setHgrow(from, Priority.ALWAYS);
            number.setMinWidth(Region.USE_PREF_SIZE);
            GridPane.setHalignment(remove, HPos.RIGHT);
            lines.addRow(i, number, from, remove);
        }
        if (shown.size() == 1) {
            shown.set(0, new Patches.Patch(shown.get(0).shade(), hull.place(), true));
        } else {
            hull.mean().ifPresent(lab -> shown.add(new Patches.Patch(Shade.of(lab), "together", true)));
        }
        chosen();
        // A place that has been read asks for nothing more here: the foot says what is next.
        Controls.main(open, hull.lines().isEmpty());
        Controls.show(drawn, hull.lines().isEmpty());
        Controls.show(known, !hull.place().isEmpty());
        Optional<SheetModel.Sight> sight = sheet.sightProperty()
                .get()
                .filter(read -> hull.mean().isPresent() && hull.photos().contains(read.photo()));
        sight.ifPresent(read -> photo.show(read, Shade.of(hull.mean().orElseThrow())));
        Controls.show(photo, sight.isPresent());
        // With a photo in sight it has been read already, and the photo needs the room.
        Controls.show(before, sight.isEmpty());
        Controls.show(
                patches, !shown.isEmpty() && (sight.isEmpty() || hull.lines().size() > 1));
        patches.show(shown, words.toString());
    }
}
