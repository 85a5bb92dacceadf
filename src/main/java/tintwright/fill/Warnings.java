package tintwright.fill;

import java.util.ArrayList;
import java.util.List;
import tintwright.fill.Warning.Kind;
import tintwright.fill.catalyst.Basis;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.catalyst.CatalystShare;
import tintwright.fill.catalyst.WorkingTime;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.Mix;
import tintwright.fill.repair.Published;
import tintwright.fill.repair.RepairLine;
import tintwright.fill.repair.Triage;
import tintwright.fill.repair.WornArea;

/** Looks through a job for what the person must know before the catalyst goes in. */
final class Warnings {
    /** Above this, damp spoils bond and gloss; common practice, no source. */
    private static final double DAMP_PERCENT = 80;
    /** Deeper than this in the cup, catalysed gel coat heats itself; common practice, no source. */
    private static final double DEEP_CUP_MM = 25;
    /** Deeper than this overhead, the ordinary stiff mix sags; common practice, no source. */
    private static final double DEEP_OVERHEAD_MM = 4;
    /** Less time than this to spread in is a scramble; common practice, no source. */
    private static final double SHORT_TIME_MINUTES = 8;

    /** More batches than this are counted, not named. */
    private static final int MOST_NAMED = 6;

    private final FillJob job;
    private final List<Warning> found = new ArrayList<>();

    private Warnings(FillJob job) {
        this.job = job;
    }

    static List<Warning> of(
            FillJob job,
            List<Triage> triage,
            CatalystShare share,
            WorkingTime time,
            List<Batch> batches,
            FillPlan.Finish finish) {
        Warnings warnings = new Warnings(job);
        warnings.weather();
        warnings.table();
        warnings.cure(share, time);
        triage.forEach(warnings::line);
        job.lines().forEach(line -> warnings.pace(line, FillPlanner.spreadingMinutes(time)));
        batches.forEach(warnings::batch);
        warnings.surplus(batches);
        warnings.paste(batches);
        warnings.oldFilm(finish.takesMostMm());
        return warnings.found;
    }

    private void add(Kind kind, String where, double value, double limit) {
        found.add(new Warning(kind, where, value, limit));
    }

    private void weather() {
        Conditions weather = job.conditions();
        double coldest = Published.WORKING_CELSIUS.low();
        double warmest = Published.WORKING_CELSIUS.high();
        if (weather.coldest() < coldest) {
            add(Kind.TOO_COLD, weather.coldestName(), weather.coldest(), coldest);
        }
        weather.dewPoint().ifPresent(dew -> {
            double dry = dew + Published.ABOVE_DEW_POINT.low();
            if (weather.hullCelsius() < dry) {
                add(Kind.CONDENSATION, "", weather.hullCelsius(), dry);
            }
        });
        if (weather.cupCelsius() > warmest) {
            add(Kind.HOT_CUP, "", weather.cupCelsius(), warmest);
        }
        if (weather.hullCelsius() > warmest) {
            add(Kind.HOT_HULL, "", weather.hullCelsius(), warmest);
        }
        if (weather.humidityPercent().isEmpty()) {
            add(Kind.HUMIDITY_UNKNOWN, "", 0, DAMP_PERCENT);
        } else if (weather.humidityPercent().getAsDouble() > DAMP_PERCENT) {
            add(Kind.TOO_HUMID, "", weather.humidityPercent().getAsDouble(), DAMP_PERCENT);
        }
    }

    private void table() {
        if (job.catalyst() instanceof CatalystChoice.Own own) {
            double cup =
                    Math.max(Published.WORKING_CELSIUS.low(), job.conditions().cupCelsius());
            if (own.table().rows().isEmpty()) {
                add(Kind.NO_TABLE, own.table().product(), 0, 0);
            } else if (!own.table().covers(cup)) {
                add(Kind.OUTSIDE_TABLE, own.table().product(), cup, own.table().nearest(cup));
            }
        }
    }

    private void cure(CatalystShare share, WorkingTime time) {
        if (time.leastMinutes() < SHORT_TIME_MINUTES) {
            add(Kind.SHORT_TIME, "", time.leastMinutes(), SHORT_TIME_MINUTES);
        }
        Densities densities = job.materials().densities();
        for (Mix mix : job.lines().stream().map(RepairLine::mix).distinct().toList()) {
            double byVolume = share.percentByVolume(mix, densities);
            double byMass = byVolume * densities.catalyst() / mix.density(densities);
            double other = share.basis() == Basis.MASS ? byVolume : byMass;
            if (!Published.CATALYST_RANGE.holds(other)) {
                add(Kind.OTHER_BASIS, "", other, Published.CATALYST_RANGE.high());
                return;
            }
        }
    }

