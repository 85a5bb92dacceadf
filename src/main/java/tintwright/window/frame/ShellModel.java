package tintwright.window.frame;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import tintwright.units.UnitSystem;

/** What is always in sight: the job's stations, what to do now and how near it is, and the settings of the window. */
public final class ShellModel {
    /** Smallest and largest share of the usual text size. */
    public static final double LEAST_TEXT = 0.8;

    public static final double MOST_TEXT = 2.0;
    private static final double TEXT_STEP = 0.1;

    private final ObjectProperty<Step> step = new SimpleObjectProperty<>(Step.CUP);
    private final StringProperty job = new SimpleStringProperty("");
    private final Map<Step, StringProperty> captions = new EnumMap<>(Step.class);
    private final Map<Step, BooleanProperty> done = new EnumMap<>(Step.class);
    private final StringProperty close = new SimpleStringProperty("\u2013");
    private final StringProperty closeWords = new SimpleStringProperty("");
    private final StringProperty sure = new SimpleStringProperty("\u2013");
    private final StringProperty sureWords = new SimpleStringProperty("");
    private final StringProperty now = new SimpleStringProperty("");
    private final StringProperty nowButton = new SimpleStringProperty("");
    private final BooleanProperty elsewhere = new SimpleBooleanProperty(false);
    private final StringProperty notice = new SimpleStringProperty("");
    private final Map<String, String> warnings = new LinkedHashMap<>();
    private final BooleanProperty noticeStays = new SimpleBooleanProperty(false);
    /** What is done within so many ms needs no word of how long it takes. */
    private static final long SOON = 1000;

    private final StringProperty doing = new SimpleStringProperty("");
    private final BooleanProperty busy = new SimpleBooleanProperty(false);
    private final DoubleProperty textShare = new SimpleDoubleProperty(1);
    private final BooleanProperty dark = new SimpleBooleanProperty(false);
    private final BooleanProperty moves = new SimpleBooleanProperty(false);
    private final BooleanProperty canUndo = new SimpleBooleanProperty(false);
    private final BooleanProperty canRedo = new SimpleBooleanProperty(false);
    private Runnable nowAction = () -> {};
    private Runnable undo = () -> {};
    private Runnable redo = () -> {};
    private Runnable lastBoat = () -> {};
    private final List<LatestAnswer> awaited = new ArrayList<>();
    private final IntegerProperty pointed = new SimpleIntegerProperty(0);
    private final ObjectProperty<UnitSystem> units = new SimpleObjectProperty<>(UnitSystem.METRIC);
    private Consumer<String> clipboard = text -> {};

    public ShellModel() {
        for (Step each : Step.values()) {
            captions.put(each, new SimpleStringProperty(each.meaning()));
            done.put(each, new SimpleBooleanProperty(false));
        }
    }

    /** Says what to do now: one sentence, one button. */
    public void next(String sentence, String button, Runnable action) {
        now.set(sentence);
        nowButton.set(button);
        nowAction = action;
        elsewhere.set(false);
    }

    /** Says what to do now, where that is done at another station than the one in hand. */
    public void nextElsewhere(String sentence, String button, Runnable action) {
        next(sentence, button, action);
        elsewhere.set(true);
    }

    /** @return true when what to do now is done at another station than the one in hand */
    BooleanProperty elsewhereProperty() {
        return elsewhere;
    }

    /** @return true when there is a hull and a mix to compare */
    boolean comparing() {
        return !closeWords.get().isEmpty() && !sureWords.get().isEmpty();
    }

    /** Says how near the cup is and how sure that is. */
    public void answer(String howClose, String closeInWords, String howSure, String sureInWords) {
        close.set(howClose);
        closeWords.set(closeInWords);
        sure.set(howSure);
        sureWords.set(sureInWords);
    }

    /** Does what the button beside the sentence says. */
    public void doNow() {
        nowAction.run();
    }

    /** Says what undo and redo do from here on. */
    public void history(boolean undoable, Runnable undoIt, boolean redoable, Runnable redoIt) {
        canUndo.set(undoable);
        canRedo.set(redoable);
        undo = undoIt;
        redo = redoIt;
    }

    public void undo() {
        if (canUndo.get()) {
            undo.run();
        }
    }

    public void redo() {
        if (canRedo.get()) {
            redo.run();
        }
    }

    /** @param open brings back the boat worked on before this one */
    public void lastBoat(Runnable open) {
        lastBoat = open;
    }

    /** Brings back the boat worked on before this one; nothing happens when there is none. */
    public void lastBoat() {
        lastBoat.run();
    }

    /** An answer is awaited; {@link #cancel()} gives it up. */
    void begin(LatestAnswer question) {
        awaited.add(question);
        sayWhatIsDone();
    }

    void end(LatestAnswer question) {
        awaited.remove(question);
        sayWhatIsDone();
    }

