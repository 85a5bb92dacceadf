package tintwright.study;

import java.util.LinkedHashMap;
import java.util.Map;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.shelf.Parts;
import tintwright.shelf.Tint;

/** The nearest a hidden shop's tints can come to a colour, by plain pattern search over the hidden truth. */
final class HiddenBest {
    private HiddenBest() {
    }

    static double distance(HiddenShop shop, Lab wanted) {
        double[] x = new double[shop.tints().size()];
        java.util.Arrays.fill(x, 0.05);
        double best = at(shop, x, wanted);
        double size = 0.8;
        while (size > 1e-3 && best > 0.02) {
            boolean moved = false;
            for (int i = 0; i < x.length; i++) {
                double was = x[i];
                for (double trial : new double[] {was * (1 + size), was / (1 + size), 0}) {
                    x[i] = Math.min(trial, 4);
                    double now = at(shop, x, wanted);
                    if (now < best - 1e-6) {
                        best = now;
                        was = x[i];
                        moved = true;
                    }
                }
                x[i] = was;
            }
            size *= moved ? 1.0 : 0.6;
        }
        return best;
    }

    private static double at(HiddenShop shop, double[] x, Lab wanted) {
        Map<String, Double> parts = new LinkedHashMap<>();
        parts.put("white", 100.0);
        int i = 0;
        for (Tint tint : shop.tints()) {
            parts.put(tint.id(), x[i++]);
        }
        return Ciede2000.between(shop.colour(Parts.of(parts)), wanted);
    }
}
