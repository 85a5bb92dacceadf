package tintwright.paper;

import java.util.List;

/**
 * A page's content in reading order, the same for {@link PdfSheet} and {@link HtmlSheet}.
 *
 * @param title    the first line, large
 * @param subtitle the line below it; may be empty
 * @param blocks   the content from top to bottom
 * @param footer   small words at the bottom of every page; may be empty
 */
public record Sheet(String title, String subtitle, List<Block> blocks, String footer) {
    public Sheet {
        if (title.isBlank()) {
            throw new IllegalArgumentException("a sheet needs a title, it was empty");
        }
        blocks = List.copyOf(blocks);
    }
}
