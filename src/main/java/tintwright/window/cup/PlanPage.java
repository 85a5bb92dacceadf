package tintwright.window.cup;

import java.util.List;
import java.util.Locale;
import javafx.collections.FXCollections;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tintwright.bench.job.Job;
import tintwright.reading.PlaceReadings;
import tintwright.units.Grams;
import tintwright.window.picture.DepthGauge;
import tintwright.window.picture.HueRose;
import tintwright.window.picture.SplitSwatch;
import tintwright.window.pieces.Controls;
import tintwright.window.pieces.SideBySide;

/** The plan: hull and mix edge to edge, the way down and around, and what to weigh. */
final class PlanPage {
    private static final List<Double> SCALE_STEPS = List.of(1.0, 0.1, 0.01, 0.001);

    private final PlanModel model;
    private final SplitSwatch swatch = new SplitSwatch();
    private final DepthGauge depth = new DepthGauge();
    private final HueRose rose = new HueRose();
    private final GridPane recipe = new GridPane();
    private final FlowPane choices = Controls.flow();
    private final VBox ways = new VBox();
    private final Label reach = Controls.whenSaid(Controls.wrapped("", "caution"));
    private final Label verdict = Controls.plain("");
    private final ComboBox<String> places = new ComboBox<>();
    private final TextField batch = new TextField();
    private final Runnable begin;
    private Button beginKey;
    private boolean filling;

    /** @param begin begins a cup with this plan */
    PlanPage(PlanModel model, Runnable begin) {
        this.model = model;
        this.begin = begin;
        recipe.getStyleClass().add("recipe");
        ways.getStyleClass().add("asked");
    }

    Region build() {
        HBox lower = new HBox(depth, rose);
        lower.getStyleClass().add("pictures");
        HBox.setHgrow(depth, Priority.ALWAYS);
        HBox.setHgrow(rose, Priority.ALWAYS);
        VBox pictures = new VBox(swatch, lower);
        pictures.getStyleClass().add("pictures");
        VBox.setVgrow(swatch, Priority.ALWAYS);
        VBox.setVgrow(lower, Priority.ALWAYS);
        VBox side = new VBox(answer(), asks());
        side.getStyleClass().addAll("column", "side");
        Controls.follow(side, model.planProperty(), (before, after) -> show(after));
        Controls.follow(side, model.job().jobProperty(), (before, after) -> fill(after));
        fill(model.job().now());
        show(model.planProperty().get());
        return new SideBySide(pictures, side, true).narrowFirst();
    }

    private Node asks() {
        places.setId("place");
        places.setMaxWidth(Double.MAX_VALUE);
        places.setAccessibleText("place on the boat");
        places.setOnAction(event -> {
            int index = places.getSelectionModel().getSelectedIndex();
            if (!filling && index >= 0) {
                model.place(index);
            }
        });
        Label placeAsked = new Label("Place on the boat");
        placeAsked.getStyleClass().add("question");
        placeAsked.setLabelFor(places);
        VBox place = new VBox(placeAsked, places);
        place.getStyleClass().add("asked");
        HBox.setHgrow(place, Priority.ALWAYS);
        batch.setId("batch");
        batch.setPrefColumnCount(4);
        batch.setOnAction(event -> model.batch(batch.getText()));
        batch.textProperty().addListener((property, before, after) -> {
            if (!filling && !after.isBlank()) {
                model.batch(after);
            }
        });
        ComboBox<String> scale = new ComboBox<>();
        SCALE_STEPS.forEach(step -> scale.getItems().add(Grams.onScale(step, step)));
        scale.getSelectionModel().select(SCALE_STEPS.indexOf(model.job().now().scaleStep()));
        scale.setOnAction(event ->
                model.scaleStep(SCALE_STEPS.get(scale.getSelectionModel().getSelectedIndex())));
        scale.setId("scale-step");
        scale.setAccessibleText("smallest step of the scale");
        scale.setMinWidth(Region.USE_PREF_SIZE);
        Label scaleAsked = new Label("Scale shows");
        scaleAsked.getStyleClass().add("question");
        scaleAsked.setLabelFor(scale);
        VBox step = new VBox(scaleAsked, scale);
        step.getStyleClass().add("asked");
        HBox row = Controls.row(place, Controls.asked("How much", batch), step);
        row.getStyleClass().add("asks");
        Label problem = Controls.whenSaid(Controls.bound(model.problemProperty(), "caution"));
        VBox sheet = Controls.sheet("", row, problem);
        return sheet;
    }

