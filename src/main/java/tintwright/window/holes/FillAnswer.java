package tintwright.window.holes;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser.ExtensionFilter;
import tintwright.bench.CupStanding;
import tintwright.bench.PlanFill;
import tintwright.bench.job.FillOrders;
import tintwright.colour.DifferenceWords;
import tintwright.fill.Batch;
import tintwright.fill.Caution;
import tintwright.fill.FillPlan;
import tintwright.fill.Warning;
import tintwright.fill.WaxDose;
import tintwright.units.UnitSystem;
import tintwright.window.pieces.AskForFile;
import tintwright.window.pieces.Controls;

/** Cup by cup what to mix, how long it can be worked, and what to do then. */
final class FillAnswer {
    private final FillModel model;
    private final UnitSystem units;
    private final VBox answer = new VBox();

    FillAnswer(FillModel model, UnitSystem units) {
        this.model = model;
        this.units = units;
        answer.getStyleClass().add("column");
    }

    Region build() {
        Controls.follow(answer, model.planProperty(), (before, after) -> show(after));
        Controls.follow(
                answer,
                model.refusedProperty(),
                (before, after) -> show(model.planProperty().get()));
        show(model.planProperty().get());
        return answer;
    }

    private void show(Optional<PlanFill> plan) {
        answer.getChildren().clear();
        if (plan.isPresent()) {
            show(plan.get());
        } else if (!model.refusedProperty().get().isEmpty()) {
            answer.getChildren()
                    .add(cautions(
                            "Not like this",
                            Controls.plain(model.refusedProperty().get())));
        }
    }

    private void show(PlanFill made) {
        FillPlan plan = made.plan();
        made.standing()
                .filter(CupStanding::another)
                .ifPresent(seen -> answer.getChildren().add(another(seen)));
        answer.getChildren().add(total(made));
        // Why more is mixed than the holes take stands beside the figure it raises as well.
        List<String> first = plan.before(units);
        if (!first.isEmpty()) {
            VBox before = cautions(plan.forbidden() ? "Not today" : "Before the catalyst goes in");
            first.forEach(words -> before.getChildren().add(Controls.plain(words)));
            answer.getChildren().add(before);
        }
        plan.batches().forEach(batch -> answer.getChildren().add(batch(batch)));
        VBox always = cautions("Cautions");
        for (Caution caution : plan.cautions()) {
            always.getChildren().add(Controls.plain(caution.words()));
        }
        answer.getChildren().add(always);
    }

    private static VBox cautions(String title, Node... lines) {
        VBox box = new VBox(Controls.wrapped(title, "caution"));
        box.getStyleClass().addAll("caution-sheet", "asked");
        box.setMinHeight(Region.USE_PREF_SIZE);
        box.getChildren().addAll(lines);
        return box;
    }

    /** Before anything else: the cup is not the colour. To fill with it all the same is the second choice. */
    private Node another(CupStanding seen) {
        Button anyway = Controls.quietButton("Fill with it all the same", model::fillAllTheSame);
        VBox box = cautions(
                "The cup is off the hull by " + DifferenceWords.size(seen.deltaE()) + ": it is not the colour yet",
                Controls.plain(seen.first()),
                Controls.soft(seen.sentence()),
                Controls.flow(
                        Controls.button("To the cup", model::toTheCup),
                        Controls.onlyWhen(Bindings.not(model.acceptedProperty()), anyway)));
        box.setId("another-colour");
        return box;
    }

    private VBox total(PlanFill made) {
        FillPlan plan = made.plan();
        VBox total = Controls.sheet(
                "In all",
                figures(
                        first(units.weighed(made.gramsForTheCup(), FillModel.STEP), "of colour for the holes"),
                        figure(units.weighed(plan.pasteGrams(), FillModel.STEP), "gel paste"),
                        figure(plan.time().words(), "from catalyst in to gel"),
                        figure(
                                Integer.toString(plan.batches().size()),
                                plan.batches().size() == 1 ? "cup" : "cups")));
        plan.warnings().stream()
                .filter(one -> one.kind() == Warning.Kind.TOPPED_UP)
                .forEach(raised -> total.getChildren().add(raised(raised)));
        // Grams say nothing of the colour: while it is another, they are not the good news.
        boolean another = made.standing().filter(CupStanding::another).isPresent();
        plan.enough()
                .filter(known -> !model.colourToMake())
                .ifPresent(enough -> total.getChildren()
                        .add(
                                another
                                        ? Controls.plain("In grams alone: " + enough.words(units))
                                        : Controls.wrapped(enough.words(units), "strong")));
        total.getChildren()
                .addAll(
                        Controls.soft(FillOrders.reckonedWith(model.job().now(), units)),
                        Controls.soft("Catalyst from " + plan.origin() + "."));
        FlowPane hand = figures(
                Controls.button("Job sheet to print", () -> write("PDF to print", "pdf")),
                Controls.button("Job sheet for the phone", () -> write("Page for the phone", "html")),
                Controls.quietButton("Copy as text", () -> model.sheet().copy(units)));
        total.getChildren().add(hand);
        return total;
    }

