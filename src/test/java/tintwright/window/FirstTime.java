package tintwright.window;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.text.Text;

/**
 * How long a job takes somebody who sees it for the first time, reckoned from what is pressed, typed and read; each press
 * and each field is pointed at by hand. Reckoned twice: for who reads what there is to do now (the foot, the first
 * walk, the card with the deed, the eye's page, the question at a field that is filled), and for who reads every word that comes into sight, once, and
 * of a sentence read before its new figures. Scale, cure and the program's own waits come on top.
 *
 * <p>The times of a hand: Card, Moran, Newell, "The Keystroke-Level Model for User Performance Time with Interactive
 * Systems", Communications of the ACM 23(7), 1980, 396 to 410. The pace of reading: Brysbaert, "How many words do we
 * read per minute?", Journal of Memory and Language 109, 2019, 104047. All from memory.
 */
final class FirstTime {
    /** To make up one's mind, s. */
    private static final double MIND = 1.35;
    /** To point at something, s. */
    private static final double POINT = 1.1;
    /** To take the hand from mouse to keys or back, s. */
    private static final double HAND = 0.4;
    /** One key or one click by somebody who is no typist, s. */
    private static final double KEY = 0.28;
    /** Words read in a second, silently. */
    private static final double WORDS = 238 / 60.0;

    /** Where it stands what there is to do now. */
    private static final Set<String> DEED = Set.of("now-bar", "deed-card", "eye-page", "walk");

    private final Set<String> read = new HashSet<>();
    private int presses;
    private int keys;
    private long words;
    private long wordsOfTheDeed;
    private boolean atTheKeys;
    private double atWork;

    /** Something is pressed. */
    void press() {
        presses++;
        atWork += MIND + POINT + KEY + hand(false);
    }

    /** A field is pressed and filled; what it asks for is read for that. */
    void type(String question, String text) {
        press();
        wordsOfTheDeed += question.split("\\s+").length;
        keys += text.length();
        atWork += hand(true) + KEY * text.length();
    }

    private double hand(boolean toTheKeys) {
        double moved = atTheKeys == toTheKeys ? 0 : HAND;
        atTheKeys = toTheKeys;
        return moved;
    }

    /** Reads what has come into sight. */
    void look(Scene scene) {
        look(scene.getRoot(), new BoundingBox(0, 0, scene.getWidth(), scene.getHeight()), false);
    }

    private void look(Node node, Bounds window, boolean deed) {
        if (!node.isVisible()) {
            return;
        }
        boolean inSight = inSight(node, window);
        boolean ofTheDeed = deed || node.getStyleClass().stream().anyMatch(DEED::contains);
        if (node instanceof Labeled label && inSight) {
            take(label.getText(), ofTheDeed);
        } else if (node instanceof TextField field && inSight) {
            take(field.getText().isEmpty() ? field.getPromptText() : "", ofTheDeed);
        } else if (node instanceof Text text && !(text.getParent() instanceof Labeled) && inSight) {
            take(text.getText(), ofTheDeed);
        }
        if (node instanceof Parent parent && !(node instanceof TextField)) {
            Bounds within = node instanceof ScrollPane ? node.localToScene(node.getLayoutBounds()) : window;
            parent.getChildrenUnmodifiable().forEach(child -> look(child, within, ofTheDeed));
        }
    }

    /** More than half of it, from top to bottom. */
    private static boolean inSight(Node node, Bounds window) {
        Bounds at = node.localToScene(node.getLayoutBounds());
        double middle = at.getMinY() + at.getHeight() / 2;
        return at.getWidth() > 0 && middle > window.getMinY() && middle < window.getMaxY();
    }

    /** Of what was read before with other figures the figures alone are read. */
    private void take(String text, boolean ofTheDeed) {
        if (text == null || text.isBlank() || !read.add(text)) {
            return;
        }
        List<String> all = List.of(text.strip().split("\\s+"));
        boolean known = !read.add(text.replaceAll("[0-9.]+", "#") + "#");
        long count =
                known ? all.stream().filter(word -> word.matches(".*[0-9].*")).count() : all.size();
        words += count;
        wordsOfTheDeed += ofTheDeed ? count : 0;
    }

    int presses() {
        return presses;
    }

    /** @return seconds of who reads what there is to do now */
    double seconds() {
        return atWork + wordsOfTheDeed / WORDS;
    }

    /** @return seconds of who reads every word */
    double secondsOfWhoReadsAll() {
        return atWork + words / WORDS;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d presses, %d letters and figures: %.0f s; %.0f s for who reads all %d words",
                presses,
                keys,
                seconds(),
                secondsOfWhoReadsAll(),
                words);
    }
}
