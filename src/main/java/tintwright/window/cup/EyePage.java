package tintwright.window.cup;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tintwright.colour.Lab;
import tintwright.reading.EyeVerdict;
import tintwright.reading.EyeVerdict.Amount;
import tintwright.reading.EyeVerdict.Depth;
import tintwright.reading.EyeVerdict.Hue;
import tintwright.reading.FilmState;
import tintwright.window.picture.Shade;
import tintwright.window.pieces.Controls;

/** What the person sees of a dab held against the hull: two rows of drawn answers, one press each. */
final class EyePage extends VBox {
    private static final int NO_POT = -1;

    private final CupModel model;
    private final Runnable back;
    private final ToggleGroup depths = new ToggleGroup();
    private final ToggleGroup hues = new ToggleGroup();
    private final ToggleGroup amounts = new ToggleGroup();
    private final HBox depthKeys = row();
    private final HBox hueKeys = row();
    private final HBox amountKeys = Controls.row();
    private final ToggleGroup dabs = new ToggleGroup();
    private final Label which = Controls.wrapped("", "question");
    private final FlowPane dabKeys = Controls.closeKeys();
    private final CheckBox wet = new CheckBox("The dab is still wet");
    private final Button seen = Controls.mainButton("That is what I see", this::take);

    /** @param back shows the cup again */
    EyePage(CupModel model, Runnable back) {
        this.model = model;
        this.back = back;
        getStyleClass().add("eye-page");
        seen.setId("eye-seen");
        seen.disableProperty()
                .bind(depths.selectedToggleProperty()
                        .isNull()
                        .or(dabs.selectedToggleProperty().isNull())
                        .or(hues.selectedToggleProperty().isNull()));
        for (Amount amount : new Amount[] {Amount.LITTLE, Amount.MUCH}) {
            ToggleButton key = named(new ToggleButton(amount == Amount.LITTLE ? "a little" : "much"), amount, amounts);
            key.getStyleClass().setAll("choice-key");
            amountKeys.getChildren().add(key);
        }
        amountKeys
                .visibleProperty()
                .bind(hues.selectedToggleProperty()
                        .map(chosen -> chosen.getUserData() != Hue.NONE)
                        .orElse(false));
        Button none = Controls.button(
                "I see no difference",
                () -> answer(new EyeVerdict(Optional.of(Depth.SAME), Optional.of(Hue.NONE), Amount.NOT_SAID, film())));
        none.setId("eye-no-difference");
        none.disableProperty().bind(dabs.selectedToggleProperty().isNull());
        dabKeys.setId("eye-dabs");
        Label light = Controls.soft("Daylight, no direct sun, gloss against gloss. Near the match your eye is better at"
                + " this than any phone.");
        // Where the window is small there is room for one of the two: which dab is meant comes first.
        light.visibleProperty().bind(dabKeys.visibleProperty().not());
        light.managedProperty().bind(light.visibleProperty());
        FlowPane done = Controls.flow(
                seen,
                none,
                Controls.button("I cannot tell", () -> answer(EyeVerdict.cannotTell(film()))),
                wet,
                Controls.quietButton("Read with a phone or a meter instead", back));
        getChildren()
                .addAll(
                        Controls.wrapped("Hold the cured dab against the hull. What do you see?", "title"),
                        dabKeys,
                        light,
                        Controls.wrapped("Left the hull, right the dab. The dab is", "question"),
                        depthKeys,
                        Controls.row(Controls.wrapped("and", "question"), amountKeys),
                        hueKeys,
                        done);
    }

    /**
     * Draws the answers around the colour of a hull; nothing is chosen.
     *
     * @param pots what each small pot got, when trial dabs are asked for: then the answer is taken for one of them
     */
    void show(Lab hull, List<String> pots) {
        askWhich(pots);
        depths.selectToggle(null);
        hues.selectToggle(null);
        depthKeys.getChildren().clear();
        for (Depth depth : Depth.values()) {
            depthKeys.getChildren().add(drawn(depth.words(), depth, depths, hull, depth::shade));
        }
        hueKeys.getChildren().clear();
        for (Hue hue : Hue.values()) {
            hueKeys.getChildren().add(drawn(hue.words(), hue, hues, hull, lab -> hue.shade(lab, Amount.NOT_SAID)));
        }
        amounts.getToggles().get(0).setSelected(true);
        depthKeys.getChildren().get(0).getStyleClass().add("do-now");
    }

