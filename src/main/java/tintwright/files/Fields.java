package tintwright.files;

import java.nio.file.Path;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.function.Function;
import tintwright.colour.Lab;

/** The fields of an object in JSON, in the order in which they are said; {@link JsonText} writes them. */
public final class Fields extends LinkedHashMap<String, Object> {
    private static final long serialVersionUID = 1;

    /** @return nothing said yet */
    public static Fields none() {
        return new Fields();
    }

    /** @return nothing but this */
    public static Fields of(String name, Object value) {
        return none().with(name, value);
    }

    /**
     * Says one thing more.
     *
     * @param value what {@link JsonText} writes; a day, a moment, an id or a file, written as text; one of an enum, written as
     *     its {@link #code}; or one of these in an {@code Optional}: the field is left out where that is empty
     */
    public Fields with(String name, Object value) {
        Object plain = plain(value);
        if (plain != null || value == null) {
            put(name, plain);
        }
        return this;
    }

    /** Says the same, and a null where there is nothing. */
    public Fields orNull(String name, Object value) {
        put(name, plain(value));
        return this;
    }

    /** Says each of these in a list. */
    public <T> Fields each(String name, Iterable<? extends T> things, Function<? super T, ?> shape) {
        List<Object> list = new ArrayList<>();
        things.forEach(one -> list.add(plain(shape.apply(one))));
        put(name, list);
        return this;
    }

    /** Says all that these say. */
    public Fields and(Map<String, ?> more) {
        putAll(more);
        return this;
    }

    /** Says a colour: {@code lab}, and under which {@code light} for which {@code observer}. */
    public Fields colour(Lab lab) {
        return with("lab", lab.axes())
                .with("light", lab.viewing().light().name())
                .with("observer", lab.viewing().observer().degrees());
    }

    /** @return how one of an enum stands in a file, such as {@code specular-included} */
    public static String code(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Object plain(Object value) {
        if (value instanceof Optional<?> perhaps) {
            return perhaps.map(Fields::plain).orElse(null);
        }
        if (value instanceof OptionalDouble perhaps) {
            return perhaps.isPresent() ? perhaps.getAsDouble() : null;
        }
        if (value instanceof Temporal || value instanceof UUID || value instanceof Path) {
            return value.toString();
        }
        return value instanceof Enum<?> one ? code(one) : value;
    }
}
