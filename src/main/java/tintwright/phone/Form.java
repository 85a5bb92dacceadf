package tintwright.phone;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/** The few fields of a form (WHATWG URL, section 5.1: application/x-www-form-urlencoded). */
final class Form {
    private static final String TYPE = "application/x-www-form-urlencoded";
    /** A key, a figure and a name. */
    private static final int MOST_BYTES = 8192;

    private final Map<String, String> fields = new HashMap<>();

    private Form() {}

    /** @throws Refused when it is no form, or a longer one than any page holds */
    static Form of(HttpExchange exchange) throws Refused, IOException {
        String type = exchange.getRequestHeaders().getFirst("Content-Type");
        if (type == null || !type.split(";")[0].strip().equalsIgnoreCase(TYPE)) {
            throw new Refused(Reply.WRONG_TYPE, "That is not the form of this page. Load the page anew.");
        }
        byte[] body = exchange.getRequestBody().readNBytes(MOST_BYTES + 1);
        if (body.length > MOST_BYTES) {
            throw new Refused(Reply.TOO_LARGE, "That is more than the form of this page holds. Load the page anew.");
        }
        return of(new String(body, StandardCharsets.UTF_8));
    }

    /** @return what stands behind the question mark of an address */
    static Form ofQuery(HttpExchange exchange) throws Refused {
        String query = exchange.getRequestURI().getRawQuery();
        return of(query == null ? "" : query);
    }

    private static Form of(String coded) throws Refused {
        Form form = new Form();
        try {
            for (String pair : coded.split("&")) {
                int equals = pair.indexOf('=');
                if (equals > 0) {
                    form.fields.put(plain(pair.substring(0, equals)), plain(pair.substring(equals + 1)));
                }
            }
        } catch (IllegalArgumentException e) {
            throw new Refused(Reply.BAD_REQUEST, "That form came broken. Load the page anew.");
        }
        return form;
    }

    private static String plain(String coded) {
        return URLDecoder.decode(coded, StandardCharsets.UTF_8);
    }

    /** @return what was typed there; empty when the form has no such field */
    String text(String name) {
        return fields.getOrDefault(name, "");
    }

    /** @throws Refused when it is none of the answers that the page holds */
    <E extends Enum<E>> E choice(String name, Class<E> answers) throws Refused {
        try {
            return Enum.valueOf(answers, text(name));
        } catch (IllegalArgumentException e) {
            throw new Refused(Reply.BAD_REQUEST, "That is not the form of this page. Load the page anew.");
        }
    }

    /** @throws Refused when it is no whole number from 0 on */
    int number(String name) throws Refused {
        String text = text(name);
        if (!text.matches("\\d{1,6}")) {
            throw new Refused(Reply.BAD_REQUEST, "That is not the form of this page. Load the page anew.");
        }
        return Integer.parseInt(text);
    }
}
