package tintwright.paper;

import java.util.List;

/** One piece of a {@link Sheet}. */
public sealed interface Block {

    /** A section's title. */
    record Heading(String text) implements Block {}

    /** A paragraph; broken into lines where it must. */
    record Text(String text) implements Block {}

    /** Label and value pairs, such as "Boat: ...", set compactly side by side where there is room. */
    record Facts(List<Fact> facts) implements Block {
        public Facts {
            facts = List.copyOf(facts);
        }
    }

    /** One label with its value. */
    record Fact(String label, String value) {}

    /**
     * A table. On a narrow screen each row becomes a card with the column's title before each value.
     *
     * @param columns at least one
     * @param rows    each as long as {@code columns}
     */
    record Table(List<Column> columns, List<List<String>> rows) implements Block {
        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            if (columns.isEmpty()) {
                throw new IllegalArgumentException("a table needs at least one column, it had none");
            }
            for (List<String> row : rows) {
                if (row.size() != columns.size()) {
                    throw new IllegalArgumentException(
                            "expected " + columns.size() + " cells in every row of the " + "table, got " + row.size());
                }
            }
        }
    }

    /**
     * A column of a {@link Table}.
     *
     * @param title  what stands above it
     * @param weight its share of the width against the other columns, above 0
     * @param number true to align its cells to the right
     */
    record Column(String title, double weight, boolean number) {
        public Column {
            if (!(weight > 0 && weight < 1000)) {
                throw new IllegalArgumentException("column weight must be above 0 and below 1000, was " + weight);
            }
        }
    }

    /** Things to do down a line of time, each with a box to tick. */
    record Timeline(List<Moment> moments) implements Block {
        public Timeline {
            moments = List.copyOf(moments);
        }
    }

    /**
     * One thing to do.
     *
     * @param when  when, in a few letters
     * @param words what and why
     */
    record Moment(String when, String words) {}

    /** What must not be overlooked: a framed box with a title and its lines. */
    record Notice(String title, List<String> lines) implements Block {
        public Notice {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A code for a camera with words beside it.
     *
     * @param held  what the code holds
     * @param words what stands beside it
     */
    record Code(String held, String words) implements Block {}

    /**
     * A patch of colour with its name; a screen and a printer only hint at the colour.
     *
     * @param red   0 to 255, sRGB
     * @param green 0 to 255, sRGB
     * @param blue  0 to 255, sRGB
     * @param label what stands beside it
     */
    record Patch(int red, int green, int blue, String label) implements Block {
        public Patch {
            if (((red | green | blue) & ~0xff) != 0) {
                throw new IllegalArgumentException(
                        "a patch's red, green and blue must be 0 to 255, were " + red + ", " + green + ", " + blue);
            }
        }
    }
}
