package tintwright.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import tintwright.fill.Allowances;
import tintwright.fill.Conditions;
import tintwright.fill.FillJob;
import tintwright.fill.FillOrder;
import tintwright.fill.GritLadder;
import tintwright.fill.Materials;
import tintwright.fill.Supply;
import tintwright.fill.Tools;
import tintwright.fill.catalyst.CatalystMeasure;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Finding;
import tintwright.fill.repair.Hull;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairKind;
import tintwright.fill.repair.RepairLine;
import tintwright.units.Entry;
import tintwright.units.UnitSystem;

/** A fill job on disk. The shape is written down in docs/formats.md. */
public final class FillJobFile {
    private static final String KIND = "fill-job";
    private static final int VERSION = 1;

    private FillJobFile() {}

    /** @throws FileProblem when it is missing, malformed, of a newer version, or says what cannot be */
    public static FillOrder read(Path file) throws FileProblem {
        return from(JsonPlace.read(file));
    }

    static String text(FillOrder order) {
        return JsonText.of(tree(order));
    }

    /** @return the same as it stands in a larger file */
    public static Fields tree(FillOrder order) {
        FillJob job = order.job();
        Fields recipe = Fields.none();
        order.recipe().forEach(part -> recipe.with(part.name(), part.grams()));
        Fields tree = JsonText.head(KIND, VERSION)
                .with("boat", order.boat())
                .with("place", order.place())
                .with("colour", order.colour())
                .with("recipe", recipe)
                .each("repairs", job.lines(), FillJobFile::tree)
                .with("materials", tree(job.materials()))
                .with("conditions", tree(job.conditions()))
                .with("catalyst", CatalystShape.toTree(job.catalyst()))
                .with(
                        "allowances",
                        Fields.of("loss", job.allowances().loss())
                                .with("sprayLoss", job.allowances().sprayLoss())
                                .with("secondFill", job.allowances().secondFill())
                                .with("spare", job.allowances().spare()))
                .with("tools", tree(job.tools()))
                .with(
                        "supply",
                        job.supply()
                                .map(supply -> Fields.of("cupGrams", supply.cup())
                                        .with("reserveGrams", supply.reserve())
                                        .with("pasteGrams", supply.paste())))
                .with(
                        "surface",
                        job.surface().map(surface -> Fields.code(surface).replace('-', ' ')))
                .with("oldFilm", job.hull().gelCoatMm())
                .with("hullThickness", job.hull().thicknessMm());
        return job.noted().isEmpty() ? tree : tree.each("noted", job.noted(), CatalystShape::toTree);
    }

    private static Fields tree(Conditions conditions) {
        Fields weather = conditions.even()
                ? Fields.of("celsius", conditions.hullCelsius())
                : Fields.of("hullCelsius", conditions.hullCelsius())
                        .with("cupCelsius", conditions.cupCelsius())
                        .with("airCelsius", conditions.airCelsius());
        return weather.with("humidityPercent", conditions.humidityPercent());
    }

    private static Fields tree(RepairLine line) {
        Fields tree = Fields.of("name", line.name())
                .with("kind", RepairKind.of(line.repair()).code())
                .with("count", line.count())
                .with("lie", line.lie().words())
                .and(RepairKind.sizes(line.repair()));
        return line.found().isEmpty()
                ? tree
                : tree.each("found", line.found().stream().sorted().toList(), Finding::code);
    }

    private static Fields tree(Tools tools) {
        CatalystMeasure measure = tools.catalyst();
        Fields catalyst = switch (measure.by()) {
            case SCALE -> Fields.of("catalystStepGrams", measure.step());
            case SYRINGE -> Fields.of("catalystStepMl", measure.step());
            case DROPPER -> Fields.of("dropsPerMl", measure.dropsPerMl());
            case SPOON -> Fields.of("catalystSpoonMl", measure.step());
        };
        return catalyst.with("scaleGrams", tools.scaleG())
                .with("cup", tools.cupMm())
                .with("pace", tools.pace());
    }

