package tintwright.shelf;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * Known parts by mass: how many grams of which base, tint or leftover.
 *
 * <p>Order is kept as given; a part of zero grams is left out.
 */
public final class Parts {
    private final Map<String, Double> grams;

    private Parts(Map<String, Double> grams) {
        this.grams = grams;
    }

    /**
     * @param grams grams by the id of each part, each 0 or more, together above 0
     * @throws IllegalArgumentException for a negative mass, or when nothing is in it
     */
    public static Parts of(Map<String, Double> grams) {
        Map<String, Double> kept = new LinkedHashMap<>();
        grams.forEach((id, mass) -> {
            if (!(mass >= 0) || Double.isInfinite(mass)) {
                throw new IllegalArgumentException("mass of \"" + id + "\" must be 0 g or more, was " + mass + " g");
            }
            if (mass > 0) {
                kept.put(id, mass);
            }
        });
        if (kept.isEmpty()) {
            throw new IllegalArgumentException("the parts hold nothing: at least one mass must be above 0 g");
        }
        return new Parts(Collections.unmodifiableMap(kept));
    }

    /** @return grams by id, in the order given */
    public Map<String, Double> grams() {
        return grams;
    }

    /** @return grams of one part; 0 when it is not in the mix */
    public double grams(String id) {
        return grams.getOrDefault(id, 0.0);
    }

    /** @return grams of all parts */
    public double total() {
        double sum = 0;
        for (double mass : grams.values()) {
            sum += mass;
        }
        return sum;
    }

    /** @return share of one part by mass, 0 to 1 */
    public double share(String id) {
        return grams(id) / total();
    }

    /** @return these parts and those together */
    public Parts plus(Parts more) {
        Map<String, Double> sum = new LinkedHashMap<>(grams);
        more.grams.forEach((id, mass) -> sum.merge(id, mass, Double::sum));
        return of(sum);
    }

    /** @return the same mix, this many times as much */
    public Parts times(double factor) {
        Map<String, Double> scaled = new LinkedHashMap<>();
        grams.forEach((id, mass) -> scaled.put(id, mass * factor));
        return of(scaled);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Parts that && grams.equals(that.grams);
    }

    @Override
    public int hashCode() {
        return Objects.hash(grams);
    }

    @Override
    public String toString() {
        return grams.toString();
    }
}
