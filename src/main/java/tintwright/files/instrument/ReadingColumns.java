package tintwright.files.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tintwright.colour.Grid;
import tintwright.files.FileProblem;

/** Where in a table the readings stand, found by the headings. */
final class ReadingColumns {
    private static final Pattern WAVELENGTH =
            Pattern.compile("(?:(?:spectral|reflectance|refl|nm|pct|dec|r|%)[ _]?)*(\\d{3,4})(?:[ _]?nm)?(?:[ _]?%)?");

    private final Table table;
    private final List<Integer> spectrum = new ArrayList<>();
    private final List<Integer> nm = new ArrayList<>();

    private ReadingColumns(Table table) {
        this.table = table;
    }

    static ReadingColumns of(Table table) {
        ReadingColumns columns = new ReadingColumns(table);
        for (int i = 0; i < table.columns().size(); i++) {
            Matcher heading = WAVELENGTH.matcher(plain(table.columns().get(i)));
            if (heading.matches()) {
                columns.spectrum.add(i);
                columns.nm.add(Integer.parseInt(heading.group(1)));
            }
        }
        return columns;
    }

    private static String plain(String heading) {
        return heading.strip().toLowerCase(Locale.ROOT);
    }

    /** @return the first column that has one of these headings, tried in this order */
    OptionalInt named(String... headings) {
        for (String heading : headings) {
            for (int i = 0; i < table.columns().size(); i++) {
                if (plain(table.columns().get(i)).equals(heading)) {
                    return OptionalInt.of(i);
                }
            }
        }
        return OptionalInt.empty();
    }

    /** @return the columns of the spectrum, in the order of the file; none when there is none */
    List<Integer> spectrum() {
        return spectrum;
    }

    /** @return the wavelengths; empty when there is no spectrum */
    Optional<Grid> grid() throws FileProblem {
        if (spectrum.size() < 2) {
            return Optional.empty();
        }
        int step = nm.get(1) - nm.get(0);
        for (int i = 1; i < nm.size(); i++) {
            if (nm.get(i) - nm.get(i - 1) != step || step < 1) {
                throw FileProblem.unusable(table.file() + ": the wavelengths must rise in equal steps, but after "
                        + nm.get(i - 1) + " nm comes " + nm.get(i) + " nm; put the columns in order");
            }
        }
        try {
            return Optional.of(new Grid(nm.get(0), step, nm.size()));
        } catch (IllegalArgumentException e) {
            throw FileProblem.unusable(table.file() + ": " + e.getMessage() + "; export it on a usual grid", e);
        }
    }

    /** @return columns of L*, a*, b*; empty when not all three are there */
    Optional<int[]> lab() {
        OptionalInt l = named("l*", "l", "lab_l", "cielab_l");
        OptionalInt a = named("a*", "a", "lab_a", "cielab_a");
        OptionalInt b = named("b*", "b", "lab_b", "cielab_b");
        return l.isPresent() && a.isPresent() && b.isPresent()
                ? Optional.of(new int[] {l.getAsInt(), a.getAsInt(), b.getAsInt()})
                : Optional.empty();
    }

    /**
     * Whether reflectances are in per cent: the headings say so, or some value could not be a share.
     *
     * <p>For the whole file at once, so that a dark sample is not taken for a white one.
     */
    boolean percent() throws FileProblem {
        for (int column : spectrum) {
            String heading = plain(table.columns().get(column));
            if (heading.contains("pct") || heading.contains("%")) {
                return true;
            }
            if (heading.contains("dec")) {
                return false;
            }
        }
        for (Table.Row row : table.rows()) {
            for (int column : spectrum) {
                if (table.number(row, column) > 1.5) {
                    return true;
                }
            }
        }
        return false;
    }
}
