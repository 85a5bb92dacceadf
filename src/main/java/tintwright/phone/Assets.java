package tintwright.phone;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import tintwright.paper.Typeface;

/** The few files that the pages are made with, held in memory by their names; a request never names a file. */
final class Assets {
    /** With the secret in its address a part is never another's; it stays for as long as the page is in use. */
    private static final Map<String, String> KEPT = Map.of("Cache-Control", "private, max-age=86400");

    private static final Map<String, Reply> ALL = new HashMap<>();

    static {
        add("bench.css", "text/css; charset=utf-8", Assets.class.getResource("bench.css"));
        add("bench.js", "text/javascript; charset=utf-8", Assets.class.getResource("bench.js"));
        add("regular.ttf", "font/ttf", Typeface.REGULAR.file());
        add("bold.ttf", "font/ttf", Typeface.BOLD.file());
    }

    private Assets() {}

    private static void add(String name, String type, URL from) {
        try (InputStream in = from.openStream()) {
            ALL.put(name, new Reply(Reply.OK, type, in.readAllBytes(), KEPT));
        } catch (IOException e) {
            throw new UncheckedIOException("the program no longer carries " + name, e);
        }
    }

    static Optional<Reply> named(String name) {
        return Optional.ofNullable(ALL.get(name));
    }
}
