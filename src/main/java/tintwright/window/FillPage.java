package tintwright.window;

import java.io.File;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.util.Duration;
import javafx.util.StringConverter;
import tintwright.bench.PlanFill;
import tintwright.fill.Batch;
import tintwright.fill.Caution;
import tintwright.fill.FillPlan;
import tintwright.fill.GritLadder;
import tintwright.fill.Lie;
import tintwright.fill.RepairKind;
import tintwright.fill.RepairLine;
import tintwright.fill.Warning;
import tintwright.units.UnitSystem;

/** The fill: a list of repairs on one side, cup by cup what to mix on the other. */
final class FillPage {
    private static final Map<RepairKind, String> KINDS = new EnumMap<>(Map.of(
            RepairKind.COUNTERSUNK, "countersunk screw hole", RepairKind.HOLE, "plain hole",
            RepairKind.GOUGE, "gouge", RepairKind.SCRATCH, "scratch", RepairKind.WORN, "worn patch",
            RepairKind.SPRAY, "area to spray"));
    private static final Map<String, String> SIZES = Map.of("hole", "Hole across", "top", "Top across",
            "depth", "Depth", "countersink", "Countersink deep", "angle", "or its angle, degrees",
            "plug", "Plug already in", "length", "Length", "width", "Width", "film", "Film");

    private final FillModel model;
    private final UnitSystem units;
    private final ComboBox<RepairKind> kind = new ComboBox<>();
    private final ComboBox<Lie> lie = new ComboBox<>();
    private final TextField name = new TextField();
    private final TextField count = new TextField("1");
    private final FlowPane sizes = new FlowPane();
    private final Map<String, TextField> sizeFields = new LinkedHashMap<>();
    private final VBox list = new VBox();
    private final VBox answer = new VBox();
    private final VBox timers = new VBox();

    FillPage(FillModel model, UnitSystem units) {
        this.model = model;
        this.units = units;
        sizes.getStyleClass().add("fields");
        list.getStyleClass().add("lines");
        answer.getStyleClass().add("column");
        timers.getStyleClass().add("asked");
    }

    Region build() {
        VBox left = new VBox(entry(), weather());
        left.getStyleClass().addAll("column", "side");
        model.planProperty().addListener((property, before, after) -> show(after));
        model.job().jobProperty().addListener((property, before, after) -> showList());
        model.runningProperty().addListener((property, before, after) -> showTimers(after));
        kind.getSelectionModel().select(RepairKind.COUNTERSUNK);
        showList();
        show(model.planProperty().get());
        Timeline clock = new Timeline(new KeyFrame(Duration.seconds(1), event -> model.tick()));
        clock.setCycleCount(Timeline.INDEFINITE);
        answer.sceneProperty().addListener((property, before, after) -> {
            if (after != null) {
                clock.play();
            } else {
                clock.stop();
            }
        });
        return new Sides(answer, left, true, 62);
    }

    private Node entry() {
        kind.getItems().setAll(RepairKind.values());
        kind.setConverter(words(KINDS::get));
        kind.setId("repair-kind");
        kind.valueProperty().addListener((property, before, after) -> askSizes(after));
        lie.getItems().setAll(Lie.values());
        lie.setConverter(words(Lie::words));
        lie.getSelectionModel().select(Lie.VERTICAL);
        name.setPromptText("such as: old cleat holes");
        name.setId("repair-name");
        count.setId("repair-count");
        count.setPrefColumnCount(3);
        HBox.setHgrow(name, Priority.ALWAYS);
        VBox named = Pieces.asked("What", name);
        HBox.setHgrow(named, Priority.ALWAYS);
        HBox who = Pieces.row(named, Pieces.asked("How many", count));
        VBox kinds = chosen("Kind", kind);
        kind.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(kinds, Priority.ALWAYS);
        HBox what = Pieces.row(kinds, chosen("The surface lies", lie));
        Label problem = Pieces.whenSaid(Pieces.bound(model.problemProperty(), "caution"));
        return Pieces.sheet("To fill", who, what, sizes, problem,
                Pieces.mainButton("Put it on the list", this::add), list);
    }

