package tintwright.window.cup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tintwright.cup.Cup;
import tintwright.cup.CupDeeds;
import tintwright.cup.Deed;
import tintwright.cup.WayWords;
import tintwright.match.Aim;
import tintwright.reading.ColourReading;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.window.picture.DepthGauge;
import tintwright.window.picture.HueRose;
import tintwright.window.picture.SplitSwatch;
import tintwright.window.pieces.Cards;
import tintwright.window.pieces.MeterFields;
import tintwright.window.pieces.MeterSetting;
import tintwright.window.pieces.Pieces;
import tintwright.window.pieces.Sides;

/** The cup in hand: the three pictures, the one figure to weigh to, the chip to read, and what was done. */
final class CupPage {
    private final CupModel model;
    private final Runnable toThePhoto;
    private final SplitSwatch swatch = new SplitSwatch();
    private final DepthGauge depth = new DepthGauge();
    private final HueRose rose = new HueRose();
    private final Label figure = Pieces.wrapped("", "big-figure");
    private final Label of = Pieces.wrapped("", "figure");
    private final Label how = Pieces.whenSaid(Pieces.plain(""));
    private final Label after = Pieces.whenSaid(Pieces.soft(""));
    private final Label sentence = Pieces.wrapped("", "strong");
    private final Button accept;
    private final VBox weigh = new VBox();
    private final Cards ways = new Cards();
    private final HBox lower = new HBox();
    private final VBox pictures = new VBox();
    private final TextField really = new TextField();
    private final MeterFields numbers = new MeterFields("chip-lightness", "chip-a", "chip-b", this::read);
    private final MeterSetting setting = new MeterSetting();
    private String meterFor = "";
    private final ComboBox<String> film = new ComboBox<>();
    private final Label contents = Pieces.plain("");
    private final VBox story = new VBox();
    private final ComboBox<String> part = new ComboBox<>();
    private final TextField grams = new TextField();
    private final DisputeCard dispute;
    private Optional<Deed> advised = Optional.empty();
    private boolean choosing;
    private List<String> partIds = List.of();

    /** @param toThePhoto opens the photo of a chip */
    CupPage(CupModel model, Runnable toThePhoto) {
        this.model = model;
        this.toThePhoto = toThePhoto;
        dispute = new DisputeCard(model);
        accept = Pieces.mainButton("It is in", model::accept);
        story.getStyleClass().add("lines");
        weigh.getStyleClass().add("asked");
    }

    Region build() {
        lower.getStyleClass().add("pictures");
        HBox.setHgrow(depth, Priority.ALWAYS);
        HBox.setHgrow(rose, Priority.ALWAYS);
        HBox.setHgrow(swatch, Priority.ALWAYS);
        pictures.getStyleClass().add("pictures");
        VBox.setVgrow(swatch, Priority.ALWAYS);
        VBox.setVgrow(lower, Priority.ALWAYS);
        hang();
        VBox side = new VBox(dispute.node(), next(), chip(), inside());
        side.getStyleClass().addAll("column", "side");
        Pieces.follow(side, model.inHandProperty(), (before, after) -> after.ifPresent(this::show));
        model.inHandProperty().get().ifPresent(this::show);
        return new Sides(pictures, side, false, 72);
    }

    private Node next() {
        figure.setId("dose");
        really.setId("really");
        really.setPrefColumnCount(6);
        really.setOnAction(event -> really());
        HBox row = Pieces.row(
                Pieces.asked("or what the scale really shows", really), Pieces.button("Write that", this::really));
        row.getStyleClass().add("asks");
        accept.getStyleClass().add("weighed-button");
        accept.setMaxWidth(Double.MAX_VALUE);
        weigh.getChildren().addAll(figure, of, how, accept, row, after);
        return Pieces.sheet("", sentence, weigh, Pieces.whenSaid(Pieces.bound(model.problemProperty(), "caution")));
    }

    /** What was typed; nothing typed is as advised. */
    private void really() {
        if (really.getText().isBlank()) {
            model.accept();
        } else if (model.really(really.getText())) {
            really.clear();
        }
    }

    private Node chip() {
        numbers.first().getStyleClass().add("do-now");
        film.getItems().setAll("cured", "wet");
        film.getSelectionModel().select(0);
        film.setAccessibleText("the film, wet or cured");
        Label asked = new Label("The film is");
        asked.getStyleClass().add("question");
        asked.setLabelFor(film);
        VBox state = new VBox(asked, film);
        state.getStyleClass().add("asked");
        Label read = Pieces.soft("");
        HBox.setHgrow(read, Priority.ALWAYS);
        read.setMaxWidth(Double.MAX_VALUE);
        setting.onChange(() -> read.setText("The meter set as for the hull: " + setting.words() + "."));
        setting.setVisible(false);
        setting.managedProperty().bind(setting.visibleProperty());
        Button change = Pieces.quietButton("Change", () -> setting.setVisible(!setting.isVisible()));
        change.setId("meter-change");
        change.setAccessibleText("change how the meter is set");
        return Pieces.sheet(
                "Read a chip",
                numbers,
                asks(state, Pieces.button("Take the reading", this::read)),
                Pieces.whenSaid(Pieces.bound(model.chipProblemProperty(), "caution")),
                Pieces.row(read, change),
                setting,
                Pieces.button("Read it from a photo", toThePhoto));
    }

