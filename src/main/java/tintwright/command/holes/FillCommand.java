package tintwright.command.holes;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import tintwright.bench.FillColour;
import tintwright.bench.PlanFill;
import tintwright.bench.top.CureClock;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.command.pieces.Figures;
import tintwright.files.Demo;
import tintwright.files.FileProblem;
import tintwright.files.FillJobFile;
import tintwright.files.FillPlanShape;
import tintwright.files.ShelfFile;
import tintwright.fill.Allowances;
import tintwright.fill.Conditions;
import tintwright.fill.FillJob;
import tintwright.fill.FillOrder;
import tintwright.fill.GritLadder;
import tintwright.fill.Materials;
import tintwright.fill.Supply;
import tintwright.fill.Tools;
import tintwright.fill.catalyst.Basis;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.catalyst.CatalystMeasure;
import tintwright.fill.catalyst.CatalystShare;
import tintwright.fill.catalyst.NotedTime;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Hull;
import tintwright.fill.repair.RepairLine;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;
import tintwright.shelf.knowledge.Knowledge;
import tintwright.units.Entry;
import tintwright.units.UnitSystem;

/** {@code fill}: from holes to grams, catalyst, batches, times and grits. */
@CommandLine.Command(
        name = "fill",
        description = {
            "From holes to grams: gel coat, paste, wax and catalyst cup by cup, " + "working time, grits, cautions.",
            "The product's data sheet and your local rules come first."
        },
        footer = {
            "",
            "A repair: kind:size=...,size=... with count=, lie= (facing-up, vertical, overhead, "
                    + "deep-overhead), name= and found= (cracked, soft, core, structure, stained, non-skid; joined by +).",
            "Kinds: countersunk hole,top,depth and countersink or angle; hole hole,depth; "
                    + "gouge, scratch, worn length,width,depth; spray length,width. plug= for through holes.",
            "Sizes without a unit are millimetres, or inches with --units us; 12mil, 3/8in and 4mm always work.",
            "",
            "Examples:",
            "  tintwright fill --demo",
            "  tintwright fill --celsius 20 --repair countersunk:hole=5,top=10,angle=90,depth=8,plug=3,count=12,"
                    + "lie=facing-up",
            "  tintwright fill --celsius 20 --recipe plain-white=97,soot-black=0.5 --base-hides 0.5mm "
                    + "--repair gouge:length=60,width=12,depth=3,lie=vertical",
            "  tintwright fill --job job.json --pdf sheet.pdf --html sheet.html --units us --paper letter"
        })
public final class FillCommand extends Command {
    /** What may be said beside a whole job: how it is shown, nothing about the job itself. */
    private static final Set<String> BESIDE_A_FILE =
            Set.of("--job", "--demo", "--units", "--pdf", "--html", "--paper", "--catalysed", "--json");

    @Option(names = "--job", paramLabel = "FILE", description = "The whole job from a file (docs/formats.md).")
    private Path job;

    @Option(names = "--demo", description = "The worked job of the invented boat.")
    private boolean demo;

    @Option(names = "--repair", paramLabel = "REPAIR", description = "One line of repairs; may be given many times.")
    private List<String> repairs = new ArrayList<>();

    @Option(
            names = "--celsius",
            paramLabel = "T",
            description = "Hull, cup and air, where they are alike; 20C or 68F too.")
    private String celsius;

    @Option(
            names = "--hull-celsius",
            paramLabel = "T",
            description = "Hull, where it is warmer or colder: sets the cure.")
    private String hullCelsius;

    @Option(
            names = "--cup-celsius",
            paramLabel = "T",
            description = "Gel coat and cup, where they are warmer or colder: sets the working time.")
    private String cupCelsius;

    @Option(names = "--humidity", paramLabel = "PERCENT", description = "Relative humidity.")
    private Double humidity;

    @Option(names = "--waxed", description = "The gel coat holds wax already.")
    private boolean waxed;

    @Option(names = "--waxed-paste", description = "The gel paste holds wax: each fill is a last coat.")
    private boolean waxedPaste;

    @Option(names = "--film-over", description = "Film or PVA over the last coat instead of wax in it.")
    private boolean filmOver;

    @Option(names = "--hiding", paramLabel = "FILM", description = "Film of neat gel coat that hides: 0.4mm, 16mil.")
    private String hiding;

