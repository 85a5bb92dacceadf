package tintwright.window.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Stop;

/**
 * Lightness to height in the tank. When all that matters lies close together far below the white, the white's depths
 * above it are folded into the top of the tank, so that small doses can still be told apart.
 */
final class DepthScale {
    /** Share of the tank that the folded part takes. */
    private static final double FOLDED = 0.24;
    /** Folded when what matters takes less than this share of the whole depth. */
    private static final double CLOSE = 0.42;
    /** Least span that is spread over the tank, L*: a band of noise is not blown up. */
    private static final double LEAST_SPAN = 6;

    private static final int STOPS = 24;

    private final double top;
    private final double bottom;
    private final double highest;
    private final double lowest;
    private final double foldAt;

    DepthScale(DepthState state, double top, double bottom) {
        this.top = top;
        this.bottom = bottom;
        double low = Math.min(state.hull(), state.cup() - state.unsure());
        double high = Math.max(state.hull(), state.cup() + state.unsure());
        high = Math.max(high, state.steps().isEmpty() ? high : state.stepsFrom());
        for (DepthState.Step step : state.steps()) {
            low = Math.min(low, step.cup());
            high = Math.max(high, step.cup());
        }
        if (state.climb().isPresent()) {
            low = Math.min(low, state.climb().get().from());
            high = Math.max(high, state.climb().get().to());
        }
        double span = Math.max(LEAST_SPAN, high - low);
        double over = high + 0.25 * span;
        highest = Math.max(state.white(), Math.max(state.hull(), state.cup()));
        boolean folds = over < highest && (over - low) / (highest - low) < CLOSE;
        foldAt = folds ? over : highest;
        // Room below the deepest mark: the tank never looks as if it ended at the hull.
        lowest = Math.max(0, Math.min(low - 0.22 * (foldAt - low), folds ? low : highest - 10));
    }

    boolean folds() {
        return foldAt < highest;
    }

    /** @return where the tear across the tank stands */
    double foldY() {
        return top + FOLDED * (bottom - top);
    }

    double y(double lightness) {
        double inside = Math.max(lowest, Math.min(highest, lightness));
        if (!folds()) {
            return top + (highest - inside) / (highest - lowest) * (bottom - top);
        }
        if (inside > foldAt) {
            return top + (highest - inside) / (highest - foldAt) * (foldY() - top);
        }
        return foldY() + (foldAt - inside) / (foldAt - lowest) * (bottom - foldY());
    }

    /** @return the greys the depths stand for */
    LinearGradient greys() {
        List<Stop> stops = new ArrayList<>();
        for (int i = 0; i <= STOPS; i++) {
            double lightness = highest - (highest - lowest) * i / STOPS;
            stops.add(new Stop((y(lightness) - top) / (bottom - top), Picture.paint(Shade.grey(lightness))));
        }
        return new LinearGradient(0, 0, 0, 1, true, CycleMethod.NO_CYCLE, stops);
    }
}
