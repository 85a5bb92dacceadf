package tintwright.window.holes;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
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
    private final Button put = Controls.button("Put it on the list", this::add);

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
        name.setOnAction(event -> goOn());
        name.getStyleClass().add("do-now");
        VBox named = Controls.asked("What", name);
        HBox.setHgrow(named, Priority.ALWAYS);
        lie.getSelectionModel().select(Lie.VERTICAL);
        kind.getSelectionModel().select(RepairKind.COUNTERSUNK);
        name.textProperty().addListener((property, before, after) -> signal());
        Controls.follow(put, model.job().jobProperty(), (before, after) -> signal());
        signal();
        findings.getStyleClass().add("fields");
        for (Finding one : Finding.values()) {
            CheckBox box = new CheckBox(one.code());
            box.setId("found-" + one.code());
            box.setUserData(one);
            findings.getChildren().add(box);
        }
        return Controls.sheet(
                "",
                Controls.row(named, Controls.asked("How many", count)),
                Controls.row(Choices.asked("Kind", kind), Choices.asked("The surface lies", lie)),
                sizes,
                drawn,
                Controls.wrapped("Found there too", "question"),
                findings,
                put,
                Controls.whenSaid(Controls.bound(model.problemProperty(), "caution")),
                mix);
    }

    private void askSizes(RepairKind wanted) {
        showMix();
        sizes.getChildren().clear();
        sizeFields.clear();
        drawn.getChildren().clear();
        Controls.show(drawn, false);
        Stream.concat(wanted.needed().stream(), wanted.optional().stream()).forEach(size -> {
            TextField field = new TextField();
            field.setPrefColumnCount(4);
            field.setId("size-" + size);
            field.setOnAction(event -> goOn());
            field.textProperty().addListener((property, before, after) -> draw());
            sizeFields.put(size, field);
            String unit = units == UnitSystem.METRIC ? "mm" : size.equals("film") ? "mil" : "in";
            String asked = RepairKind.ANGLE.equals(size) ? SIZES.get(size) : SIZES.get(size) + ", " + unit;
            sizes.getChildren()
                    .add(Controls.asked(
                            wanted.needed().contains(size) || ONE_OF_TWO.contains(size) ? asked : asked + " (if any)",
                            field));
        });
    }

    /** With holes on the list it is the thing to press only once another is being measured. */
    private void signal() {
        boolean typed = Stream.concat(Stream.of(name), sizeFields.values().stream())
                .anyMatch(field -> !field.getText().isBlank());
        Controls.main(put, typed || model.job().now().fill().lines().isEmpty());
        put.requestLayout();
    }

    /** The hole as far as it is measured; nothing is drawn of what cannot be yet. */
    private void draw() {
        signal();
        drawn.getChildren().clear();
        Map<String, String> typed = new LinkedHashMap<>();
        sizeFields.forEach((size, field) -> typed.put(size, field.getText()));
        model.look(kind.getValue(), typed, units)
                .ifPresent(repair -> drawn.getChildren()
                        .setAll(
                                new RepairPicture(
                                        repair,
                                        model.job()
                                                .now()
                                                .fill()
                                                .facts()
                                                .oldFilm()
                                                .orElse(HolesList.USUAL_GEL_MM),
                                        repair.kind() + " cut through"),
                                Controls.soft(units.volume(repair.volumeMm3() / 1000) + " each")));
        Controls.show(drawn, !drawn.getChildren().isEmpty());
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
        missing().ifPresentOrElse(TextField::requestFocus, this::add);
    }

    private Optional<TextField> missing() {
        boolean oneOfTwo = ONE_OF_TWO.stream()
                .anyMatch(size -> sizeFields.containsKey(size)
                        && !sizeFields.get(size).getText().isBlank());
        return sizeFields.entrySet().stream()
                .filter(size -> size.getValue().getText().isBlank())
                .filter(size -> kind.getValue().needed().contains(size.getKey())
                        || ONE_OF_TWO.contains(size.getKey()) && !oneOfTwo)
                .map(Map.Entry::getValue)
                .findFirst();
    }

    private void add() {
        Map<String, String> typed = new LinkedHashMap<>();
        sizeFields.forEach((size, field) -> typed.put(size, field.getText()));
        Set<Finding> found = boxes().filter(CheckBox::isSelected)
                .map(box -> (Finding) box.getUserData())
                .collect(Collectors.toSet());
        if (model.add(name.getText(), kind.getValue(), typed, lie.getValue(), count.getText(), found, units)) {
            boxes().forEach(box -> box.setSelected(false));
            name.clear();
            count.setText("1");
            sizeFields.values().forEach(TextField::clear);
            name.requestFocus();
        } else {
            missing().ifPresent(TextField::requestFocus);
        }
    }

    private Stream<CheckBox> boxes() {
        return findings.getChildren().stream().map(CheckBox.class::cast);
    }
}
