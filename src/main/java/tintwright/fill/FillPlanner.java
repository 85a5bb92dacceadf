package tintwright.fill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.catalyst.CatalystDose;
import tintwright.fill.catalyst.CatalystShare;
import tintwright.fill.catalyst.CatalystTable;
import tintwright.fill.catalyst.CureTimer;
import tintwright.fill.catalyst.GelTimes;
import tintwright.fill.catalyst.GeneralCatalyst;
import tintwright.fill.catalyst.WorkingTime;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.Mix;
import tintwright.fill.repair.Published;
import tintwright.fill.repair.RepairLine;
import tintwright.fill.repair.Triage;

/** From a list of repairs to the plan: how much of everything, cup by cup, in the order of the job. */
public final class FillPlanner {
    /** Of the working time this goes into stirring the catalyst in; common practice, no source. */
    static final double STIRRING_MINUTES = 2;
    /** However short the working time, this much is left for spreading in the reckoning; a warning goes with it. */
    private static final double LEAST_SPREADING_MINUTES = 1;
    /** More than this in one cup heats itself; common practice, no source. */
    private static final double MOST_FILL_ML = 100;
    /** A gun's cup, emptied quickly and in a thin film; common practice, no source. */
    private static final double MOST_SPRAY_ML = 300;
    /** A longer list is a slip of the pen, or weeks of work that nobody plans on one sheet. */
    private static final double MOST_CUPS = 300;
    /** The second fill only touches up; common practice, no source. */
    private static final double SECOND_FILL_PACE = 0.5;
    /** A second fill that would use less of the smallest cup than this is left out; common practice, no source. */
    private static final double WORTH_A_CUP = 0.5;

    private final FillJob job;
    private final List<Triage> triage;
    private final Cure cure;

    private FillPlanner(FillJob job, List<Triage> triage, Cure cure) {
        this.job = job;
        this.triage = triage;
        this.cure = cure;
    }

    private List<Triage> usable() {
        return triage.stream()
                .filter(one -> one.below() != Triage.Below.MEASURE_AGAIN)
                .toList();
    }

    /**
     * Share, times and where they come from.
     *
     * @param hull    how long a cup of the hull's temperature could be worked: what is on the hull gels like that
     */
    private record Cure(
            CatalystShare share, WorkingTime time, WorkingTime hull, List<CureTimer> timers, String origin) {}

    /**
     * The plan for this job. Weather that forbids the work is a warning that says what would allow it; the plan then
     * holds for the coldest temperature allowed.
     *
     * @throws IllegalArgumentException when the job is too large for one sheet
     */
    public static FillPlan plan(FillJob job) {
        List<Triage> triage =
                job.lines().stream().map(line -> Triage.of(line, job.hull())).toList();
        Cure cure = cure(job);
        FillPlanner planner = new FillPlanner(job, triage, cure);
        List<Batch> batches = planner.batches();
        double needed = batches.stream().mapToDouble(Batch::gelCoatGrams).sum();
        Optional<Enough> enough =
                job.supply().map(supply -> Enough.of(needed, job.allowances().spare(), supply));
        FillPlan.Finish finish = new FillPlan.Finish(planner.sandings());
        return new FillPlan(
                job,
                planner.amounts(),
                cure.share,
                cure.origin,
                cure.time,
                batches,
                enough,
                finish,
                cure.timers,
                DayPlanner.of(job, planner.usable(), batches, cure.timers, finish.sandings()),
                Warnings.of(job, triage, cure.share, cure.time, batches, finish),
                List.of(Caution.values()));
    }

    private static Cure cure(FillJob job) {
        Densities densities = job.materials().densities();
        double coldest = Published.WORKING_CELSIUS.low();
        double cup = Math.max(coldest, job.conditions().cupCelsius());
        double hull = Math.max(coldest, job.conditions().hullCelsius());
        GelTimes times = new GelTimes(job.noted(), densities);
        CatalystShare share;
        WorkingTime time;
        WorkingTime onHull;
        String origin;
        if (job.catalyst() instanceof CatalystChoice.Own own
                && !own.table().rows().isEmpty()) {
            CatalystTable.Row row = own.table().at(cup);
            share = row.share();
            time = row.time();
            onHull = GelTimes.moved(time, cup, hull);
            origin = "the own table of " + own.table().product();
        } else {
            share = job.catalyst() instanceof CatalystChoice.Typed typed ? typed.share() : GeneralCatalyst.shareAt(cup);
            double percent = share.percentByVolume(Mix.NEAT, densities);
            time = times.at(cup, percent);
            onHull = times.at(hull, percent);
            origin = (job.catalyst() instanceof CatalystChoice.Typed
                            ? "a share typed by hand"
                            : "a general table by temperature: its point at 25 °C (77 °F) and its limits are published, "
                                    + "the rest is common practice")
                    + (job.noted().isEmpty()
                            ? ""
                            : "; times with " + job.noted().size() + " noted in this shop");
        }
        return new Cure(share, time, onHull, CureTimer.of(time, onHull, times.tapeOff(onHull), hull), origin);
    }

