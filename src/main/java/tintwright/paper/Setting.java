package tintwright.paper;

import java.util.ArrayList;
import java.util.List;
import tintwright.paper.Mark.Box;
import tintwright.paper.Mark.Words;
import tintwright.reading.photo.sheet.CodePattern;

/**
 * Sets a sheet's blocks on pages of one paper at one size of type. What does not fit goes on the next page; a table
 * row, a tick line or a line of text is never torn apart.
 */
final class Setting {
    private static final double LEADING = 1.28;
    private static final int RULE = 0x9aa5ad;
    private static final int SHADE = 0xe9eef1;
    private static final int WARN = 0xfff4d6;
    private static final int INK = 0x1b1f22;
    private static final int PAPER = 0xffffff;
    private static final int BLACK = 0x000000;
    /** Of a code with its quiet squares, points: half a millimetre a square, which phones read; common practice, no source. */
    private static final double CODE_SIDE = 56;

    private final Paper paper;
    private final Type type;
    private final double size;
    private final List<List<Mark>> pages = new ArrayList<>();
    private List<Mark> page = new ArrayList<>();
    private double y;

    private Setting(Paper paper, Type type, double size) {
        this.paper = paper;
        this.type = type;
        this.size = size;
    }

    /** The pages at the largest type that brings the sheet onto one page, or at the smallest on several. */
    static List<List<Mark>> pages(Sheet sheet, Paper paper, Type type) {
        List<List<Mark>> pages = List.of();
        for (double size = paper.mostType(); ; size = Math.max(paper.leastType(), size - 0.25)) {
            pages = new Setting(paper, type, size).set(sheet);
            if (pages.size() == 1 || size <= paper.leastType()) {
                return pages;
            }
        }
    }

    private List<List<Mark>> set(Sheet sheet) {
        turnPage();
        paragraph(sheet.title(), size * 1.7, true, 0);
        if (!sheet.subtitle().isBlank()) {
            paragraph(sheet.subtitle(), size, false, 0);
        }
        y -= size * 0.3;
        for (Block block : sheet.blocks()) {
            set(block);
        }
        footers(sheet.footer());
        return pages;
    }

    private void set(Block block) {
        if (block instanceof Block.Heading heading) {
            // A heading stays with what follows it.
            need(size * 5);
            y -= size * 0.4;
            paragraph(heading.text(), size * 1.15, true, 0);
            y -= size * 0.1;
        } else if (block instanceof Block.Text text) {
            paragraph(text.text(), size, false, 0);
            y -= size * 0.25;
        } else if (block instanceof Block.Facts facts) {
            facts(facts.facts());
        } else if (block instanceof Block.Table table) {
            table(table);
        } else if (block instanceof Block.Timeline day) {
            timeline(day);
            y -= size * 0.25;
        } else if (block instanceof Block.Notice notice) {
            notice(notice);
        } else if (block instanceof Block.Code code) {
            code(code);
        } else if (block instanceof Block.Patch patch) {
            patch(patch);
        }
    }

    private void paragraph(String words, double size, boolean bold, double indent) {
        for (String line : type.lines(words, size, paper.usableWidth() - indent)) {
            need(size * LEADING);
            y -= size * LEADING;
            page.add(new Words(paper.margin() + indent, y + size * 0.28, size, bold, line));
        }
    }

    private void facts(List<Block.Fact> facts) {
        double x = 0;
        double gap = size * 1.6;
        boolean started = false;
        for (Block.Fact fact : facts) {
            String label = fact.label() + ": ";
            double width = type.width(label, size) * BOLD_SPREAD + type.width(fact.value(), size);
            if (started && x + width > paper.usableWidth()) {
                started = false;
            }
            if (width > paper.usableWidth()) {
                paragraph(label + fact.value(), size, false, 0);
                started = false;
                continue;
            }
            if (!started) {
                need(size * LEADING);
                y -= size * LEADING;
                x = 0;
                started = true;
            }
            double left = paper.margin() + x;
            page.add(new Words(left, y + size * 0.28, size, true, label));
            page.add(new Words(
                    left + type.width(label, size) * BOLD_SPREAD, y + size * 0.28, size, false, fact.value()));
            x += width + gap;
        }
        y -= size * 0.25;
    }

