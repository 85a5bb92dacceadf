package tintwright.window.hull;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.PlacedCard;
import tintwright.reading.photo.card.Spot;
import tintwright.reading.photo.file.Preview;

/**
 * The picture with its marks. Wheel, + and - zoom; dragging the picture moves it; marks are dragged, or chosen with
 * Page Up and Page Down and moved with the arrows. A loupe shows what lies under a mark that is held.
 */
final class PhotoPane extends Region {
    private static final double GRIP = 14;
    private static final double LOUPE = 70;
    private static final double LOUPE_ZOOM = 4;
    private static final double CLICK = 4;
    private static final Color LINE = Color.rgb(255, 255, 255, 0.95);
    private static final Color EDGE = Color.rgb(0, 0, 0, 0.8);

    private final PhotoModel model;
    private final Canvas canvas = new Canvas();
    private Image picture;
    private double zoom = 1;
    private double left;
    private double top;
    private boolean fitted;
    /** Corners are 0 to 3, spots follow; -1 for none. */
    private int chosen = -1;

    private boolean held;
    private boolean moved;
    private double pressX;
    private double pressY;
    private double lastX;
    private double lastY;

    PhotoPane(PhotoModel model) {
        this.model = model;
        getStyleClass().add("photo-pane");
        getChildren().add(canvas);
        setMinSize(200, 160);
        setPrefSize(760, 560);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText("The photo. Plus and minus zoom. Insert adds a spot in the middle. Page up and page down "
                + "choose a corner or a spot, arrows move it, delete takes a spot away.");
        model.previewProperty().addListener((property, before, after) -> take(after));
        model.marksProperty().addListener((property, before, after) -> draw());
        focusedProperty().addListener((property, before, after) -> draw());
        setOnMousePressed(this::press);
        setOnMouseDragged(this::drag);
        setOnMouseReleased(this::release);
        setOnScroll(this::scroll);
        setOnKeyPressed(this::key);
        take(model.previewProperty().get());
    }

    /** @return the pixels of a photo as the toolkit draws them */
    static WritableImage image(Preview preview) {
        WritableImage image = new WritableImage(preview.width(), preview.height());
        image.getPixelWriter()
                .setPixels(
                        0,
                        0,
                        preview.width(),
                        preview.height(),
                        PixelFormat.getIntArgbInstance(),
                        preview.argb(),
                        0,
                        preview.width());
        return image;
    }

    private void take(Preview preview) {
        picture = preview == null ? null : image(preview);
        fitted = false;
        chosen = -1;
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        if (!fitted && picture != null && getWidth() > 0) {
            fit();
        }
        draw();
    }

    /** The whole picture in the middle. */
    void fit() {
        if (picture == null) {
            return;
        }
        zoom = Math.min(getWidth() / picture.getWidth(), getHeight() / picture.getHeight());
        left = (getWidth() - picture.getWidth() * zoom) / 2;
        top = (getHeight() - picture.getHeight() * zoom) / 2;
        fitted = true;
        draw();
    }

    void zoomBy(double factor, double x, double y) {
        double wanted = Math.max(0.05, Math.min(40, zoom * factor));
        left = x - (x - left) * wanted / zoom;
        top = y - (y - top) * wanted / zoom;
        zoom = wanted;
        fitted = true;
        draw();
    }

    private double scale() {
        return zoom * model.previewProperty().get().scale();
    }

    private double screenX(PixelPoint point) {
        return left + point.x() * scale();
    }

    private double screenY(PixelPoint point) {
        return top + point.y() * scale();
    }

    private PixelPoint photo(double x, double y) {
        return new PixelPoint((x - left) / scale(), (y - top) / scale());
    }

    private void press(MouseEvent event) {
        requestFocus();
        if (picture == null) {
            return;
        }
        pressX = lastX = event.getX();
        pressY = lastY = event.getY();
        moved = false;
        chosen = markAt(event.getX(), event.getY());
        held = chosen >= 0 && event.getButton() == MouseButton.PRIMARY;
        draw();
    }

