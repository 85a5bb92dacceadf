package tintwright.files;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A value in a JSON file together with where it stands, such as {@code tints[2].density}, so that whatever is
 * wrong with it can be said in one sentence with file, place and remedy.
 */
public final class JsonPlace {
    private final String file;
    private final String path;
    /** As {@link JsonTree} reads it; null for a null. */
    private final Object value;

    private JsonPlace(String file, String path, Object value) {
        this.file = file;
        this.path = path;
        this.value = value;
    }

    /** @return the whole of a file */
    public static JsonPlace read(Path file) throws FileProblem {
        return parse(file.toString(), TextFile.read(file));
    }

    /**
     * @param file how the text is called in a complaint
     * @param text the JSON
     */
    public static JsonPlace parse(String file, String text) throws FileProblem {
        try {
            return JsonTree.of(text)
                    .map(tree -> new JsonPlace(file, "", tree))
                    .orElseThrow(
                            () -> FileProblem.unusable(file + ": the file is empty; take a copy that holds something"));
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            String where = at == null ? "" : ", line " + at.getLineNr() + ", column " + at.getColumnNr();
            throw FileProblem.unusable(
                    file + where + ": this is not JSON as it should be (" + firstLine(e.getOriginalMessage())
                            + "); correct it there or take a copy that works",
                    e);
        }
    }

    private static String firstLine(String message) {
        // What else could have stood there is a list for programmers.
        return message.lines()
                .findFirst()
                .orElse("")
                .replaceFirst(": was expecting \\(.*", "")
                .strip();
    }

    /**
     * Checks what a file of ours says about itself, and that nothing stands in it that nobody knows.
     *
     * @param kind   what the field {@code kind} must be
     * @param newest the newest {@code formatVersion} this program reads, from 1
     * @param fields what else may stand there
     */
    public void head(String kind, int newest, String... fields) throws FileProblem {
        double version = at("formatVersion").number();
        if (version > newest) {
            throw at("formatVersion")
                    .problem("the file is of format " + JsonText.of(version).strip()
                            + " and this program reads up to " + newest
                            + "; open it with a newer Tintwright (the file was left as it was)");
        }
        if (version < 1 || version != Math.rint(version)) {
            throw at("formatVersion")
                    .problem("must be a whole number from 1 to " + newest + ", was "
                            + at("formatVersion").shown());
        }
        String found = at("kind").text();
        if (!found.equals(kind)) {
            throw at("kind").problem("a " + kind + " file was wanted, this is a " + found + " file; name another");
        }
        only(Stream.concat(Stream.of("formatVersion", "kind"), Stream.of(fields))
                .toArray(String[]::new));
    }

    /** @throws FileProblem when this is not an object, or has a field other than these */
    public void only(String... known) throws FileProblem {
        for (Map.Entry<?, ?> field : object().entrySet()) {
            String name = (String) field.getKey();
            if (!Set.of(known).contains(name)) {
                throw new JsonPlace(file, deeper(name), field.getValue())
                        .problem("no such field is known here; correct its name to one of "
                                + String.join(", ", new TreeSet<>(Set.of(known))) + ", or take it out");
            }
        }
    }

    private Map<?, ?> object() throws FileProblem {
        if (value instanceof Map<?, ?> object) {
            return object;
        }
        throw problem("must be an object in braces { }, was " + shown());
    }

    /** @return whether the field is there and not null */
    public boolean has(String field) {
        return value instanceof Map<?, ?> object && object.get(field) != null;
    }

    /** @return the field, which must be there */
    public JsonPlace at(String field) throws FileProblem {
        Object found = object().get(field);
        if (found == null) {
            throw problem("the field \"" + field + "\" is missing; add it");
        }
        return new JsonPlace(file, deeper(field), found);
    }

    public Optional<JsonPlace> optional(String field) throws FileProblem {
        return has(field) ? Optional.of(at(field)) : Optional.empty();
    }

    /** @return the things of a list, in order */
    public List<JsonPlace> list() throws FileProblem {
        List<JsonPlace> list = new ArrayList<>();
        for (Object child : children()) {
            list.add(new JsonPlace(file, path + "[" + list.size() + "]", child));
        }
        return list;
    }

    private List<?> children() throws FileProblem {
        if (value instanceof List<?> children) {
            return children;
        }
        throw problem("must be a list in brackets [ ], was " + shown());
    }

    /** @return the things of a list; none when the field is not there */
    public List<JsonPlace> list(String field) throws FileProblem {
        return has(field) ? at(field).list() : List.of();
    }

    /** How something is read from where it stands. */
    @FunctionalInterface
    public interface Reader<T> {
        T from(JsonPlace place) throws FileProblem;
    }

    /** @return what stands in a list, read one by one; none when the field is not there */
    public <T> List<T> each(String field, Reader<T> reader) throws FileProblem {
        List<T> all = new ArrayList<>();
        for (JsonPlace one : list(field)) {
            all.add(reader.from(one));
        }
        return all;
    }

