package tintwright.window.phone;

import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.CornerRadii;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.shape.SVGPath;
import tintwright.phone.LocalNetwork;
import tintwright.reading.photo.sheet.CodePattern;
import tintwright.window.pieces.Controls;

/** One press, and the code that the phone's camera opens. */
public final class PhoneCard {
    /** Pixels of a square of the code: read from an arm's length by any phone. */
    private static final int SQUARE = 5;

    private final PhoneModel model;
    private final VBox open = Controls.column();

    public PhoneCard(PhoneModel model) {
        this.model = model;
    }

    public Region build() {
        Button press = Controls.button("From your phone", model::press);
        press.setId("phone-door");
        Controls.follow(press, model.addressProperty(), (before, after) -> show(press));
        Controls.follow(press, model.choiceProperty(), (before, after) -> show(press));
        Controls.follow(press, model.phonesProperty(), (before, after) -> show(press));
        show(press);
        return Controls.column(press, Controls.whenSaid(Controls.bound(model.problemProperty(), "caution")), open);
    }

    private void show(Button press) {
        String address = model.addressProperty().get();
        press.setText(address.isEmpty() ? "From your phone" : "End it: no phone any more");
        open.getChildren().clear();
        fill(address);
        Controls.show(open, !open.getChildren().isEmpty());
    }

    private void fill(String address) {
        if (address.isEmpty()) {
            for (LocalNetwork network : model.choiceProperty().get()) {
                open.getChildren().add(Controls.button(network.words(), () -> model.on(network)));
            }
            return;
        }
        int phones = model.phonesProperty().get();
        open.getChildren()
                .addAll(
                        code(address),
                        Controls.plain(
                                "Open it with the phone's camera, on the same Wi-Fi. Each code lets one phone in."),
                        Controls.soft(address),
                        Controls.soft((phones == 0
                                        ? ""
                                        : phones == 1 ? "1 phone was let in. " : phones + " phones were let in. ")
                                + "Anybody on this Wi-Fi can listen; use one with a password."));
        if (phones > 0) {
            open.getChildren().add(Controls.quietButton("Let all of them out", model::renew));
        }
    }

    /** Dark on light in both dresses of the window: some cameras read no other. */
    private static Node code(String address) {
        CodePattern pattern = CodePattern.of(address);
        StringBuilder squares = new StringBuilder();
        for (int y = 0; y < pattern.side(); y++) {
            for (int x = 0; x < pattern.side(); x++) {
                if (pattern.dark(x, y)) {
                    squares.append('M')
                            .append(x * SQUARE)
                            .append(' ')
                            .append(y * SQUARE)
                            .append('h')
                            .append(SQUARE)
                            .append('v')
                            .append(SQUARE)
                            .append("h-")
                            .append(SQUARE)
                            .append('z');
                }
            }
        }
        SVGPath dark = new SVGPath();
        dark.setContent(squares.toString());
        dark.setFill(Color.BLACK);
        StackPane paper = new StackPane(dark);
        paper.setId("phone-code");
        paper.setPadding(new Insets(CodePattern.QUIET * SQUARE));
        paper.setBackground(new Background(new BackgroundFill(Color.WHITE, new CornerRadii(12), Insets.EMPTY)));
        paper.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        return paper;
    }
}