    private int markAt(double x, double y) {
        PhotoMarks marks = model.marksProperty().get();
        for (int i = 0; i < marks.spots().size(); i++) {
            Spot spot = marks.spots().get(i);
            double reach = Math.max(GRIP, spot.radius() * scale());
            if (Math.hypot(screenX(spot.centre()) - x, screenY(spot.centre()) - y) < reach) {
                return 4 + i;
            }
        }
        for (int i = 0; i < marks.corners().size(); i++) {
            if (Math.hypot(
                            screenX(marks.corners().get(i)) - x,
                            screenY(marks.corners().get(i)) - y)
                    < GRIP) {
                return i;
            }
        }
        return -1;
    }

    private void drag(MouseEvent event) {
        if (picture == null) {
            return;
        }
        moved |= Math.hypot(event.getX() - pressX, event.getY() - pressY) > CLICK;
        if (held && moved) {
            move(chosen, photo(event.getX(), event.getY()));
        } else if (!held && moved) {
            left += event.getX() - lastX;
            top += event.getY() - lastY;
            draw();
        }
        lastX = event.getX();
        lastY = event.getY();
    }

    private void move(int mark, PixelPoint to) {
        if (mark < 4) {
            model.moveCorner(mark, to);
        } else {
            model.moveSpot(mark - 4, to);
        }
    }

    private void release(MouseEvent event) {
        if (picture == null) {
            return;
        }
        if (held && moved) {
            model.readAgain();
        } else if (!held && !moved && event.getButton() == MouseButton.PRIMARY) {
            model.addSpot(photo(event.getX(), event.getY()));
            chosen = 3 + model.marksProperty().get().spots().size();
        }
        held = false;
        draw();
    }

    private void scroll(ScrollEvent event) {
        if (picture != null && event.getDeltaY() != 0) {
            zoomBy(Math.pow(1.0015, event.getDeltaY()), event.getX(), event.getY());
            event.consume();
        }
    }

    private void key(KeyEvent event) {
        if (picture == null) {
            return;
        }
        double step = event.isShiftDown() ? 10 : 1;
        boolean known = true;
        switch (event.getCode()) {
            case PLUS, ADD, EQUALS -> zoomBy(1.25, getWidth() / 2, getHeight() / 2);
            case MINUS, SUBTRACT -> zoomBy(0.8, getWidth() / 2, getHeight() / 2);
            case DIGIT0, NUMPAD0, HOME -> fit();
            case INSERT -> model.addSpot(photo(getWidth() / 2, getHeight() / 2));
            case PAGE_DOWN -> choose(1);
            case PAGE_UP -> choose(-1);
            case LEFT -> nudge(-step, 0);
            case RIGHT -> nudge(step, 0);
            case UP -> nudge(0, -step);
            case DOWN -> nudge(0, step);
            case DELETE -> remove();
            default -> known = false;
        }
        if (known) {
            event.consume();
        }
    }

    private void choose(int way) {
        PhotoMarks marks = model.marksProperty().get();
        int first = marks.corners().isEmpty() ? 4 : 0;
        int end = 4 + marks.spots().size();
        if (end > first) {
            int next = chosen < 0 ? (way > 0 ? first : end - 1) : chosen + way;
            chosen = next >= end ? first : next < first ? end - 1 : next;
            draw();
        }
    }

    private void nudge(double dx, double dy) {
        PixelPoint at = chosenAt();
        if (at == null) {
            left -= dx * 10;
            top -= dy * 10;
            draw();
            return;
        }
        move(chosen, new PixelPoint(at.x() + dx, at.y() + dy));
        model.readAgain();
    }

    private void remove() {
        if (chosen >= 4 && chosen - 4 < model.marksProperty().get().spots().size()) {
            int index = chosen - 4;
            chosen = -1;
            model.removeSpot(index);
        }
    }

    private PixelPoint chosenAt() {
        PhotoMarks marks = model.marksProperty().get();
        if (chosen >= 4 && chosen - 4 < marks.spots().size()) {
            return marks.spots().get(chosen - 4).centre();
        }
        return chosen >= 0 && chosen < marks.corners().size() ? marks.corners().get(chosen) : null;
    }

    private void draw() {
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        if (picture == null) {
            return;
        }
        g.setImageSmoothing(zoom < 2);
        g.drawImage(picture, left, top, picture.getWidth() * zoom, picture.getHeight() * zoom);
        PhotoMarks marks = model.marksProperty().get();
        marks.placed().ifPresent(placed -> patches(g, placed));
        corners(g, marks.corners());
        for (int i = 0; i < marks.spots().size(); i++) {
            spot(g, marks.spots().get(i), chosen == 4 + i);
        }
        PixelPoint at = chosenAt();
        if (at != null && (held || isFocused())) {
            loupe(g, at);
        }
    }

