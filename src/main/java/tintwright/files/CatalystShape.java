package tintwright.files;

import java.util.List;
import java.util.Optional;
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

    static Fields toTree(CatalystChoice choice) {
        if (choice instanceof CatalystChoice.Typed typed) {
            return Fields.of("from", "typed").and(toTree(typed.share()));
        }
        if (choice instanceof CatalystChoice.Own own) {
            List<CatalystTable.Row> rows = own.table().rows();
            return Fields.of("from", "own")
                    .with("product", own.table().product())
                    .and(rows.isEmpty() ? Fields.none() : guard(rows.get(0).share()))
                    .each(
                            "rows",
                            rows,
                            row -> Fields.of("celsius", row.celsius())
                                    .with("percent", row.share().percent())
                                    .with(
                                            "minutes",
                                            List.of(
                                                    row.time().leastMinutes(),
                                                    row.time().mostMinutes())));
        }
        return Fields.of("from", "general");
    }

    /** What no catalyst figure may stand without. */
    private static Fields guard(CatalystShare share) {
        return Fields.of("basis", share.basis())
                .with("limitPercent", List.of(Published.CATALYST_RANGE.low(), Published.CATALYST_RANGE.high()))
                .with("caution", CatalystShare.CAUTION);
    }

    static Fields toTree(CatalystShare share) {
        return Fields.of("percent", share.percent()).and(guard(share));
    }

    static Fields toTree(CatalystDose dose) {
        return Fields.of("grams", dose.grams())
                .with("ml", dose.ml())
                .with("measuredWith", dose.measure().words())
                .with("measured", dose.said())
                .and(toTree(dose.share()));
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
                return new CatalystChoice.Typed(share(place, basis(place)));
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
        List<CatalystTable.Row> rows = place.each("rows", row -> {
            row.only("celsius", "percent", "minutes");
            double[] minutes = row.at("minutes").numbers();
            if (minutes.length != 2) {
                throw row.at("minutes").problem("must be the shortest and the longest time, such as [12, 18]");
            }
            return row.make(() -> new CatalystTable.Row(
                    row.at("celsius").number(), share(row, basis), new WorkingTime(minutes[0], minutes[1])));
        });
        return place.make(() -> new CatalystTable(product, rows));
    }

    static Fields toTree(NotedTime noted) {
        return Fields.of("celsius", noted.celsius())
                .and(toTree(noted.share()))
                .with("gelMinutes", noted.gelMinutes())
                .with("tapeOffMinutes", noted.tapeOffMinutes());
    }

    /** Times a shop noted, under {@code noted}; none when it is not there. */
    static List<NotedTime> noted(JsonPlace root) throws FileProblem {
        return root.each("noted", place -> {
            place.only("celsius", "percent", "basis", "limitPercent", "caution", "gelMinutes", "tapeOffMinutes");
            return place.make(() -> new NotedTime(
                    place.at("celsius").number(),
                    share(place, basis(place)),
                    place.optionalNumber("gelMinutes"),
                    place.optionalNumber("tapeOffMinutes")));
        });
    }

    private static CatalystShare share(JsonPlace place, Basis basis) throws FileProblem {
        return place.make(() -> new CatalystShare(place.at("percent").number(), basis));
    }

    private static Basis basis(JsonPlace place) throws FileProblem {
        return place.at("basis").named(Basis::named);
    }
}
