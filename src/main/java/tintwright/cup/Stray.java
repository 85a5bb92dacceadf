package tintwright.cup;

import java.util.Optional;
import tintwright.colour.Lab;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.shelf.Knowledge;

/**
 * What the film model still misses of this cup after it has learned from the chips: beyond what the reading's own
 * noise explains, the chip is believed and the model corrected by the difference, for this cup alone. (A model's
 * discrepancy kept beside its parameters, after Kennedy and O'Hagan, J. R. Statist. Soc. B 63, 2001.)
 *
 * <p>Figures here that name no source are judgements of ours.
 *
 * @param lightness what to add to the model's L*
 * @param a         and to its a*
 * @param b         and to its b*
 */
record Stray(double lightness, double a, double b) {
    static final Stray NONE = new Stray(0, 0, 0);
    /** What noise alone hardly passes in the squared distance on three axes (1 in 4): up to here nothing is believed. */
    private static final double NOISE = 4;
    /** How far one version's correction strays from the mean, as a share of it; a judgement of ours. */
    static final double DOUBT = 0.3;

    /** @return what is added to the model; nothing while chips and model agree or contradict each other */
    static Stray of(CupState state, HullBias aim, Knowledge knowledge, boolean contradicted) {
        Optional<CupState.Sample> last = state.lastSample();
        if (last.isEmpty() || contradicted) {
            return NONE;
        }
        Reading reading = aim.seen(last.get().read());
        Lab hull = aim.target().colour();
        Optional<Lab> seen = reading.colour(hull.viewing());
        if (seen.isEmpty()) {
            return NONE;
        }
        Lab model = Contradiction.foretold(knowledge, last.get().parts().orElseThrow(), reading, hull.viewing());
        // What the whole photo is off by has its own unknown, which the learning knows; only the rest is the model's.
        double[] bias = reading.photo()
                .map(photo -> mean(knowledge.ensemble().bias(photo)))
                .orElse(new double[3]);
        double[] miss = {
            seen.get().lightness() - model.lightness() - bias[0],
            seen.get().a() - model.a() - bias[1],
            seen.get().b() - model.b() - bias[2]
        };
        double[][] noise = reading.scatter(hull.viewing()).toArray();
        double wet = reading.film() == FilmState.WET ? ReadingCheck.WET_STRAY * ReadingCheck.WET_STRAY : 0;
        for (int axis = 0; axis < 3; axis++) {
            noise[axis][axis] += wet;
        }
        double far = Small.form(miss, Small.inverse(noise));
        double share = Math.max(0, 1 - NOISE / Math.max(far, 1e-9));
        double believed = share * share;
        return new Stray(believed * miss[0], believed * miss[1], believed * miss[2]);
    }

    private static double[] mean(double[][] drawn) {
        double[] mean = new double[3];
        for (double[] one : drawn) {
            for (int axis = 0; axis < 3; axis++) {
                mean[axis] += one[axis] / drawn.length;
            }
        }
        return mean;
    }

    Lab added(Lab model) {
        return new Lab(
                Math.max(0, Math.min(100, model.lightness() + lightness)),
                model.a() + a,
                model.b() + b,
                model.viewing());
    }

    double[] toArray() {
        return new double[] {lightness, a, b};
    }
}
