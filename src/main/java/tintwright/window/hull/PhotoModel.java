package tintwright.window.hull;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tintwright.bench.PhotoBench;
import tintwright.files.FileProblem;
import tintwright.reading.ColourReading;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.reading.photo.PhotoReadings;
import tintwright.reading.photo.card.CardFinder;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.ReferenceCard;
import tintwright.reading.photo.card.Spot;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.Preview;
import tintwright.reading.photo.file.Progress;

/** A photo being marked and read. Work runs on the worker; everything shown changes on the screen's thread. */
public final class PhotoModel {
    /** Enough for a sharp loupe, little enough for a small machine. */
    private static final int SHOWN_SIDE = 2400;
    /** A fresh spot covers this share of the photo's longer side. */
    private static final double SPOT_SHARE = 0.015;

    private static final double LEAST_RADIUS = 3;

    private final Executor worker;
    private final Executor screen;
    private final PhotoTask task;
    private final ReadOnlyObjectWrapper<Preview> preview = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<PhotoMarks> marks;
    private final ReadOnlyObjectWrapper<PhotoReadings> readings = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper(0);
    private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("Open a photo, or drop one here.");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final List<ReferenceCard> cards = new ArrayList<>(PhotoBench.cards());
    private PhotoBench bench;
    private long asked;
    private volatile Watch watch = new Watch(0);

    /**
     * @param worker where photos are decoded; in the program one background thread
     * @param screen where answers are shown; in the program the screen's thread
     * @param taker  takes the hull's readings when the person is content with them
     */
    public PhotoModel(Executor worker, Executor screen, Consumer<List<Reading>> taker) {
        this(worker, screen, new HullTask(taker));
    }

    /** @param taker takes the reading of a cup's chip, and of the hull when both are in the photo */
    public static PhotoModel ofChip(
            Executor worker, Executor screen, BiConsumer<ColourReading, Optional<ColourReading>> taker) {
        return new PhotoModel(worker, screen, new ChipTask(taker));
    }

    private PhotoModel(Executor worker, Executor screen, PhotoTask task) {
        this.worker = worker;
        this.screen = screen;
        this.task = task;
        this.marks = new ReadOnlyObjectWrapper<>(PhotoMarks.none(cards.get(0)));
    }

    /** One piece of work; a newer one makes it stop. */
    private final class Watch implements Progress {
        private final long number;
        private volatile boolean stopped;

        private Watch(long number) {
            this.number = number;
        }

        @Override
        public void at(double part) {
            screen.execute(() -> {
                if (number == asked) {
                    progress.set(part);
                }
            });
        }

        @Override
        public boolean cancelled() {
            return stopped;
        }
    }

    private <T> void work(Callable<T> task, Consumer<T> shown) {
        work(task, shown, () -> {});
    }

    private <T> void work(Callable<T> task, Consumer<T> shown, Runnable failed) {
        watch.stopped = true;
        Watch mine = new Watch(++asked);
        watch = mine;
        busy.set(true);
        progress.set(0);
        problem.set("");
        worker.execute(() -> {
            T answer = null;
            String wrong = "";
            try {
                answer = task.call();
            } catch (PhotoException | FileProblem | IllegalArgumentException e) {
                wrong = e.getMessage();
            } catch (Exception e) {
                System.getLogger(PhotoModel.class.getName()).log(System.Logger.Level.ERROR, "photo work failed", e);
                wrong = "That failed. Nothing was changed; the details are in the program log.";
            }
            T done = answer;
            String said = wrong;
            screen.execute(() -> {
                if (mine.number != asked) {
                    return;
                }
                busy.set(false);
                if (said.isEmpty()) {
                    shown.accept(done);
                } else {
                    problem.set(capital(said));
                    failed.run();
                }
            });
        });
    }

    private static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private record Opened(PhotoBench bench, Preview preview, Optional<PhotoMarks> kept) {}

    /** Opens a photo, with the marks kept beside it if there are any. */
    public void open(Path file) {
        message.set("Opening " + file.getFileName());
        ReferenceCard card = marks.get().card();
        work(
                () -> {
                    PhotoBench opened = PhotoBench.open(file);
                    Preview shown = opened.preview(SHOWN_SIDE, watch);
                    return new Opened(opened, shown, opened.savedMarks().map(kept -> PhotoMarks.of(kept, card)));
                },
                opened -> {
                    bench = opened.bench();
                    readings.set(null);
                    marks.set(opened.kept().orElse(PhotoMarks.none(card)));
                    preview.set(opened.preview());
                    message.set(
                            opened.kept().isPresent()
                                    ? "The marks kept beside the photo are shown."
                                    : "Find the card, or set its corners by hand. Then " + task.toClick() + ".");
                    if (opened.kept().isPresent()) {
                        read();
                    } else {
                        ledByHand();
                    }
                });
    }

    /** Stops the work under way. */
    public void stop() {
        watch.stopped = true;
    }

    /** @return the cards to choose from */
    public List<ReferenceCard> cards() {
        return List.copyOf(cards);
    }

    /** Says which card lies in the photo. */
    public void choose(ReferenceCard card) {
        marks.set(marks.get().withCard(card));
        if (!ledByHand()) {
            readAgain();
        }
    }

    /** A card that is not looked for gets its frame at once; nothing is read before a hand has dragged it. */
    private boolean ledByHand() {
        Optional<String> byHand = CardFinder.byHand(marks.get().card());
        if (bench == null || byHand.isEmpty() || !marks.get().corners().isEmpty()) {
            return false;
        }
        marks.set(marks.get().withCorners(frame()));
        readings.set(null);
        message.set(byHand.get());
        return true;
    }

