package tintwright.logbook.disk;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.Arrays;

/**
 * The first line of every log file: what it is, in which version, and whose.
 *
 * @param version the shape of the lines; a file with a higher one is only read
 * @param bench   who appends to this file
 * @param opened  when the file was begun
 */
public record Header(int version, String bench, Instant opened) {
    static final String LOG = "tintwright";
    /** The version this program writes. */
    public static final int VERSION = 1;

    public byte[] line() {
        return fields(json -> {
            json.writeNumberField("n", 0);
            json.writeStringField("log", LOG);
            json.writeNumberField("version", version);
            json.writeStringField("bench", bench);
            json.writeStringField("opened", opened.toString());
        });
    }

    /** Writes the fields of one line in memory. */
    interface Fields {
        void write(JsonGenerator json) throws IOException;
    }

    /** @return the whole line that carries these fields, sealed */
    static byte[] fields(Fields fields) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(256);
        try (JsonGenerator json = Entry.JSON.createGenerator(out)) {
            json.writeStartObject();
            fields.write(json);
            json.writeEndObject();
        } catch (IOException e) {
            throw new IllegalArgumentException("the entry is not proper JSON: " + e.getMessage(), e);
        }
        byte[] object = out.toByteArray();
        return Line.seal(Arrays.copyOfRange(object, 1, object.length));
    }

    /** @throws IOException if the line is no header of a log file */
    static Header read(byte[] source, int from, int to) throws IOException {
        int version = 0;
        String bench = "";
        Instant opened = Instant.EPOCH;
        boolean ours = false;
        try (JsonParser json = Entry.JSON.createParser(source, from, to - from)) {
            json.nextToken();
            for (String field = json.nextFieldName(); field != null; field = json.nextFieldName()) {
                json.nextToken();
                switch (field) {
                    case "log" -> ours = LOG.equals(json.getText());
                    case "version" -> version = json.getIntValue();
                    case "bench" -> bench = json.getText();
                    case "opened" -> opened = Instant.parse(json.getText());
                    default -> json.skipChildren();
                }
            }
        } catch (RuntimeException e) {
            throw new IOException(e.getMessage(), e);
        }
        if (!ours || version < 1) {
            throw new IOException("not a header");
        }
        return new Header(version, bench, opened);
    }
}
