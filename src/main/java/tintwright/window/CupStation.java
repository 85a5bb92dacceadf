package tintwright.window;

import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import tintwright.window.photo.PhotoModel;
import tintwright.window.photo.PhotoView;

/** The plan before a cup is begun, the cup from then on, and in between the photo of a chip. */
final class CupStation extends StackPane {
    private final PlanModel planModel;
    private final CupModel cup;
    private final PhotoModel photo;
    private final Region plan;
    private Region inHand;
    private Region photoPage;

    /** @param photo of a chip, with the hull beside it */
    CupStation(PlanModel planModel, CupModel cup, PhotoModel photo) {
        this.planModel = planModel;
        this.cup = cup;
        this.photo = photo;
        this.plan = new PlanPage(planModel, cup::begin).build();
        Pieces.follow(this, cup.inHandProperty(), (before, after) -> {
            // What was read of a photo is at once to be seen in the cup.
            if (before.isPresent() != after.isPresent() || getChildren().contains(photoPage)) {
                show();
            }
        });
        Pieces.follow(this, planModel.job().jobProperty(), (before, after) -> {
            // Taken back before it could be shown.
            if (before.cup().isPresent() && after.cup().isEmpty()) {
                show();
            }
        });
        show();
    }

    private void show() {
        if (cup.inHandProperty().get().isEmpty()) {
            getChildren()
                    .setAll(
                            planModel.job().now().cup().isPresent()
                                    ? Pieces.sheet("", Pieces.plain("Your cup comes back in a moment."))
                                    : plan);
            return;
        }
        if (inHand == null) {
            inHand = new CupPage(cup, this::toThePhoto).build();
        }
        getChildren().setAll(inHand);
    }

    private void toThePhoto() {
        if (photoPage == null) {
            PhotoView view = new PhotoView(photo);
            VBox.setVgrow(view, Priority.ALWAYS);
            VBox page = new VBox(Pieces.row(Pieces.button("Back to the cup", this::show)), view);
            page.getStyleClass().add("pictures");
            photoPage = page;
        }
        getChildren().setAll(photoPage);
    }
}
