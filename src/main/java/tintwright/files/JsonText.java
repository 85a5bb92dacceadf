package tintwright.files;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * JSON that a person can read and that is the same every time: fields in the order given, two spaces a level,
 * and whatever fits on one line stays on one line, like the numbers of a spectrum.
 */
public final class JsonText {
    /** Longest line of a list or an object that holds others. */
    private static final int WIDTH = 100;

    private JsonText() {}

    /**
     * @param tree texts, finite numbers, truth values, nulls, and maps and lists of these
     * @return the JSON, ending with a line break
     * @throws IllegalArgumentException for a number that is not finite, or for any other kind of object
     */
    public static String of(Object tree) {
        StringBuilder out = new StringBuilder();
        write(tree, "", out);
        return out.append('\n').toString();
    }

    /** @return the beginning of every file of ours, to be gone on with: its version, then its kind */
    public static Fields head(String kind, int version) {
        return Fields.of("formatVersion", version).with("kind", kind);
    }

    private static void write(Object value, String indent, StringBuilder out) {
        boolean map = value instanceof Map<?, ?>;
        List<String> names = new ArrayList<>();
        List<Object> children = new ArrayList<>();
        if (value instanceof Map<?, ?> fields) {
            fields.forEach((name, child) -> {
                names.add(quoted(String.valueOf(name)) + ": ");
                children.add(child);
            });
        } else if (value instanceof Iterable<?> list) {
            list.forEach(children::add);
        } else if (value instanceof double[] numbers) {
            for (double number : numbers) {
                children.add(number);
            }
        } else {
            out.append(leaf(value));
            return;
        }
        String flat = flat(map, names, children, indent.length());
        if (flat != null) {
            out.append(flat);
            return;
        }
        String deeper = indent + "  ";
        String gap = "\n" + deeper;
        out.append(map ? '{' : '[');
        for (int i = 0; i < children.size(); i++) {
            out.append(i == 0 ? gap : "," + gap).append(map ? names.get(i) : "");
            write(children.get(i), deeper, out);
        }
        out.append('\n').append(indent).append(map ? '}' : ']');
    }

    /** @return everything on one line, or null when that is too long; numbers alone are never broken up */
    private static String flat(boolean map, List<String> names, List<Object> children, int indent) {
        boolean numbers = !map && children.stream().allMatch(Number.class::isInstance);
        StringBuilder line = new StringBuilder(map ? "{" : "[");
        for (int i = 0; i < children.size(); i++) {
            line.append(i == 0 ? "" : ", ").append(map ? names.get(i) : "");
            StringBuilder child = new StringBuilder();
            write(children.get(i), "", child);
            line.append(child);
            if (!numbers && (line.length() + indent > WIDTH || child.indexOf("\n") >= 0)) {
                return null;
            }
        }
        return line.append(map ? '}' : ']').toString();
    }

    private static String leaf(Object value) {
        if (value == null || value instanceof Boolean) {
            return String.valueOf(value);
        }
        if (value instanceof Double number) {
            if (!Double.isFinite(number)) {
                throw new IllegalArgumentException("JSON has no number for " + number);
            }
            BigDecimal plain = BigDecimal.valueOf(number).stripTrailingZeros();
            return plain.signum() == 0 ? "0" : plain.toPlainString();
        }
        if (value instanceof Integer || value instanceof Long) {
            return value.toString();
        }
        if (value instanceof CharSequence text) {
            return quoted(text);
        }
        throw new IllegalArgumentException("no JSON for a " + value.getClass().getName());
    }

    private static String quoted(CharSequence text) {
        return '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
    }
}
