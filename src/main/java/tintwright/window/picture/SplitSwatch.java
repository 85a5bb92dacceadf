package tintwright.window.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.shape.Rectangle;
import tintwright.bench.Closeness;
import tintwright.colour.DifferenceWords;
import tintwright.colour.JudgedLight;

/**
 * Hull and mix edge to edge, large, under one light; the other lights wait below as smaller pairs to press. A colour
 * the screen cannot show carries a barred strip and says so.
 */
public final class SplitSwatch extends Picture {
    /** How to judge by eye; common practice, no source. */
    static final String HOW_TO_LOOK = "A screen is no swatch. Judge the cured chip itself: hold it on the hull edge to "
            + "edge, in daylight but not in the sun's glare, at arm's length, then turn the two round and look again. "
            + "Wet gelcoat looks other than cured. A strip of slanted bars marks a colour this screen cannot show.";

    private static final String OPEN = "How to look";
    private static final String CLOSE = "Close";

    private SwatchState state;
    private JudgedLight chosen = JudgedLight.DAYLIGHT;

    private final Rectangle hull = new Rectangle();
    private final Rectangle mix = new Rectangle();
    private final Rectangle chip = new Rectangle();
    private final Label hullName = text("", "picture-name");
    private final Label mixName = text("", "picture-name");
    private final Label chipName = text("", "picture-name");
    private final Label verdict = text("", "picture-figure");
    private final Label note = text(HOW_TO_LOOK, "picture-note");
    private final Button look = new Button(OPEN);
    private final List<UnshownMark> unshown = new ArrayList<>();
    private final List<LightKey> keys = new ArrayList<>();

    public SplitSwatch() {
        super("split-swatch", new Size(34, 22, 20, 16));
        List.of(hull, mix, chip).forEach(field -> field.setSmooth(false));
        look.getStyleClass().add("note-key");
        look.setMnemonicParsing(false);
        look.setOnAction(event -> openNote(!note.isVisible()));
        note.setVisible(false);
        setOnKeyPressed(event -> {
            if (state == null) {
                return;
            }
            if (event.getCode() == KeyCode.RIGHT) {
                step(1);
                event.consume();
            } else if (event.getCode() == KeyCode.LEFT) {
                step(-1);
                event.consume();
            }
        });
    }

    /** Shows or hides how to judge by eye. */
    public void openNote(boolean open) {
        note.setVisible(open);
        look.setText(open ? CLOSE : OPEN);
        look.setAccessibleText(open ? HOW_TO_LOOK + " " + CLOSE : "How to look: screens and eyes");
        requestLayout();
    }

    /** @return the light shown large */
    JudgedLight chosenLight() {
        return chosen;
    }

    private void step(int by) {
        List<JudgedLight> lights = List.copyOf(state.lights().keySet());
        choose(lights.get(Math.floorMod(lights.indexOf(chosen) + by, lights.size())));
    }

    public void show(SwatchState next) {
        state = next;
        choose(
                next.lights().containsKey(chosen)
                        ? chosen
                        : next.lights().keySet().iterator().next());
    }

    private void choose(JudgedLight light) {
        chosen = light;
        redraw();
    }

    private SwatchState.UnderLight now() {
        return state.lights().get(chosen);
    }

    private void redraw() {
        SwatchState.UnderLight now = now();
        List<Node> nodes = new ArrayList<>(List.of(hull, mix));
        hull.setFill(paint(now.hull()));
        mix.setFill(paint(now.mix()));
        hullName.setText(state.hullName());
        mixName.setText(state.mixName());
        nodes.addAll(List.of(hullName, mixName));
        unshown.clear();
        mark(now.hull(), hull);
        mark(now.mix(), mix);
        now.chip().ifPresent(read -> {
            chip.setFill(paint(read));
            chipName.setText(state.chipName());
            nodes.addAll(List.of(chip, chipName));
            mark(read, chip);
        });
        unshown.forEach(bar -> nodes.addAll(bar.nodes()));
        nodes.add(verdict);
        keys.clear();
        Map<JudgedLight, SwatchState.UnderLight> toChoose = state.lights().size() > 1 ? state.lights() : Map.of();
        toChoose.forEach((light, pair) -> {
            LightKey key = new LightKey(light, pair, light == chosen);
            key.setOnMouseClicked(event -> choose(light));
            keys.add(key);
        });
        nodes.addAll(keys);
        nodes.addAll(List.of(note, look));
        draw(nodes, words(now));
    }

    private void mark(Shade shade, Rectangle field) {
        if (!shade.shown()) {
            unshown.add(new UnshownMark(field));
        }
    }

    private String words(SwatchState.UnderLight now) {
        StringBuilder said = new StringBuilder("Split swatch under ")
                .append(chosen.label())
                .append(": ")
                .append(state.hullName())
                .append(" beside ")
                .append(state.mixName());
        now.chip().ifPresent(shade -> said.append(" and ").append(state.chipName()));
        said.append(". ")
                .append(verdict(now, true))
                .append(": ")
                .append(Closeness.words(now.apart()))
                .append(".");
        if (!now.allShown()) {
            said.append(" ").append(UnshownMark.WORDS[0]).append(".");
        }
        return said.append(" Left and right arrow keys change the light.").toString();
    }