    private static VBox chosen(String question, ComboBox<?> box) {
        Label label = new Label(question);
        label.getStyleClass().add("question");
        label.setLabelFor(box);
        box.setAccessibleText(question);
        VBox asked = new VBox(label, box);
        asked.getStyleClass().add("asked");
        return asked;
    }

    private static <T> StringConverter<T> words(java.util.function.Function<T, String> say) {
        return new StringConverter<>() {
            @Override
            public String toString(T value) {
                return value == null ? "" : say.apply(value);
            }

            @Override
            public T fromString(String text) {
                throw new UnsupportedOperationException("choices are not typed");
            }
        };
    }

    private void askSizes(RepairKind wanted) {
        sizes.getChildren().clear();
        sizeFields.clear();
        String unit = units == UnitSystem.US ? "in" : "mm";
        java.util.stream.Stream.concat(wanted.needed().stream(), wanted.optional().stream()).forEach(size -> {
            TextField field = new TextField();
            field.setPrefColumnCount(6);
            field.setId("size-" + size);
            field.setOnAction(event -> add());
            sizeFields.put(size, field);
            String asked = RepairKind.ANGLE.equals(size) ? SIZES.get(size) : SIZES.get(size) + ", " + unit;
            sizes.getChildren().add(Pieces.asked(wanted.needed().contains(size) || size.equals("countersink") ? asked
                    : asked + " (if any)", field));
        });
    }

    private void add() {
        Map<String, String> typed = new LinkedHashMap<>();
        sizeFields.forEach((size, field) -> typed.put(size, field.getText()));
        if (model.add(name.getText(), kind.getValue(), typed, lie.getValue(), count.getText(), units)) {
            name.clear();
            count.setText("1");
            sizeFields.values().forEach(TextField::clear);
            name.requestFocus();
        }
    }

    private void showList() {
        list.getChildren().clear();
        List<RepairLine> lines = model.job().now().fill().lines();
        for (int i = 0; i < lines.size(); i++) {
            int index = i;
            RepairLine line = lines.get(i);
            Label words = Pieces.plain(line.count() + " \u00d7 " + line.name() + ", " + line.lie().words() + ": "
                    + units.volume(line.netMl()));
            HBox.setHgrow(words, Priority.ALWAYS);
            words.setMaxWidth(Double.MAX_VALUE);
            list.getChildren().add(Pieces.row(words, Pieces.quietButton("Remove", () -> model.remove(index))));
        }
    }

    private Node weather() {
        TextField temperature = new TextField(units.temperature(model.job().now().fill().celsius()));
        temperature.setPrefColumnCount(6);
        temperature.setId("temperature");
        TextField humidity = new TextField();
        humidity.setPrefColumnCount(5);
        humidity.setId("humidity");
        Runnable take = () -> model.weather(temperature.getText(), humidity.getText(), units);
        temperature.setOnAction(event -> take.run());
        humidity.setOnAction(event -> take.run());
        temperature.focusedProperty().addListener((property, before, after) -> {
            if (!after) {
                take.run();
            }
        });
        humidity.focusedProperty().addListener((property, before, after) -> {
            if (!after) {
                take.run();
            }
        });
        return Pieces.sheet("At the hull", Pieces.row(Pieces.asked("Temperature, the coldest of all", temperature),
                Pieces.asked("Humidity, %", humidity)));
    }

