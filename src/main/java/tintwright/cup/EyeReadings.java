package tintwright.cup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tintwright.colour.Lab;
import tintwright.reading.EyeVerdict;
import tintwright.reading.FilmState;
import tintwright.shelf.Parts;
import tintwright.shelf.knowledge.Compared;
import tintwright.shelf.knowledge.Knowledge;

/**
 * Learns from what the eye said of a cup's dabs. An answer is an interval of the difference between dab and hull, with
 * blurred borders; all answers, hull, tints and the person's own borders are weighed together, each by the shape it
 * has. So "much too light" of a white dab says little and of a dab near the hull says much.
 */
final class EyeReadings {
    /** Looks that seem to stray so many times more than usual are poor; chosen by the study EyeStudy on its choosing half. */
    private static final double POOR = 1.4;
    /** A slip that is likelier than this is asked about; a judgement of ours. */
    private static final double DOUBTED = 0.5;
    /** A faded hull is lighter than the fresh white at most by about this, L*; a judgement of ours. */
    private static final double LIGHTER_THAN_WHITE = 0.7;

    private EyeReadings() {}

    /**
     * What is known.
     *
     * @param knowledge what shelf, chips and eye teach together
     * @param eye       what is thought of the eye
     */
    record Learned(Knowledge knowledge, Eye eye) {}

    /**
     * @param read   what shelf and chips teach
     * @param always whether to learn although nothing was seen yet: that the hull is hardly lighter than the white
     */
    static Learned of(Knowledge read, CupState state, HullBias aim, boolean always) {
        List<CupState.Look> looks =
                state.looks().stream().filter(look -> look.verdict().tells()).toList();
        if (looks.isEmpty() && !always) {
            return new Learned(read, Eye.CLOSED);
        }
        List<Compared> mixes = new ArrayList<>();
        List<Answer> answers = new ArrayList<>();
        mixes.add(new Compared(Parts.of(Map.of(state.base(), 1.0)), Map.of(), FilmState.CURED));
        for (CupState.Look look : looks) {
            Compared mix = compared(look.dab(), look);
            // Looks at one dab are of one dab, with one error of its scale.
            if (!mixes.get(mixes.size() - 1).equals(mix)) {
                mixes.add(mix);
            }
            answers.add(
                    new Answer(look.verdict(), mixes.size() - 1, look.farther().size()));
            look.farther().forEach(dab -> mixes.add(compared(dab, look)));
        }
        Lab hull = aim.target().colour();
        Answers all = new Answers(answers, hull, EyeJudge.Weights.beside(hull));
        Compared.Seen seen =
                read.compared(mixes, aim.bias(), hull.viewing(), aim.target().geometry(), EyeJudge.TRAITS, all);
        return new Learned(
                seen.knowledge(),
                looks.isEmpty()
                        ? Eye.CLOSED
                        : eye(all, seen.versions(), looks.get(looks.size() - 1).entry()));
    }

    private static Compared compared(CupState.Dab dab, CupState.Look look) {
        return new Compared(dab.parts(), dab.off(), look.verdict().film());
    }

    private static Eye eye(Answers all, List<Compared.Version> versions, String last) {
        double poorness = 0;
        double slip = 0;
        for (Compared.Version version : versions) {
            EyeJudge judge = EyeJudge.of(version.more());
            poorness += judge.poorness() / versions.size();
            double chance = all.chance(judge, all.said().get(all.said().size() - 1), version.lab());
            slip += EyeJudge.ofSlip() / EyeJudge.withSlips(chance) / versions.size();
        }
        return new Eye(
                all.said().size(), poorness, poorness > POOR, slip > DOUBTED ? Optional.of(last) : Optional.empty());
    }

    /** What was said of one of the mixes; so many after it lay in a row with it and looked farther off. */
    private record Answer(EyeVerdict said, int of, int farther) {}

    /** All answers; the first of the mixes is the white alone. */
    private record Answers(List<Answer> said, Lab hull, EyeJudge.Weights weights) implements Compared.Likelihood {
        @Override
        public double ln(double[][] lab, double[] traits) {
            double above = Math.max(0, hull.lightness() - lab[0][0]) / LIGHTER_THAN_WHITE;
            double sum = -above * above / 2;
            EyeJudge judge = EyeJudge.of(traits);
            for (Answer answer : said) {
                sum += Math.log(EyeJudge.withSlips(chance(judge, answer, lab)));
                for (int other = 1; other <= answer.farther(); other++) {
                    sum += Math.log(judge.nearer(apart(lab[answer.of()]), apart(lab[answer.of() + other]), weights));
                }
            }
            return sum;
        }

        double chance(EyeJudge judge, Answer answer, double[][] lab) {
            return judge.chance(answer.said(), apart(lab[answer.of()]), weights);
        }

        private double[] apart(double[] dab) {
            return new double[] {dab[0] - hull.lightness(), dab[1] - hull.a(), dab[2] - hull.b()};
        }
    }
}
