package tintwright.logbook;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.time.Instant;
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
                case "at" -> at = Instant.parse(text());
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
