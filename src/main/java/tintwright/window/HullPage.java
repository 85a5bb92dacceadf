package tintwright.window;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import tintwright.colour.Geometry;
import tintwright.colour.Viewing;
import tintwright.window.picture.Patches;
import tintwright.window.picture.Shade;

/** The hull: every reading of the place side by side, and three ways to add one. */
final class HullPage {
    private static final Map<String, Viewing> LIGHTS = new LinkedHashMap<>();

    static {
        LIGHTS.put("daylight D65, 10\u00b0", Viewing.D65_10);
        LIGHTS.put("D50, 2\u00b0", Viewing.D50_2);
        LIGHTS.put("D65, 2\u00b0", Viewing.D65_2);
    }

    private final HullModel model;
    private final Runnable toThePhoto;
    private final Patches patches = new Patches();
    private final Label title = Pieces.heading("");
    private final Label mean = Pieces.wrapped("", "figure");
    private final Label sure = Pieces.soft("");
    private final Label doubt = Pieces.whenSaid(Pieces.wrapped("", "caution"));
    private final VBox lines = new VBox();
    private final TextField lightness = new TextField();
    private final TextField a = new TextField();
    private final TextField b = new TextField();
    private final TextField place = new TextField();
    private final ComboBox<String> light = new ComboBox<>();
    private final ComboBox<String> gloss = new ComboBox<>();

    /** @param toThePhoto opens the reading of a photo */
    HullPage(HullModel model, Runnable toThePhoto) {
        this.model = model;
        this.toThePhoto = toThePhoto;
        lines.getStyleClass().add("lines");
    }

    Region build() {
        VBox known = Pieces.sheet("", title, mean, sure, doubt, lines);
        VBox left = new VBox(patches, known);
        left.getStyleClass().add("pictures");
        VBox right = new VBox(typed(), fromFile(), fromPhoto(), eyes());
        right.getStyleClass().addAll("column", "side");
        model.hullProperty().addListener((property, before, after) -> show(after));
        show(model.hullProperty().get());
        return new Sides(left, right, true, 62);
    }

    /** Reads an instrument's file; what it does not say is as chosen on this page. */
    void open(Path file) {
        model.open(file, viewing(), geometry());
    }

    private Node typed() {
        for (TextField field : List.of(lightness, a, b)) {
            field.setPrefColumnCount(5);
            field.setOnAction(event -> add());
        }
        lightness.setId("lightness");
        a.setId("red-green");
        b.setId("yellow-blue");
        place.setId("new-place");
        place.setPromptText("leave empty for the place in hand");
        light.getItems().setAll(LIGHTS.keySet());
        light.getSelectionModel().select(0);
        light.setAccessibleText("light and observer the numbers are stated for");
        gloss.getItems().setAll("without gloss (45:0, d:8 excluded)", "with gloss (d:8 included)");
        gloss.getSelectionModel().select(0);
        gloss.setAccessibleText("how the instrument reads");
        Label glossAsked = new Label("The instrument reads");
        glossAsked.getStyleClass().add("question");
        VBox glossy = new VBox(glossAsked, gloss);
        glossy.getStyleClass().add("asked");
        Label lightAsked = new Label("For which light");
        lightAsked.getStyleClass().add("question");
        VBox lit = new VBox(lightAsked, light);
        lit.getStyleClass().add("asked");
        return Pieces.sheet("Type a reading", Pieces.asked("New place on the boat", place),
                Pieces.row(Pieces.asked("L*", lightness), Pieces.asked("a*", a), Pieces.asked("b*", b)), lit, glossy,
                Pieces.whenSaid(Pieces.bound(model.problemProperty(), "caution")),
                Pieces.mainButton("Add the reading", this::add));
    }

    private Viewing viewing() {
        return LIGHTS.get(light.getValue());
    }

    private Geometry geometry() {
        return gloss.getSelectionModel().getSelectedIndex() == 0 ? Geometry.SPECULAR_EXCLUDED
                : Geometry.SPECULAR_INCLUDED;
    }

    private void add() {
        boolean taken = place.getText().isBlank()
                ? model.type(lightness.getText(), a.getText(), b.getText(), viewing(), geometry())
                : model.newPlace(place.getText(), lightness.getText(), a.getText(), b.getText(), viewing(), geometry());
        if (taken) {
            List.of(place, lightness, a, b).forEach(TextField::clear);
            lightness.requestFocus();
        }
    }

    private Node fromFile() {
        return Pieces.sheet("From an instrument", Pieces.plain("Drop its file here, or open it: CSV, CGATS text or "
                + "CxF. Several samples in one file become several places. What the file "
                + "does not say is taken from above."),
                Pieces.button("Open a file", this::choose));
    }

    private void choose() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Readings of an instrument");
        File chosen = chooser.showOpenDialog(patches.getScene().getWindow());
        if (chosen != null) {
            open(chosen.toPath());
        }
    }

    private Node fromPhoto() {
        return Pieces.sheet("From a photo", Pieces.plain("A card with known patches lies on the hull beside the spot. "
                + "Drop the photo here, or open it."), Pieces.button("Read a photo", toThePhoto));
    }

    private static Node eyes() {
        return Pieces.sheet("Before you trust it", Pieces.plain("Read a clean, dry, flat spot, three times, a hand's "
                + "breadth apart. A screen is no swatch: judge the cured chip edge to edge on the hull, in daylight, "
                + "and turn it once."));
    }

    private void show(HullModel.Hull hull) {
        title.setText(hull.place().isEmpty() ? "No place yet" : hull.place());
        mean.setText(hull.mean().map(lab -> String.format(Locale.ROOT, "L* %.1f   a* %.1f   b* %.1f",
                lab.lightness(), lab.a(), lab.b())).orElse("Not read yet"));
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
            words.append(' ').append(said).append('.');
            Label label = Pieces.plain(said);
            label.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(label, Priority.ALWAYS);
            lines.getChildren().add(Pieces.row(label, Pieces.quietButton("Remove", () -> model.remove(index))));
        }
        hull.mean().ifPresent(lab -> shown.add(new Patches.Patch(Shade.of(lab), "together", true)));
        patches.show(shown, words.toString());
    }
}
