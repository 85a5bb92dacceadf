package tintwright.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tintwright.fill.catalyst.Basis;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.catalyst.CatalystDose;
import tintwright.fill.catalyst.CatalystShare;
import tintwright.fill.catalyst.CatalystTable;
import tintwright.fill.catalyst.NotedTime;
import tintwright.fill.catalyst.WorkingTime;
import tintwright.fill.repair.Published;

/** Catalyst in a file: what was chosen, and a dose with its basis, limit and caution always beside it. */
final class CatalystShape {
    private CatalystShape() {}

    static Map<String, Object> toTree(CatalystChoice choice) {
        Map<String, Object> tree = new LinkedHashMap<>();
        if (choice instanceof CatalystChoice.General) {
            tree.put("from", "general");
        } else if (choice instanceof CatalystChoice.Typed typed) {
            tree.put("from", "typed");
            tree.put("percent", typed.share().percent());
            guard(tree, typed.share());
        } else if (choice instanceof CatalystChoice.Own own) {
            tree.put("from", "own");
            tree.put("product", own.table().product());
            own.table().rows().stream().findFirst().ifPresent(row -> guard(tree, row.share()));
            List<Object> rows = new ArrayList<>();
            for (CatalystTable.Row row : own.table().rows()) {
                Map<String, Object> line = new LinkedHashMap<>();
                line.put("celsius", row.celsius());
                line.put("percent", row.share().percent());
                line.put(
                        "minutes", List.of(row.time().leastMinutes(), row.time().mostMinutes()));
                rows.add(line);
            }
            tree.put("rows", rows);
        }
        return tree;
    }

    /** What no catalyst figure may stand without. */
    private static void guard(Map<String, Object> tree, CatalystShare share) {
        tree.put("basis", share.basis().name().toLowerCase(Locale.ROOT));
        tree.put("limitPercent", List.of(Published.CATALYST_RANGE.low(), Published.CATALYST_RANGE.high()));
        tree.put("caution", CatalystShare.CAUTION);
    }

    static Map<String, Object> toTree(CatalystShare share) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("percent", share.percent());
        guard(tree, share);
        return tree;
    }

    static Map<String, Object> toTree(CatalystDose dose) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("grams", dose.grams());
        tree.put("ml", dose.ml());
        tree.put("measuredWith", dose.measure().words());
        dose.said().ifPresent(figure -> tree.put("measured", figure));
        tree.putAll(toTree(dose.share()));
        return tree;
    }

    /** The limit and the caution are written for whoever reads the file, and need not be there to read it. */
    static CatalystChoice from(Optional<JsonPlace> given) throws FileProblem {
        if (given.isEmpty()) {
            return new CatalystChoice.General();
        }
        JsonPlace place = given.get();
        String from = place.at("from").text();
        switch (from) {
            case "general" -> {
                place.only("from");
                return new CatalystChoice.General();
            }
            case "typed" -> {
                place.only("from", "percent", "basis", "limitPercent", "caution");
                double percent = place.at("percent").number();
                Basis basis = basis(place);
                return new CatalystChoice.Typed(place.make(() -> new CatalystShare(percent, basis)));
            }
            case "own" -> {
                place.only("from", "product", "rows", "basis", "limitPercent", "caution");
                return new CatalystChoice.Own(table(place));
            }
            default -> throw place.at("from").problem("must be general, typed or own, was \"" + from + "\"");
        }
    }

    private static CatalystTable table(JsonPlace place) throws FileProblem {
        String product = place.at("product").text();
        if (place.at("rows").list().isEmpty()) {
            return place.make(() -> new CatalystTable(product, List.of()));
        }
        Basis basis = basis(place);
        List<CatalystTable.Row> rows = new ArrayList<>();
        for (JsonPlace row : place.at("rows").list()) {
            row.only("celsius", "percent", "minutes");
            double celsius = row.at("celsius").number();
            double percent = row.at("percent").number();
            double[] minutes = row.at("minutes").numbers();
            if (minutes.length != 2) {
                throw row.at("minutes").problem("must be the shortest and the longest time, such as [12, 18]");
            }
            rows.add(row.make(() -> new CatalystTable.Row(
                    celsius, new CatalystShare(percent, basis), new WorkingTime(minutes[0], minutes[1]))));
        }
        return place.make(() -> new CatalystTable(product, rows));
    }

    static List<Object> toTree(List<NotedTime> noted) {
        List<Object> list = new ArrayList<>();
        for (NotedTime one : noted) {
            Map<String, Object> tree = new LinkedHashMap<>();
            tree.put("celsius", one.celsius());
            tree.put("percent", one.share().percent());
            guard(tree, one.share());
            one.gelMinutes().ifPresent(minutes -> tree.put("gelMinutes", minutes));
            one.tapeOffMinutes().ifPresent(minutes -> tree.put("tapeOffMinutes", minutes));
            list.add(tree);
        }
        return list;
    }

    /** Times a shop noted, under {@code noted}; none when it is not there. */
    static List<NotedTime> noted(JsonPlace root) throws FileProblem {
        List<NotedTime> noted = new ArrayList<>();
        for (JsonPlace place : root.has("noted") ? root.at("noted").list() : List.<JsonPlace>of()) {
            place.only("celsius", "percent", "basis", "limitPercent", "caution", "gelMinutes", "tapeOffMinutes");
            double celsius = place.at("celsius").number();
            double percent = place.at("percent").number();
            Basis basis = basis(place);
            OptionalDouble gel = place.optionalNumber("gelMinutes");
            OptionalDouble tapeOff = place.optionalNumber("tapeOffMinutes");
            noted.add(place.make(() -> new NotedTime(celsius, new CatalystShare(percent, basis), gel, tapeOff)));
        }
        return noted;
    }

    private static Basis basis(JsonPlace place) throws FileProblem {
        JsonPlace named = place.at("basis");
        String name = named.text();
        return named.make(() -> Basis.named(name));
    }
}
