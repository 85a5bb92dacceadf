package tintwright.match;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import tintwright.colour.Ciede2000;
import tintwright.colour.JudgedLight;
import tintwright.colour.Lab;
import tintwright.colour.Metamerism;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.reading.Covariance;
import tintwright.shelf.Parts;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.shelf.knowledge.Prediction;

/**
 * Says all there is to say about one mix for one wish.
 */
final class Judge {
    /** Every way to round up to this many tints is tried; a bound on work, a judgement of ours. */
    private static final int MOST_ROUNDED = 5;

    private final Knowledge knowledge;
    private final Wish wish;
    private final Odds odds;
    private final Map<JudgedLight, Lab> targets;
    private final Spectrum targetSpectrum;
    private final Pool pool;

    Judge(Knowledge knowledge, Wish wish, Odds odds, Spectrum targetSpectrum, Pool pool) {
        this.pool = pool;
        this.knowledge = knowledge;
        this.wish = wish;
        this.odds = odds;
        this.targetSpectrum = targetSpectrum;
        Lab read = wish.target().colour();
        this.targets = JudgedLight.each(light -> {
            Viewing viewing = light.viewing(read.viewing());
            return viewing.equals(read.viewing()) ? read : Lab.of(targetSpectrum, viewing);
        });
    }

    /** @param exact grams for the batch wanted */
    Recipe judge(Parts exact) {
        Parts weighed = rounded(exact);
        Target target = wish.target();
        Spectrum reflectance = knowledge.reflectance(weighed, target.geometry());
        // How sure it is costs more than all the rest and is added to the few that are listed.
        Prediction prediction =
                new Prediction(reflectance, Lab.of(reflectance, target.colour().viewing()), Covariance.same(0));
        Lab ideal = colour(exact);
        double[] shares = knowledge.shares(weighed);
        odds.play(present(shares), nonZero(shares));
        double tintGrams = 0;
        for (Map.Entry<String, Double> part : weighed.grams().entrySet()) {
            tintGrams += knowledge.shelf().tint(part.getKey()).isPresent() ? part.getValue() : 0;
        }
        return new Recipe(
                exact,
                weighed,
                prediction,
                Ciede2000.between(prediction.lab(), target.colour()),
                odds.expected(),
                odds.chanceWithin(1),
                odds.chanceWithin(2),
                odds.within(0.9),
                Ciede2000.between(ideal, prediction.lab()),
                stepCost(weighed, prediction.lab()),
                underLights(reflectance),
                target.reflectance().isEmpty(),
                metamerism(reflectance),
                tintGrams,
                cost(weighed),
                List.of());
    }

    /** @return the recipe with how sure its colour is */
    Recipe complete(Recipe recipe) {
        return recipe.withPrediction(knowledge.predict(
                recipe.weighed(),
                wish.target().colour().viewing(),
                wish.target().geometry()));
    }

    private Lab colour(Parts parts) {
        return knowledge.colour(
                parts, wish.target().colour().viewing(), wish.target().geometry());
    }

    /**
     * What the scale can show: each tint rounded up or down, whichever together come nearest to the target and keep
     * to every limit; the base, which is the first part, takes what they leave of the batch.
     */
    private Parts rounded(Parts exact) {
        List<String> ids = new ArrayList<>(exact.grams().keySet());
        int choices = 1 << Math.min(ids.size() - 1, MOST_ROUNDED);
        Parts best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int choice = 0; choice < choices; choice++) {
            Map<String, Double> grams = new LinkedHashMap<>();
            grams.put(ids.get(0), 0.0);
            double baseSteps = Math.round(exact.total() / wish.scaleStep());
            for (int i = 1; i < ids.size(); i++) {
                double steps = exact.grams(ids.get(i)) / wish.scaleStep();
                boolean up = (choice >> (i - 1) & 1) == 1;
                double shown = i > MOST_ROUNDED ? Math.floor(steps) : up ? Math.ceil(steps) : Math.floor(steps);
                grams.put(ids.get(i), onScale(shown));
                baseSteps -= shown;
            }
            if (baseSteps < 0) {
                continue;
            }
            grams.put(ids.get(0), onScale(baseSteps));
            Parts parts = Parts.of(grams);
            if (best != null && !pool.keeps(parts)) {
                continue;
            }
            double distance = Ciede2000.between(colour(parts), wish.target().colour());
            if (distance < least) {
                least = distance;
                best = parts;
            }
        }
        return best;
    }

    /** Decimal arithmetic, so that 47 steps of 0.01 g read 0.47 g. */
    private double onScale(double steps) {
        return BigDecimal.valueOf(wish.scaleStep())
                .multiply(BigDecimal.valueOf(steps))
                .doubleValue();
    }

    private double stepCost(Parts weighed, Lab now) {
        double worst = 0;
        for (String id : weighed.grams().keySet()) {
            if (knowledge.shelf().tint(id).isPresent()) {
                Map<String, Double> more = new LinkedHashMap<>(weighed.grams());
                more.computeIfPresent(id, (key, mass) -> mass + wish.scaleStep());
                worst = Math.max(worst, Ciede2000.between(now, colour(Parts.of(more))));
            }
        }
        return worst;
    }

    private Map<JudgedLight, UnderLight> underLights(Spectrum mix) {
        return JudgedLight.each(
                light -> UnderLight.of(Lab.of(mix, targets.get(light).viewing()), targets.get(light)));
    }

    /** Largest special index of metamerism; the pair is first made to match as it was read. */
    private double metamerism(Spectrum mix) {
        Viewing read = wish.target().colour().viewing();
        double worst = 0;
        for (JudgedLight light : JudgedLight.values()) {
            if (!light.illuminant().equals(read.light())) {
                Viewing other = new Viewing(light.illuminant(), read.observer());
                worst = Math.max(worst, Metamerism.index(targetSpectrum, mix, read, other));
            }
        }
        return worst;
    }

    private OptionalDouble cost(Parts weighed) {
        double sum = 0;
        for (Map.Entry<String, Double> part : weighed.grams().entrySet()) {
            OptionalDouble price = knowledge
                    .shelf()
                    .item(part.getKey())
                    .map(item -> item.stock().pricePerKg())
                    .orElse(OptionalDouble.of(0));
            if (price.isEmpty()) {
                return OptionalDouble.empty();
            }
            sum += price.getAsDouble() * part.getValue() / 1000;
        }
        return OptionalDouble.of(sum);
    }

    /** @return places of the parts that are in the mix at all */
    static int[] present(double[] shares) {
        int[] places = new int[shares.length];
        int count = 0;
        for (int i = 0; i < shares.length; i++) {
            if (shares[i] > 0) {
                places[count++] = i;
            }
        }
        return java.util.Arrays.copyOf(places, count);
    }

    /** @return shares of those parts, in the same order */
    static double[] nonZero(double[] shares) {
        return java.util.Arrays.stream(shares).filter(share -> share > 0).toArray();
    }
}
