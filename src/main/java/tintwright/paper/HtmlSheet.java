package tintwright.paper;

import java.util.List;

/**
 * A {@link Sheet} as one HTML page that stands alone: no script, no picture, nothing fetched. It reads on a phone
 * (tables become cards on a narrow screen), follows the reader's light or dark setting and prints plainly.
 */
public final class HtmlSheet {
    private static final String STYLE = """
            :root{color-scheme:light dark;--ink:#1b1f22;--paper:#fff;--rule:#9aa5ad;--shade:#e9eef1;--warn:#fff4d6}
            @media (prefers-color-scheme:dark){:root{--ink:#e8ecee;--paper:#15191c;--rule:#5b666e;--shade:#252c31;\
            --warn:#3a3116}}
            *{box-sizing:border-box}
            body{margin:0 auto;padding:1rem;max-width:60rem;color:var(--ink);background:var(--paper);\
            font:1rem/1.45 system-ui,sans-serif;overflow-wrap:break-word}
            h1{font-size:1.5rem;margin:0}h2{font-size:1.15rem;margin:1.2rem 0 .4rem}p{margin:.4rem 0}
            dl{display:flex;flex-wrap:wrap;gap:.1rem 1.4rem;margin:.5rem 0}dl div{display:block}
            dt{font-weight:600;display:inline}dd{display:inline;margin:0 0 0 .4rem}
            table{border-collapse:collapse;width:100%;margin:.4rem 0}
            th,td{text-align:left;vertical-align:top;padding:.25rem .5rem;border-bottom:1px solid var(--rule);\
            white-space:pre-line}
            th{background:var(--shade)}.n{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}
            .ticks{list-style:none;padding:0;margin:.4rem 0}
            .ticks label{display:flex;gap:.6rem;padding:.35rem 0;align-items:flex-start}
            .ticks b{flex:none;width:7.5rem;text-align:right}
            .ticks span{border-left:2px solid var(--rule);padding-left:.6rem}
            .ticks input{flex:none;width:1.35rem;height:1.35rem;margin:0}
            .notice{background:var(--warn);border:1px solid var(--rule);border-radius:.4rem;padding:.6rem .8rem;\
            margin:.8rem 0}
            .notice p{margin:.2rem 0}
            .patch{display:flex;gap:.8rem;align-items:center;margin:.5rem 0}
            .patch svg{flex:none;width:3rem;height:3rem;border:1px solid var(--rule)}
            footer{margin-top:1.2rem;font-size:.85rem}
            @media (max-width:40rem){table,tbody,tr,td{display:block;width:100%}thead{display:none}
            tr{border:1px solid var(--rule);border-radius:.4rem;margin:.5rem 0;padding:.3rem}
            td,td.n{display:flex;gap:.8rem;justify-content:space-between;text-align:right;border:0}
            td::before{content:attr(data-column);font-weight:600;text-align:left;flex:none;max-width:50%}
            td:empty{display:none}}
            @media print{:root{--ink:#000;--paper:#fff;--shade:#e9eef1;--warn:#fff4d6}body{font-size:9pt;padding:0}
            tr,.notice,.ticks li{break-inside:avoid}}
            """;

    private HtmlSheet() {}

    /** The whole page; save it as UTF-8. */
    public static String of(Sheet sheet) {
        StringBuilder page = new StringBuilder(8192);
        page.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
                .append(safe(sheet.title()))
                .append("</title>\n<style>\n")
                .append(STYLE)
                .append("</style>\n</head>\n<body>\n")
                .append(inside(sheet));
        return page.append("</body>\n</html>\n").toString();
    }

    /** What stands on the page, to be set into one that has a style of its own. */
    public static String inside(Sheet sheet) {
        StringBuilder page = new StringBuilder(4096);
        page.append("<h1>").append(safe(sheet.title())).append("</h1>\n");
        if (!sheet.subtitle().isBlank()) {
            page.append("<p>").append(safe(sheet.subtitle())).append("</p>\n");
        }
        for (Block block : sheet.blocks()) {
            add(page, block);
        }
        if (!sheet.footer().isBlank()) {
            page.append("<footer>").append(safe(sheet.footer())).append("</footer>\n");
        }
        return page.toString();
    }

    private static void add(StringBuilder page, Block block) {
        if (block instanceof Block.Heading heading) {
            page.append("<h2>").append(safe(heading.text())).append("</h2>\n");
        } else if (block instanceof Block.Text text) {
            page.append("<p>").append(safe(text.text()).replace("\n", "<br>")).append("</p>\n");
        } else if (block instanceof Block.Facts facts) {
            page.append("<dl>\n");
            facts.facts()
                    .forEach(fact -> page.append("<div><dt>")
                            .append(safe(fact.label()))
                            .append("</dt><dd>")
                            .append(safe(fact.value()))
                            .append("</dd></div>\n"));
            page.append("</dl>\n");
        } else if (block instanceof Block.Table table) {
            table(page, table);
        } else if (block instanceof Block.Timeline day) {
            page.append("<ul class=\"ticks\">\n");
            day.moments()
                    .forEach(moment -> page.append("<li><label><b>")
                            .append(safe(moment.when()))
                            .append("</b> <input type=\"checkbox\"> <span>")
                            .append(safe(moment.words()))
                            .append("</span></label></li>\n"));
            page.append("</ul>\n");
        } else if (block instanceof Block.Notice notice) {
            page.append("<div class=\"notice\">\n<p><strong>")
                    .append(safe(notice.title()))
                    .append("</strong></p>\n");
            notice.lines().forEach(line -> page.append("<p>").append(safe(line)).append("</p>\n"));
            page.append("</div>\n");
        } else if (block instanceof Block.Patch patch) {
            page.append("<div class=\"patch\"><svg viewBox=\"0 0 1 1\"><rect width=\"1\" height=\"1\" fill=\"rgb(")
                    .append(patch.red())
                    .append(',')
                    .append(patch.green())
                    .append(',')
                    .append(patch.blue())
                    .append(")\"/></svg><p>")
                    .append(safe(patch.label()))
                    .append("</p></div>\n");
        } else if (block instanceof Block.Code code) {
            page.append("<p>")
                    .append(safe(code.words()))
                    .append("</p>\n<p>")
                    .append(safe(code.held()))
                    .append("</p>\n");
        }
    }

    private static void table(StringBuilder page, Block.Table table) {
        page.append("<table>\n<thead><tr>");
        for (Block.Column column : table.columns()) {
            page.append("<th")
                    .append(column.number() ? " class=\"n\"" : "")
                    .append('>')
                    .append(safe(column.title()))
                    .append("</th>");
        }
        page.append("</tr></thead>\n<tbody>\n");
        for (List<String> row : table.rows()) {
            page.append("<tr>");
            for (int i = 0; i < row.size(); i++) {
                Block.Column column = table.columns().get(i);
                page.append("<td")
                        .append(column.number() ? " class=\"n\"" : "")
                        .append(" data-column=\"")
                        .append(safe(column.title()))
                        .append("\">")
                        .append(safe(row.get(i)))
                        .append("</td>");
            }
            page.append("</tr>\n");
        }
        page.append("</tbody>\n</table>\n");
    }

    /** @return words as they may stand in a page or in a quoted attribute: no mark-up of their own */
    public static String safe(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