    /** Takes a card from its file into the choice. */
    public void openCard(Path file) {
        work(() -> PhotoBench.card(file), card -> {
            cards.add(card);
            choose(card);
        });
    }

    /** Says whether the card lies on the hull, in the light of the spots. */
    public void cardOnHull(boolean said) {
        if (said != marks.get().rest().cardOnHull()) {
            marks.set(marks.get().withCardOnHull(said));
            readAgain();
        }
    }

    /** Looks for the card; what is found is for the person to confirm. */
    public void findCard() {
        if (bench == null) {
            return;
        }
        message.set("Looking for the card");
        PhotoBench here = bench;
        ReferenceCard card = marks.get().card();
        work(() -> here.findCard(card, watch), found -> {
            if (found.isPresent()) {
                marks.set(marks.get().withCorners(found.get().placed().corners()));
                message.set("Is this the card, the right way round? If not, drag its corners.");
                readAgain();
            } else {
                message.set("The card \"" + card.name() + "\" was not found. Set its corners by hand: a frame is in "
                        + "the middle of the picture.");
                placeByHand();
            }
        });
    }

    /** Puts the card's frame into the middle of the picture, to be dragged. */
    public void placeByHand() {
        if (bench != null) {
            marks.set(marks.get().withCorners(frame()));
            readAgain();
        }
    }

    private List<PixelPoint> frame() {
        double wide = bench.width() * 0.25;
        double high = Math.min(
                bench.height() * 0.3,
                wide * marks.get().card().rows() / marks.get().card().columns());
        double x = bench.width() / 2.0;
        double y = bench.height() / 2.0;
        return List.of(
                new PixelPoint(x - wide, y - high),
                new PixelPoint(x + wide, y - high),
                new PixelPoint(x + wide, y + high),
                new PixelPoint(x - wide, y + high));
    }

    /** Turns the card a quarter: the first corner becomes the second. */
    public void turnCard() {
        List<PixelPoint> corners = marks.get().corners();
        if (corners.size() == 4) {
            marks.set(marks.get().withCorners(List.of(corners.get(3), corners.get(0), corners.get(1), corners.get(2))));
            readAgain();
        }
    }

    public void moveCorner(int index, PixelPoint to) {
        marks.set(marks.get().withCorner(index, inside(to)));
    }

    /** A click: marks what is to be read. */
    public void addSpot(PixelPoint at) {
        if (bench == null) {
            return;
        }
        double radius = Math.max(LEAST_RADIUS, SPOT_SHARE * Math.max(bench.width(), bench.height()));
        marks.set(marks.get().withSpots(task.marked(marks.get().spots(), inside(at), radius)));
        readAgain();
    }

    /** @return the film of the chip that is marked; empty when this photo is read for the hull */
    Optional<FilmState> film() {
        return task instanceof ChipTask chip ? Optional.of(chip.film()) : Optional.empty();
    }

    /** Says whether the chip in the photo is wet or cured. */
    void film(FilmState now) {
        if (task instanceof ChipTask chip) {
            marks.set(marks.get().withSpots(chip.filmed(marks.get().spots(), now)));
            readAgain();
        }
    }

    public void moveSpot(int index, PixelPoint to) {
        marks.set(marks.get().withSpot(index, marks.get().spots().get(index).at(inside(to))));
    }

    public void removeSpot(int index) {
        List<Spot> spots = new ArrayList<>(marks.get().spots());
        spots.remove(index);
        marks.set(marks.get().withSpots(spots));
        readAgain();
    }

    private PixelPoint inside(PixelPoint point) {
        return new PixelPoint(
                Math.max(0, Math.min(bench.width() - 1.0, point.x())),
                Math.max(0, Math.min(bench.height() - 1.0, point.y())));
    }

    /** Reads when there is something to read; called whenever a mark was let go. */
    public void readAgain() {
        if (bench == null || marks.get().spots().isEmpty()) {
            readings.set(null);
            return;
        }
        read();
    }

    private void read() {
        PhotoBench here = bench;
        PhotoMarks now = marks.get();
        work(
                () -> here.read(now.whole(), watch),
                answer -> {
                    readings.set(answer);
                    message.set(task.missing(marks.get().spots()));
                },
                () -> readings.set(null));
    }

    /** Keeps the marks beside the photo and hands the hull's readings over. */
    public void use() {
        PhotoReadings ready = readings.get();
        if (ready == null) {
            return;
        }
        PhotoBench here = bench;
        PhotoMarks now = marks.get();
        work(
                () -> {
                    here.saveMarks(now.whole());
                    return ready;
                },
                taken -> {
                    try {
                        message.set("Taken: " + task.take(taken) + ". The marks are kept beside the photo.");
                    } catch (IllegalArgumentException e) {
                        problem.set(capital(e.getMessage()));
                    }
                });
    }

    public ReadOnlyObjectProperty<Preview> previewProperty() {
        return preview.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<PhotoMarks> marksProperty() {
        return marks.getReadOnlyProperty();
    }

    /** @return the latest readings; null while nothing is read */
    public ReadOnlyObjectProperty<PhotoReadings> readingsProperty() {
        return readings.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** @return 0 to 1 */
    public ReadOnlyDoubleProperty progressProperty() {
        return progress.getReadOnlyProperty();
    }

    /** @return what to do next; may be empty */
    public ReadOnlyStringProperty messageProperty() {
        return message.getReadOnlyProperty();
    }

    /** @return what went wrong and what to do; mostly empty */
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }
}
