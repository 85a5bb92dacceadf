package tintwright.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import tintwright.fill.Allowances;
import tintwright.fill.Conditions;
import tintwright.fill.FillJob;
import tintwright.fill.FillOrder;
import tintwright.fill.GritLadder;
import tintwright.fill.Materials;
import tintwright.fill.Supply;
import tintwright.fill.Tools;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.catalyst.CatalystMeasure;
import tintwright.fill.catalyst.NotedTime;
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
    public static Map<String, Object> tree(FillOrder order) {
        FillJob job = order.job();
        Map<String, Object> tree = JsonText.head(KIND, VERSION);
        tree.put("boat", order.boat());
        tree.put("place", order.place());
        tree.put("colour", order.colour());
        Map<String, Object> recipe = new LinkedHashMap<>();
        order.recipe().forEach(part -> recipe.put(part.name(), part.grams()));
        tree.put("recipe", recipe);
        List<Object> repairs = new ArrayList<>();
        job.lines().forEach(line -> repairs.add(tree(line)));
        tree.put("repairs", repairs);
        tree.put("materials", tree(job.materials()));
        Map<String, Object> weather = new LinkedHashMap<>();
        if (job.conditions().even()) {
            weather.put("celsius", job.conditions().hullCelsius());
        } else {
            weather.put("hullCelsius", job.conditions().hullCelsius());
            weather.put("cupCelsius", job.conditions().cupCelsius());
            weather.put("airCelsius", job.conditions().airCelsius());
        }
        job.conditions().humidityPercent().ifPresent(percent -> weather.put("humidityPercent", percent));
        tree.put("conditions", weather);
        tree.put("catalyst", CatalystShape.toTree(job.catalyst()));
        tree.put(
                "allowances",
                fields(
                        "loss",
                        job.allowances().loss(),
                        "sprayLoss",
                        job.allowances().sprayLoss(),
                        "secondFill",
                        job.allowances().secondFill(),
                        "spare",
                        job.allowances().spare()));
        tree.put("tools", tree(job.tools()));
        job.supply().ifPresent(supply -> {
            Map<String, Object> there = fields("cupGrams", supply.cup(), "reserveGrams", supply.reserve());
            supply.paste().ifPresent(grams -> there.put("pasteGrams", grams));
            tree.put("supply", there);
        });
        job.surface()
                .ifPresent(surface -> tree.put(
                        "surface", surface.name().toLowerCase(Locale.ROOT).replace('_', ' ')));
        job.hull().gelCoatMm().ifPresent(mm -> tree.put("oldFilm", mm));
        job.hull().thicknessMm().ifPresent(mm -> tree.put("hullThickness", mm));
        if (!job.noted().isEmpty()) {
            tree.put("noted", CatalystShape.toTree(job.noted()));
        }
        return tree;
    }

    private static Map<String, Object> fields(Object... namesAndValues) {
        Map<String, Object> tree = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            tree.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return tree;
    }

    private static Map<String, Object> tree(RepairLine line) {
        Map<String, Object> tree = fields(
                "name",
                line.name(),
                "kind",
                RepairKind.of(line.repair()).code(),
                "count",
                line.count(),
                "lie",
                line.lie().words());
        tree.putAll(RepairKind.sizes(line.repair()));
        if (!line.found().isEmpty()) {
            tree.put("found", line.found().stream().sorted().map(Finding::code).toList());
        }
        return tree;
    }

    private static Map<String, Object> tree(Tools tools) {
        CatalystMeasure measure = tools.catalyst();
        Map<String, Object> tree = new LinkedHashMap<>();
        switch (measure.by()) {
            case SCALE -> tree.put("catalystStepGrams", measure.step());
            case SYRINGE -> tree.put("catalystStepMl", measure.step());
            case DROPPER -> tree.put("dropsPerMl", measure.dropsPerMl());
            case SPOON -> tree.put("catalystSpoonMl", measure.step());
        }
        tree.putAll(fields("scaleGrams", tools.scaleG(), "cup", tools.cupMm(), "pace", tools.pace()));
        return tree;
    }

    private static Map<String, Object> tree(Materials materials) {
        Map<String, Object> tree = fields(
                "gelCoatDensity",
                materials.densities().gelCoat(),
                "pasteDensity",
                materials.densities().paste(),
                "catalystDensity",
                materials.densities().catalyst(),
                "waxDensity",
                materials.densities().wax(),
                "waxed",
                materials.waxed(),
                "waxedPaste",
                materials.waxedPaste(),
                "seal",
                materials.seal().name().toLowerCase(Locale.ROOT));
        materials.hidingFilmMm().ifPresent(mm -> tree.put("hidingFilm", mm));
        return tree;
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
        String boat = root.text("boat", "");
        String spot = root.text("place", "");
        String colour = root.text("colour", "");
        List<FillOrder.Ingredient> recipe = recipe(root);
        Materials materials = materials(root);
        List<RepairLine> lines = new ArrayList<>();
        for (JsonPlace line : root.at("repairs").list()) {
            lines.add(line(line, materials.hidingFilmMm()));
        }
        Conditions conditions = conditions(root.at("conditions"));
        CatalystChoice catalyst = CatalystShape.from(root.optional("catalyst"));
        Allowances allowances = allowances(root);
        Tools tools = tools(root);
        Optional<Supply> supply = supply(root);
        Optional<GritLadder.Surface> surface = surface(root);
        OptionalDouble oldFilm = optionalLength(root, "oldFilm");
        OptionalDouble thickness = optionalLength(root, "hullThickness");
        List<NotedTime> noted = CatalystShape.noted(root);
        return root.make(() -> new FillOrder(
                boat,
                spot,
                colour,
                recipe,
                new FillJob(
                        lines,
                        materials,
                        conditions,
                        catalyst,
                        allowances,
                        tools,
                        supply,
                        surface,
                        new Hull(oldFilm, thickness),
                        noted)));
    }

    private static OptionalDouble optionalLength(JsonPlace place, String field) throws FileProblem {
        return place.has(field) ? OptionalDouble.of(length(place, field)) : OptionalDouble.empty();
    }

    /** Millimetres as a number, or any length as a text with its unit: "3/8 in". */
    private static double length(JsonPlace place, String field) throws FileProblem {
        JsonPlace value = place.at(field);
        if (!value.isText()) {
            return value.number();
        }
        String typed = value.text();
        return value.make(() -> Entry.lengthMm(field, typed, UnitSystem.METRIC));
    }

    private static List<FillOrder.Ingredient> recipe(JsonPlace root) throws FileProblem {
        List<FillOrder.Ingredient> recipe = new ArrayList<>();
        if (root.has("recipe")) {
            for (Map.Entry<String, JsonPlace> part : root.at("recipe").fields().entrySet()) {
                double grams = part.getValue().number();
                recipe.add(part.getValue().make(() -> new FillOrder.Ingredient(part.getKey(), grams)));
            }
        }
        return recipe;
    }

    private static RepairLine line(JsonPlace place, OptionalDouble hiding) throws FileProblem {
        JsonPlace kindPlace = place.at("kind");
        String code = kindPlace.text();
        RepairKind kind = kindPlace.make(() -> RepairKind.ofCode(code));
        Map<String, Double> sizes = new LinkedHashMap<>();
        for (Map.Entry<String, JsonPlace> field : place.fields().entrySet()) {
            String name = field.getKey();
            if (!List.of("name", "kind", "count", "lie", "found").contains(name)) {
                sizes.put(name, name.equals(RepairKind.ANGLE) ? field.getValue().number() : length(place, name));
            }
        }
        String name = place.at("name").text();
        int count = place.has("count") ? place.at("count").whole() : 1;
        JsonPlace liePlace = place.at("lie");
        String lieName = liePlace.text();
        Lie lie = liePlace.make(() -> Lie.named(lieName));
        Set<Finding> found = new LinkedHashSet<>();
        for (JsonPlace one : place.has("found") ? place.at("found").list() : List.<JsonPlace>of()) {
            String named = one.text();
            found.add(one.make(() -> Finding.named(named)));
        }
        return place.make(() -> new RepairLine(name, kind.make(sizes, hiding), lie, count, found));
    }

    private static Materials materials(JsonPlace root) throws FileProblem {
        if (!root.has("materials")) {
            return new Materials(Densities.USUAL, false, OptionalDouble.empty());
        }
        JsonPlace place = root.at("materials");
        place.only(
                "gelCoatDensity",
                "pasteDensity",
                "catalystDensity",
                "waxDensity",
                "waxed",
                "waxedPaste",
                "seal",
                "hidingFilm");
        double gelCoat = place.number("gelCoatDensity", Densities.USUAL.gelCoat());
        double paste = place.number("pasteDensity", Densities.USUAL.paste());
        double catalyst = place.number("catalystDensity", Densities.USUAL.catalyst());
        double wax = place.number("waxDensity", Densities.USUAL.wax());
        boolean waxed = place.truth("waxed");
        boolean waxedPaste = place.truth("waxedPaste");
        Materials.Seal seal = place.has("seal") ? seal(place.at("seal")) : Materials.Seal.WAX;
        OptionalDouble hiding = optionalLength(place, "hidingFilm");
        return place.make(
                () -> new Materials(new Densities(gelCoat, paste, catalyst, wax), waxed, waxedPaste, hiding, seal));
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
            double celsius = place.at("celsius").number();
            return place.make(() -> new Conditions(celsius, humidity));
        }
        double hull = temperature(place, "hullCelsius");
        double cup = temperature(place, "cupCelsius");
        double air = temperature(place, "airCelsius");
        return place.make(() -> new Conditions(hull, cup, air, humidity));
    }

    /** The temperature of this one where it is said, else that of all three. */
    private static double temperature(JsonPlace place, String field) throws FileProblem {
        return place.at(place.has(field) || !place.has("celsius") ? field : "celsius")
                .number();
    }

    private static Allowances allowances(JsonPlace root) throws FileProblem {
        if (!root.has("allowances")) {
            return Allowances.USUAL;
        }
        JsonPlace place = root.at("allowances");
        place.only("loss", "sprayLoss", "secondFill", "spare");
        double loss = place.number("loss", Allowances.USUAL.loss());
        double sprayLoss = place.number("sprayLoss", Allowances.USUAL.sprayLoss());
        double second = place.number("secondFill", Allowances.USUAL.secondFill());
        double spare = place.number("spare", Allowances.USUAL.spare());
        return place.make(() -> new Allowances(loss, sprayLoss, second, spare));
    }

    private static Tools tools(JsonPlace root) throws FileProblem {
        if (!root.has("tools")) {
            return Tools.USUAL;
        }
        JsonPlace place = root.at("tools");
        place.only("dropsPerMl", "catalystStepMl", "catalystStepGrams", "catalystSpoonMl", "scaleGrams", "cup", "pace");
        CatalystMeasure measure = measure(place);
        double scale = place.number("scaleGrams", Tools.USUAL.scaleG());
        double cup = place.has("cup") ? length(place, "cup") : Tools.USUAL.cupMm();
        double pace = place.number("pace", Tools.USUAL.pace());
        return place.make(() -> new Tools(measure, scale, cup, pace));
    }

    /** Files of before said drops and syringe both: a syringe that tells less apart than a drop goes first. */
    private static CatalystMeasure measure(JsonPlace place) throws FileProblem {
        if (place.has("catalystStepGrams")) {
            double step = place.at("catalystStepGrams").number();
            return place.make(() -> new CatalystMeasure(CatalystMeasure.By.SCALE, step));
        }
        if (place.has("catalystSpoonMl")) {
            double spoon = place.at("catalystSpoonMl").number();
            return place.make(() -> new CatalystMeasure(CatalystMeasure.By.SPOON, spoon));
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

    private static Optional<Supply> supply(JsonPlace root) throws FileProblem {
        if (!root.has("supply")) {
            return Optional.empty();
        }
        JsonPlace place = root.at("supply");
        place.only("cupGrams", "reserveGrams", "pasteGrams");
        double cup = place.at("cupGrams").number();
        double reserve = place.number("reserveGrams", 0);
        OptionalDouble paste = place.optionalNumber("pasteGrams");
        return Optional.of(place.make(() -> new Supply(cup, reserve, paste)));
    }

    private static Optional<GritLadder.Surface> surface(JsonPlace root) throws FileProblem {
        if (!root.has("surface")) {
            return Optional.empty();
        }
        JsonPlace place = root.at("surface");
        String name = place.text();
        return Optional.of(place.make(() -> GritLadder.Surface.named(name)));
    }
}