    private static Fields tree(Materials materials) {
        return Fields.of("gelCoatDensity", materials.densities().gelCoat())
                .with("pasteDensity", materials.densities().paste())
                .with("catalystDensity", materials.densities().catalyst())
                .with("waxDensity", materials.densities().wax())
                .with("waxed", materials.waxed())
                .with("waxedPaste", materials.waxedPaste())
                .with("seal", materials.seal())
                .with("hidingFilm", materials.hidingFilmMm());
    }

    public static FillOrder from(JsonPlace root) throws FileProblem {
        root.head(
                KIND,
                VERSION,
                "boat",
                "place",
                "colour",
                "recipe",
                "repairs",
                "materials",
                "conditions",
                "catalyst",
                "allowances",
                "tools",
                "supply",
                "surface",
                "oldFilm",
                "hullThickness",
                "noted");
        Materials materials = root.optional("materials", FillJobFile::materials)
                .orElse(new Materials(Densities.USUAL, false, OptionalDouble.empty()));
        root.at("repairs");
        List<RepairLine> lines = root.each("repairs", line -> line(line, materials.hidingFilmMm()));
        return root.make(() -> new FillOrder(
                root.text("boat", ""),
                root.text("place", ""),
                root.text("colour", ""),
                recipe(root),
                new FillJob(
                        lines,
                        materials,
                        conditions(root.at("conditions")),
                        CatalystShape.from(root.optional("catalyst")),
                        root.optional("allowances", FillJobFile::allowances).orElse(Allowances.USUAL),
                        root.optional("tools", FillJobFile::tools).orElse(Tools.USUAL),
                        root.optional("supply", FillJobFile::supply),
                        root.optional("surface", surface -> surface.named(GritLadder.Surface::named)),
                        new Hull(optionalLength(root, "oldFilm"), optionalLength(root, "hullThickness")),
                        CatalystShape.noted(root))));
    }

    private static OptionalDouble optionalLength(JsonPlace place, String field) throws FileProblem {
        return place.has(field) ? OptionalDouble.of(length(place, field)) : OptionalDouble.empty();
    }

    /** Millimetres as a number, or any length as a text with its unit: "3/8 in". */
    private static double length(JsonPlace place, String field) throws FileProblem {
        JsonPlace value = place.at(field);
        return value.isText() ? value.named(typed -> Entry.lengthMm(field, typed, UnitSystem.METRIC)) : value.number();
    }

    private static List<FillOrder.Ingredient> recipe(JsonPlace root) throws FileProblem {
        List<FillOrder.Ingredient> recipe = new ArrayList<>();
        for (Map.Entry<String, JsonPlace> part :
                root.eachNamed("recipe", one -> one).entrySet()) {
            JsonPlace grams = part.getValue();
            recipe.add(grams.make(() -> new FillOrder.Ingredient(part.getKey(), grams.number())));
        }
        return recipe;
    }

    private static RepairLine line(JsonPlace place, OptionalDouble hiding) throws FileProblem {
        RepairKind kind = place.at("kind").named(RepairKind::ofCode);
        Map<String, Double> sizes = new LinkedHashMap<>();
        for (Map.Entry<String, JsonPlace> field : place.fields().entrySet()) {
            String name = field.getKey();
            if (!List.of("name", "kind", "count", "lie", "found").contains(name)) {
                sizes.put(name, name.equals(RepairKind.ANGLE) ? field.getValue().number() : length(place, name));
            }
        }
        return place.make(() -> new RepairLine(
                place.at("name").text(),
                kind.make(sizes, hiding),
                place.at("lie").named(Lie::named),
                place.whole("count", 1),
                new LinkedHashSet<>(place.each("found", one -> one.named(Finding::named)))));
    }

