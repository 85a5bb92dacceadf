package tintwright.paper;

import java.util.ArrayList;
import java.util.List;

/** A {@link Sheet} as plain lines for a terminal. */
public final class TextSheet {
    private TextSheet() {}

    /** @return the lines from top to bottom; no trailing blanks */
    public static List<String> of(Sheet sheet) {
        List<String> lines = new ArrayList<>();
        lines.add(sheet.title());
        if (!sheet.subtitle().isBlank()) {
            lines.add(sheet.subtitle());
        }
        for (Block block : sheet.blocks()) {
            add(lines, block);
        }
        if (!sheet.footer().isBlank()) {
            lines.add("");
            lines.add(sheet.footer());
        }
        return lines;
    }

    private static void add(List<String> lines, Block block) {
        if (block instanceof Block.Heading heading) {
            lines.add("");
            lines.add(heading.text());
        } else if (block instanceof Block.Text text) {
            lines.addAll(text.text().lines().toList());
        } else if (block instanceof Block.Facts facts) {
            facts.facts().forEach(fact -> lines.add(fact.label() + ": " + fact.value()));
        } else if (block instanceof Block.Timeline day) {
            day.moments().forEach(moment -> lines.add("[ ] " + moment.when() + ": " + moment.words()));
        } else if (block instanceof Block.Notice notice) {
            lines.add("");
            lines.add(notice.title());
            notice.lines().forEach(line -> lines.add("  ! " + line));
        } else if (block instanceof Block.Patch patch) {
            lines.add(patch.label());
        } else if (block instanceof Block.Code code) {
            lines.add(code.words());
        } else if (block instanceof Block.Table table) {
            // A terminal is narrow: each row is its first cell, and the others named under it.
            for (List<String> row : table.rows()) {
                lines.add("  " + row.get(0));
                for (int i = 1; i < row.size(); i++) {
                    if (!row.get(i).isBlank()) {
                        lines.add("      " + table.columns().get(i).title() + ": "
                                + row.get(i).replace("\n", "; "));
                    }
                }
            }
        }
    }
}