    /** The only trial dab is meant; of several in a row the nearest must be chosen. */
    private void askWhich(List<String> pots) {
        Controls.show(dabKeys, !pots.isEmpty());
        which.setText(pots.size() == 1 ? "Which dab is it?" : "Which dab comes nearest to the hull?");
        dabKeys.getChildren().setAll(which);
        dabs.getToggles().clear();
        for (int i = 1; i <= pots.size(); i++) {
            ToggleButton key = dab(i, pots.size() == 1 ? "from the small pot" : "from pot " + i);
            key.setTooltip(new Tooltip(pots.get(i - 1)));
        }
        dab(0, "the cup's own");
        ToggleButton alone = dab(NO_POT, "no pot was made");
        dabs.selectToggle(
                pots.isEmpty() ? alone : pots.size() == 1 ? dabs.getToggles().get(0) : null);
    }

    private ToggleButton dab(int number, String words) {
        ToggleButton key = new ToggleButton(words);
        key.setId("eye-dab-" + number);
        key.setUserData(number);
        key.setToggleGroup(dabs);
        key.getStyleClass().setAll("choice-key");
        dabKeys.getChildren().add(key);
        return key;
    }

    private FilmState film() {
        return wet.isSelected() ? FilmState.WET : FilmState.CURED;
    }

    private void take() {
        Hue hue = (Hue) hues.getSelectedToggle().getUserData();
        Amount amount = hue == Hue.NONE || amounts.getSelectedToggle() == null
                ? Amount.NOT_SAID
                : (Amount) amounts.getSelectedToggle().getUserData();
        Depth depth = (Depth) depths.getSelectedToggle().getUserData();
        answer(new EyeVerdict(Optional.of(depth), Optional.of(hue), amount, film()));
    }

    private void answer(EyeVerdict verdict) {
        Toggle dab = dabs.getSelectedToggle();
        // Who cannot tell need not say of which: then the first stands for all that were made.
        int nearest = dab == null ? 1 : (int) dab.getUserData();
        model.seen(verdict, nearest == NO_POT ? OptionalInt.empty() : OptionalInt.of(nearest));
        back.run();
    }

    private static ToggleButton named(ToggleButton key, Enum<?> answer, ToggleGroup group) {
        key.setId("eye-" + answer.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        key.setMnemonicParsing(false);
        key.setUserData(answer);
        key.setToggleGroup(group);
        return key;
    }

    private static ToggleButton drawn(
            String words, Enum<?> answer, ToggleGroup group, Lab hull, Function<Lab, Lab> dab) {
        ToggleButton key = named(new Drawn(words, hull, dab.apply(hull)), answer, group);
        key.setAccessibleText("The dab is " + words);
        HBox.setHgrow(key, Priority.ALWAYS);
        return key;
    }

    /** Hull and dab edge to edge across the whole key, its words below them, broken where there is no room. */
    private static final class Drawn extends ToggleButton {
        private final HBox pair;

        Drawn(String words, Lab hull, Lab dab) {
            super(words);
            pair = new HBox(field(hull, "left-half"), field(dab, "right-half"));
            getStyleClass().setAll("choice-key", "eye-key");
            setGraphic(pair);
            setContentDisplay(ContentDisplay.TOP);
            setWrapText(true);
            setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        }

        private static Region field(Lab colour, String half) {
            Region field = new Region();
            field.setStyle(Shade.of(colour).css());
            field.getStyleClass().addAll("eye-field", half);
            HBox.setHgrow(field, Priority.ALWAYS);
            return field;
        }

        @Override
        protected void layoutChildren() {
            super.layoutChildren();
            double left = snappedLeftInset();
            pair.resizeRelocate(left, snappedTopInset(), getWidth() - left - snappedRightInset(), pair.prefHeight(-1));
        }
    }

    private static HBox row() {
        HBox row = new HBox();
        row.getStyleClass().add("eye-row");
        // At large text the page scrolls; its rows never lie on each other.
        row.setMinHeight(USE_PREF_SIZE);
        return row;
    }
}