    private static Materials materials(JsonPlace place) throws FileProblem {
        place.only(
                "gelCoatDensity",
                "pasteDensity",
                "catalystDensity",
                "waxDensity",
                "waxed",
                "waxedPaste",
                "seal",
                "hidingFilm");
        return place.make(() -> new Materials(
                new Densities(
                        place.number("gelCoatDensity", Densities.USUAL.gelCoat()),
                        place.number("pasteDensity", Densities.USUAL.paste()),
                        place.number("catalystDensity", Densities.USUAL.catalyst()),
                        place.number("waxDensity", Densities.USUAL.wax())),
                place.truth("waxed"),
                place.truth("waxedPaste"),
                optionalLength(place, "hidingFilm"),
                place.optional("seal", FillJobFile::seal).orElse(Materials.Seal.WAX)));
    }

    private static Materials.Seal seal(JsonPlace place) throws FileProblem {
        String name = place.text();
        return switch (name) {
            case "wax" -> Materials.Seal.WAX;
            case "film" -> Materials.Seal.FILM;
            default -> throw place.problem("must be wax or film, was \"" + name + "\"");
        };
    }

    private static Conditions conditions(JsonPlace place) throws FileProblem {
        place.only("celsius", "hullCelsius", "cupCelsius", "airCelsius", "humidityPercent");
        OptionalDouble humidity = place.optionalNumber("humidityPercent");
        if (!place.has("hullCelsius") && !place.has("cupCelsius") && !place.has("airCelsius")) {
            return place.make(() -> new Conditions(place.at("celsius").number(), humidity));
        }
        return place.make(() -> new Conditions(
                temperature(place, "hullCelsius"),
                temperature(place, "cupCelsius"),
                temperature(place, "airCelsius"),
                humidity));
    }

    /** The temperature of this one where it is said, else that of all three. */
    private static double temperature(JsonPlace place, String field) throws FileProblem {
        return place.at(place.has(field) || !place.has("celsius") ? field : "celsius")
                .number();
    }

    private static Allowances allowances(JsonPlace place) throws FileProblem {
        place.only("loss", "sprayLoss", "secondFill", "spare");
        return place.make(() -> new Allowances(
                place.number("loss", Allowances.USUAL.loss()),
                place.number("sprayLoss", Allowances.USUAL.sprayLoss()),
                place.number("secondFill", Allowances.USUAL.secondFill()),
                place.number("spare", Allowances.USUAL.spare())));
    }

    private static Tools tools(JsonPlace place) throws FileProblem {
        place.only("dropsPerMl", "catalystStepMl", "catalystStepGrams", "catalystSpoonMl", "scaleGrams", "cup", "pace");
        return place.make(() -> new Tools(
                measure(place),
                place.number("scaleGrams", Tools.USUAL.scaleG()),
                optionalLength(place, "cup").orElse(Tools.USUAL.cupMm()),
                place.number("pace", Tools.USUAL.pace())));
    }

    /** Files of before said drops and syringe both: a syringe that tells less apart than a drop goes first. */
    private static CatalystMeasure measure(JsonPlace place) throws FileProblem {
        if (place.has("catalystStepGrams")) {
            return place.make(() -> new CatalystMeasure(
                    CatalystMeasure.By.SCALE, place.at("catalystStepGrams").number()));
        }
        if (place.has("catalystSpoonMl")) {
            return place.make(() -> new CatalystMeasure(
                    CatalystMeasure.By.SPOON, place.at("catalystSpoonMl").number()));
        }
        OptionalDouble drops = place.optionalNumber("dropsPerMl");
        OptionalDouble step = place.optionalNumber("catalystStepMl");
        if (step.isPresent() && (drops.isEmpty() || step.getAsDouble() * drops.getAsDouble() < 1 - 1e-6)) {
            return place.make(() -> new CatalystMeasure(CatalystMeasure.By.SYRINGE, step.getAsDouble()));
        }
        return drops.isPresent()
                ? place.make(() -> CatalystMeasure.dropper(drops.getAsDouble()))
                : Tools.USUAL.catalyst();
    }

    private static Supply supply(JsonPlace place) throws FileProblem {
        place.only("cupGrams", "reserveGrams", "pasteGrams");
        return place.make(() -> new Supply(
                place.at("cupGrams").number(), place.number("reserveGrams", 0), place.optionalNumber("pasteGrams")));
    }
}
