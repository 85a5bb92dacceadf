package tintwright.command.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tintwright.bench.Closeness;
import tintwright.bench.MatchBench;
import tintwright.bench.Weighing;
import tintwright.colour.DifferenceWords;
import tintwright.colour.JudgedLight;
import tintwright.colour.Viewing;
import tintwright.files.Fields;
import tintwright.match.Aim;
import tintwright.match.MatchAnswer;
import tintwright.match.NextChip;
import tintwright.match.Recipe;
import tintwright.match.UnderLight;
import tintwright.match.Wish;
import tintwright.shelf.PigmentFamily;
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
        lines.add("To match: " + aim.target().name() + ", "
                + Figures.colour(aim.target().colour()));
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
                + Figures.colour(best.prediction().lab()));
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

    private Fields fields() {
        Fields fields = Fields.of(
                        "target",
                        Fields.of("name", aim.target().name())
                                .colour(aim.target().colour())
                                .with("spectral", aim.target().reflectance().isPresent()))
                .with("remarks", aim.remarks())
                .with("shelf", bench.knowledge().shelf().name())
                .with("grams", wish.grams())
                .with("scaleStep", wish.scaleStep())
                .with("reached", match instanceof MatchAnswer.Reached);
        if (match instanceof MatchAnswer.TooCoarse coarse) {
            fields.with("withoutRounding", coarse.exact());
        }
        if (match instanceof MatchAnswer.OutOfReach out) {
            fields.with(
                    "outOfReach",
                    Fields.of("deltaE", out.deltaE())
                            .with("nearestIs", out.miss().phrase())
                            .orNull("wouldReach", out.wouldReach().map(PigmentFamily::code))
                            .with("withFamily", out.withFamily())
                            .orNull("leftover", out.leftover())
                            .with("withLeftover", out.withLeftover()));
        }
        return fields.each("recipes", match.recipes(), this::recipe)
                .orNull("nextChip", next.map(MatchWords::next))
                .each("doubts", bench.knowledge().doubts(), Doubts::fields);
    }

    private static Fields next(NextChip chip) {
        return Fields.of("tint", chip.tintId())
                .with("share", chip.share())
                .with("grams", chip.grams())
                .with("spreadBefore", chip.before())
                .with("spreadAfter", chip.after())
                .with("words", chip.words());
    }

    private Fields recipe(Recipe recipe) {
        return Fields.none()
                .each("parts", bench.order(recipe, wish.scaleStep()), MatchWords::part)
                .with("totalGrams", recipe.weighed().total())
                .with("predicted", Fields.none().colour(recipe.prediction().lab()))
                .with("predictedReflectance", recipe.prediction().reflectance().toArray())
                .with("deltaE", recipe.deltaE())
                .with("expected", recipe.expected())
                .with("chanceWithin1", recipe.chanceWithin1())
                .with("chanceWithin2", recipe.chanceWithin2())
                .with("within90", recipe.within90())
                .with("roundingCost", recipe.roundingCost())
                .with("stepCost", recipe.stepCost())
                .with("lightsEstimated", recipe.lightsEstimated())
                .each("lights", recipe.lights().values(), MatchWords::light)
                .with("metamerism", recipe.metamerism())
                .with("shortages", bench.shortages(recipe))
                .with("tintGrams", recipe.tintGrams())
                .orNull("cost", recipe.cost())
                .with("betterIn", recipe.betterIn());
    }

    private static Fields part(Weighing each) {
        return Fields.of("id", each.id())
                .with("name", each.name())
                .with("tint", each.tint())
                .with("grams", each.grams())
                .with("exactGrams", each.exact())
                .with("gramsPer100", each.per100())
                .with("share", each.share());
    }

    private static Fields light(UnderLight light) {
        Viewing viewing = light.target().viewing();
        return Fields.of("light", viewing.light().name())
                .with("observer", viewing.observer().degrees())
                .with("deltaE", light.deltaE())
                .with("mix", light.mix().axes())
                .with("target", light.target().axes());
    }
}
