package tintwright.logbook;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tintwright.logbook.disk.Entry;

/**
 * Boats straight from their bytes. The list of all boats is the first thing a window shows, and making a tree of
 * each body, as {@link PageShape} does for every other page, would take half of the time to get there.
 */
final class BoatReader {
    private BoatReader() {}

    /** @return the boat, or empty when its body has another shape than this version writes */
    static Optional<Page.Boat> read(Entry entry) {
        try (JsonParser json = entry.openBody()) {
            return Optional.of(read(json));
        } catch (IOException | IllegalArgumentException anotherShape) {
            return Optional.empty();
        }
    }

    private static Page.Boat read(JsonParser json) throws IOException {
        String name = "";
        String type = "";
        String notes = "";
        Optional<Integer> year = Optional.empty();
        List<String> photos = new ArrayList<>();
        json.nextToken();
        for (String field = json.nextFieldName(); field != null; field = json.nextFieldName()) {
            JsonToken value = json.nextToken();
            switch (field) {
                case "name" -> name = text(json, value);
                case "type" -> type = text(json, value);
                case "notes" -> notes = text(json, value);
                case "year" -> year = Optional.of(json.getIntValue());
                case "photos" -> {
                    while (json.nextToken() == JsonToken.VALUE_STRING) {
                        photos.add(json.getText());
                    }
                }
                default -> json.skipChildren();
            }
        }
        return new Page.Boat(name, type, year, notes, photos);
    }

    private static String text(JsonParser json, JsonToken value) throws IOException {
        if (value != JsonToken.VALUE_STRING) {
            throw new IOException("a text was expected");
        }
        return json.getText();
    }
}
