package tintwright.files.instrument;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tintwright.colour.Geometry;
import tintwright.colour.Viewing;

/** The many ways instruments write the same light, observer and geometry. */
final class Instruments {
    private static final Pattern DEGREES = Pattern.compile("(?<!\\d)(10|2)(?!\\d)");

    private Instruments() {}

    /** @return such as D65 and 10 from "D65" and "10_Degree"; empty when one of them is not known */
    static Optional<Viewing> viewing(String light, String observer) {
        Matcher degrees = DEGREES.matcher(observer.replace("1931", "2").replace("1964", "10"));
        if (!degrees.find()) {
            return Optional.empty();
        }
        try {
            String name = light.strip().toUpperCase(Locale.ROOT).replaceFirst("^F(\\d+)$", "FL$1");
            return Optional.of(Viewing.of(name, Integer.parseInt(degrees.group(1))));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** @return with or without gloss, from our own words or the geometry codes of CIE 15; empty when not known */
    static Optional<Geometry> geometry(String text) {
        String plain =
                text.strip().toLowerCase(Locale.ROOT).replaceAll("[ _*]+", "-").replace('/', ':');
        if (plain.matches("specular-included|sci|spin|di:8.*|8:di.*")) {
            return Optional.of(Geometry.SPECULAR_INCLUDED);
        }
        if (plain.matches("specular-excluded|sce|spex|de:8.*|8:de.*|45[acx]?:0.*|0:45[acx]?.*")) {
            return Optional.of(Geometry.SPECULAR_EXCLUDED);
        }
        return Optional.empty();
    }
}