    /** The widest that bold words run against plain ones, measured over the words on the sheets. */
    private static final double BOLD_SPREAD = 1.03;

    private void table(Block.Table table) {
        double[] widths = widths(table);
        List<String> titles = table.columns().stream().map(Block.Column::title).toList();
        row(table, titles, widths, true);
        for (List<String> row : table.rows()) {
            if (y - rowHeight(row, widths, false) < bottom()) {
                turnPage();
                row(table, titles, widths, true);
            }
            row(table, row, widths, false);
        }
        y -= size * 0.4;
    }

    private double[] widths(Block.Table table) {
        double sum = table.columns().stream().mapToDouble(Block.Column::weight).sum();
        return table.columns().stream()
                .mapToDouble(c -> c.weight() / sum * paper.usableWidth())
                .toArray();
    }

    private double pad() {
        return size * 0.3;
    }

    private double room(double columnWidth, boolean title) {
        return (columnWidth - 2 * pad()) / (title ? BOLD_SPREAD : 1);
    }

    private double rowHeight(List<String> cells, double[] widths, boolean title) {
        int most = 1;
        for (int i = 0; i < widths.length; i++) {
            most = Math.max(
                    most, type.lines(cells.get(i), size, room(widths[i], title)).size());
        }
        return most * size * 1.15 + size * 0.3;
    }

    private void row(Block.Table table, List<String> cells, double[] widths, boolean title) {
        double height = rowHeight(cells, widths, title);
        need(height);
        if (title) {
            page.add(new Box(paper.margin(), y - height, paper.usableWidth(), height, SHADE, Mark.NONE));
        }
        double x = paper.margin();
        for (int i = 0; i < widths.length; i++) {
            double lineY = y - size;
            for (String line : type.lines(cells.get(i), size, room(widths[i], title))) {
                double shift = table.columns().get(i).number()
                        ? widths[i] - 2 * pad() - type.width(line, size) * (title ? BOLD_SPREAD : 1)
                        : 0;
                page.add(new Words(x + pad() + shift, lineY, size, title, line));
                lineY -= size * 1.15;
            }
            x += widths[i];
        }
        y -= height;
        page.add(new Box(paper.margin(), y, paper.usableWidth(), 0.4, RULE, Mark.NONE));
    }

    /** When on the left, then the line of time with a box to tick on it, then what to do. */
    private void timeline(Block.Timeline day) {
        double when = day.moments().stream()
                        .mapToDouble(moment -> type.width(moment.when(), size) * BOLD_SPREAD)
                        .max()
                        .orElse(0)
                + size * 0.6;
        double side = size * 0.95;
        double line = paper.margin() + when + side / 2;
        double left = when + side + size * 0.6;
        for (Block.Moment moment : day.moments()) {
            List<String> lines = type.lines(moment.words(), size, paper.usableWidth() - left);
            double height = lines.size() * size * LEADING;
            need(height);
            page.add(new Box(line - 0.4, y - height, 0.8, height, RULE, Mark.NONE));
            page.add(new Box(line - side / 2, y - size * 1.12, side, side, PAPER, INK));
            double lineY = y - size;
            double width = type.width(moment.when(), size) * BOLD_SPREAD;
            page.add(new Words(
                    paper.margin() + Math.max(0, when - size * 0.6 - width), lineY, size, true, moment.when()));
            for (String words : lines) {
                page.add(new Words(paper.margin() + left, lineY, size, false, words));
                lineY -= size * LEADING;
            }
            y -= height;
        }
    }