    private void line(Triage triage) {
        RepairLine line = triage.line();
        double thickest = triage.colourMm();
        if (triage.below() == Triage.Below.MEASURE_AGAIN) {
            return;
        }
        boolean film = line.sprayed() || line.repair() instanceof WornArea && triage.below() == Triage.Below.NOTHING;
        if (film && thickest < Published.LEAST_FILM_MM.low() - 1e-9) {
            add(Kind.FILM_TOO_THIN, line.name(), thickest, Published.LEAST_FILM_MM.low());
        }
        if (film && thickest > Published.USUAL_FILM_MM.high() + 1e-9) {
            add(Kind.FILM_TOO_THICK, line.name(), thickest, Published.USUAL_FILM_MM.high());
        }
        if (!line.sprayed() && line.lie() == Lie.OVERHEAD && thickest > DEEP_OVERHEAD_MM) {
            add(Kind.DEEP_OVERHEAD, line.name(), thickest, DEEP_OVERHEAD_MM);
        }
        job.materials().hidingFilmMm().ifPresent(hiding -> {
            double hides = line.mix().hidingFilmMm(hiding);
            double sanded = line.sprayed()
                    ? thickest * Published.CURED_OF_WET.middle() - Published.SPRAY_SANDED_MM.high()
                    : thickest;
            if (sanded < hides - 1e-9) {
                add(Kind.SHOWS_THROUGH, line.name(), Math.max(0, sanded), hides);
            }
        });
    }

    private void pace(RepairLine line, double spreading) {
        double minutes = job.tools().minutes(line.repair());
        if (!line.repair().divisible() && minutes > spreading) {
            add(Kind.PIECE_TOO_LONG, line.name(), minutes, spreading);
        }
    }

    private void batch(Batch batch) {
        double depth = job.tools().depthMm(batch.fullMl());
        if (depth > DEEP_CUP_MM) {
            add(Kind.DEEP_CUP, "Batch " + batch.number(), depth, DEEP_CUP_MM);
        }
    }

    private void surplus(List<Batch> batches) {
        // A little more than wanted is nobody's loss; a cup that doubles is.
        List<Batch> raised = batches.stream()
                .filter(batch -> batch.surplusMl() > 0.2 * batch.mixMl())
                .toList();
        if (!raised.isEmpty()) {
            add(
                    Kind.TOPPED_UP,
                    raised.size() > MOST_NAMED
                            ? raised.size() + " batches"
                            : (raised.size() == 1 ? "Batch " : "Batches ")
                                    + String.join(
                                            ", ",
                                            raised.stream()
                                                    .map(batch -> "" + batch.number())
                                                    .toList()),
                    raised.stream().mapToDouble(Batch::surplusMl).sum(),
                    raised.stream().mapToDouble(Batch::mixMl).sum());
        }
    }

    private void paste(List<Batch> batches) {
        if (job.materials().hidingFilmMm().isEmpty()) {
            add(Kind.HIDING_UNKNOWN, "", 0, 0);
        }
        boolean coats = batches.stream().map(batch -> batch.stage()).distinct().count() > 1;
        if (coats && batches.stream().anyMatch(batch -> job.materials().waxes(batch.mix()))) {
            add(Kind.WAX_BETWEEN_COATS, "", 0, 0);
        }
        double needed = batches.stream().mapToDouble(Batch::pasteGrams).sum();
        job.supply()
                .ifPresent(supply -> supply.paste().ifPresent(there -> {
                    if (there < needed) {
                        add(Kind.TOO_LITTLE_PASTE, "", there, needed);
                    }
                }));
    }

    private void oldFilm(double takesMostMm) {
        if (job.hull().gelCoatMm().isEmpty()) {
            add(Kind.OLD_FILM_UNKNOWN, "", takesMostMm, Published.USUAL_FILM_MM.high());
            return;
        }
        double left = Math.max(0, job.hull().gelCoatMm().getAsDouble() - takesMostMm);
        if (left < Published.LEAST_FILM_MM.low()) {
            add(Kind.OLD_FILM_THIN, "", left, Published.LEAST_FILM_MM.low());
        }
    }
}
