package tintwright.command.shelf;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import tintwright.bench.ShelfBench;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.command.pieces.Doubts;
import tintwright.command.pieces.Figures;
import tintwright.files.Demo;
import tintwright.files.Fields;
import tintwright.files.FileProblem;
import tintwright.files.ShelfFile;
import tintwright.shelf.PigmentFamily;
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
        Fields fields =
                Fields.of("shelf", shelf.name()).with("chips", shelf.chips().size());
        fields.each("toBuy", wanted, ShelfCommand::fields);
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
        return new Answer(
                lines,
                fields.each("items", items, ShelfCommand::fields).each("doubts", knowledge.doubts(), Doubts::fields));
    }

    private static Fields fields(ShelfBench.Wanted wanted) {
        return named(wanted.item()).with("why", wanted.why());
    }

    private static Fields named(StockItem item) {
        return Fields.of("id", item.id())
                .with("name", item.name())
                .with("kind", item.kind().word())
                .orNull("gramsLeft", item.stock().gramsLeft())
                .orNull("bestBefore", item.bestBefore());
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

    private static Fields fields(ShelfBench.Line item) {
        return named(item.item())
                .orNull("family", item.family().map(PigmentFamily::code))
                .with("chips", item.chips())
                .orNull("strengthDeviation", item.deviation())
                .with("known", item.known())
                .with("warnings", item.warnings());
    }
}
