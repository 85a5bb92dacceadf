package tintwright.fill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
    /** Tape laps over at each of four corners, mm; common practice, no source. */
    private static final double TAPE_LAP_MM = 25;

    private FillPlanner() {}

    /** Share, time and where they come from. */
    private record Cure(CatalystShare share, WorkingTime time, String origin) {}

    /**
     * The plan for this job.
     *
     * @throws IllegalArgumentException when it is too cold or too hot to cure, or the product's own table does not
     *                                  reach this temperature
     */
    public static FillPlan plan(FillJob job) {
        Cure cure = cure(job);
        List<Batch> batches = batches(job, cure);
        double needed = batches.stream().mapToDouble(Batch::gelCoatGrams).sum();
        Optional<Enough> enough =
                job.supply().map(supply -> Enough.of(needed, job.allowances().spare(), supply));
        FillPlan.Finish finish = new FillPlan.Finish(sandings(job), tapeMm(job));
        List<Warning> warnings = Warnings.of(job, cure.share, cure.time, batches, finish);
        return new FillPlan(
                amounts(job),
                cure.share,
                cure.origin,
                cure.time,
                batches,
                enough,
                finish,
                CureTimer.of(cure.time, job.conditions().celsius()),
                warnings,
                List.of(Caution.values()));
    }

    private static Cure cure(FillJob job) {
        double celsius = job.conditions().celsius();
        if (job.catalyst() instanceof CatalystChoice.Own own) {
            CatalystTable.Row row = own.table().at(celsius);
            return new Cure(
                    row.share(), row.time(), "the own table of " + own.table().product());
        }
        GeneralCatalyst.checkCures(celsius);
        boolean byHand = job.catalyst() instanceof CatalystChoice.Typed;
        CatalystShare share =
                job.catalyst() instanceof CatalystChoice.Typed typed ? typed.share() : GeneralCatalyst.shareAt(celsius);
        WorkingTime time = GeneralCatalyst.timeAt(
                celsius, share.percentByVolume(Mix.NEAT, job.materials().densities()));
        return new Cure(
                share,
                time,
                byHand
                        ? "a share typed by hand"
                        : "a general table by temperature: its point at 25 °C (77 °F) and its limits are published, the rest "
                                + "is common practice");
    }

    /** Fills and sprayed areas start on different grits: the coarse ones would go through a sprayed film. */
    private static List<FillPlan.Sanding> sandings(FillJob job) {
        List<FillPlan.Sanding> sandings = new ArrayList<>();
        if (!linesOf(job, false).isEmpty()) {
            sandings.add(new FillPlan.Sanding(
                    "the fills", GritLadder.from(job.surface().orElse(GritLadder.Surface.PROUD))));
        }
        if (!linesOf(job, true).isEmpty()) {
            sandings.add(new FillPlan.Sanding(
                    "the sprayed areas",
                    GritLadder.from(
                            sandings.isEmpty()
                                    ? job.surface().orElse(GritLadder.Surface.SPRAYED)
                                    : GritLadder.Surface.SPRAYED)));
        }
        return sandings;
    }

    private static double tapeMm(FillJob job) {
        return job.lines().stream()
                .mapToDouble(line -> line.count()
                        * (2 * (line.repair().acrossMm() + line.repair().widthMm()) + 4 * TAPE_LAP_MM))
                .sum();
    }

    private static List<FillPlan.Amount> amounts(FillJob job) {
        return job.lines().stream()
                .map(line -> {
                    double second = line.sprayed() ? 0 : job.allowances().secondFill();
                    return new FillPlan.Amount(
                            line,
                            line.netMl(),
                            line.netMl() * (1 + second) / (1 - job.allowances().lossOf(line)));
                })
                .toList();
    }

    private static List<Batch> batches(FillJob job, Cure cure) {
        List<Batch> batches = new ArrayList<>();
        double second = job.allowances().secondFill();
        boolean waxed = job.materials().waxed();
        addFills(batches, job, cure, Stage.Kind.FIRST_FILL, 1, 1, !waxed && second == 0);
        if (second > 0) {
            addFills(batches, job, cure, Stage.Kind.SECOND_FILL, second, SECOND_FILL_PACE, !waxed);
        }
        int passes = passes(job);
        for (int pass = 1; pass <= passes; pass++) {
            List<Integer> sprayed = linesOf(job, true);
            addBatches(
                    batches,
                    job,
                    cure,
                    new Stage(Stage.Kind.SPRAY, pass, passes),
                    Mix.NEAT,
                    pieces(job, sprayed, 1.0 / passes, 1),
                    !waxed && pass == passes);
        }
        return batches;
    }

    /** Spray passes of at most the published film each, by the thickest film asked for. */
    private static int passes(FillJob job) {
        double thickest = job.lines().stream()
                .filter(RepairLine::sprayed)
                .mapToDouble(line -> line.repair().thickestMm())
                .max()
                .orElse(0);
        return (int) Math.ceil(thickest / Published.SPRAY_PASS_MM.high() - 1e-9);
    }

    private static void addFills(
            List<Batch> batches, FillJob job, Cure cure, Stage.Kind kind, double share, double pace, boolean wax) {
        Map<Mix, List<Integer>> byMix = new LinkedHashMap<>();
        for (int line : linesOf(job, false)) {
            byMix.computeIfAbsent(job.lines().get(line).mix(), mix -> new ArrayList<>())
                    .add(line);
        }
        byMix.forEach((mix, lines) ->
                addBatches(batches, job, cure, new Stage(kind, 1, 1), mix, pieces(job, lines, share, pace), wax));
    }

    private static List<Integer> linesOf(FillJob job, boolean sprayed) {
        List<Integer> lines = new ArrayList<>();
        for (int i = 0; i < job.lines().size(); i++) {
            if (job.lines().get(i).sprayed() == sprayed) {
                lines.add(i);
            }
        }
        return lines;
    }

    private static List<Portions.Piece> pieces(FillJob job, List<Integer> lines, double share, double pace) {
        List<Portions.Piece> pieces = new ArrayList<>();
        for (int i : lines) {
            RepairLine line = job.lines().get(i);
            double ml = line.repair().volumeMm3()
                    / 1000
                    * share
                    / (1 - job.allowances().lossOf(line));
            for (int n = 0; n < line.count(); n++) {
                pieces.add(new Portions.Piece(
                        i,
                        ml,
                        job.tools().minutes(line.repair()) * pace,
                        line.repair().divisible()));
            }
        }
        return pieces;
    }

    private static void addBatches(
            List<Batch> batches,
            FillJob job,
            Cure cure,
            Stage stage,
            Mix mix,
            List<Portions.Piece> pieces,
            boolean wax) {
        if (pieces.isEmpty()) {
            return;
        }
        double spreading = spreadingMinutes(cure.time);
        double mostMl = stage.kind() == Stage.Kind.SPRAY ? MOST_SPRAY_ML : MOST_FILL_ML;
        double cups = pieces.stream()
                .mapToDouble(p -> Math.max(p.minutes() / spreading, p.ml() / mostMl))
                .sum();
        if (cups > MOST_CUPS) {
            throw new IllegalArgumentException("this job would take about " + Math.round(cups) + " cups for the "
                    + stage.words() + ", at most " + Math.round(MOST_CUPS) + " can be planned at once; work it out in "
                    + "parts, or check the sizes");
        }
        for (List<Portions.Share> portion : Portions.of(pieces, spreading, mostMl)) {
            batches.add(batch(batches.size() + 1, job, cure, stage, mix, portion, wax));
        }
    }

    static double spreadingMinutes(WorkingTime time) {
        return Math.max(LEAST_SPREADING_MINUTES, time.leastMinutes() - STIRRING_MINUTES);
    }

    private static Batch batch(
            int number, FillJob job, Cure cure, Stage stage, Mix mix, List<Portions.Share> portion, boolean wax) {
        Densities densities = job.materials().densities();
        double wanted = Portions.ml(portion);
        double ml = Math.max(wanted, job.tools().leastBatchMl(cure.share.percentByVolume(mix, densities)));
        double gelCoatMl = ml * mix.gelCoatShare();
        return new Batch(
                number,
                stage,
                mix,
                parts(job, portion),
                ml,
                gelCoatMl,
                gelCoatMl * densities.gelCoat(),
                (ml - gelCoatMl) * densities.paste(),
                ml - wanted,
                STIRRING_MINUTES + Portions.minutes(portion),
                CatalystDose.of(cure.share, mix, ml, densities, job.tools().dropsPerMl()),
                wax ? Optional.of(WaxDose.of(ml, densities)) : Optional.empty());
    }

    private static List<Batch.Part> parts(FillJob job, List<Portions.Share> portion) {
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
