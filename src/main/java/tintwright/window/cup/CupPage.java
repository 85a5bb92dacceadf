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
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tintwright.cup.Cup;
import tintwright.cup.CupDeeds;
import tintwright.match.Aim;
import tintwright.reading.ColourReading;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.units.Grams;
import tintwright.window.picture.DepthGauge;
import tintwright.window.picture.HueRose;
import tintwright.window.picture.SplitSwatch;
import tintwright.window.pieces.Controls;
import tintwright.window.pieces.MeterFields;
import tintwright.window.pieces.MeterSetting;
import tintwright.window.pieces.SideBySide;

/** The cup in hand: the three pictures, the one figure to weigh to, the chip to read, and what was done. */
final class CupPage {
    private final CupModel model;
    private final Runnable toThePhoto;
    private final Runnable toTheEye;
    private final SplitSwatch swatch = new SplitSwatch();
    private final DepthGauge depth = new DepthGauge();
    private final HueRose rose = new HueRose();
    private final DeedCard deed;
    private final DeedList list;
    private final Label held = Controls.plain("");
    private final Label sure = Controls.plain("");
    private VBox chip;
    private VBox inside;
    private boolean chipAsked;
    private Button look;
    private Button dab;
    private Node known;
    private final VBox metered = Controls.column();
    private final WaysPage ways;
    private final StackPane page = new StackPane();
    private Region sides;
    private boolean cupFirst;
    private final HBox lower = new HBox();
    private final VBox pictures = new VBox();
    private final MeterFields numbers = new MeterFields("chip-lightness", "chip-a", "chip-b", this::read);
    private final MeterFields hull = new MeterFields("hull-lightness", "hull-a", "hull-b", this::read);
    private final VBox again = new VBox(Controls.wrapped("The hull, read once more", "question"), hull);
    private final MeterSetting setting = new MeterSetting();
    private String meterFor = "";
    private final ComboBox<String> film = new ComboBox<>();
    private final ComboBox<String> part = new ComboBox<>();
    private final TextField grams = new TextField();
    private final DisputeCard dispute;
    private List<String> partIds = List.of();

    /**
     * @param toThePhoto opens the photo of a dab
     * @param toTheEye   asks what the eye sees of a dab
     */
    CupPage(CupModel model, Runnable toThePhoto, Runnable toTheEye) {
        this.toTheEye = toTheEye;
        this.model = model;
        this.toThePhoto = toThePhoto;
        dispute = new DisputeCard(model);
        deed = new DeedCard(model);
        list = new DeedList(model);
        ways = new WaysPage(model, () -> toTheWays(false));
    }

    Region build() {
        lower.getStyleClass().add("pictures");
        HBox.setHgrow(depth, Priority.ALWAYS);
        HBox.setHgrow(rose, Priority.ALWAYS);
        HBox.setHgrow(swatch, Priority.ALWAYS);
        pictures.getStyleClass().add("pictures");
        VBox.setVgrow(swatch, Priority.ALWAYS);
        VBox.setVgrow(lower, Priority.ALWAYS);
        lower.getChildren().addAll(depth, rose);
        pictures.getChildren().addAll(swatch, lower);
        chip = chip();
        inside = inside();
        Controls.show(inside, false);
        VBox side = new VBox(dispute.node(), deed.node(), chip, all(), inside);
        side.getStyleClass().addAll("column", "side");
        sides = new SideBySide(pictures, side, true).narrowFirst();
        page.getChildren().setAll(sides);
        Controls.follow(side, model.inHandProperty(), (before, after) -> after.ifPresent(this::show));
        model.inHandProperty().get().ifPresent(this::show);
        return page;
    }

    /** What is in, what goes in and what comes; below it what is held back and how sure all this is. */
    private Node all() {
        held.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(held, Priority.ALWAYS);
        sure.getStyleClass().add("good");
        sure.setId("how-sure");
        dab = Controls.quietButton("Read a dab", () -> {
            chipAsked = !chipAsked;
            model.inHandProperty().get().ifPresent(this::show);
        });
        dab.setId("read-now");
        look = Controls.quietButton("Say what I see of a dab", toTheEye);
        look.setId("eye-now");
        Button right = Controls.quietButton("Something else went in", () -> Controls.show(inside, !inside.isVisible()));
        right.setId("else-went-in");
        Node keys = Controls.closeKeys(
                look,
                right,
                dab,
                Controls.quietButton("Copy as text", () -> model.shellModel().copy(model.asText())),
                Controls.quietButton("Done: into the log", model::putAway));
        known = Controls.row(held, sure);
        return Controls.sheet("", list, known, keys);
    }