    private void patches(GraphicsContext g, PlacedCard placed) {
        for (List<PixelPoint> outline : placed.outlines()) {
            line(g, outline, 1);
        }
    }

    /** Dark beneath light, so that it is seen on any picture. */
    private void line(GraphicsContext g, List<PixelPoint> points, double width) {
        double[] xs = new double[points.size()];
        double[] ys = new double[points.size()];
        for (int i = 0; i < xs.length; i++) {
            xs[i] = screenX(points.get(i));
            ys[i] = screenY(points.get(i));
        }
        g.setStroke(EDGE);
        g.setLineWidth(width + 2);
        g.strokePolygon(xs, ys, xs.length);
        g.setStroke(LINE);
        g.setLineWidth(width);
        g.strokePolygon(xs, ys, xs.length);
    }

    private void corners(GraphicsContext g, List<PixelPoint> corners) {
        if (corners.size() == 4) {
            line(g, corners, 1.5);
        }
        for (int i = 0; i < corners.size(); i++) {
            double x = screenX(corners.get(i));
            double y = screenY(corners.get(i));
            double r = i == chosen ? GRIP * 0.75 : GRIP * 0.55;
            g.setFill(EDGE);
            g.fillOval(x - r - 1.5, y - r - 1.5, 2 * r + 3, 2 * r + 3);
            g.setFill(LINE);
            g.fillOval(x - r, y - r, 2 * r, 2 * r);
            g.setFill(EDGE);
            g.fillText(Integer.toString(i + 1), x - 3.5, y + 4.5);
        }
    }

    private void spot(GraphicsContext g, Spot spot, boolean bold) {
        double x = screenX(spot.centre());
        double y = screenY(spot.centre());
        double r = Math.max(3, spot.radius() * scale());
        g.setStroke(EDGE);
        g.setLineWidth(bold ? 5 : 4);
        g.strokeOval(x - r, y - r, 2 * r, 2 * r);
        g.setStroke(LINE);
        g.setLineWidth(bold ? 3 : 1.8);
        g.strokeOval(x - r, y - r, 2 * r, 2 * r);
        g.setLineWidth(3);
        g.setStroke(EDGE);
        g.strokeText(spot.name(), x + r + 6, y + 4);
        g.setFill(LINE);
        g.fillText(spot.name(), x + r + 6, y + 4);
    }

    private void loupe(GraphicsContext g, PixelPoint at) {
        double x = screenX(at);
        double y = screenY(at);
        double cx = x + LOUPE * 1.6 < getWidth() - LOUPE ? x + LOUPE * 1.6 : x - LOUPE * 1.6;
        double cy = Math.max(LOUPE + 4, Math.min(getHeight() - LOUPE - 4, y - LOUPE * 1.2));
        double magnified = Math.max(zoom * LOUPE_ZOOM, 2);
        double s = model.previewProperty().get().scale();
        g.save();
        g.beginPath();
        g.arc(cx, cy, LOUPE, LOUPE, 0, 360);
        g.closePath();
        g.clip();
        g.setFill(EDGE);
        g.fillRect(cx - LOUPE, cy - LOUPE, 2 * LOUPE, 2 * LOUPE);
        g.setImageSmoothing(false);
        g.drawImage(
                picture,
                cx - at.x() * s * magnified,
                cy - at.y() * s * magnified,
                picture.getWidth() * magnified,
                picture.getHeight() * magnified);
        g.restore();
        g.setStroke(EDGE);
        g.setLineWidth(4);
        g.strokeOval(cx - LOUPE, cy - LOUPE, 2 * LOUPE, 2 * LOUPE);
        g.setStroke(LINE);
        g.setLineWidth(2);
        g.strokeOval(cx - LOUPE, cy - LOUPE, 2 * LOUPE, 2 * LOUPE);
        g.setLineWidth(1);
        g.strokeLine(cx - 12, cy, cx - 3, cy);
        g.strokeLine(cx + 3, cy, cx + 12, cy);
        g.strokeLine(cx, cy - 12, cx, cy - 3);
        g.strokeLine(cx, cy + 3, cx, cy + 12);
    }
}
