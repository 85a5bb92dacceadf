package tintwright.study;

import java.util.LinkedHashMap;
import java.util.Map;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.shelf.Parts;
import tintwright.shelf.Tint;

/** The nearest a hidden shop's tints can come to a colour, by plain pattern search over the hidden truth. */
final class HiddenBest {
    private HiddenBest() {}

    static double distance(HiddenShop shop, Lab wanted) {
        return distance(shop, Map.of("white", 100.0), wanted, 0);
    }

    /** @param stop a distance that is near enough to stop looking */
    static double distance(HiddenShop shop, Map<String, Double> cup, Lab wanted, double stop) {
        double mass = cup.values().stream().mapToDouble(Double::doubleValue).sum();
        double[] x = new double[shop.tints().size()];
        java.util.Arrays.fill(x, 0.0005 * mass);
        double best = at(shop, cup, x, wanted);
        double size = 0.8;
        while (size > 1e-3 && best > Math.max(0.02, stop)) {
            boolean moved = false;
            for (int i = 0; i < x.length; i++) {
                double was = x[i];
                for (double trial : new double[] {was * (1 + size), was / (1 + size), 0}) {
                    x[i] = Math.min(trial, 0.04 * mass);
                    double now = at(shop, cup, x, wanted);
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

    /** @return the least mass of the mix from which tints bring this cup within so much of the colour */
    static double leastMass(HiddenShop shop, Map<String, Double> cup, Lab wanted, double within) {
        double mass = cup.values().stream().mapToDouble(Double::doubleValue).sum();
        if (distance(shop, cup, wanted, within) <= within) {
            return mass;
        }
        double low = 0;
        double high = 8 * mass;
        for (int i = 0; i < 10; i++) {
            double middle = (low + high) / 2;
            Map<String, Double> more = new LinkedHashMap<>(cup);
            more.merge("white", middle, Double::sum);
            if (distance(shop, more, wanted, within) <= within) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return mass + high;
    }

    private static double at(HiddenShop shop, Map<String, Double> cup, double[] x, Lab wanted) {
        Map<String, Double> parts = new LinkedHashMap<>(cup);
        int i = 0;
        for (Tint tint : shop.tints()) {
            parts.merge(tint.id(), x[i++], Double::sum);
        }
        return Ciede2000.between(shop.colour(Parts.of(parts)), wanted);
    }
}
