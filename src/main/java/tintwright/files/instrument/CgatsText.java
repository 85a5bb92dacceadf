package tintwright.files.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tintwright.colour.Geometry;
import tintwright.colour.Viewing;
import tintwright.files.FileProblem;
import tintwright.reading.Conditions;

/**
 * Keyword-and-table text of the graphic arts.
 *
 * <p>Source: ISO 28178 (keywords and the two tables, from memory; the document was not at hand).
 */
final class CgatsText {
    private static final Pattern TOKEN = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    private final String file;
    private final List<String> columns = new ArrayList<>();
    private final List<Table.Row> rows = new ArrayList<>();
    private String light = "";
    private String observer = "";
    private Optional<Geometry> geometry = Optional.empty();

    private CgatsText(String file) {
        this.file = file;
    }

    static CgatsText parse(String file, String text) throws FileProblem {
        CgatsText cgats = new CgatsText(file);
        String within = "";
        long line = 0;
        for (String content : text.lines().toList()) {
            line++;
            List<String> tokens = tokens(content);
            if (tokens.isEmpty()) {
                continue;
            }
            String first = tokens.get(0);
            if (first.equals("BEGIN_DATA_FORMAT") || first.equals("BEGIN_DATA")) {
                within = first;
            } else if (first.equals("END_DATA")) {
                within = first;
                break;
            } else if (first.equals("END_DATA_FORMAT")) {
                within = "";
            } else if (within.equals("BEGIN_DATA_FORMAT")) {
                cgats.columns.addAll(tokens);
            } else if (within.equals("BEGIN_DATA")) {
                cgats.row(line, tokens);
            } else {
                cgats.keyword(tokens);
            }
        }
        if (!within.equals("END_DATA")) {
            throw FileProblem.unusable(file + ": END_DATA is missing, so the file was cut short; export it again");
        }
        cgats.nameTheWavelengths();
        return cgats;
    }

    private static List<String> tokens(String line) {
        List<String> tokens = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(line);
        while (matcher.find()) {
            if (matcher.group(1) == null && matcher.group(2).startsWith("#")) {
                break;
            }
            tokens.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
        }
        return tokens;
    }

    private void row(long line, List<String> tokens) throws FileProblem {
        if (tokens.size() != columns.size()) {
            throw FileProblem.unusable(file + ", line " + line + ": expected " + columns.size()
                    + " values as in the data format, got " + tokens.size() + "; correct that line");
        }
        rows.add(new Table.Row(line, tokens));
    }

    private void keyword(List<String> tokens) {
        String rest = String.join(" ", tokens.subList(1, tokens.size()));
        String plain = rest.toUpperCase(Locale.ROOT);
        switch (tokens.get(0)) {
            case "MEASUREMENT_GEOMETRY" -> geometry = Instruments.geometry(rest);
            case "ILLUMINANT" -> light = rest;
            case "OBSERVER" -> observer = rest;
            case "WEIGHTING_FUNCTION" -> {
                String value = rest.substring(rest.indexOf(',') + 1).strip();
                if (plain.startsWith("ILLUMINANT")) {
                    light = value;
                } else if (plain.startsWith("OBSERVER")) {
                    observer = value;
                }
            }
            default -> {
                // Everything else says who and when, not what.
            }
        }
    }

    /** Some files give each wavelength as a value of its own, before its reflectance. */
    private void nameTheWavelengths() throws FileProblem {
        for (int i = 0; i + 1 < columns.size(); i++) {
            String next = columns.get(i + 1);
            if (!columns.get(i).equals("SPECTRAL_NM") || !next.matches("SPECTRAL_(PCT|DEC)") || rows.isEmpty()) {
                continue;
            }
            String nm = wavelength(rows.get(0).cells().get(i));
            for (Table.Row row : rows) {
                if (!wavelength(row.cells().get(i)).equals(nm)) {
                    throw FileProblem.unusable(file + ", line " + row.line() + ": this sample has other wavelengths"
                            + " than the first; export it on one grid");
                }
            }
            columns.set(i + 1, next + "_" + nm);
        }
    }

    private static String wavelength(String text) {
        return text.replaceFirst("\\.0*$", "");
    }

    Table table() {
        return new Table(file, columns, rows, false);
    }

    Conditions conditions(Conditions unsaid) {
        Optional<Viewing> viewing = Instruments.viewing(light, observer);
        return unsaid.butFirst(viewing, geometry);
    }
}
