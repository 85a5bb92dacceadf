package tintwright.window.cup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tintwright.bench.MatchBench;
import tintwright.bench.Weighing;
import tintwright.bench.job.Job;
import tintwright.colour.DifferenceWords;
import tintwright.match.MatchAnswer;
import tintwright.match.NextChip;
import tintwright.match.Recipe;
import tintwright.match.Target;
import tintwright.match.Wish;
import tintwright.shelf.Base;
import tintwright.shelf.Tint;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.units.Entry;
import tintwright.units.Grams;
import tintwright.units.UnitSystem;
import tintwright.window.frame.FailureWords;
import tintwright.window.frame.LatestAnswer;
import tintwright.window.frame.ShellModel;
import tintwright.window.job.JobModel;
import tintwright.window.picture.DepthState;
import tintwright.window.picture.RoseState;
import tintwright.window.picture.SwatchState;

/** The plan before anything is weighed: what to mix for the place in hand, and how it will look. */
public final class PlanModel {
    private static final int MOST_WAYS = 4;

    private final JobModel job;
    private final ShellModel shell;
    private final Matching matching;
    private final LatestAnswer asking;
    private final ReadOnlyObjectWrapper<Plan> plan = new ReadOnlyObjectWrapper<>(Plan.NONE);
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private int chosen;

    /**
     * One line of the recipe, or a tint that is not in it.
     *
     * @param id     of base or tint
     * @param name   as it stands on the shelf
     * @param isTint false for the base
     * @param used   false when it was switched off
     * @param grams  as the scale shows it; empty when it is not in the mix
     * @param share  of the mix, such as "0.42 %"
     */
    public record Line(String id, String name, boolean isTint, boolean used, String grams, String share) {}

    /** One of the ways to mix it, in a few words. */
    public record Way(String title, String words) {}

    /** The mix beside the hull: both colours, the cup's way down, and what turns its hue. */
    public record Pictures(SwatchState swatch, DepthState depth, RoseState rose) {}

    /**
     * What is to be mixed.
     *
     * @param target   the hull, with the chips of its photo taken into account
     * @param recipe   what to weigh
     * @param pictures how it will look
     * @param nextChip the chip that would make it most certain; empty when none would
     */
    public record Mix(Target target, Recipe recipe, Pictures pictures, Optional<NextChip> nextChip) {}

    /**
     * Everything the plan shows, made in one piece off the screen's thread.
     *
     * @param mix        empty while there is no place or no tint
     * @param reach      what hinders it from reaching the hull; mostly empty
     * @param outOfReach true when no mix of today's tints comes near
     */
    public record Plan(
            Optional<Mix> mix, List<Line> lines, List<Way> ways, int chosen, String reach, boolean outOfReach) {
        static final Plan NONE = new Plan(Optional.empty(), List.of(), List.of(), 0, "", false);
        private static final String NOTHING = "\u2013";

        public Optional<Target> target() {
            return mix.map(Mix::target);
        }

        public Optional<Recipe> recipe() {
            return mix.map(Mix::recipe);
        }

        public Optional<NextChip> nextChip() {
            return mix.flatMap(Mix::nextChip);
        }

        private Optional<DifferenceWords> beside() {
            return mix.map(made -> DifferenceWords.of(
                    made.recipe().prediction().lab(), made.target().colour()));
        }

        /** @return the mix beside the hull, and how sure that is */
        public String verdict() {
            return beside().map(words -> words.sentence(within90())).orElse("");
        }

        /** @return how far the mix is from the hull by the best estimate */
        public String close() {
            return recipe().map(made -> DifferenceWords.off(made.deltaE())).orElse(NOTHING);
        }

        /** @return which way it is off */
        public String closeWords() {
            return beside().map(words -> words.phrase(within90())).orElse("");
        }

        /** @return how sure that is */
        public String sure() {
            return recipe().map(made -> DifferenceWords.likely(made.within90())).orElse(NOTHING);
        }

        /** @return what that means */
        public String sureWords() {
            return mix.isPresent() ? DifferenceWords.LIKELY_MEANS : "";
        }

        /** @return nine times in ten the mix comes out within this CIEDE2000 of what is computed; 0 without one */
        public double within90() {
            return recipe().map(Recipe::within90).orElse(0.0);
        }
    }

    public PlanModel(JobModel job, ShellModel shell, Matching matching, LatestAnswer asking) {
        this.job = job;
        this.shell = shell;
        this.matching = matching;
        this.asking = asking;
        job.jobProperty().addListener((property, before, after) -> {
            chosen = before.place() == after.place() ? chosen : 0;
            ask();
        });
        job.knowledgeProperty().addListener((property, before, after) -> ask());
        ask();
    }

    private void ask() {
        Knowledge knowledge = job.knowledgeProperty().get();
        Job now = job.now();
        if (job.place().isEmpty() || now.shelf().tints().isEmpty()) {
            asking.cancel();
            plan.set(Plan.NONE);
            return;
        }
        if (knowledge == null || !knowledge.shelf().equals(now.shelf())) {
            return;
        }
        int way = chosen;
        asking.ask(
                () -> plan(knowledge, now, way),
                made -> {
                    problem.set("");
                    plan.set(made);
                },
                failure -> problem.set(FailureWords.of(failure)));
    }