    /** @return what stands in the fields of an object, each read with its name; none when the field is not there */
    public <T> Map<String, T> eachNamed(String field, Reader<T> reader) throws FileProblem {
        Map<String, T> all = new LinkedHashMap<>();
        for (Map.Entry<String, JsonPlace> one :
                has(field) ? at(field).fields().entrySet() : Set.<Map.Entry<String, JsonPlace>>of()) {
            all.put(one.getKey(), reader.from(one.getValue()));
        }
        return all;
    }

    /** @return what the field holds; empty when it is not there */
    public <T> Optional<T> optional(String field, Reader<T> reader) throws FileProblem {
        return has(field) ? Optional.of(reader.from(at(field))) : Optional.empty();
    }

    /** @return a moment such as 2026-05-31T09:12:00Z */
    public Instant moment() throws FileProblem {
        try {
            return Instant.parse(text());
        } catch (DateTimeParseException e) {
            throw problem("must be a moment such as 2026-05-31T09:12:00Z");
        }
    }

    /** @return the fields of an object, in the order of the file */
    public Map<String, JsonPlace> fields() throws FileProblem {
        Map<String, JsonPlace> fields = new LinkedHashMap<>();
        object().forEach((name, child) -> fields.put((String) name, new JsonPlace(file, deeper((String) name), child)));
        return fields;
    }

    /** @return whether the value is a text in quotes */
    public boolean isText() {
        return value instanceof String;
    }

    public String text() throws FileProblem {
        if (value instanceof String text) {
            return text;
        }
        throw problem("must be a text in quotes, was " + shown());
    }

    /** @return a finite number */
    public double number() throws FileProblem {
        if (value instanceof Double number && Double.isFinite(number)) {
            return number;
        }
        throw problem("must be a number such as 1.25, was " + shown());
    }

    public int whole() throws FileProblem {
        if (value instanceof Double number && number.intValue() == number) {
            return number.intValue();
        }
        throw problem("must be a whole number, was " + shown());
    }

    public boolean truth() throws FileProblem {
        if (value instanceof Boolean truth) {
            return truth;
        }
        throw problem("must be true or false, was " + shown());
    }

    public LocalDate date() throws FileProblem {
        try {
            return LocalDate.parse(text());
        } catch (DateTimeParseException e) {
            throw problem("must be a date such as 2026-05-31, was " + shown());
        }
    }

    /** @return finite numbers */
    public double[] numbers() throws FileProblem {
        List<?> children = children();
        double[] numbers = new double[children.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = new JsonPlace(file, path + "[" + i + "]", children.get(i)).number();
        }
        return numbers;
    }

    public String text(String field, String otherwise) throws FileProblem {
        return has(field) ? at(field).text() : otherwise;
    }

    public int whole(String field, int otherwise) throws FileProblem {
        return has(field) ? at(field).whole() : otherwise;
    }

    public double number(String field, double otherwise) throws FileProblem {
        return has(field) ? at(field).number() : otherwise;
    }

    /** @return true or false; false when the field is not there */
    public boolean truth(String field) throws FileProblem {
        return has(field) && at(field).truth();
    }

    public OptionalDouble optionalNumber(String field) throws FileProblem {
        return has(field) ? OptionalDouble.of(at(field).number()) : OptionalDouble.empty();
    }

    public Optional<LocalDate> optionalDate(String field) throws FileProblem {
        return optional(field, JsonPlace::date);
    }

    /** How something is made of what stands here. */
    @FunctionalInterface
    public interface Maker<T> {
        /** @throws IllegalArgumentException for what cannot be */
        T made() throws FileProblem;
    }

    /** @return what a text names; what {@code naming} refuses becomes a sentence with this place */
    public <T> T named(Function<String, T> naming) throws FileProblem {
        return make(() -> naming.apply(text()));
    }

    /** @return numbers, as many as {@code what} asks for, such as "two numbers [x, y]" */
    public double[] numbers(int count, String what) throws FileProblem {
        double[] numbers = numbers();
        if (numbers.length != count) {
            throw problem("must be " + what + ", were " + numbers.length);
        }
        return numbers;
    }

    /** @return the value made here; what its maker refuses becomes a sentence with this place */
    public <T> T make(Maker<T> maker) throws FileProblem {
        try {
            return maker.made();
        } catch (IllegalArgumentException e) {
            // What concerns the whole file says its own remedy.
            throw problem(e.getMessage() + (path.isEmpty() ? "" : "; correct it there"));
        }
    }

    /** @return a complaint about this place: what was wrong and what to do, without a full stop */
    public FileProblem problem(String what) {
        return FileProblem.unusable(file + (path.isEmpty() ? "" : ", " + path) + ": " + what);
    }

    /** @return the value as it stands in the file, cut when it is long */
    private String shown() {
        String text = value instanceof Double number && !Double.isFinite(number)
                ? "too large a number"
                : JsonText.of(value).replaceAll("\\s+", " ").strip();
        return text.length() > 40 ? text.substring(0, 37) + "..." : text;
    }

    private String deeper(String field) {
        return path.isEmpty() ? field : path + "." + field;
    }
}
