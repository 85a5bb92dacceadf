package tintwright.command.shelf;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import tintwright.bench.ShelfBench;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.command.pieces.Doubts;
import tintwright.command.pieces.Figures;
import tintwright.files.Demo;
import tintwright.files.FileProblem;
import tintwright.files.ShelfFile;
import tintwright.shelf.Shelf;
import tintwright.shelf.StockItem;
import tintwright.shelf.knowledge.Doubt;
import tintwright.shelf.knowledge.Knowledge;

/** What is on the shelf and how well it is known. */
@CommandLine.Command(
        name = "shelf",
        sortOptions = false,
        description = "Shows what is on the shelf, how well each tint is known, what is past its shelf life or low.",
        footer = {"", "Example:", "  tintwright shelf --shelf swatches/shelf.json"})
public final class ShelfCommand extends Command {
    @Option(names = "--shelf", paramLabel = "FILE", description = "Your shelf; the demo shelf when not said.")
    private Path file;

    @Option(
            names = "--today",
            paramLabel = "DATE",
            description = "Judge shelf lives as of this day, such as" + " 2026-05-31; today when not said.")
    private String today;

    @Option(names = "--to-buy", description = "Only what is low or old: the list to buy by.")
    private boolean toBuy;

    @Override
    protected Answer answer() throws FileProblem {
        Shelf shelf = file == null ? Demo.shelf() : ShelfFile.read(file);
        LocalDate day = today == null ? LocalDate.now(ZoneId.systemDefault()) : Figures.date("--today", today);
        List<ShelfBench.Wanted> wanted = ShelfBench.toBuy(shelf, day);
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("shelf", shelf.name());
        fields.put("chips", shelf.chips().size());
        fields.put("toBuy", wanted.stream().map(ShelfCommand::fields).toList());
        if (toBuy) {
            return new Answer(
                    wanted.isEmpty()
                            ? List.of("Nothing on the shelf is low or old.")
                            : ShelfBench.listToBuy(shelf, day),
                    fields);
        }
        Knowledge knowledge = Knowledge.of(shelf);
        List<ShelfBench.Line> items = ShelfBench.look(knowledge, day);
        List<String> lines = new ArrayList<>();
        lines.add(shelf.name() + ": " + shelf.chips().size() + " chips");
        lines.add("");
        int width = items.stream()
                .mapToInt(each -> each.item().name().length())
                .max()
                .orElse(0);
        for (ShelfBench.Line item : items) {
            lines.add(line(item, width));
        }
        for (Doubt doubt : knowledge.doubts()) {
            lines.add("");
            lines.add("Look again: " + doubt.words());
        }
        fields.put("items", items.stream().map(ShelfCommand::fields).toList());
        fields.put("doubts", knowledge.doubts().stream().map(Doubts::fields).toList());
        return new Answer(lines, fields);
    }

    private static Map<String, Object> fields(ShelfBench.Wanted wanted) {
        Map<String, Object> fields = named(wanted.item());
        fields.put("why", wanted.why());
        return fields;
    }

    private static Map<String, Object> named(StockItem item) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("id", item.id());
        fields.put("name", item.name());
        fields.put("kind", item.kind().word());
        OptionalDouble left = item.stock().gramsLeft();
        fields.put("gramsLeft", left.isPresent() ? left.getAsDouble() : null);
        fields.put("bestBefore", item.bestBefore().map(LocalDate::toString).orElse(null));
        return fields;
    }

    private static String line(ShelfBench.Line item, int width) {
        StringBuilder line = new StringBuilder("  ")
                .append(item.item().name())
                .append(" ".repeat(width - item.item().name().length()))
                .append("  ");
        String kind = item.family()
                .map(family -> family.words())
                .orElse(item.item().kind().word());
        line.append(kind).append(" ".repeat(Math.max(1, 24 - kind.length())));
        OptionalDouble left = item.item().stock().gramsLeft();
        String grams = left.isPresent() ? Figures.fixed(left.getAsDouble(), 0) + " g" : "";
        line.append(" ".repeat(Math.max(0, 8 - grams.length()))).append(grams);
        if (item.deviation().isPresent()) {
            line.append("  ")
                    .append(item.known())
                    .append(" (strength within ")
                    .append(Figures.fixed(100 * Math.expm1(item.deviation().getAsDouble()), 0))
                    .append(" %, ")
                    .append(item.chips())
                    .append(item.chips() == 1 ? " chip)" : " chips)");
        }
        if (!item.warnings().isEmpty()) {
            line.append("  ! ").append(String.join("; ", item.warnings()));
        }
        return line.toString().stripTrailing();
    }

    private static Map<String, Object> fields(ShelfBench.Line item) {
        Map<String, Object> fields = named(item.item());
        fields.put("family", item.family().map(family -> family.code()).orElse(null));
        fields.put("chips", item.chips());
        fields.put(
                "strengthDeviation",
                item.deviation().isPresent() ? Figures.six(item.deviation().getAsDouble()) : null);
        fields.put("known", item.known());
        fields.put("warnings", item.warnings());
        return fields;
    }
}
