package tintwright.command.pieces;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tintwright.bench.Closeness;
import tintwright.bench.MatchBench;
import tintwright.bench.Weighing;
import tintwright.colour.DifferenceWords;
import tintwright.colour.JudgedLight;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.match.Aim;
import tintwright.match.MatchAnswer;
import tintwright.match.NextChip;
import tintwright.match.Recipe;
import tintwright.match.UnderLight;
import tintwright.match.Wish;
import tintwright.shelf.knowledge.Doubt;
import tintwright.units.Grams;

/** A match in words for someone at the scale, and in fields for machines. */
public final class MatchWords {
    private final MatchBench bench;
    private final Aim aim;
    private final Wish wish;
    private final MatchAnswer match;
    private final int decimals;
    private final Optional<NextChip> next;
    private final List<String> lines = new ArrayList<>();

    public MatchWords(MatchBench bench, Aim aim, Wish wish, MatchAnswer match) {
        this.bench = bench;
        this.aim = aim;
        this.wish = wish;
        this.match = match;
        this.next = NextChip.of(bench.knowledge(), match.best(), aim.target(), wish.scaleStep());
        this.decimals = Grams.decimals(wish.scaleStep());
    }

    public Answer answer() {
        Recipe best = match.best();
        lines.add("To match: " + aim.target().name() + ", " + show(aim.target().colour()));
        lines.add("From:     " + bench.knowledge().shelf().name());
        aim.remarks().forEach(lines::add);
        lines.add("");
        if (match instanceof MatchAnswer.OutOfReach out) {
            outOfReach(out);
        } else if (match instanceof MatchAnswer.TooCoarse coarse) {
            lines.add(MatchBench.tooCoarse(coarse));
            lines.add("");
        }
        weigh(best);
        lines.add("");
        closeAndSure(best);
        lines.add("");
        lights(best);
        others();
        next.ifPresent(chip -> {
            lines.add("");
            lines.add("Surer:      " + chip.words());
        });
        for (Doubt doubt : bench.knowledge().doubts()) {
            lines.add("");
            lines.add("Look again: " + doubt.words());
        }
        lines.add("");
        lines.add("Figures are CIEDE2000; about 1 is what a practised eye finds edge to edge. A chip decides, not a"
                + " figure.");
        return new Answer(lines, fields());
    }

    private void outOfReach(MatchAnswer.OutOfReach out) {
        lines.add("These tints do not reach it: the nearest mix stays " + Figures.fixed(out.deltaE(), 1) + " away, "
                + out.miss().phrase() + " than the target.");
        out.wouldReach()
                .ifPresent(family -> lines.add("A tint of the family " + family.words() + " would bring it to about "
                        + Figures.fixed(out.withFamily(), 1) + "."));
        out.leftover()
                .ifPresent(id -> lines.add("Starting from the leftover \""
                        + bench.knowledge().shelf().nameOf(id) + "\" would bring it to about "
                        + Figures.fixed(out.withLeftover(), 1) + "."));
        lines.add("");
    }

    private void weigh(Recipe recipe) {
        lines.add("Weigh in this order, for " + Figures.fixed(recipe.weighed().total(), decimals) + " g:");
        List<Weighing> order = bench.order(recipe, wish.scaleStep());
        int width = order.stream().mapToInt(each -> each.name().length()).max().orElse(0);
        int number = 1;
        for (Weighing each : order) {
            lines.add("  " + number++ + ".  " + pad(Figures.fixed(each.grams(), decimals), 9) + " g  "
                    + each.name() + " ".repeat(width - each.name().length()) + "  "
                    + pad(Figures.fixed(each.per100(), 3), 7) + " g in 100 g"
                    + (each.betterAsLetdown() ? "   (little for this scale: pre-mix it 1 in 10 with base)" : ""));
        }
        lines.addAll(bench.shortages(recipe));
        lines.add("Hold back a third of the base until a chip is read: what is in cannot be taken out again.");
    }

    private static String pad(String text, int width) {
        return " ".repeat(Math.max(0, width - text.length())) + text;
    }

    private void closeAndSure(Recipe best) {
        lines.add("How close:  " + Figures.fixed(best.deltaE(), 2) + " by the best estimate ("
                + Closeness.words(best.deltaE()) + "); cured it should be "
                + show(best.prediction().lab()));
        lines.add("How sure:   " + DifferenceWords.likely(best.within90())
                + "; within 1: " + DifferenceWords.chance(best.chanceWithin1()) + ", within 2: "
                + DifferenceWords.chance(best.chanceWithin2()));
        lines.add("The scale:  rounding to " + Figures.fixed(wish.scaleStep(), decimals) + " g costs "
                + Figures.fixed(best.roundingCost(), 2) + "; one step too much of the touchiest tint "
                + Figures.fixed(best.stepCost(), 2));
    }

    private void lights(Recipe best) {
        lines.add("Under other lights" + (best.lightsEstimated() ? " (estimated: the target has no spectrum):" : ":"));
        for (UnderLight light : best.lights().values()) {
            Viewing viewing = light.target().viewing();
            String name = JudgedLight.words(viewing.light());
            lines.add("  " + name + " ".repeat(Math.max(1, 26 - name.length())) + Figures.fixed(light.deltaE(), 2)
                    + "  " + DifferenceWords.of(light.mix(), light.target()).phrase());
        }
    }