    /** Fills and sprayed areas start on different grits: the coarse ones would go through a sprayed film. */
    private List<FillPlan.Sanding> sandings() {
        List<FillPlan.Sanding> sandings = new ArrayList<>();
        if (!linesOf(false).isEmpty()) {
            sandings.add(new FillPlan.Sanding(
                    "the fills", GritLadder.from(job.surface().orElse(GritLadder.Surface.PROUD)), false));
        }
        if (!linesOf(true).isEmpty()) {
            sandings.add(new FillPlan.Sanding(
                    "the sprayed areas",
                    GritLadder.from(
                            sandings.isEmpty()
                                    ? job.surface().orElse(GritLadder.Surface.SPRAYED)
                                    : GritLadder.Surface.SPRAYED),
                    true));
        }
        return sandings;
    }

    private List<FillPlan.Amount> amounts() {
        double secondFill = secondFill();
        return triage.stream()
                .map(one -> {
                    double second = one.line().sprayed() ? 0 : secondFill;
                    return new FillPlan.Amount(
                            one,
                            one.netMl(),
                            one.netMl() * (1 + second) / (1 - job.allowances().lossOf(one.line())));
                })
                .toList();
    }

    private double leastMl(Mix mix) {
        Densities densities = job.materials().densities();
        return job.tools().leastBatchMl(cure.share.percentByVolume(mix, densities), densities);
    }

    /** @return the second fill's share of the volume; 0 where it would waste more than it uses, and the first does it all */
    private double secondFill() {
        double second = job.allowances().secondFill();
        double ml = linesOf(false).stream().mapToDouble(this::mixedMl).sum() * second;
        return ml < WORTH_A_CUP * leastMl(Lie.VERTICAL.mix()) ? 0 : second;
    }

    private double mixedMl(int line) {
        return triage.get(line).netMl()
                / (1 - job.allowances().lossOf(job.lines().get(line)));
    }

    private List<Batch> batches() {
        List<Batch> batches = new ArrayList<>();
        double second = secondFill();
        boolean seals = job.materials().seal() == Materials.Seal.WAX;
        addFills(batches, Stage.Kind.FIRST_FILL, 1, 1, seals && second == 0);
        if (second > 0) {
            addFills(batches, Stage.Kind.SECOND_FILL, second, SECOND_FILL_PACE, seals);
        }
        int passes = passes();
        for (int pass = 1; pass <= passes; pass++) {
            addBatches(
                    batches,
                    new Stage(Stage.Kind.SPRAY, pass, passes),
                    Mix.NEAT,
                    pieces(linesOf(true), 1.0 / passes, 1),
                    seals && pass == passes);
        }
        return batches;
    }

    /** Spray passes of at most the published film each, by the thickest film asked for. */
    private int passes() {
        double thickest = usable().stream()
                .filter(one -> one.line().sprayed())
                .mapToDouble(one -> one.line().repair().thickestMm())
                .max()
                .orElse(0);
        return (int) Math.ceil(thickest / Published.SPRAY_PASS_MM.high() - 1e-9);
    }

    private void addFills(List<Batch> batches, Stage.Kind kind, double share, double pace, boolean wax) {
        byMix(share)
                .forEach((mix, lines) ->
                        addBatches(batches, new Stage(kind, 1, 1), mix, pieces(lines, share, pace), wax));
    }