    private String verdict(SwatchState.UnderLight now, boolean named) {
        String sure = now.within90().isPresent()
                ? ", likely " + DifferenceWords.within(now.within90().getAsDouble())
                : "";
        return (named ? state.compared() + ": " : "") + now.words() + " (" + DifferenceWords.off(now.apart()) + sure
                + ")";
    }

    @Override
    protected void layoutChildren() {
        if (state == null) {
            return;
        }
        double em = em();
        double left = Math.round(1.2 * em);
        double right = getWidth() - left;
        double fields = now().chip().isPresent() ? 3 : 2;
        // Whole pixels: a soft edge between two fields would be taken for a difference.
        double width = Math.floor((right - left) / fields);
        double top = nameFields(left, width, em);
        double keysTop = layoutKeys(left, right, em);
        double words = layoutVerdict(right - left, em);
        double bottom = keysTop - 0.3 * em - words;
        verdict.relocate(left, bottom + (words - verdict.getHeight()) / 2);
        look.relocate(right - look.getWidth(), bottom + (words - look.getHeight()) / 2);
        double height = Math.max(em, Math.floor(bottom - top));
        double hullAt = hullAt(left, width);
        box(hull, hullAt, top, width, height);
        box(mix, hullAt + width, top, width, height);
        box(chip, left, top, width, height);
        unshown.forEach(bar -> bar.layout(em));
        layoutNote(left, right, bottom + words, em);
    }

    /** The hull stands in the middle of three, so that both others touch it. */
    private double hullAt(double left, double width) {
        return now().chip().isPresent() ? left + width : left;
    }

    /** @return where the fields begin, below their names */
    private double nameFields(double left, double width, double em) {
        List<Label> names =
                now().chip().isPresent() ? List.of(chipName, hullName, mixName) : List.of(hullName, mixName);
        double tall = 0;
        for (Label name : names) {
            fit(name, width - 0.4 * em);
            tall = Math.max(tall, name.getHeight());
        }
        double top = Math.round(tall + 0.8 * em);
        for (int i = 0; i < names.size(); i++) {
            Label name = names.get(i);
            name.relocate(left + (i + 0.5) * width - name.getWidth() / 2, (top - name.getHeight()) / 2);
        }
        return top;
    }

    /** @return height of the line that says how far apart they are; long words give way in a narrow picture */
    private double layoutVerdict(double width, double em) {
        look.applyCss();
        look.resize(Math.ceil(look.prefWidth(-1)), Math.ceil(Math.max(look.minHeight(-1), look.prefHeight(-1))));
        double room = width - look.getWidth() - 0.8 * em;
        // Words before figures: the figure goes first, and only what three lines do not hold is a figure alone.
        Map<String, Double> choices = new LinkedHashMap<>();
        choices.put(verdict(now(), true), 3.2);
        choices.put(verdict(now(), false), 3.2);
        choices.put(now().words(), 4.8);
        choices.put(DifferenceWords.off(now().apart()), 4.8);
        for (Map.Entry<String, Double> choice : choices.entrySet()) {
            String said = choice.getKey();
            verdict.setText(said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1));
            fit(verdict, room);
            if (verdict.getHeight() < choice.getValue() * em) {
                break;
            }
        }
        return Math.max(verdict.getHeight(), look.getHeight()) + 0.5 * em;
    }

    /** @return where the keys begin; the lower edge when there are none */
    private double layoutKeys(double left, double right, double em) {
        if (keys.isEmpty()) {
            return getHeight() - 0.5 * em;
        }
        double each = (right - left + 0.6 * em) / keys.size();
        double tall = Math.round((each - 0.6 * em >= LightKey.WIDE * em ? 2.95 : 3.7) * em);
        double top = getHeight() - tall - 0.6 * em;
        for (int i = 0; i < keys.size(); i++) {
            keys.get(i)
                    .resizeRelocate(
                            (double) Math.round(left + i * each),
                            (double) Math.round(top),
                            Math.floor(each - 0.6 * em),
                            tall);
        }
        return top - 0.3 * em;
    }

    /** The note lies over ruler and keys, and over the fields' lower part when it is long. */
    private void layoutNote(double left, double right, double from, double em) {
        if (!note.isVisible()) {
            return;
        }
        fit(note, right - left);
        note.resize(right - left + 4, Math.max(note.prefHeight(right - left), getHeight() - from - 0.5 * em));
        note.relocate(left - 2, Math.max(0.3 * em, getHeight() - note.getHeight() - 0.5 * em));
        if (note.getLayoutY() < look.getLayoutY() + look.getHeight()) {
            look.relocate(look.getLayoutX(), Math.max(0, note.getLayoutY() - look.getHeight() - 0.2 * em));
        }
    }

    static void box(Rectangle field, double x, double y, double width, double height) {
        field.setX(x);
        field.setY(y);
        field.setWidth(width);
        field.setHeight(height);
    }
}
