package tintwright.window;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import tintwright.bench.job.Job;
import tintwright.cup.CupDeeds;
import tintwright.cup.Dose;
import tintwright.reading.ColourReading;
import tintwright.reading.HullFamily;
import tintwright.reading.PlaceReadings;
import tintwright.units.Grams;
import tintwright.window.cup.CupModel;
import tintwright.window.cup.CupStation;
import tintwright.window.cup.PlanModel;
import tintwright.window.frame.ShellModel;
import tintwright.window.frame.Step;
import tintwright.window.holes.FillModel;
import tintwright.window.job.JobModel;

/** Answers from wherever the job stands: how close, how sure, and what to do now. */
final class Guide {
    /** So many typed readings of a spot: with three, the one that is wrong can be told. */
    private static final int ENOUGH = 3;
    /** A hull whose L*, a*, b* are off by less than this each, root mean square, is well read; a judgement of ours. */
    private static final double WELL_READ = 1;
    /** A tint thinned more than one in so many costs more white than a larger cup does; a judgement of ours. */
    private static final double THINNED = 10;
    /** The first dose is about this share of what a cup gets in the end; a judgement of ours. */
    private static final double FIRST_DOSE = 0.5;
    /** No cup is made larger than this for a tint of which it needs next to nothing, g; a judgement of ours. */
    private static final double MOST_FOR_THE_SCALE = 10;
    /** From this CIEDE2000, nine times in ten, a mix can be seen to be off; a chip is the way to know better. */
    private static final double POOR = 3;

    private final ShellModel shell;
    private final JobModel job;
    private final PlanModel plan;
    private final CupModel cup;
    private final FillModel fill;
    /** Places a person has chosen to go on with as they are. */
    private final Set<String> enough = new HashSet<>();

    private boolean planned;

    Guide(ShellModel shell, JobModel job, PlanModel plan, CupModel cup, FillModel fill) {
        this.shell = shell;
        this.job = job;
        this.plan = plan;
        this.cup = cup;
        this.fill = fill;
        fill.nextProperty().addListener((property, before, after) -> point());
        plan.planProperty().addListener((property, before, after) -> point());
        plan.problemProperty().addListener((property, before, after) -> point());
        cup.inHandProperty().addListener((property, before, after) -> point());
        job.jobProperty().addListener((property, before, after) -> point());
        shell.stepProperty().addListener((property, before, after) -> point());
        point();
    }

    private void point() {
        Job now = job.now();
        Optional<CupModel.InHand> mixing = cup.inHandProperty().get();
        if (now.cup().isPresent() && mixing.isPresent()) {
            planned = false;
            mixing(mixing.get());
        } else if (now.boat().isBlank()) {
            nothingYet("Say which boat it is.", "To the boat", Step.BOAT);
        } else if (now.place() < 0) {
            nothingYet("Read the hull: by a photo, by a meter or by your eye.", "To the hull", Step.HULL);
        } else if (now.cup().isPresent() && planned) {
            // Begun this moment: until it is reckoned the sentence, and a focus on its button, stay as they are.
            return;
        } else if (now.cup().isPresent()) {
            shell.answer("\u2013", "", "\u2013", "");
            shell.next("Your cup comes back in a moment.", "", () -> {});
            shell.captionProperty(Step.CUP).set("in hand");
        } else {
            beforeTheCup(now);
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
            shell.nextElsewhere(
                    next.sentence(), "To the holes", () -> shell.stepProperty().set(Step.FILL));
        }
    }