    @Option(
            names = "--recipe",
            paramLabel = "ID=G,...",
            split = ",",
            description = "What is in the cup, grams by id on the shelf: density, wax and hiding come from there.")
    private Map<String, Double> recipe = new LinkedHashMap<>();

    @Option(
            names = "--shelf",
            paramLabel = "FILE",
            description = "Your shelf, for --recipe; the demo shelf when not said.")
    private Path shelf;

    @Option(
            names = "--base-hides",
            paramLabel = "FILM",
            description = "Film at which the bare base hides, for --recipe: the optics do the rest.")
    private String baseHides;

    @Option(names = "--catalysed", paramLabel = "HH:MM", description = "When the catalyst went in: shows times of day.")
    private String catalysed;

    @Option(
            names = "--catalyst",
            paramLabel = "PERCENT",
            description =
                    "Your own share, with --basis; limit 1.2 to 3 %%; goggles and gloves, never with accelerator or "
                            + "acetone. Left out: a general table by temperature.")
    private Double catalyst;

    @Option(names = "--basis", paramLabel = "BASIS", description = "What --catalyst is a share of: mass or volume.")
    private String basis;

    @Option(
            names = "--catalyst-with",
            paramLabel = "TOOL=STEP",
            description =
                    "What the catalyst is measured with: scale=0.01 (g), syringe=0.02 (ml), spoon=1.25 (ml it holds, "
                            + "level), or dropper=24, the drops of your own dropper in a ml, counted once.")
    private String catalystWith;

    @Option(
            names = "--noted",
            paramLabel = "T,PERCENT,GEL[,TAPE]",
            description =
                    "A time of your shop: temperature, catalyst by volume, minutes to gel and to tape off; may be "
                            + "given many times. Limit 1.2 to 3 %%; goggles and gloves, never with accelerator or acetone.")
    private List<String> noted = new ArrayList<>();

    @Option(names = "--hull-thickness", paramLabel = "MM", description = "Gel coat and laminate there together.")
    private String hullThickness;

    @Option(names = "--gelcoat-density", paramLabel = "G/ML", description = "From the data sheet; 1.3 when left out.")
    private Double gelCoatDensity;

    @Option(names = "--paste-density", paramLabel = "G/ML", description = "From the data sheet; 1.1 when left out.")
    private Double pasteDensity;

    @Option(names = "--cup", paramLabel = "GRAMS", description = "Coloured gel coat in the cup: is it enough?")
    private String cup;

    @Option(names = "--reserve", paramLabel = "GRAMS", description = "White in reserve, with --cup.")
    private String reserve;

    @Option(names = "--old-film", paramLabel = "FILM", description = "Thickness of the old gel coat around.")
    private String oldFilm;

