package tintwright.window.holes;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tintwright.fill.repair.Finding;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.Repair;
import tintwright.fill.repair.RepairKind;
import tintwright.units.UnitSystem;
import tintwright.window.picture.RepairPicture;
import tintwright.window.pieces.Choices;
import tintwright.window.pieces.Controls;

/** One repair typed in. */
final class RepairForm {
    private static final Map<RepairKind, String> KINDS = new EnumMap<>(Map.of(
            RepairKind.COUNTERSUNK,
            "countersunk hole",
            RepairKind.HOLE,
            "plain hole",
            RepairKind.GOUGE,
            "gouge",
            RepairKind.SCRATCH,
            "scratch",
            RepairKind.WORN,
            "worn patch",
            RepairKind.SPRAY,
            "area to spray"));
    private static final Map<String, String> SIZES = Map.of(
            "hole",
            "Hole across",
            "top",
            "Top across",
            "depth",
            "Depth",
            "countersink",
            "Countersink",
            "angle",
            "or angle, \u00b0",
            "plug",
            "Plug",
            "length",
            "Length",
            "width",
            "Width",
            "film",
            "Film");

    /** A countersunk hole needs one of these, so neither is a thing to leave out. */
    private static final Set<String> ONE_OF_TWO = Set.of("countersink", RepairKind.ANGLE);

    private final FillModel model;
    private final UnitSystem units;
    private final ComboBox<RepairKind> kind = new ComboBox<>();
    private final ComboBox<Lie> lie = new ComboBox<>();
    private final Label mix = Controls.soft("");
    private final TextField name = new TextField();
    private final TextField count = new TextField("1");
    private final FlowPane sizes = new FlowPane();
    private final Map<String, TextField> sizeFields = new LinkedHashMap<>();
    private final FlowPane findings = new FlowPane();
    private final HBox drawn = Controls.row();
    /** Stands at the foot of the window, in sight at every size; here only while the foot has a cup to mind. */
    private final Button put = Controls.button("Put it on the list", this::add);

    private VBox form = Controls.column();

    RepairForm(FillModel model, UnitSystem units) {
        this.model = model;
        this.units = units;
        sizes.getStyleClass().add("fields");
    }

    Node build() {
        Choices.fill(kind, List.of(RepairKind.values()), KINDS::get);
        kind.setId("repair-kind");
        kind.valueProperty().addListener((property, before, after) -> askSizes(after));
        Choices.fill(lie, List.of(Lie.values()), Lie::words);
        lie.setId("repair-lie");
        lie.valueProperty().addListener((property, before, after) -> showMix());
        name.setPromptText("such as: old cleat holes");
        name.setId("repair-name");
        count.setId("repair-count");
        count.setPrefColumnCount(3);
        count.setOnAction(event -> goOn());
        count.textProperty().addListener((property, before, after) -> look());
        name.setOnAction(event -> goOn());
        name.getStyleClass().add("do-now");
        VBox named = Controls.asked("What", name);
        HBox.setHgrow(named, Priority.ALWAYS);
        lie.getSelectionModel().select(Lie.VERTICAL);
        kind.getSelectionModel().select(RepairKind.COUNTERSUNK);
        name.textProperty().addListener((property, before, after) -> look());
        put.setId("repair-put");
        Controls.onlyWhen(model.nextProperty().map(FillModel.Next::running), put);
        findings.getStyleClass().add("fields");
        for (Finding one : Finding.values()) {
            CheckBox box = new CheckBox(one.code());
            box.setId("found-" + one.code());
            box.setUserData(one);
            findings.getChildren().add(box);
        }
        form = Controls.sheet(
                "",
                Controls.row(named, Controls.asked("How many", count)),
                Controls.row(Choices.asked("Kind", kind), Choices.asked("The surface lies", lie)),
                sizes,
                Controls.whenSaid(Controls.bound(model.problemProperty(), "caution")),
                drawn,
                put,
                Controls.wrapped("Found there too", "question"),
                findings,
                mix);
        Controls.follow(form, model.job().jobProperty(), (before, after) -> look());
        // Behind a door that is closed nothing is being measured.
        form.sceneProperty().addListener((property, before, after) -> look());
        return form;
    }