    private void others() {
        List<Recipe> all = match.recipes();
        if (all.size() < 2) {
            return;
        }
        lines.add("");
        lines.add("Other ways:");
        for (Recipe other : all.subList(1, all.size())) {
            List<String> parts = bench.order(other, wish.scaleStep()).stream()
                    .map(each -> Figures.fixed(each.grams(), decimals) + " g " + each.name())
                    .toList();
            lines.add("  " + String.join(", ", other.betterIn()) + ": " + String.join(", ", parts) + " (close "
                    + Figures.fixed(other.deltaE(), 2) + ", nine of ten within "
                    + Figures.fixed(other.within90(), 1) + ")");
        }
    }

    private static String show(Lab lab) {
        return "L* " + Figures.fixed(lab.lightness(), 1) + ", a* " + Figures.fixed(lab.a(), 1) + ", b* "
                + Figures.fixed(lab.b(), 1) + " (" + lab.viewing() + ")";
    }

    private Map<String, Object> fields() {
        Map<String, Object> fields = new LinkedHashMap<>();
        Map<String, Object> target = new LinkedHashMap<>();
        target.put("name", aim.target().name());
        target.putAll(lab(aim.target().colour()));
        target.put("spectral", aim.target().reflectance().isPresent());
        fields.put("target", target);
        fields.put("remarks", aim.remarks());
        fields.put("shelf", bench.knowledge().shelf().name());
        fields.put("grams", wish.grams());
        fields.put("scaleStep", wish.scaleStep());
        fields.put("reached", match instanceof MatchAnswer.Reached);
        if (match instanceof MatchAnswer.TooCoarse coarse) {
            fields.put("withoutRounding", Figures.six(coarse.exact()));
        }
        if (match instanceof MatchAnswer.OutOfReach out) {
            Map<String, Object> miss = new LinkedHashMap<>();
            miss.put("deltaE", Figures.six(out.deltaE()));
            miss.put("nearestIs", out.miss().phrase());
            miss.put("wouldReach", out.wouldReach().map(family -> family.code()).orElse(null));
            miss.put("withFamily", Figures.six(out.withFamily()));
            miss.put("leftover", out.leftover().orElse(null));
            miss.put("withLeftover", Figures.six(out.withLeftover()));
            fields.put("outOfReach", miss);
        }
        fields.put("recipes", match.recipes().stream().map(this::recipe).toList());
        fields.put("nextChip", next.map(this::next).orElse(null));
        fields.put(
                "doubts",
                bench.knowledge().doubts().stream().map(Doubts::fields).toList());
        return fields;
    }

    private Map<String, Object> next(NextChip chip) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("tint", chip.tintId());
        fields.put("share", Figures.six(chip.share()));
        fields.put("grams", Figures.six(chip.grams()));
        fields.put("spreadBefore", Figures.six(chip.before()));
        fields.put("spreadAfter", Figures.six(chip.after()));
        fields.put("words", chip.words());
        return fields;
    }

    private Map<String, Object> recipe(Recipe recipe) {
        Map<String, Object> fields = new LinkedHashMap<>();
        List<Object> parts = new ArrayList<>();
        for (Weighing each : bench.order(recipe, wish.scaleStep())) {
            Map<String, Object> part = new LinkedHashMap<>();
            part.put("id", each.id());
            part.put("name", each.name());
            part.put("tint", each.tint());
            part.put("grams", Figures.six(each.grams()));
            part.put("exactGrams", Figures.six(each.exact()));
            part.put("gramsPer100", Figures.six(each.per100()));
            part.put("share", Figures.six(each.share()));
            parts.add(part);
        }
        fields.put("parts", parts);
        fields.put("totalGrams", Figures.six(recipe.weighed().total()));
        fields.put("predicted", lab(recipe.prediction().lab()));
        fields.put(
                "predictedReflectance",
                rounded(recipe.prediction().reflectance().toArray()));
        fields.put("deltaE", Figures.six(recipe.deltaE()));
        fields.put("expected", Figures.six(recipe.expected()));
        fields.put("chanceWithin1", Figures.six(recipe.chanceWithin1()));
        fields.put("chanceWithin2", Figures.six(recipe.chanceWithin2()));
        fields.put("within90", Figures.six(recipe.within90()));
        fields.put("roundingCost", Figures.six(recipe.roundingCost()));
        fields.put("stepCost", Figures.six(recipe.stepCost()));
        fields.put("lightsEstimated", recipe.lightsEstimated());
        List<Object> lights = new ArrayList<>();
        for (UnderLight light : recipe.lights().values()) {
            Map<String, Object> under = new LinkedHashMap<>();
            under.put("light", light.target().viewing().light().name());
            under.put("observer", light.target().viewing().observer().degrees());
            under.put("deltaE", Figures.six(light.deltaE()));
            under.put("mix", axes(light.mix()));
            under.put("target", axes(light.target()));
            lights.add(under);
        }
        fields.put("lights", lights);
        fields.put("metamerism", Figures.six(recipe.metamerism()));
        fields.put("shortages", bench.shortages(recipe));
        fields.put("tintGrams", Figures.six(recipe.tintGrams()));
        fields.put("cost", recipe.cost().isPresent() ? Figures.six(recipe.cost().getAsDouble()) : null);
        fields.put("betterIn", recipe.betterIn());
        return fields;
    }

    private static Map<String, Object> lab(Lab lab) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("lab", axes(lab));
        fields.put("light", lab.viewing().light().name());
        fields.put("observer", lab.viewing().observer().degrees());
        return fields;
    }

    private static double[] axes(Lab lab) {
        return rounded(lab.lightness(), lab.a(), lab.b());
    }

    private static double[] rounded(double... values) {
        double[] out = new double[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = Figures.six(values[i]);
        }
        return out;
    }
}
