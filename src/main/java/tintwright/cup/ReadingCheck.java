package tintwright.cup;

import java.util.Locale;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.mult.VectorVectorMult_DDRM;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.shelf.knowledge.Prediction;

/**
 * Whether a reading can be of this cup at all: a slip in reading must not teach the shelf nonsense.
 */
public final class ReadingCheck {
    /** Squared distance in three axes beyond which it cannot be: chance one in a million for honest normal errors. */
    private static final double CANNOT = 30;
    /** A smaller difference is never called impossible, CIEDE2000: models are off too; a judgement of ours. */
    private static final double ALWAYS_POSSIBLE = 3;
    /** What a model of paint may be off by on each axis, and a wet film more; common practice, no source. */
    static final double MODEL = 0.7;

    /** A judgement of ours. */
    static final double WET_STRAY = 0.7;

    private ReadingCheck() {}

    /** @return why this cannot be a reading of the cup; empty when it can be */
    public static Optional<String> cannotBe(CupSight sight, Deed.Read read) {
        if (sight.state().parts().isEmpty()) {
            return Optional.of("nothing is in the cup yet, so nothing in it can have been read");
        }
        Reading reading = sight.aim().seen(read);
        Viewing viewing = reading.judgedUnder();
        Lab seen = reading.colour(viewing).orElseThrow();
        Prediction expected = sight.knowledge().predict(sight.state().parts().get(), viewing, reading.geometry());
        Covariance doubt = expected.covariance().plus(Covariance.same(MODEL)).plus(reading.doubt(viewing));
        double[] shift = new double[3];
        if (reading.film() == FilmState.WET) {
            double[][] wet = sight.knowledge().wetShift();
            doubt = doubt.plus(Covariance.of(new double[][] {
                        {wet[0][1] * wet[0][1], 0, 0}, {0, wet[1][1] * wet[1][1], 0}, {0, 0, wet[2][1] * wet[2][1]}
                    }))
                    .plus(Covariance.same(WET_STRAY));
            for (int axis = 0; axis < 3; axis++) {
                shift[axis] = wet[axis][0];
            }
        }
        Lab lab = expected.lab();
        Lab wanted = new Lab(lab.lightness() + shift[0], lab.a() + shift[1], lab.b() + shift[2], viewing);
        double[] miss = {seen.lightness() - wanted.lightness(), seen.a() - wanted.a(), seen.b() - wanted.b()};
        double difference = Ciede2000.between(seen, wanted);
        if (difference < ALWAYS_POSSIBLE || squared(new DMatrixRMaj(miss), doubt) < CANNOT) {
            return Optional.empty();
        }
        return Optional.of(String.format(
                Locale.ROOT,
                "this reading (L* %.1f, a* %.1f, b* %.1f) cannot be this cup,"
                        + " which by what went in is near L* %.1f, a* %.1f, b* %.1f; nothing was learned from it: read again,"
                        + " or correct the entry that was weighed differently",
                seen.lightness(),
                seen.a(),
                seen.b(),
                wanted.lightness(),
                wanted.a(),
                wanted.b()));
    }

    /** How far off, in standard deviations, squared. */
    private static double squared(DMatrixRMaj miss, Covariance doubt) {
        DMatrixRMaj precision = new DMatrixRMaj(doubt.toArray());
        CommonOps_DDRM.invert(precision);
        return VectorVectorMult_DDRM.innerProdA(miss, precision, miss);
    }
}