    private void askSizes(RepairKind wanted) {
        showMix();
        sizes.getChildren().clear();
        sizeFields.clear();
        Stream.concat(wanted.needed().stream(), wanted.optional().stream()).forEach(size -> {
            TextField field = new TextField();
            field.setPrefColumnCount(4);
            field.setId("size-" + size);
            field.setOnAction(event -> goOn());
            field.textProperty().addListener((property, before, after) -> look());
            sizeFields.put(size, field);
            String unit = units == UnitSystem.METRIC ? "mm" : size.equals("film") ? "mil" : "in";
            String asked = RepairKind.ANGLE.equals(size) ? SIZES.get(size) : SIZES.get(size) + ", " + unit;
            sizes.getChildren()
                    .add(Controls.asked(
                            wanted.needed().contains(size) || ONE_OF_TWO.contains(size) ? asked : asked + " (if any)",
                            field));
        });
        look();
    }

    /** The hole as far as it is measured: drawn here, or large where there is no list yet, and what comes next of it. */
    private void look() {
        boolean first = model.job().now().fill().lines().isEmpty();
        boolean typed = begun();
        Optional<Repair> whole = model.look(kind.getValue(), typedSizes(), units);
        drawn.getChildren().clear();
        whole.filter(repair -> !first)
                .ifPresent(repair -> drawn.getChildren()
                        .setAll(
                                new RepairPicture(repair, gelMm(), repair.kind() + " cut through"),
                                Controls.soft(units.volume(repair.volumeMm3() / 1000) + " each")));
        Controls.show(drawn, !drawn.getChildren().isEmpty());
        model.measure(
                form.getScene() != null && (first || typed)
                        ? Optional.of(new Measuring(
                                whole.orElseGet(() -> Measuring.like(kind.getValue())),
                                SIZES,
                                sentence(whole, typed),
                                this::add))
                        : Optional.empty());
    }

    /** @return true once something of a hole is typed */
    boolean begun() {
        return Stream.concat(Stream.of(name), sizeFields.values().stream())
                .anyMatch(field -> !field.getText().isBlank());
    }

    private String sentence(Optional<Repair> whole, boolean typed) {
        if (whole.isPresent()) {
            String kind = whole.get().kind();
            return kind.substring(0, 1).toUpperCase(Locale.ROOT) + kind.substring(1) + ", "
                    + units.volume(whole.get().volumeMm3() / 1000) + " each.";
        }
        return typed
                ? "Still to measure: " + String.join(", ", stillMissing()) + "."
                : "Measure what is to be filled: that says how much to mix.";
    }

    private List<String> stillMissing() {
        return missing()
                .map(SIZES::get)
                .map(words -> words.toLowerCase(Locale.ROOT))
                .toList();
    }

    private double gelMm() {
        return model.job().now().fill().facts().oldFilm().orElse(HolesList.USUAL_GEL_MM);
    }

    private Map<String, String> typedSizes() {
        Map<String, String> typed = new LinkedHashMap<>();
        sizeFields.forEach((size, field) -> typed.put(size, field.getText()));
        return typed;
    }

    private void showMix() {
        boolean sprayed = kind.getValue() == RepairKind.SPRAY;
        mix.setText(
                sprayed
                        ? "Sprayed neat, no paste. Without a film of its own it gets what hides, at least what "
                                + "cures."
                        : "Gel coat to gel paste: "
                                + (lie.getValue() == null
                                        ? ""
                                        : lie.getValue().mix().words()) + " (common practice).");
    }

    /** Enter goes to the next size that is needed and not typed yet, and after the last of them onto the list. */
    private void goOn() {
        missing().findFirst().map(sizeFields::get).ifPresentOrElse(TextField::requestFocus, this::add);
    }

    /** @return the sizes that are needed and not typed yet; of two that mean the same the first alone */
    private Stream<String> missing() {
        boolean oneOfTwo = ONE_OF_TWO.stream()
                .anyMatch(size -> sizeFields.containsKey(size)
                        && !sizeFields.get(size).getText().isBlank());
        return sizeFields.keySet().stream()
                .filter(size -> sizeFields.get(size).getText().isBlank())
                .filter(size -> kind.getValue().needed().contains(size) || "countersink".equals(size) && !oneOfTwo);
    }

    private void add() {
        Set<Finding> found = boxes().filter(CheckBox::isSelected)
                .map(box -> (Finding) box.getUserData())
                .collect(Collectors.toSet());
        if (model.add(name.getText(), kind.getValue(), typedSizes(), lie.getValue(), count.getText(), found, units)) {
            boxes().forEach(box -> box.setSelected(false));
            name.clear();
            count.setText("1");
            sizeFields.values().forEach(TextField::clear);
            name.requestFocus();
        } else {
            missing().findFirst().map(sizeFields::get).ifPresent(TextField::requestFocus);
        }
    }

    private Stream<CheckBox> boxes() {
        return findings.getChildren().stream().map(CheckBox.class::cast);
    }
}