    private VBox chip() {
        film.getItems().setAll("cured", "wet");
        film.getSelectionModel().select(0);
        film.setAccessibleText("the film, wet or cured");
        Label asked = new Label("The film is");
        asked.getStyleClass().add("question");
        asked.setLabelFor(film);
        VBox state = new VBox(asked, film);
        state.getStyleClass().add("asked");
        Label read = Controls.soft("");
        HBox.setHgrow(read, Priority.ALWAYS);
        read.setMaxWidth(Double.MAX_VALUE);
        setting.onChange(() -> read.setText("The meter set as for the hull: " + setting.words() + "."));
        setting.setVisible(false);
        setting.managedProperty().bind(setting.visibleProperty());
        Button change = Controls.quietButton("Change", () -> setting.setVisible(!setting.isVisible()));
        change.setId("meter-change");
        change.setAccessibleText("change how the meter is set");
        metered.getChildren()
                .setAll(
                        numbers,
                        again,
                        asks(state, Controls.button("Take the reading", this::read)),
                        Controls.row(read, change),
                        setting);
        Controls.show(metered, false);
        Button says = Controls.button("A meter says", () -> Controls.show(metered, !metered.isVisible()));
        says.setId("chip-by-meter");
        return Controls.sheet(
                "Or read it",
                Controls.row(Controls.button("From a photo", toThePhoto), says),
                Controls.whenSaid(Controls.bound(model.chipProblemProperty(), "caution")),
                metered);
    }

    /** A new cup begins with the setting the hull was read with; a change then holds for this cup. */
    private void setMeter(Cup cup) {
        if (cup.name().equals(meterFor)) {
            return;
        }
        meterFor = cup.name();
        Controls.show(metered, cup.hull().metered());
        Optional<Reading> last =
                cup.state().lastSample().map(sample -> sample.read().reading());
        Reading like = last.orElse(cup.hull().readings().get(0));
        setting.setTo(
                like instanceof ColourReading colour ? colour.lab().viewing() : Aim.judgedUnder(cup.hull()),
                like.geometry());
    }

    private static HBox asks(Node... nodes) {
        HBox row = Controls.row(nodes);
        row.getStyleClass().add("asks");
        return row;
    }

    private void read() {
        if (model.read(
                List.of(numbers.lightness(), numbers.a(), numbers.b()),
                again.isVisible() ? hull.typed() : List.of(),
                setting.viewing(),
                setting.geometry(),
                film.getSelectionModel().getSelectedIndex() == 0 ? FilmState.CURED : FilmState.WET)) {
            numbers.clear();
            hull.clear();
            numbers.first().requestFocus();
        }
    }

    private VBox inside() {
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
        HBox other = Controls.row(what, Controls.asked("Grams", grams), Controls.button("Write", this::alsoWeighed));
        other.getStyleClass().add("asks");
        return Controls.sheet("", other);
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
        swatch.show(seen.swatch());
        depth.show(seen.depth(), model.shellModel().movesProperty().get());
        rose.show(seen.rose());
        setMeter(seen.cup());
        Controls.show(again, seen.cup().hullReadOnce());
        boolean reading = now.kind() == CupDeeds.Kind.READ_CHIP;
        deed.show(
                seen.deeds(),
                key(now.kind()),
                reading || now.kind() == CupDeeds.Kind.TRY_DAB
                        ? toTheEye
                        : now.kind() == CupDeeds.Kind.CHOOSE_WAY
                                ? () -> toTheWays(true)
                                : () -> model.shellModel().doNow());
        // A trial dab is for the eye alone: a reading would count for the cup.
        Controls.show(
                chip, reading || chipAsked || !model.chipProblemProperty().get().isEmpty());
        list.show(seen.deeds());
        // Of nothing but what is still to go in there is nothing to see.
        boolean begun = seen.cup().state().mass() > 0;
        Controls.show(look, begun);
        Controls.show(dab, begun);
        double reserve = seen.deeds().heldBack();
        held.setText(reserve > 0 ? "White held back " + Grams.about(reserve) : "");
        boolean near = seen.sure().startsWith("likely") && !seen.sure().endsWith("glance");
        sure.setText(near ? "L" + seen.sure().substring(1) : "");
        Controls.show(known, !held.getText().isEmpty() || near);
        sure.setTooltip(new Tooltip(seen.sureWords()));
        showWays(seen);
        List<String> names = new ArrayList<>(model.shelf().values());
        if (!names.equals(part.getItems())) {
            part.setItems(FXCollections.observableArrayList(names));
            partIds = List.copyOf(model.shelf().keySet());
        }
    }

    /** Quarrels are settled where they stand; what is read has its own door. */
    private static String key(CupDeeds.Kind kind) {
        return switch (kind) {
            case READ_CHIP, TRY_DAB -> "Say what I see";
            case STOP, CHOOSE_WAY -> CupStation.button(kind);
            case WEIGH, POUR_OFF, SETTLE, WHITE_FIRST -> "";
        };
    }

    /** With ways to choose from these come first; the cup is one press away, and back. */
    private void showWays(CupModel.InHand seen) {
        boolean choosing = !seen.ways().isEmpty();
        if (choosing) {
            ways.show(seen);
        } else {
            cupFirst = false;
        }
        page.getChildren().setAll(choosing && !cupFirst ? ways : sides);
    }

    private void toTheWays(boolean there) {
        cupFirst = !there;
        page.getChildren().setAll(there ? ways : sides);
    }
}