    private void show(Optional<PlanFill> plan) {
        answer.getChildren().clear();
        if (plan.isEmpty()) {
            answer.getChildren().add(Pieces.sheet("Nothing to fill yet",
                    Pieces.plain("Put the holes, scratches and worn patches on the list. What to weigh, how much "
                            + "catalyst and how long it can be worked then stands here, cup by cup.")));
            return;
        }
        FillPlan made = plan.get().plan();
        VBox total = Pieces.sheet("In all", Pieces.row(figure(units.mass(made.gelCoatGrams()), "coloured gel coat"),
                figure(units.mass(made.pasteGrams()), "gel paste"), figure(made.time().words(), "to work a cup")));
        made.enough().ifPresent(enough -> total.getChildren().add(Pieces.plain(enough.words(units))));
        total.getChildren().add(timers);
        total.getChildren().add(Pieces.row(Pieces.button("Job sheet to print or for the phone", this::sheet),
                Pieces.quietButton("Copy as text", () -> model.copy(units))));
        answer.getChildren().add(total);
        VBox warnings = new VBox();
        warnings.getStyleClass().addAll("caution-sheet", "asked");
        warnings.getChildren().add(Pieces.wrapped("Before the catalyst goes in", "caution"));
        for (Warning warning : made.warnings()) {
            warnings.getChildren().add(Pieces.plain(warning.words(units)));
        }
        if (!made.warnings().isEmpty()) {
            answer.getChildren().add(warnings);
        }
        made.batches().forEach(batch -> answer.getChildren().add(batch(batch)));
        answer.getChildren().add(finish(made));
        VBox cautions = new VBox();
        cautions.getStyleClass().addAll("caution-sheet", "asked");
        cautions.getChildren().add(Pieces.wrapped("Cautions", "caution"));
        for (Caution caution : made.cautions()) {
            cautions.getChildren().add(Pieces.plain(caution.words()));
        }
        answer.getChildren().add(cautions);
    }

    private void sheet() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Job sheet");
        chooser.getExtensionFilters().addAll(new FileChooser.ExtensionFilter("PDF to print", "*.pdf"),
                new FileChooser.ExtensionFilter("Page for the phone", "*.html"));
        chooser.setInitialFileName("fill.pdf");
        File chosen = chooser.showSaveDialog(answer.getScene().getWindow());
        if (chosen != null) {
            model.writeSheet(chosen.toPath(), units);
        }
    }

    private static Node figure(String figure, String words) {
        VBox box = new VBox(Pieces.wrapped(figure, "figure"), Pieces.soft(words));
        return box;
    }

    private Node batch(Batch batch) {
        StringBuilder parts = new StringBuilder();
        batch.parts().forEach(part -> parts.append(parts.length() == 0 ? "" : ", ").append(part.words()));
        VBox sheet = Pieces.sheet("Batch " + batch.number() + ": " + batch.stage().words(),
                Pieces.row(figure(String.format(Locale.ROOT, "%.2f g", batch.gelCoatGrams()), "coloured gel coat"),
                        figure(String.format(Locale.ROOT, "%.2f g", batch.pasteGrams()), "gel paste"),
                        figure(String.format(Locale.ROOT, "%.0f min", batch.minutes()), "to use it up")),
                Pieces.soft("For " + parts + "; " + batch.mix().words()),
                Pieces.plain("Catalyst: " + batch.catalyst().words(units)));
        batch.wax().ifPresent(wax -> sheet.getChildren().add(Pieces.plain("Wax solution: " + wax.words(units))));
        sheet.getChildren().add(Pieces.row(Pieces.button("Catalysed now: start the timer",
                () -> model.catalysed(batch.number())), Pieces.quietButton("Stop", () ->
                model.stopTimers(batch.number()))));
        return sheet;
    }

    private Node finish(FillPlan made) {
        VBox sheet = Pieces.sheet("Then sand");
        for (FillPlan.Sanding sanding : made.finish().sandings()) {
            GritLadder ladder = sanding.ladder();
            String grits = String.join(", then ", ladder.steps().stream().map(GritLadder.Step::words).toList());
            sheet.getChildren().add(Pieces.plain(sanding.what() + ": " + grits + "."));
            sheet.getChildren().add(Pieces.soft("That takes " + units.film(ladder.takesLeastMm()) + " to "
                    + units.film(ladder.takesMostMm()) + " off the gel coat around."));
        }
        sheet.getChildren().add(Pieces.soft(units.length(made.finish().tapeMm()) + " of masking tape guard the rest."));
        return sheet;
    }

    private void showTimers(List<FillModel.Running> running) {
        timers.getChildren().clear();
        for (FillModel.Running cue : running) {
            Label words = Pieces.wrapped("Batch " + cue.batch() + ", " + cue.words()
                    + (cue.due() ? ". " + cue.test() : ""), cue.due() ? "caution" : "plain");
            timers.getChildren().add(words);
        }
    }
}