    private Node answer() {
        beginKey = Controls.mainButton("Begin the cup", begin);
        choices.setVisible(false);
        choices.managedProperty().bind(choices.visibleProperty());
        Button choose = Controls.quietButton("Which tints may be used", () -> choices.setVisible(!choices.isVisible()));
        choose.setId("choose-tints");
        HBox tools = Controls.row(beginKey, Controls.quietButton("Copy as text", model::copy));
        return Controls.sheet("Weigh", reach, recipe, tools, verdict, ways, choose, choices);
    }

    private void fill(Job job) {
        // A cup that is there already but still being reckoned, as at the start, is not begun a second time.
        beginKey.setDisable(job.cup().isPresent());
        filling = true;
        List<String> names = job.places().stream().map(PlaceReadings::place).toList();
        if (!names.equals(places.getItems())) {
            places.setItems(FXCollections.observableArrayList(names));
        }
        places.getSelectionModel().select(job.place());
        // While a person types, their own text stands; an undo from elsewhere is shown.
        if (!batch.isFocused()) {
            batch.setText(
                    job.grams() == Math.rint(job.grams())
                            ? String.format(Locale.ROOT, "%.0f g", job.grams())
                            : job.grams() + " g");
        }
        filling = false;
    }

    private void show(PlanModel.Plan plan) {
        plan.mix().map(PlanModel.Mix::pictures).ifPresent(pictures -> {
            swatch.show(pictures.swatch());
            depth.show(pictures.depth());
            rose.show(pictures.rose());
        });
        verdict.setText(plan.verdict());
        reach.setText(plan.reach());
        showLines(plan.lines());
        showWays(plan);
    }

    /** What goes in, large; which tints may be used at all stands below, out of the way. */
    private void showLines(List<PlanModel.Line> lines) {
        List<PlanModel.Line> planned =
                lines.stream().filter(line -> !line.grams().isEmpty()).toList();
        recipe.getChildren().clear();
        for (int i = 0; i < planned.size(); i++) {
            Label name = new Label(planned.get(i).name());
            name.setMaxWidth(Double.MAX_VALUE);
            GridPane.setHgrow(name, Priority.ALWAYS);
            Label grams = new Label(planned.get(i).grams());
            grams.getStyleClass().add("recipe-grams");
            grams.setMinWidth(Region.USE_PREF_SIZE);
            GridPane.setHalignment(grams, HPos.RIGHT);
            recipe.addRow(i, name, grams);
        }
        List<PlanModel.Line> tints =
                lines.stream().filter(PlanModel.Line::isTint).toList();
        // The same tints as before: whoever stood on a switch still stands on it.
        if (choices.getChildren().size() != tints.size()) {
            choices.getChildren()
                    .setAll(tints.stream().map(line -> new CheckBox()).toList());
        }
        for (int i = 0; i < tints.size(); i++) {
            PlanModel.Line line = tints.get(i);
            CheckBox box = (CheckBox) choices.getChildren().get(i);
            box.setText(line.name());
            box.setId("use-" + line.id());
            box.setSelected(line.used());
            box.setOnAction(event -> model.use(line.id(), box.isSelected()));
            box.setAccessibleText(line.name() + (line.grams().isEmpty() ? ", not in this mix" : ", " + line.grams())
                    + ", may be used");
        }
    }

    private void showWays(PlanModel.Plan plan) {
        ways.getChildren().clear();
        if (plan.ways().size() < 2) {
            return;
        }
        ToggleGroup group = new ToggleGroup();
        Label asked = new Label("Other ways to mix it");
        asked.getStyleClass().add("question");
        ways.getChildren().add(asked);
        for (int i = 0; i < plan.ways().size(); i++) {
            int index = i;
            PlanModel.Way way = plan.ways().get(i);
            ToggleButton key = new ToggleButton(way.title() + "\n" + way.words());
            key.getStyleClass().setAll("choice-key");
            key.setWrapText(true);
            key.setMaxWidth(Double.MAX_VALUE);
            key.setToggleGroup(group);
            key.setSelected(i == plan.chosen());
            key.setOnAction(event -> model.choose(index));
            ways.getChildren().add(key);
        }
    }
}
