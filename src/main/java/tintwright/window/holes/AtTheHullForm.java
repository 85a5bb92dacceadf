package tintwright.window.holes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import tintwright.bench.job.FillDraft;
import tintwright.bench.job.FillFacts;
import tintwright.fill.Conditions;
import tintwright.fill.GritLadder;
import tintwright.fill.Materials;
import tintwright.fill.catalyst.CatalystMeasure;
import tintwright.units.UnitSystem;
import tintwright.units.Units;
import tintwright.window.pieces.Choices;
import tintwright.window.pieces.Controls;

/** Weather and what else is known at the hull; taken when a field is left or Enter is pressed, if it was changed. */
final class AtTheHullForm {
    private final FillModel model;
    private final UnitSystem units;
    private final TextField temperature = new TextField();
    private final TextField cup = new TextField();
    private final TextField air = new TextField();
    private final TextField humidity = new TextField();
    private final TextField hides = new TextField();
    private final TextField oldFilm = new TextField();
    private final TextField thick = new TextField();
    private final TextField paste = new TextField();
    private final CheckBox waxed = new CheckBox("The paste holds wax");
    private final ComboBox<Materials.Seal> seal = new ComboBox<>();
    private final TextField drops = new TextField();
    private final TextField spoon = new TextField();
    private final ComboBox<Optional<GritLadder.Surface>> surface = new ComboBox<>();
    private final ComboBox<CatalystTool> measured = new ComboBox<>();
    private boolean showing;

    AtTheHullForm(FillModel model, UnitSystem units) {
        this.model = model;
        this.units = units;
    }

    Node build() {
        boolean metric = units == UnitSystem.METRIC;
        String film = metric ? "mm" : "mil";
        List<Optional<GritLadder.Surface>> surfaces = new ArrayList<>(List.of(Optional.empty()));
        for (GritLadder.Surface one : GritLadder.Surface.values()) {
            surfaces.add(Optional.of(one));
        }
        Choices.fill(
                surface, surfaces, one -> one.map(GritLadder.Surface::words).orElse("as fills usually are"));
        surface.valueProperty().addListener((property, before, after) -> know());
        Choices.fill(measured, List.of(CatalystTool.values()), CatalystTool::words);
        measured.setId("catalyst-measured");
        drops.setId("drops");
        spoon.setId("spoon");
        Node counted = asked("Drops in a ml", drops, this::know);
        VBox level = asked(metric ? "One level spoon, ml" : "One level spoon, tsp", spoon, this::know);
        level.getChildren()
                .add(Controls.soft(
                        "Not sure? Weigh ten level spoons of water: a tenth of the grams is its millilitres. Of"
                                + " plastic, and never for food again."));
        measured.valueProperty().addListener((property, before, after) -> {
            Controls.show(counted, after == CatalystTool.DROPS);
            Controls.show(level, after == CatalystTool.SPOON);
            if (!showing && !model.hull().measureWith(after)) {
                drops.requestFocus();
            }
        });
        temperature.setId("temperature");
        cup.setId("cup-temperature");
        air.setId("air-temperature");
        humidity.setId("humidity");
        hides.setId("base-hides");
        oldFilm.setId("old-film");
        thick.setId("hull-thick");
        paste.setId("gel-paste");
        waxed.setId("waxed-paste");
        waxed.setOnAction(event -> sealed());
        Choices.fill(seal, List.of(Materials.Seal.values()), AtTheHullForm::words);
        seal.setId("last-coat-seal");
        seal.valueProperty().addListener((property, before, after) -> sealed());
        String degrees = metric ? "\u00b0C" : "\u00b0F";
        FlowPane weather = fields(
                asked("Hull, " + degrees, temperature, this::weather),
                asked("Cup, " + degrees, cup, this::weather),
                asked("Air, " + degrees, air, this::weather),
                asked("Humidity, %", humidity, this::weather));
        FlowPane there = fields(
                asked("Gel coat is thick, " + film, oldFilm, this::know),
                asked(metric ? "Hull is thick, mm" : "Hull is thick, in", thick, this::know));
        FlowPane facts = fields(
                asked("White hides from, " + film, hides, this::know),
                asked(metric ? "Gel paste there, g" : "Gel paste there, oz", paste, this::know));
        Controls.follow(temperature, model.job().jobProperty(), (before, after) -> {
            if (!before.fill().equals(after.fill())) {
                show();
            }
        });
        show();
        return Controls.sheet(
                "At the hull",
                weather,
                Controls.soft(
                        "The cup sets the working time, the hull the cure; left blank they are as warm as the hull. "
                                + "Written with C or F it is taken as such."),
                there,
                facts,
                waxed,
                Choices.asked("The last coat, to cure dry, gets", seal),
                Choices.asked("The catalyst is measured with", measured),
                counted,
                level,
                Choices.asked("Before sanding it is", surface),
                Controls.soft("Leave out what you do not know: it then stands among the cautions."),
                Controls.whenSaid(Controls.bound(model.hull().problemProperty(), "caution")));
    }