    /** A new cup begins with the setting the hull was read with; a change then holds for this cup. */
    private void setMeter(Cup cup) {
        if (cup.name().equals(meterFor)) {
            return;
        }
        meterFor = cup.name();
        Optional<Reading> last =
                cup.state().lastSample().map(sample -> sample.read().reading());
        Reading like = last.orElse(cup.hull().readings().get(0));
        setting.setTo(
                like instanceof ColourReading colour ? colour.lab().viewing() : Aim.judgedUnder(cup.hull()),
                like.geometry());
    }

    private static HBox asks(Node... nodes) {
        HBox row = Pieces.row(nodes);
        row.getStyleClass().add("asks");
        return row;
    }

    private void read() {
        if (model.read(
                numbers.lightness(),
                numbers.a(),
                numbers.b(),
                setting.viewing(),
                setting.geometry(),
                film.getSelectionModel().getSelectedIndex() == 0 ? FilmState.CURED : FilmState.WET)) {
            numbers.clear();
            numbers.first().requestFocus();
        }
    }

    private Node inside() {
        part.setAccessibleText("what went in");
        part.setPrefWidth(150);
        part.setMaxWidth(Double.MAX_VALUE);
        grams.setPrefColumnCount(5);
        Label asked = new Label("Something else went in");
        asked.getStyleClass().add("question");
        asked.setLabelFor(part);
        VBox what = new VBox(asked, part);
        what.getStyleClass().add("asked");
        HBox.setHgrow(what, Priority.ALWAYS);
        grams.setOnAction(event -> alsoWeighed());
        HBox other = Pieces.row(what, Pieces.asked("Grams", grams), Pieces.button("Write", this::alsoWeighed));
        other.getStyleClass().add("asks");
        return Pieces.sheet(
                "In the cup",
                contents,
                story,
                other,
                Pieces.row(
                        Pieces.quietButton(
                                "Copy as text", () -> model.shellModel().copy(model.asText())),
                        Pieces.quietButton("Done: into the log", model::putAway)));
    }

    private void alsoWeighed() {
        int index = part.getSelectionModel().getSelectedIndex();
        if (index >= 0 && model.alsoWeighed(partIds.get(index), grams.getText())) {
            grams.clear();
        }
    }

    private void show(CupModel.InHand seen) {
        CupDeeds.Todo now = seen.deeds().now();
        dispute.show(seen);
        if (!now.deed().equals(advised)) {
            // What was half typed for another dose must not be written for this one.
            really.clear();
            advised = now.deed();
        }
        swatch.show(seen.swatch());
        depth.show(seen.depth());
        rose.show(seen.rose());
        String more = (now.why() + "\n" + seen.deeds().after()).strip();
        sentence.setText((now.sentence() + "\n" + more).strip());
        boolean weighing = now.amount().isPresent();
        sentence.setVisible(!weighing);
        sentence.setManaged(!weighing);
        after.setText(more);
        setMeter(seen.cup());
        weigh.setVisible(weighing);
        weigh.setManaged(weighing);
        accept.setText(CupStation.button(now.kind()));
        figure.setText(now.amount().map(CupDeeds.Amount::shown).orElse(""));
        of.setText(now.amount().map(CupDeeds.Amount::of).orElse(""));
        how.setText(now.how());
        showWays(seen.ways());
        contents.setText(seen.contents());
        List<String> names = new ArrayList<>(model.shelf().values());
        if (!names.equals(part.getItems())) {
            part.setItems(FXCollections.observableArrayList(names));
            partIds = List.copyOf(model.shelf().keySet());
        }
        story.getChildren().clear();
        for (CupDeeds.Done line : seen.deeds().done()) {
            Label words = Pieces.plain(line.words());
            words.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(words, Priority.ALWAYS);
            HBox row = Pieces.row(words);
            if (line.weighed()) {
                row.getChildren().add(Pieces.quietButton("Put right", () -> putRight(row, line)));
            }
            if (line.chip()) {
                row.getChildren().add(Pieces.quietButton("Cross out", () -> model.crossOut(line.entry())));
            }
            story.getChildren().add(row);
        }
    }

    /** Hangs the pictures: with ways to choose from, these come first and the rose makes room. */
    private void hang() {
        pictures.getChildren().clear();
        lower.getChildren().clear();
        if (choosing) {
            lower.getChildren().addAll(swatch, depth);
            pictures.getChildren().addAll(ways, lower);
        } else {
            lower.getChildren().addAll(depth, rose);
            pictures.getChildren().addAll(swatch, lower);
        }
    }

    private void showWays(List<WayWords.Said> choices) {
        if (choices.isEmpty() == choosing) {
            choosing = !choices.isEmpty();
            hang();
        }
        List<VBox> cards = new ArrayList<>();
        for (int i = 0; i < choices.size(); i++) {
            int index = i;
            cards.add(new WayCard(choices.get(i), i, () -> model.choose(index)));
        }
        ways.show(cards);
    }

    /** Asks in place what it really was: no dialog comes up. */
    private void putRight(HBox row, CupDeeds.Done line) {
        TextField field = new TextField();
        field.setPrefColumnCount(5);
        field.setAccessibleText("what it really was, grams");
        field.setOnAction(event -> model.correct(line.entry(), field.getText()));
        row.getChildren().set(1, field);
        row.getChildren().add(Pieces.button("Write", () -> model.correct(line.entry(), field.getText())));
        field.requestFocus();
    }
}
