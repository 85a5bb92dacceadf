package tintwright.logbook.disk;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.UUID;

/**
 * Takes the envelope of one line apart. The body is the last field of every line, so that fifty thousand entries
 * can be listed without looking into one of them.
 */
final class EntryReader {
    private final JsonParser json;
    private final int from;
    private UUID id;
    private Instant at;
    private String kind;
    private UUID boat;
    private UUID replaces;
    private int bodyFrom;

    /**
     * @param json at the beginning of the line
     * @param from where in the bytes of the file the line begins
     */
    EntryReader(JsonParser json, int from) {
        this.json = json;
        this.from = from;
    }

    void read() throws IOException {
        json.nextToken();
        while (bodyFrom == 0) {
            String field = json.nextFieldName();
            if (field == null) {
                throw new IOException("an entry needs a body");
            }
            json.nextToken();
            switch (field) {
                case "id" -> id = UUID.fromString(text());
                case "at" -> at = instant(text());
                case "kind" -> kind = text().intern();
                case "boat" -> boat = UUID.fromString(text());
                case "replaces" -> replaces = UUID.fromString(text());
                case "body" -> bodyFrom = beginningOfBody();
                default -> json.skipChildren();
            }
        }
        if (id == null || at == null || kind == null) {
            throw new IOException("an entry needs id, at and kind before its body");
        }
    }

    private String text() throws IOException {
        if (json.currentToken() != JsonToken.VALUE_STRING) {
            throw new IOException("a word was expected, not " + json.currentToken());
        }
        return json.getText();
    }

    /**
     * The usual form by hand, any other by the library: fifty thousand of them at the start of a program are read
     * ten times as fast.
     */
    private static Instant instant(String text) {
        if (text.length() < 20
                || text.length() > 30
                || text.charAt(10) != 'T'
                || text.charAt(text.length() - 1) != 'Z') {
            return Instant.parse(text);
        }
        int nanos = 0;
        if (text.length() > 20) {
            nanos = number(text, 20, text.length() - 1);
            for (int digits = text.length() - 21; digits < 9; digits++) {
                nanos *= 10;
            }
        }
        LocalDateTime time = LocalDateTime.of(
                number(text, 0, 4),
                number(text, 5, 7),
                number(text, 8, 10),
                number(text, 11, 13),
                number(text, 14, 16),
                number(text, 17, 19),
                nanos);
        return time.toInstant(ZoneOffset.UTC);
    }

    private static int number(String text, int from, int to) {
        int number = 0;
        for (int i = from; i < to; i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit > 9) {
                throw new DateTimeException("not a time: " + text);
            }
            number = number * 10 + digit;
        }
        return number;
    }

    private int beginningOfBody() throws IOException {
        if (json.currentToken() != JsonToken.START_OBJECT) {
            throw new IOException("the body of an entry must be an object");
        }
        return from + (int) json.currentTokenLocation().getByteOffset();
    }

    UUID id() {
        return id;
    }

    Instant at() {
        return at;
    }

    String kind() {
        return kind;
    }

    UUID boat() {
        return boat;
    }

    UUID replaces() {
        return replaces;
    }

    int bodyFrom() {
        return bodyFrom;
    }
}