    private void notice(Block.Notice notice) {
        double inner = paper.usableWidth() - 2 * size * 0.7;
        List<String> title = type.lines(notice.title(), size, inner / BOLD_SPREAD);
        List<String> lines = new ArrayList<>();
        notice.lines().forEach(line -> lines.addAll(type.lines(line, size, inner)));
        double height = (title.size() + lines.size()) * size * LEADING + size * 0.7;
        // A box taller than a page cannot be framed whole: its lines flow as plain text instead.
        if (height > paper.height() - 2 * paper.margin() - footerRoom()) {
            paragraph(notice.title(), size, true, 0);
            notice.lines().forEach(line -> paragraph(line, size, false, 0));
            return;
        }
        need(height + size * 0.4);
        y -= size * 0.2;
        page.add(new Box(paper.margin(), y - height, paper.usableWidth(), height, WARN, RULE));
        double lineY = y - size * 1.25;
        for (String line : title) {
            page.add(new Words(paper.margin() + size * 0.7, lineY, size, true, line));
            lineY -= size * LEADING;
        }
        for (String line : lines) {
            page.add(new Words(paper.margin() + size * 0.7, lineY, size, false, line));
            lineY -= size * LEADING;
        }
        y -= height + size * 0.3;
    }

    /** The quiet squares around a code are the bare paper beside it. */
    private void code(Block.Code code) {
        CodePattern pattern = CodePattern.of(code.held());
        double square = CODE_SIDE / (pattern.side() + 2 * CodePattern.QUIET);
        double down = beside(CODE_SIDE, code.words());
        for (int row = 0; row < pattern.side(); row++) {
            for (int column = 0; column < pattern.side(); column++) {
                if (pattern.dark(column, row)) {
                    page.add(new Box(
                            paper.margin() + (column + CodePattern.QUIET) * square,
                            down - (row + 1 + CodePattern.QUIET) * square,
                            square,
                            square,
                            BLACK,
                            Mark.NONE));
                }
            }
        }
    }

    private void patch(Block.Patch patch) {
        double side = size * 2.4;
        double down = beside(side, patch.label());
        int rgb = patch.red() << 16 | patch.green() << 8 | patch.blue();
        page.add(new Box(paper.margin(), down - side, side, side, rgb, RULE));
    }

    /** Sets words beside a square of this side; @return the upper edge of the square. */
    private double beside(double side, String words) {
        List<String> lines = type.lines(words, size, paper.usableWidth() - side - size);
        double height = Math.max(side, lines.size() * size * LEADING) + size * 0.4;
        need(height);
        double down = y - size * 0.2;
        double lineY = y - size * 1.2;
        for (String line : lines) {
            page.add(new Words(paper.margin() + side + size, lineY, size, false, line));
            lineY -= size * LEADING;
        }
        y -= height;
        return down;
    }

    private void need(double height) {
        if (y - height < bottom() && !page.isEmpty()) {
            turnPage();
        }
    }

    private double bottom() {
        return paper.margin() + footerRoom();
    }

    private double footerRoom() {
        return size * 1.3;
    }

    private void turnPage() {
        page = new ArrayList<>();
        pages.add(page);
        y = paper.height() - paper.margin();
    }

    private void footers(String footer) {
        double small = size * 0.8;
        for (int i = 0; i < pages.size(); i++) {
            String number = pages.size() == 1 ? "" : "page " + (i + 1) + " of " + pages.size();
            double room = paper.usableWidth() - type.width(number, small) - small;
            if (!footer.isBlank()) {
                pages.get(i)
                        .add(new Words(
                                paper.margin(),
                                paper.margin(),
                                small,
                                false,
                                type.lines(footer, small, room).get(0)));
            }
            if (!number.isEmpty()) {
                double x = paper.width() - paper.margin() - type.width(number, small);
                pages.get(i).add(new Words(x, paper.margin(), small, false, number));
            }
        }
    }
}