    private static FlowPane fields(Node... asked) {
        FlowPane pane = new FlowPane(asked);
        pane.getStyleClass().add("fields");
        return pane;
    }

    private VBox asked(String question, TextField field, Runnable take) {
        field.setPrefColumnCount(7);
        Runnable ifChanged = () -> {
            if (!field.getText().equals(field.getUserData())) {
                field.setUserData(field.getText());
                take.run();
            }
        };
        field.setOnAction(event -> ifChanged.run());
        field.focusedProperty().addListener((property, before, after) -> {
            if (!after) {
                ifChanged.run();
            }
        });
        return Controls.asked(question, field);
    }

    private void weather() {
        if (!showing) {
            model.hull().weather(temperature.getText(), cup.getText(), air.getText(), humidity.getText(), units);
        }
    }

    private void know() {
        if (!showing) {
            model.hull()
                    .know(
                            new AtTheHullModel.Known(
                                    hides.getText(),
                                    oldFilm.getText(),
                                    thick.getText(),
                                    paste.getText(),
                                    surface.getValue(),
                                    drops.getText(),
                                    spoon.getText()),
                            units);
        }
    }

    private void sealed() {
        if (!showing) {
            model.hull().seal(waxed.isSelected(), seal.getValue());
        }
    }

    private static String words(Materials.Seal by) {
        return switch (by) {
            case WAX -> "wax stirred in";
            case FILM -> "film or PVA over it";
        };
    }

    /** Shows what is known, as after an undo. */
    private void show() {
        showing = true;
        FillDraft draft = model.job().now().fill();
        FillFacts facts = draft.facts();
        boolean metric = units == UnitSystem.METRIC;
        Conditions weather = draft.weather();
        put(temperature, degrees(weather.hullCelsius()), 1);
        boolean even = weather.even();
        put(cup, even ? OptionalDouble.empty() : degrees(weather.cupCelsius()), 1);
        put(air, even ? OptionalDouble.empty() : degrees(weather.airCelsius()), 1);
        put(humidity, weather.humidityPercent(), 1);
        put(hides, facts.baseHides(), metric ? 1 : Units.MM_PER_MIL);
        put(oldFilm, facts.oldFilm(), metric ? 1 : Units.MM_PER_MIL);
        put(thick, facts.hullMm(), metric ? 1 : Units.MM_PER_INCH);
        waxed.setSelected(facts.waxedPaste());
        seal.setValue(facts.seal());
        put(paste, facts.paste(), metric ? 1 : Units.GRAMS_PER_OUNCE);
        CatalystMeasure measure = facts.tools().catalyst();
        put(
                drops,
                measure.by() == CatalystMeasure.By.DROPPER
                        ? OptionalDouble.of(measure.dropsPerMl())
                        : OptionalDouble.empty(),
                1);
        put(
                spoon,
                measure.by() == CatalystMeasure.By.SPOON ? OptionalDouble.of(measure.step()) : OptionalDouble.empty(),
                metric ? 1 : Units.ML_PER_US_TEASPOON);
        measured.setValue(CatalystTool.of(measure));
        surface.setValue(facts.surface());
        showing = false;
    }

    private OptionalDouble degrees(double celsius) {
        double shown = units == UnitSystem.METRIC ? celsius : Units.fahrenheit(celsius);
        return OptionalDouble.of(Math.round(shown * 10) / 10.0);
    }

    private static void put(TextField field, OptionalDouble value, double unit) {
        String text = value.isEmpty()
                ? ""
                : String.format(Locale.ROOT, "%.3f", value.getAsDouble() / unit)
                        .replaceAll("0+$", "")
                        .replaceAll("\\.$", "");
        field.setText(text);
        field.setUserData(text);
    }
}