    /** At the fill its own next thing counts, unless the colour is still to be made and no hole is being measured. */
    private void filling(Job now, Optional<CupModel.InHand> mixing) {
        boolean mixed = now.cup().isPresent()
                && mixing.isPresent()
                && mixing.get().deeds().now().kind() == CupDeeds.Kind.STOP;
        FillModel.Next next = fill.nextProperty().get();
        if (mixed || next.running() || fill.measuring()) {
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
        if (shell.stepProperty().get() == where) {
            shell.next(sentence, "", () -> {});
        } else {
            shell.nextElsewhere(sentence, button, () -> shell.stepProperty().set(where));
        }
    }

    private void beforeTheCup(Job now) {
        boolean tints = !now.shelf().tints().isEmpty();
        if (tints) {
            planned(now);
        }
        int more = readingsWanted(now.places().get(now.place()));
        if (more > 0 && !enough.contains(spot(now))) {
            readAgain(now, more, tints);
        } else if (!tints) {
            nothingYet("Put your tints on the shelf, a few will do.", "To the shelf", Step.SHELF);
        }
    }

    /** A hint and no more: at the hull its button goes on with what there is, and it is not given again. */
    private void readAgain(Job now, int more, boolean tints) {
        String sentence = more == 1
                ? "Read the spot once more, a hand's breadth apart."
                : "Read the spot two more times, a hand's breadth apart.";
        if (!tints) {
            nothingYet(sentence, "To the hull", Step.HULL);
        }
        if (shell.stepProperty().get() == Step.HULL) {
            shell.next(sentence, more == 1 ? "Go on with two" : "Go on with one", () -> {
                enough.add(spot(now));
                point();
            });
        } else {
            go(sentence, "To the hull", Step.HULL);
        }
    }

    /** @return how many more readings the place wants: three typed ones, or one curve, photo or pick, are enough */
    private static int readingsWanted(PlaceReadings place) {
        boolean whole = place.readings().stream()
                .anyMatch(each -> !(each instanceof ColourReading typed)
                        || typed.photo().isPresent()
                        || HullFamily.of(each).isPresent());
        return whole ? 0 : Math.max(0, ENOUGH - place.readings().size());
    }

    private static String spot(Job now) {
        return now.boat() + "\n" + now.places().get(now.place()).place();
    }

    private void planned(Job job) {
        planned = true;
        PlanModel.Plan now = plan.planProperty().get();
        shell.answer(now.close(), now.closeWords(), now.sure(), now.sureWords());
        now.recipe()
                .ifPresent(recipe -> shell.captionProperty(Step.CUP)
                        .set(Grams.about(recipe.weighed().total()) + " planned"));
        if (now.recipe().isEmpty() && plan.problemProperty().get().isEmpty()) {
            shell.next("The mix is being worked out.", "", () -> {});
        } else if (now.outOfReach()) {
            first("These tints do not reach it: add a tint.");
        } else if (now.within90() > POOR && wellRead(now) && now.nextChip().isPresent()) {
            first("Make a chip of " + job.shelf().nameOf(now.nextChip().get().tintId())
                    + " first: the mix gets surer.");
        } else if (fill.colourToMake() && shell.stepProperty().get() != Step.CUP) {
            double least = weighable(now, job);
            shell.nextElsewhere(fill.toMake(least), "Make the colour", () -> {
                fill.makeTheColour(least);
                begin();
            });
        } else {
            shell.next("Begin a cup: white first.", "Begin the cup", this::begin);
        }
    }

    /** @return grams of the mix from which on each tint, thinned once, is enough for the scale; to a tenth */
    private static double weighable(PlanModel.Plan plan, Job job) {
        double least = plan.recipe().stream()
                .flatMap(recipe -> recipe.exact().grams().entrySet().stream()
                        .filter(part -> job.shelf().tint(part.getKey()).isPresent())
                        .map(part -> part.getValue() / recipe.exact().total()))
                .mapToDouble(share -> Dose.FEWEST_STEPS * job.scaleStep() / THINNED / FIRST_DOSE / share)
                .max()
                .orElse(0);
        return Math.ceil(Math.min(MOST_FOR_THE_SCALE, least) * 10) / 10;
    }

    /** @return false for a hull of which a photo or a pick says little: there dabs beside it help, and no chip */
    private static boolean wellRead(PlanModel.Plan plan) {
        return plan.target()
                .map(target -> target.covariance())
                .filter(c -> c.ll() + c.aa() + c.bb() < 3 * WELL_READ * WELL_READ)
                .isPresent();
    }

    /** What is better done at the shelf first; there, the cup can be begun all the same. */
    private void first(String sentence) {
        if (shell.stepProperty().get() == Step.SHELF) {
            shell.next(sentence, "Begin all the same", this::begin);
        } else {
            go(sentence, "To the shelf", Step.SHELF);
        }
    }

    private void begin() {
        if (job.now().cup().isPresent()) {
            return;
        }
        cup.begin();
        shell.stepProperty().set(Step.CUP);
    }

    private void mixing(CupModel.InHand seen) {
        shell.answer(seen.close(), seen.closeWords(), seen.sure(), seen.sureWords());
        double mass = seen.cup().state().mass();
        shell.captionProperty(Step.CUP).set(mass == 0 ? "begun" : Grams.about(mass) + " in it");
        CupDeeds.Todo next = seen.deeds().now();
        boolean atTheCup = shell.stepProperty().get() == Step.CUP;
        if (next.kind() == CupDeeds.Kind.STOP) {
            Runnable toTheHoles = () -> shell.stepProperty().set(Step.FILL);
            if (atTheCup) {
                shell.next(next.sentence(), CupStation.button(next.kind()), toTheHoles);
            } else {
                go(next.sentence(), CupStation.button(next.kind()), Step.FILL);
            }
        } else if (!atTheCup) {
            go(next.sentence(), "To the cup", Step.CUP);
        } else if (next.deed().isPresent()) {
            shell.next(next.sentence(), CupStation.button(next.kind()), cup::accept);
        } else {
            shell.next(next.sentence(), CupStation.button(next.kind()), shell::pointOut);
        }
    }
}