    /** Why there is more than the holes take, and the way out. */
    private Node raised(Warning warning) {
        VBox why = new VBox(Controls.plain("Raised by " + units.volume(warning.value()) + " in all: for less, the "
                + "catalyst would be too little to measure "
                + model.hull().measuredWith().inWords() + "."));
        why.getStyleClass().add("asked");
        if (EnumSet.of(CatalystTool.SYRINGE, CatalystTool.DROPS, CatalystTool.SPOON)
                .contains(model.hull().measuredWith())) {
            why.getChildren()
                    .add(Controls.button(
                            "I have a scale to 0.01 g: mix less",
                            () -> model.hull().measureWith(CatalystTool.SCALE)));
        }
        return why;
    }

    private void write(String words, String ending) {
        AskForFile.toWrite(
                answer,
                "Job sheet",
                model.sheet().name() + "." + ending,
                chosen -> model.sheet().write(chosen, units),
                new ExtensionFilter(words, "*." + ending));
    }

    private static FlowPane figures(Node... nodes) {
        FlowPane pane = new FlowPane(nodes);
        pane.getStyleClass().add("figures");
        return pane;
    }

    /** The one figure that a hand goes by next. */
    private static Node first(String figure, String words) {
        return new VBox(Controls.wrapped(figure, "first-figure"), Controls.soft(words));
    }

    private static Node figure(String figure, String words) {
        return new VBox(Controls.wrapped(figure, "figure"), Controls.soft(words));
    }

    private Node batch(Batch batch) {
        String parts =
                String.join(", ", batch.parts().stream().map(Batch.Part::words).toList());
        FlowPane weigh = figures(figure(units.weighed(batch.gelCoatGrams(), FillModel.STEP), "coloured gel coat"));
        if (batch.pasteGrams() > 0) {
            weigh.getChildren().add(figure(units.weighed(batch.pasteGrams(), FillModel.STEP), "gel paste"));
        }
        weigh.getChildren().add(figure(String.format(Locale.ROOT, "%.0f min", batch.minutes()), "needed to spread it"));
        VBox before = Controls.column(weigh);
        batch.wax()
                .ifPresent(wax -> before.getChildren()
                        .add(Controls.plain("Wax solution, stirred in before the " + "catalyst: "
                                + wax.words(model.job().now().fill().facts().tools(), units) + ", "
                                + WaxDose.shareWords() + ".")));
        batch.styreneMl()
                .ifPresent(range -> before.getChildren()
                        .add(Controls.plain(String.format(
                                Locale.ROOT,
                                "Only if the gun needs it: styrene, %.1f to " + "%.1f ml; never acetone.",
                                range[0],
                                range[1]))));
        before.getChildren()
                .addAll(
                        Controls.plain("Catalyst, last of all: "
                                + batch.catalyst().words(units) + ". Stir " + "for two minutes."),
                        begin(batch.number()));
        // Once the catalyst is in, what was to be weighed is done with: only the running times count.
        ObservableValue<Boolean> running = model.timers()
                .runningProperty()
                .map(cups -> cups.stream()
                        .anyMatch(cup -> cup.cup().equals(model.timers().inHand(batch.number()))));
        return Controls.sheet(
                "Batch " + batch.number() + ": " + batch.stage().words(),
                Controls.onlyWhen(running.map(runs -> !runs), before),
                Controls.soft("For " + parts + "; " + batch.mix().words() + "."),
                Controls.onlyWhen(
                        running, Controls.wrapped("The catalyst is in; its times are running at the top.", "good")));
    }

    /** While a batch runs its key is gone: a second press would lose the moment the catalyst went in. */
    private Node begin(int batch) {
        ObservableValue<Boolean> right = Bindings.createBooleanBinding(
                () -> model.notTheColour().isEmpty() && !model.forbidden(),
                model.acceptedProperty(),
                model.planProperty());
        return new VBox(
                Controls.onlyWhen(
                        right, Controls.button("Catalysed now: start its times", () -> model.catalysed(batch))),
                Controls.onlyWhen(right.map(is -> !is), Controls.soft("First see to what stands above.")));
    }
}
