package tintwright.window;

import java.util.Optional;

/** Answers the strip's three questions from wherever the job stands: how close, how sure, and what to do now. */
final class Guide {
    private final ShellModel shell;
    private final JobModel job;
    private final PlanModel plan;
    private final CupModel cup;
    private final FillModel fill;

    Guide(ShellModel shell, JobModel job, PlanModel plan, CupModel cup, FillModel fill) {
        this.shell = shell;
        this.job = job;
        this.plan = plan;
        this.cup = cup;
        this.fill = fill;
        fill.nextProperty().addListener((property, before, after) -> point());
        plan.planProperty().addListener((property, before, after) -> point());
        cup.inHandProperty().addListener((property, before, after) -> point());
        job.jobProperty().addListener((property, before, after) -> point());
        shell.stepProperty().addListener((property, before, after) -> point());
        point();
    }

    private void point() {
        Job now = job.now();
        Optional<CupModel.InHand> mixing = cup.inHandProperty().get();
        if (now.cup().isPresent() && mixing.isPresent()) {
            mixing(mixing.get());
        } else if (now.boat().isBlank()) {
            nothingYet("Say which boat it is.", "To the boat", Step.BOAT);
        } else if (now.place() < 0) {
            nothingYet("Read the hull: a clean, flat spot, three times.", "To the hull", Step.HULL);
        } else if (now.shelf().tints().isEmpty()) {
            nothingYet("Put your tints on the shelf, a few will do.", "To the shelf", Step.SHELF);
        } else {
            planned();
        }
        if (shell.stepProperty().get() == Step.FILL) {
            filling(now, mixing);
        } else {
            curing();
        }
    }

    /** A cup that is going off comes before whatever else there is to do. */
    private void curing() {
        FillModel.Next next = fill.nextProperty().get();
        if (next.running() && next.urgent()) {
            // The key only goes there: under a hand that is about to press "It is in" nothing else may be written.
            shell.next(next.sentence(), "To the fill", () -> shell.stepProperty().set(Step.FILL));
        }
    }

    /** At the fill its own next thing counts, unless the colour is still to be made. */
    private void filling(Job now, Optional<CupModel.InHand> mixing) {
        boolean mixed = now.cup().isPresent() && mixing.isPresent() && mixing.get().next().finished();
        FillModel.Next next = fill.nextProperty().get();
        if (mixed || next.running()) {
            shell.next(next.sentence(), next.button(), fill::doNext);
        }
    }

    private void nothingYet(String sentence, String button, Step where) {
        shell.answer("\u2013", "nothing to compare yet", "\u2013", "");
        go(sentence, button, where);
        shell.captionProperty(Step.CUP).set(Step.CUP.meaning());
    }

    /** One button that goes to a station; where one is there already it is not needed. */
    private void go(String sentence, String button, Step where) {
        shell.next(sentence, shell.stepProperty().get() == where ? "" : button,
                () -> shell.stepProperty().set(where));
    }

    private void planned() {
        PlanModel.Plan now = plan.planProperty().get();
        shell.answer(now.close(), now.closeWords(), now.sure(), now.sureWords());
        now.recipe().ifPresent(recipe -> shell.captionProperty(Step.CUP).set(
                Drawn.grams(recipe.weighed().total()) + " planned"));
        shell.next("Begin a cup: white first, then doses.", "Begin the cup", () -> {
            cup.begin();
            shell.stepProperty().set(Step.CUP);
        });
    }

    private void mixing(CupModel.InHand seen) {
        shell.answer(seen.close(), seen.closeWords(), seen.sure(), seen.sureWords());
        double mass = seen.cup().state().mass();
        shell.captionProperty(Step.CUP).set(mass == 0 ? "begun" : Drawn.grams(mass) + " in it");
        CupModel.Next next = seen.next();
        boolean atTheCup = shell.stepProperty().get() == Step.CUP;
        if (next.finished()) {
            go(next.sentence(), next.button(), Step.FILL);
        } else if (!atTheCup) {
            go(next.sentence(), "To the cup", Step.CUP);
        } else if (next.deed().isPresent()) {
            shell.next(next.sentence(), next.button(), cup::accept);
        } else {
            shell.next(next.sentence(), next.button(), shell::pointOut);
        }
    }
}
