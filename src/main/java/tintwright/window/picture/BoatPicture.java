package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.shape.Circle;
import javafx.scene.shape.CubicCurveTo;
import javafx.scene.shape.Line;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;

/** A boat from her port side, before there is one: her colour is read place by place, for each fades in its own way. */
public final class BoatPicture extends Picture {
    /** Where the places lie: shares of the boat's length from bow to stern, and of her height from the rail down. */
    private record Place(double along, double down, String name) {}

    private static final List<Place> PLACES = List.of(
            new Place(0.2, 0.34, "port bow"), new Place(0.83, 0.4, "stern quarter"), new Place(0.968, 0.5, "transom"));
    /** Room beside the stern for the name of what cannot be seen from the side, in text sizes. */
    private static final double ASTERN = 6;
    /** How tall she is drawn, rail to keel, as a share of her length. */
    private static final double TALL = 0.24;

    private final Path hull = styled(new Path(), "drawn-boat");
    private final Line rail = styled(new Line(), "drawn-rail");
    private final Line water = styled(new Line(), "drawn-water");
    private final List<Circle> dots = new ArrayList<>();
    private final List<Line> leads = new ArrayList<>();
    private final List<Label> names = new ArrayList<>();

    public BoatPicture() {
        super("boat-picture", new Size(30, 18, 16, 10));
        setFocusTraversable(false);
        List<Node> nodes = new ArrayList<>(List.of(hull, rail, water));
        for (Place place : PLACES) {
            dots.add(styled(new Circle(), "drawn-place"));
            leads.add(styled(new Line(), "measure"));
            names.add(text(place.name(), "picture-name"));
        }
        nodes.addAll(leads);
        nodes.addAll(dots);
        nodes.addAll(names);
        draw(
                nodes,
                "A boat from her port side, with three places that are read one by one: transom, stern quarter, port bow.");
    }

    @Override
    protected void layoutChildren() {
        double em = em();
        double length = Math.min(getWidth() - 2 * ASTERN * em, (getHeight() - 4 * em) / (TALL * 1.25));
        double tall = TALL * length;
        double left = (getWidth() - length) / 2;
        double right = left + length;
        // In a narrow page she is shorter and stands in the middle of her room.
        double above = (getHeight() - 4 * em - 1.25 * tall) / 2;
        double top = above + 3.2 * em + 0.25 * tall;
        hull.getElements()
                .setAll(
                        new MoveTo(right, top),
                        new CubicCurveTo(
                                right - 0.3 * length,
                                top + 0.12 * tall,
                                right - 0.7 * length,
                                top,
                                left,
                                top - 0.25 * tall),
                        new CubicCurveTo(
                                left + 0.07 * length,
                                top + 0.45 * tall,
                                left + 0.14 * length,
                                top + 0.95 * tall,
                                left + 0.3 * length,
                                top + tall),
                        new LineTo(right - 0.05 * length, top + tall),
                        new LineTo(right, top));
        line(rail, left + 0.025 * length, top + 0.02 * tall, right - 0.005 * length, top + 0.16 * tall);
        line(water, left - em, top + 0.8 * tall, right + em, top + 0.8 * tall);
        for (int i = 0; i < PLACES.size(); i++) {
            Place place = PLACES.get(i);
            double x = left + place.along() * length;
            double y = top + place.down() * tall;
            dots.get(i).setCenterX(x);
            dots.get(i).setCenterY(y);
            dots.get(i).setRadius(0.42 * em);
            size(names.get(i));
            if (i == PLACES.size() - 1) {
                leftAt(names.get(i), right + 1.6 * em, y);
                line(leads.get(i), x, y, right + 1.4 * em, y);
            } else {
                leftAt(names.get(i), x - names.get(i).getWidth() / 2, above + 1.4 * em);
                line(leads.get(i), x, y, x, above + 2.3 * em);
            }
        }
    }
}