    @Option(
            names = "--surface",
            paramLabel = "SURFACE",
            description = "Before sanding: proud, nearly-level, sprayed, scratched, dull.")
    private String surface;

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            defaultValue = "metric",
            description = "What is typed without a unit and what is shown: metric or us.")
    private String units;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Write the job sheet to print.")
    private Path pdf;

    @Option(names = "--html", paramLabel = "FILE", description = "Write the job sheet for a phone.")
    private Path html;

    @Option(names = "--paper", paramLabel = "PAPER", defaultValue = "a4", description = "For --pdf: a4 or letter.")
    private String paper;

    /** Repairs that cannot be, each with its sentence: the rest is planned all the same. */
    private final List<String> leftOut = new ArrayList<>();

    @Override
    protected Answer answer() throws FileProblem {
        UnitSystem system = UnitSystem.named(units);
        PlanFill.PaperSize size = PlanFill.PaperSize.named(paper);
        PlanFill fill = PlanFill.of(order(system), Optional.empty(), LocalDate.now(ZoneId.systemDefault()));
        List<String> lines = new ArrayList<>();
        leftOut.forEach(why -> lines.add("Left out of the plan: " + why));
        lines.addAll(fill.lines(system));
        lines.addAll(List.of(
                "", "Mix this much colour: " + fill.order().job().tools().weighed(fill.gramsForTheCup(), system)));
        lines.addAll(timesOfDay(fill));
        Map<String, Object> fields = FillPlanShape.toTree(fill.plan(), system);
        fields.put("gramsForTheCup", fill.gramsForTheCup());
        fields.put("leftOut", List.copyOf(leftOut));
        if (pdf != null) {
            fill.writePdf(pdf, size, system);
            lines.add("Written: " + pdf);
            fields.put("pdf", pdf.toString());
        }
        if (html != null) {
            fill.writeHtml(html, system);
            lines.add("Written: " + html);
            fields.put("html", html.toString());
        }
        return new Answer(lines, fields);
    }

    private FillOrder order(UnitSystem system) throws FileProblem {
        int ways = (job != null ? 1 : 0) + (demo ? 1 : 0) + (repairs.isEmpty() ? 0 : 1);
        if (ways != 1) {
            throw new IllegalArgumentException("give the repairs in one way: --job FILE, --repair ... or --demo");
        }
        if (job != null || demo) {
            if (!BESIDE_A_FILE.containsAll(said())) {
                throw new IllegalArgumentException("with --job and --demo everything about the job stands in its file; "
                        + "change it there, or give the repairs with --repair");
            }
            return demo ? Demo.fillOrder() : FillJobFile.read(job);
        }
        Optional<FillColour> colour = colour();
        return new FillOrder("", "", "", colour.map(FillColour::recipe).orElse(List.of()), typed(system, colour));
    }

    /** @return the options that were typed */
    private Set<String> said() {
        return spec().commandLine().getParseResult().matchedOptionsSet().stream()
                .map(OptionSpec::longestName)
                .collect(Collectors.toSet());
    }

    private Optional<FillColour> colour() throws FileProblem {
        if (recipe.isEmpty()) {
            if (shelf != null || baseHides != null) {
                throw new IllegalArgumentException("--shelf and --base-hides need --recipe, what is in the cup");
            }
            return Optional.empty();
        }
        if (hiding != null || gelCoatDensity != null || waxed) {
            throw new IllegalArgumentException("with --recipe density, wax and hiding come from the shelf; leave out "
                    + "--hiding, --gelcoat-density and --waxed");
        }
        Shelf stands = shelf == null ? Demo.shelf() : ShelfFile.read(shelf);
        return Optional.of(FillColour.of(Knowledge.of(stands), Parts.of(recipe)));
    }

    private List<String> timesOfDay(PlanFill fill) {
        if (catalysed == null) {
            return List.of();
        }
        LocalTime start;
        try {
            start = LocalTime.parse(catalysed);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    "--catalysed must be a time of day such as 14:05, was \"" + catalysed + "\"", e);
        }
        CureClock clock = new CureClock(
                start.atDate(LocalDate.EPOCH).toInstant(ZoneOffset.UTC),
                fill.plan().timers());
        List<String> lines = new ArrayList<>(List.of("", "Catalysed at " + start + ":"));
        clock.timers()
                .forEach(timer -> lines.add("  " + timer.cue() + ": " + time(clock.opens(timer)) + " to "
                        + time(clock.closes(timer)) + " (" + timer.test() + ")"));
        return lines;
    }

    private static String time(Instant moment) {
        LocalDateTime time = LocalDateTime.ofInstant(moment, ZoneOffset.UTC);
        long days = time.toLocalDate().toEpochDay();
        return time.toLocalTime().truncatedTo(ChronoUnit.MINUTES)
                + (days == 0 ? "" : days == 1 ? " next day" : " after " + days + " days");
    }

    private FillJob typed(UnitSystem system, Optional<FillColour> colour) {
        if (celsius == null) {
            throw new IllegalArgumentException(
                    "say how warm it is with --celsius: catalyst and working " + "time hang on it");
        }
        Materials materials = materials(system, colour);
        List<RepairLine> lines = new ArrayList<>();
        for (int number = 1; number <= repairs.size(); number++) {
            try {
                lines.add(RepairWords.parse(repairs.get(number - 1), number, system, materials.hidingFilmMm()));
            } catch (IllegalArgumentException e) {
                // Said by its number; a sentence that names the repair already does so.
                String why = e.getMessage();
                leftOut.add(why.startsWith("repair " + number) ? why : "repair " + number + ": " + why);
            }
        }
        if (lines.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", leftOut));
        }
        return new FillJob(
                lines,
                materials,
                conditions(),
                share(),
                Allowances.USUAL,
                tools(),
                supply(system),
                surface == null ? Optional.empty() : Optional.of(GritLadder.Surface.named(surface)),
                new Hull(
                        film("--old-film", oldFilm, system),
                        hullThickness == null
                                ? OptionalDouble.empty()
                                : OptionalDouble.of(Entry.lengthMm("--hull-thickness", hullThickness, system))),
                noted.stream().map(FillCommand::noted).toList());
    }

    private Conditions conditions() {
        double all = Entry.celsius("--celsius", celsius, UnitSystem.METRIC);
        return new Conditions(
                hullCelsius == null ? all : Entry.celsius("--hull-celsius", hullCelsius, UnitSystem.METRIC),
                cupCelsius == null ? all : Entry.celsius("--cup-celsius", cupCelsius, UnitSystem.METRIC),
                all,
                humidity == null ? OptionalDouble.empty() : OptionalDouble.of(humidity));
    }

    private static NotedTime noted(String typed) {
        String[] parts = typed.split(",");
        if (parts.length < 3 || parts.length > 4) {
            throw new IllegalArgumentException(
                    "--noted is temperature, percent by volume, minutes to gel and, if seen, "
                            + "minutes to tape off, such as 24C,1.8,13,25, was \"" + typed + "\"");
        }
        return new NotedTime(
                Entry.celsius("--noted", parts[0], UnitSystem.METRIC),
                new CatalystShare(Figures.parse(parts[1].trim()), Basis.VOLUME),
                OptionalDouble.of(Figures.parse(parts[2].trim())),
                parts.length == 3 ? OptionalDouble.empty() : OptionalDouble.of(Figures.parse(parts[3].trim())));
    }

    private Materials materials(UnitSystem system, Optional<FillColour> colour) {
        Materials known = colour.isPresent()
                ? colour.get().materials(film("--base-hides", baseHides, system))
                : new Materials(
                        new Densities(
                                gelCoatDensity == null ? Densities.USUAL.gelCoat() : gelCoatDensity,
                                Densities.USUAL.paste(),
                                Densities.USUAL.catalyst(),
                                Densities.USUAL.wax()),
                        waxed,
                        film("--hiding", hiding, system));
        Densities densities = known.densities();
        return new Materials(
                pasteDensity == null
                        ? densities
                        : new Densities(densities.gelCoat(), pasteDensity, densities.catalyst(), densities.wax()),
                known.waxed(),
                known.waxedPaste() || waxedPaste,
                known.hidingFilmMm(),
                filmOver ? Materials.Seal.FILM : Materials.Seal.WAX);
    }

    private Tools tools() {
        if (catalystWith == null) {
            return Tools.USUAL;
        }
        String[] parts = catalystWith.split("=");
        if (parts.length != 2) {
            throw new IllegalArgumentException(
                    "--catalyst-with is a tool and its step, such as scale=0.01, was \"" + catalystWith + "\"");
        }
        CatalystMeasure.By by = CatalystMeasure.By.named(parts[0]);
        double step = Figures.parse(parts[1].trim());
        return Tools.USUAL.with(
                by == CatalystMeasure.By.DROPPER ? CatalystMeasure.dropper(step) : new CatalystMeasure(by, step));
    }

    private static OptionalDouble film(String option, String typed, UnitSystem system) {
        return typed == null ? OptionalDouble.empty() : OptionalDouble.of(Entry.filmMm(option, typed, system));
    }

    private CatalystChoice share() {
        if (catalyst == null && basis == null) {
            return new CatalystChoice.General();
        }
        if (catalyst == null || basis == null) {
            throw new IllegalArgumentException(
                    "--catalyst and --basis go together: a percentage without mass or " + "volume can be a fifth off");
        }
        return new CatalystChoice.Typed(new CatalystShare(catalyst, Basis.named(basis)));
    }

    private Optional<Supply> supply(UnitSystem system) {
        if (cup == null && reserve == null) {
            return Optional.empty();
        }
        if (cup == null) {
            throw new IllegalArgumentException("--reserve needs --cup beside it");
        }
        return Optional.of(new Supply(
                Entry.grams("--cup", cup, system),
                reserve == null ? 0 : Entry.grams("--reserve", reserve, system),
                OptionalDouble.empty()));
    }
}
