package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import tintwright.bench.Closeness;
import tintwright.window.picture.Room.Box;

/**
 * What the number means: a ruler from "not seen" to "another colour" with a mark where the mix stands. The limits are
 * those of {@link Closeness}; each band is as wide as the next, so that the small differences can be told apart.
 */
final class NearnessRuler {
    /** Height of the whole ruler, text sizes. */
    static final double TALL = 2.5;

    private static final String[] WORDS = {"not seen", "practised eye", "edge to edge", "at a glance", "another colour"
    };
    /** Where the last band ends on the ruler; beyond it the mark stands at the end. */
    private static final double END = 8;

    private final Line line = Picture.styled(new Line(), "leader");
    private final Polygon mark = Picture.styled(new Polygon(), "pointer");
    private final List<Line> ticks = new ArrayList<>();
    private final List<Label> numbers = new ArrayList<>();
    private final List<Label> words = new ArrayList<>();
    private double apart;

    NearnessRuler() {
        for (int i = 0; i < WORDS.length; i++) {
            ticks.add(Picture.styled(new Line(), "leader"));
            numbers.add(Picture.text(number(limit(i)), "picture-small"));
            words.add(Picture.text(WORDS[i], "picture-small"));
        }
    }

    private static double limit(int band) {
        return band == 0 ? 0 : Closeness.limits().get(band - 1);
    }

    private static String number(double limit) {
        return limit == Math.rint(limit) ? Picture.say("%.0f", limit) : Picture.say("%.1f", limit);
    }

    List<Node> show(double next) {
        apart = next;
        for (int i = 0; i < words.size(); i++) {
            words.get(i).getStyleClass().remove("picture-name");
            if (i == band(apart)) {
                words.get(i).getStyleClass().add("picture-name");
            }
        }
        List<Node> nodes = new ArrayList<>(List.of(line));
        nodes.addAll(ticks);
        nodes.addAll(numbers);
        nodes.addAll(words);
        nodes.add(mark);
        return nodes;
    }

    static int band(double apart) {
        int band = 0;
        while (band < WORDS.length - 1 && apart >= limit(band + 1)) {
            band++;
        }
        return band;
    }

    /** @return 0 at the left end to 1 at the right */
    static double share(double apart) {
        int band = band(apart);
        double to = band == WORDS.length - 1 ? END : limit(band + 1);
        double within = (apart - limit(band)) / (to - limit(band));
        return (band + Math.max(0, Math.min(1, within))) / WORDS.length;
    }

    void visible(boolean visible) {
        line.setVisible(visible);
        mark.setVisible(visible);
        ticks.forEach(tick -> tick.setVisible(visible));
        numbers.forEach(number -> number.setVisible(visible));
        words.forEach(word -> word.setVisible(visible));
    }

    void layout(double x, double y, double width, double em) {
        visible(true);
        double level = Math.round(y + 0.8 * em);
        RosePulls.set(line, x, level, x + width, level);
        double at = x + share(apart) * width;
        mark.getPoints().setAll(at, level - 0.1 * em, at - 0.5 * em, level - 0.8 * em, at + 0.5 * em, level - 0.8 * em);
        Room room = new Room(new Box(x - 0.6 * em, level, width + 1.2 * em, 2 * em));
        double each = width / WORDS.length;
        double middle = level + 0.95 * em;
        // The word where the mix stands comes first: it is always there.
        List<Label> order = new ArrayList<>(List.of(words.get(band(apart))));
        order.addAll(numbers);
        order.addAll(words);
        for (Label label : order.stream().distinct().toList()) {
            Picture.size(label);
            int word = words.indexOf(label);
            int number = numbers.indexOf(label);
            double wide = label.getWidth() + 0.5 * em;
            double wanted = word >= 0 ? x + (word + 0.5) * each : x + number * each;
            double inside = Math.max(x - 0.5 * em + wide / 2, Math.min(x + width + 0.5 * em - wide / 2, wanted));
            boolean there = room.first(List.of(Box.around(inside, middle, wide, label.getHeight())))
                    .isPresent();
            label.setVisible(there);
            label.relocate(inside - label.getWidth() / 2, middle - label.getHeight() / 2);
        }
        for (int i = 0; i < ticks.size(); i++) {
            RosePulls.set(ticks.get(i), x + i * each, level - 0.25 * em, x + i * each, level + 0.25 * em);
        }
    }
}