    private Plan plan(Knowledge knowledge, Job now, int way) {
        Target target = matching.target(now.places().get(now.place()), knowledge);
        Wish wish = Wish.of(target, now.grams(), now.scaleStep()).without(now.off());
        MatchBench bench = matching.on(knowledge);
        MatchAnswer answer = bench.match(wish);
        List<Recipe> recipes =
                answer.recipes().subList(0, Math.min(MOST_WAYS, answer.recipes().size()));
        int index = Math.min(way, recipes.size() - 1);
        Recipe recipe = recipes.get(index);
        CupPictures drawn = new CupPictures(knowledge, target);
        List<String> today = now.shelf().tints().stream()
                .map(Tint::id)
                .filter(id -> !now.off().contains(id))
                .collect(Collectors.toList());
        List<Weighing> order = bench.order(recipe, now.scaleStep());
        Pictures pictures = new Pictures(
                CupPictures.swatch("Mix, as computed", recipe),
                drawn.recipe(recipe, order),
                drawn.rose(
                        "Mix", recipe.weighed(), today, recipe.weighed().grams().keySet()));
        return new Plan(
                Optional.of(new Mix(target, recipe, pictures, NextChip.of(knowledge, recipe, target, now.scaleStep()))),
                lines(now, recipe),
                ways(recipes, now),
                index,
                spaced(reach(answer), little(order)),
                answer instanceof MatchAnswer.OutOfReach);
    }

    private static List<Line> lines(Job now, Recipe recipe) {
        List<Line> lines = new ArrayList<>();
        double total = recipe.weighed().total();
        for (Base base : now.shelf().bases()) {
            double grams = recipe.weighed().grams(base.id());
            if (grams > 0) {
                lines.add(new Line(
                        base.id(),
                        base.name(),
                        false,
                        true,
                        Grams.onScale(grams, now.scaleStep()),
                        say("%.2f %%", 100 * grams / total)));
            }
        }
        for (Tint tint : now.shelf().tints()) {
            double grams = recipe.weighed().grams(tint.id());
            boolean used = !now.off().contains(tint.id());
            lines.add(new Line(
                    tint.id(),
                    tint.name(),
                    true,
                    used,
                    grams > 0 ? Grams.onScale(grams, now.scaleStep()) : "",
                    grams > 0 ? say("%.3f %%", 100 * grams / total) : ""));
        }
        return lines;
    }

    private static List<Way> ways(List<Recipe> recipes, Job now) {
        List<Way> ways = new ArrayList<>();
        for (Recipe recipe : recipes) {
            long tints = now.shelf().tints().stream()
                    .filter(t -> recipe.weighed().grams(t.id()) > 0)
                    .count();
            String title = say("%d %s, %s", tints, tints == 1 ? "tint" : "tints", DifferenceWords.off(recipe.deltaE()));
            ways.add(new Way(
                    title,
                    recipe.betterIn().isEmpty()
                            ? "nearest by all that is known"
                            : String.join(", ", recipe.betterIn())));
        }
        return ways;
    }

    private static String spaced(String one, String other) {
        return one.isEmpty() ? other : other.isEmpty() ? one : one + " " + other;
    }

    /** Names what this scale is too coarse to weigh straight. */
    private static String little(List<Weighing> order) {
        List<String> names = order.stream()
                .filter(Weighing::betterAsLetdown)
                .map(Weighing::name)
                .toList();
        return names.isEmpty()
                ? ""
                : say(
                        "%s: too little for this scale to weigh straight. The doses will say how to "
                                + "thin it; more in the cup or a finer scale is surer.",
                        String.join(", ", names));
    }

    private static String reach(MatchAnswer answer) {
        if (answer instanceof MatchAnswer.OutOfReach out) {
            StringBuilder said = new StringBuilder(say(
                    "These tints do not reach it: the nearest mix is %.1f off, %s.",
                    out.deltaE(), out.miss().phrase()));
            out.wouldReach()
                    .ifPresent(family -> said.append(
                            say(" A tint such as %s would bring it to %.1f.", family.plain(), out.withFamily())));
            return said.toString();
        }
        return answer instanceof MatchAnswer.TooCoarse coarse ? MatchBench.tooCoarse(coarse) : "";
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    /** Chooses another of the ways to mix it. */
    public void choose(int way) {
        chosen = way;
        ask();
    }

    public void use(String tint, boolean used) {
        job.change(before -> before.using(tint, used));
    }

    public void place(int index) {
        job.change(before -> before.at(index));
    }

    /** Takes how much is wanted as typed, such as "150", "150 g" or "5 oz"; a bare number is grams, as on the scale. */
    public void batch(String typed) {
        try {
            double grams = Entry.grams("how much", typed, UnitSystem.METRIC);
            if (!(grams >= 1 && grams <= 100_000)) {
                throw new IllegalArgumentException("how much must be 1 to 100000 g, was " + typed.trim());
            }
            problem.set("");
            job.change("batch", before -> before.of(grams));
        } catch (IllegalArgumentException e) {
            problem.set(FailureWords.of(e));
        }
    }

    public void scaleStep(double step) {
        job.change(before -> before.weighedBy(step));
    }

    /** Puts the plan on the clipboard. */
    public void copy() {
        shell.copy(asText());
    }

    /** @return the plan as lines of text, for the clipboard */
    public String asText() {
        StringBuilder text = new StringBuilder(shell.jobProperty().get()).append(System.lineSeparator());
        for (Line line : plan.get().lines()) {
            if (!line.grams().isEmpty()) {
                text.append(line.grams())
                        .append("  ")
                        .append(line.name())
                        .append("  (")
                        .append(line.share())
                        .append(")")
                        .append(System.lineSeparator());
            }
        }
        return text.append(plan.get().close())
                .append(", ")
                .append(plan.get().sure())
                .append(' ')
                .append(plan.get().sureWords())
                .append(System.lineSeparator())
                .toString();
    }

    public ReadOnlyObjectProperty<Plan> planProperty() {
        return plan.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    JobModel job() {
        return job;
    }
}