    /** The work that was asked for first is under way, so it is what is waited for. */
    private void sayWhatIsDone() {
        doing.set(awaited.isEmpty() ? "" : awaited.get(0).words());
        busy.set(!awaited.isEmpty());
    }

    /**
     * Says what is being worked on and how much of it is left, by how long it took the last time.
     *
     * @param waited ms since it was asked for
     * @return 0 to 1 of it done; below 0 when nobody knows
     */
    double working(long waited) {
        if (awaited.isEmpty()) {
            return -1;
        }
        LatestAnswer first = awaited.get(0);
        doing.set(first.words() + left(waited, first.took()));
        return done(waited, first.took());
    }

    /** @return 0 to 0.95: what takes longer than the last time waits short of its end; -1 when nobody knows */
    static double done(long waited, long took) {
        return took < SOON ? -1 : Math.min(0.95, (double) waited / took);
    }

    /** @return such as " about 3 s left"; nothing when it is soon done or nobody knows */
    static String left(long waited, long took) {
        return took - waited < SOON ? "" : " about " + Math.round((took - waited) / 1000.0) + " s left";
    }

    /** Gives up what is being worked on; what was there before still stands. */
    public void cancel() {
        new ArrayList<>(awaited).forEach(LatestAnswer::cancel);
    }

    /** The window shows where the thing to do now is done. */
    public void pointOut() {
        pointed.set(pointed.get() + 1);
    }

    /** @param to where copied text goes */
    void copyTo(Consumer<String> to) {
        clipboard = to;
    }

    /** Copies text and says so. */
    public void copy(String text) {
        clipboard.accept(text);
        say("Copied as text.");
    }

    public void largerText() {
        setTextShare(textShare.get() + TEXT_STEP);
    }

    public void smallerText() {
        setTextShare(textShare.get() - TEXT_STEP);
    }

    /** @param share of the usual text size; held within {@link #LEAST_TEXT} and {@link #MOST_TEXT} */
    public void setTextShare(double share) {
        double held = Math.max(LEAST_TEXT, Math.min(MOST_TEXT, share));
        textShare.set(Math.round(held * 10) / 10.0);
    }

    /**
     * Says something that needs no answer; it goes by itself after a while. Beside a warning that still stands it is
     * said too, and does not take its place; with no words at all the notice is closed.
     */
    public void say(String sentence) {
        if (sentence.isEmpty()) {
            warnings.clear();
        }
        show(sentence);
    }

    /**
     * Says something that must not be missed, such as what was not saved: it stays until it is closed, and so does
     * what was warned of before.
     */
    public void warn(String sentence) {
        warn(sentence, sentence);
    }

    /** @param about a later warning about the same thing takes the place of this one */
    public void warn(String about, String sentence) {
        warnings.put(about, sentence);
        show("");
    }

    /** What was warned of needs no watching any more. */
    public void settled(String about) {
        if (warnings.remove(about) != null) {
            show("");
        }
    }

    private void show(String besides) {
        noticeStays.set(!warnings.isEmpty());
        notice.set(Stream.concat(warnings.values().stream(), Stream.of(besides))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(" ")));
    }

    public ObjectProperty<Step> stepProperty() {
        return step;
    }

    public StringProperty jobProperty() {
        return job;
    }

    public StringProperty captionProperty(Step of) {
        return captions.get(of);
    }

    /** @return true when all that the job needs from this station is there */
    public BooleanProperty doneProperty(Step of) {
        return done.get(of);
    }

    public StringProperty closeProperty() {
        return close;
    }

    public StringProperty closeWordsProperty() {
        return closeWords;
    }

    public StringProperty sureProperty() {
        return sure;
    }

    /** @return what {@link #sureProperty()} means; empty while there is nothing to compare */
    StringProperty sureWordsProperty() {
        return sureWords;
    }

    public StringProperty nowProperty() {
        return now;
    }

    public StringProperty nowButtonProperty() {
        return nowButton;
    }

    IntegerProperty pointedProperty() {
        return pointed;
    }

    public ObjectProperty<UnitSystem> unitsProperty() {
        return units;
    }

    public StringProperty noticeProperty() {
        return notice;
    }

    public BooleanProperty noticeStaysProperty() {
        return noticeStays;
    }

    /** @return what is being worked on, in a few words; empty when nothing is */
    public StringProperty doingProperty() {
        return doing;
    }

    public BooleanProperty busyProperty() {
        return busy;
    }

    public DoubleProperty textShareProperty() {
        return textShare;
    }

    public BooleanProperty darkProperty() {
        return dark;
    }

    /** @return true when pictures may move; still unless the system or the person says otherwise */
    public BooleanProperty movesProperty() {
        return moves;
    }

    public BooleanProperty canUndoProperty() {
        return canUndo;
    }

    public BooleanProperty canRedoProperty() {
        return canRedo;
    }
}
