package tintwright.logbook.disk;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.Optional;
import java.util.Set;

/** What the search wants of a body, whatever its kind: its words, and the colour it states as a summary. */
final class BodyReader {
    /** Fields whose values are terms of the format and not words anybody would look for. */
    private static final Set<String> TERMS = Set.of("film", "geometry", "light", "role");

    private static final String COLOUR = "colour";

    private final JsonParser json;
    private final StringBuilder words = new StringBuilder();
    private Entry.Colour colour;

    private BodyReader(JsonParser json) {
        this.json = json;
    }

    /**
     * @param json at the beginning of the body
     * @throws IOException if the body is not one JSON object and nothing else
     */
    static BodyReader read(JsonParser json) throws IOException {
        BodyReader reader = new BodyReader(json);
        reader.readBody();
        return reader;
    }

    String words() {
        return words.toString();
    }

    Optional<Entry.Colour> colour() {
        return Optional.ofNullable(colour);
    }

    private void readBody() throws IOException {
        if (json.nextToken() != JsonToken.START_OBJECT) {
            throw new IOException("the body of an entry must be an object");
        }
        for (int depth = 1; depth > 0; ) {
            JsonToken token = next();
            if (token == JsonToken.START_OBJECT && depth == 1 && COLOUR.equals(json.currentName())) {
                readColour();
            } else if (token.isStructStart()) {
                depth++;
            } else if (token.isStructEnd()) {
                depth--;
            } else if (token == JsonToken.VALUE_STRING && !isTerm() && !looksLikeAName()) {
                words.append(json.getTextCharacters(), json.getTextOffset(), json.getTextLength())
                        .append('\n');
            }
        }
        if (json.nextToken() != null) {
            throw new IOException("more than one value");
        }
    }

    private JsonToken next() throws IOException {
        JsonToken token = json.nextToken();
        if (token == null) {
            throw new IOException("the body ends too early");
        }
        return token;
    }

    /** A summary in another shape than ours is passed over: it only serves the search. */
    private void readColour() throws IOException {
        double[] lab = new double[3];
        int axes = 0;
        String light = "";
        int observer = 0;
        String film = "";
        for (int depth = 1; depth > 0; ) {
            JsonToken token = next();
            if (token.isStructStart()) {
                depth++;
            } else if (token.isStructEnd()) {
                depth--;
            } else if (token.isNumeric() && depth == 2 && axes < lab.length) {
                lab[axes++] = json.getDoubleValue();
            } else if (token.isNumeric() && "observer".equals(json.currentName())) {
                observer = (int) json.getDoubleValue();
            } else if (token == JsonToken.VALUE_STRING && "light".equals(json.currentName())) {
                light = json.getText().intern();
            } else if (token == JsonToken.VALUE_STRING && "film".equals(json.currentName())) {
                film = json.getText().intern();
            }
        }
        if (axes == lab.length && observer != 0) {
            colour = new Entry.Colour(lab[0], lab[1], lab[2], light, observer, film);
        }
    }

    private boolean isTerm() throws IOException {
        String field = json.currentName();
        return field != null && TERMS.contains(field);
    }

    /** Names of entries are 36 characters with dashes at fixed spots; nobody searches for those. */
    private boolean looksLikeAName() throws IOException {
        if (json.getTextLength() != 36) {
            return false;
        }
        char[] text = json.getTextCharacters();
        int from = json.getTextOffset();
        return text[from + 8] == '-' && text[from + 13] == '-' && text[from + 18] == '-' && text[from + 23] == '-';
    }
}