    /**
     * The fills by what they are mixed from. What would not fill the smallest cup the catalyst can be measured for goes
     * into the stiffer mix's cup: stiff paste stays wherever it is put.
     */
    private Map<Mix, List<Integer>> byMix(double share) {
        Map<Mix, List<Integer>> byMix = new TreeMap<>(
                Comparator.comparingDouble(Mix::gelCoatShare).reversed().thenComparing(Mix::gelCoat));
        for (int line : linesOf(false)) {
            byMix.computeIfAbsent(job.lines().get(line).mix(), mix -> new ArrayList<>())
                    .add(line);
        }
        List<Mix> mixes = new ArrayList<>(byMix.keySet());
        for (int i = 0; i + 1 < mixes.size(); i++) {
            Mix runny = mixes.get(i);
            Mix stiff = mixes.get(i + 1);
            if (tooLittle(byMix.get(runny), runny, share)
                    || i + 2 == mixes.size() && tooLittle(byMix.get(stiff), stiff, share)) {
                byMix.get(stiff).addAll(byMix.remove(runny));
                byMix.get(stiff).sort(null);
            }
        }
        return byMix;
    }

    private boolean tooLittle(List<Integer> lines, Mix mix, double share) {
        return lines.stream().mapToDouble(this::mixedMl).sum() * share < leastMl(mix);
    }

    private List<Integer> linesOf(boolean sprayed) {
        List<Integer> lines = new ArrayList<>();
        for (int i = 0; i < triage.size(); i++) {
            if (triage.get(i).line().sprayed() == sprayed && triage.get(i).below() != Triage.Below.MEASURE_AGAIN) {
                lines.add(i);
            }
        }
        return lines;
    }

    private List<Portions.Piece> pieces(List<Integer> lines, double share, double pace) {
        List<Portions.Piece> pieces = new ArrayList<>();
        for (int i : lines) {
            RepairLine line = job.lines().get(i);
            for (int n = 0; n < line.count(); n++) {
                pieces.add(new Portions.Piece(
                        i,
                        mixedMl(i) / line.count() * share,
                        job.tools().minutes(line.repair()) * pace,
                        line.repair().divisible()));
            }
        }
        return pieces;
    }

    private void addBatches(List<Batch> batches, Stage stage, Mix mix, List<Portions.Piece> pieces, boolean wax) {
        if (pieces.isEmpty()) {
            return;
        }
        double spreading = spreadingMinutes(cure.time);
        double mostMl = stage.kind() == Stage.Kind.SPRAY
                ? MOST_SPRAY_ML / (1 + Published.STYRENE_RANGE.high() / 100)
                : MOST_FILL_ML;
        double cups = pieces.stream()
                .mapToDouble(p -> Math.max(p.minutes() / spreading, p.ml() / mostMl))
                .sum();
        if (cups > MOST_CUPS) {
            throw new IllegalArgumentException("this job would take about " + Math.round(cups) + " cups for the "
                    + stage.words() + ", at most " + Math.round(MOST_CUPS) + " can be planned at once; work it out in "
                    + "parts, or check the sizes");
        }
        for (List<Portions.Share> portion : Portions.of(pieces, spreading, mostMl)) {
            batches.add(batch(
                    batches.size() + 1,
                    stage,
                    mix,
                    portion,
                    wax && !job.materials().waxes(mix)));
        }
    }

    static double spreadingMinutes(WorkingTime time) {
        return Math.max(LEAST_SPREADING_MINUTES, time.leastMinutes() - STIRRING_MINUTES);
    }

    private Batch batch(int number, Stage stage, Mix mix, List<Portions.Share> portion, boolean wax) {
        Densities densities = job.materials().densities();
        double wanted = Portions.ml(portion);
        double ml = Math.max(wanted, leastMl(mix));
        double gelCoatMl = ml * mix.gelCoatShare();
        return new Batch(
                number,
                stage,
                mix,
                parts(portion),
                ml,
                gelCoatMl,
                gelCoatMl * densities.gelCoat(),
                (ml - gelCoatMl) * densities.paste(),
                ml - wanted,
                STIRRING_MINUTES + Portions.minutes(portion),
                CatalystDose.of(cure.share, mix, ml, densities, job.tools().catalyst()),
                wax ? Optional.of(WaxDose.of(ml, densities)) : Optional.empty());
    }

    private List<Batch.Part> parts(List<Portions.Share> portion) {
        Map<Integer, Double> pieces = new LinkedHashMap<>();
        portion.forEach(share -> pieces.merge(share.piece().line(), share.part(), Double::sum));
        return pieces.entrySet().stream()
                .map(entry -> {
                    RepairLine line = job.lines().get(entry.getKey());
                    return new Batch.Part(line.name(), entry.getValue(), line.count());
                })
                .toList();
    }
}
