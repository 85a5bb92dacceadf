package tintwright.window.cup;

import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tintwright.bench.job.Job;
import tintwright.colour.Lab;
import tintwright.cup.CupDeeds;
import tintwright.match.Aim;
import tintwright.match.Target;
import tintwright.window.pieces.Controls;

/** The plan before a cup is begun, the cup from then on, and in between the photo of a dab or what the eye sees of it. */
public final class CupStation extends StackPane {
    private final PlanModel planModel;
    private final CupModel cup;
    private final Supplier<Region> photo;
    private final Region plan;
    private Region inHand;
    private Region photoPage;
    private EyePage eye;

    /**
     * @param photo   makes the view of a chip's photo, with the hull beside it; called at the first wish
     * @param arrived changes when a photo came from elsewhere
     */
    public CupStation(PlanModel planModel, CupModel cup, Supplier<Region> photo, ObservableValue<?> arrived) {
        this.planModel = planModel;
        this.cup = cup;
        this.photo = photo;
        this.plan = new PlanPage(planModel, cup::begin).build();
        Controls.follow(this, cup.inHandProperty(), (before, after) -> {
            // What was read of a photo is at once to be seen in the cup.
            if (before.isPresent() != after.isPresent() || getChildren().contains(photoPage)) {
                show();
            }
        });
        Controls.follow(this, planModel.job().jobProperty(), (before, after) -> {
            // Taken back before it could be shown; or there is something to mix now, or no more.
            if (before.cup().isPresent() && after.cup().isEmpty()
                    || something(before) != something(after)
                    || !something(after)) {
                show();
            }
        });
        show();
        arrived.addListener((property, before, after) -> {
            if (cup.inHandProperty().get().isPresent()) {
                toThePhoto();
            }
        });
    }

    private void show() {
        if (cup.inHandProperty().get().isEmpty()) {
            Job now = planModel.job().now();
            turnTo(
                    now.cup().isPresent()
                            ? Controls.sheet("", Controls.plain("Your cup comes back in a moment."))
                            : something(now) ? plan : nothingYet(now));
            return;
        }
        if (inHand == null) {
            inHand = new CupPage(cup, this::toThePhoto, this::toTheEye).build();
        }
        turnTo(inHand);
    }

    private static Region nothingYet(Job job) {
        return Controls.column(Controls.sheet(
                "Nothing to weigh yet",
                DeedList.wanted(!job.boat().isBlank(), "a boat"),
                DeedList.wanted(job.place() >= 0, "the colour of a place on her hull"),
                DeedList.wanted(!job.shelf().tints().isEmpty(), "a tint on the shelf, better three or four"),
                Controls.plain("Then it stands here what goes into the cup, gram by gram, with hull and mix edge to"
                        + " edge.")));
    }

    /** A hull to mix for, and a tint to mix with. */
    private static boolean something(Job job) {
        return job.place() >= 0 && !job.shelf().tints().isEmpty();
    }

    /** What was pressed went with its page, and the focus with it: it goes to where the thing to do now is done. */
    private void turnTo(Region page) {
        getChildren().setAll(page);
        Platform.runLater(() -> {
            if (page.getParent() != this || getScene() == null) {
                return;
            }
            // What scrolls holds nothing that can be found before it is dressed.
            page.applyCss();
            page.layout();
            Node useful = page.lookup(".do-now");
            if (useful != null) {
                useful.requestFocus();
            }
        });
    }

    private void toTheEye() {
        if (eye == null) {
            eye = new EyePage(cup, this::show);
        }
        cup.inHandProperty().get().ifPresent(seen -> {
            Lab hull = planModel
                    .planProperty()
                    .get()
                    .target()
                    .map(Target::colour)
                    .orElseGet(() -> Aim.of(seen.cup().hull()).readings().mean());
            eye.show(hull, seen.deeds().now().pots());
            turnTo(eye);
        });
    }

    private void toThePhoto() {
        if (photoPage == null) {
            Region view = photo.get();
            VBox.setVgrow(view, Priority.ALWAYS);
            VBox page = new VBox(Controls.row(Controls.button("Back to the cup", this::show)), view);
            page.getStyleClass().add("pictures");
            photoPage = page;
        }
        turnTo(photoPage);
    }

    /** @return what the button says that does it */
    public static String button(CupDeeds.Kind kind) {
        return switch (kind) {
            case WEIGH -> "It is in";
            case POUR_OFF -> "It is poured off";
            case READ_CHIP -> "Read a chip";
            case TRY_DAB -> "Look at a dab";
            case CHOOSE_WAY -> "Show the ways";
            case SETTLE -> "Show me";
            case STOP -> "To the holes";
            case WHITE_FIRST -> "";
        };
    }
}
