package tintwright.logbook.disk;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import java.util.UUID;
import tintwright.colour.Viewing;

/**
 * One thing that was written down: its envelope, and its body as the bytes that are on disk. The body is taken
 * apart only when somebody asks, so a kind this version does not know is carried along like any other.
 */
public final class Entry {
    /** The kind that takes an earlier entry back; its body may say why. */
    public static final String WITHDRAWN = "withdrawn";

    static final JsonFactory JSON = new JsonFactory();

    private final UUID id;
    private final Instant at;
    private final String kind;
    private final UUID boat;
    private final UUID replaces;
    private final byte[] source;
    private final int restFrom;
    private final int restTo;
    private final int bodyFrom;
    private Optional<Colour> colour;

    private Entry(EntryReader read, byte[] source, int restFrom, int restTo) {
        this.id = read.id();
        this.at = read.at();
        this.kind = read.kind();
        this.boat = read.boat();
        this.replaces = read.replaces();
        this.source = source;
        this.restFrom = restFrom;
        this.restTo = restTo;
        this.bodyFrom = read.bodyFrom();
    }

    /** @return the name of this entry, unique everywhere; names sort by time */
    public UUID id() {
        return id;
    }

    /** @return when it was written, by the clock of the bench that wrote it */
    public Instant at() {
        return at;
    }

    /** @return what sort of thing it is, such as {@code cup} */
    public String kind() {
        return kind;
    }

    /** @return the boat it belongs to; empty for things of no boat, such as a chip */
    public Optional<UUID> boat() {
        return Optional.ofNullable(boat);
    }

    /** @return the earlier entry that this one corrects or takes back */
    public Optional<UUID> replaces() {
        return Optional.ofNullable(replaces);
    }

    /** @return the JSON object it carries */
    public String body() {
        return new String(source, bodyFrom, restTo - 1 - bodyFrom, StandardCharsets.UTF_8);
    }

    /** @return the words and dates in the body, for the search; no names of entries */
    public String words() {
        return look().map(BodyReader::words).orElse("");
    }

    /**
     * Looks at the bytes alone, without taking the body apart.
     *
     * @param piece of a word, in small letters, digits and signs of ASCII
     * @return false when surely none of its {@link #words} has this in it, in small letters or capitals
     */
    public boolean mayHold(byte[] piece) {
        for (int at = bodyFrom; at < restTo; at++) {
            // What is no ASCII may become it when accents are taken off, and what is escaped stands there otherwise.
            if (source[at] < 0 || source[at] == '\\' || holds(piece, at)) {
                return true;
            }
        }
        return false;
    }

    private boolean holds(byte[] piece, int from) {
        if (from + piece.length > restTo) {
            return false;
        }
        for (int i = 0; i < piece.length; i++) {
            byte letter = source[from + i];
            if (piece[i] != (letter >= 'A' && letter <= 'Z' ? letter + ('a' - 'A') : letter)) {
                return false;
            }
        }
        return true;
    }

    /** @return the colour that its body states as a summary */
    public Optional<Colour> colour() {
        if (colour == null) {
            colour = look().flatMap(BodyReader::colour);
        }
        return colour;
    }

    /** Empty for a body that is not what a body should be: there is nothing to be found in it. */
    private Optional<BodyReader> look() {
        try {
            return Optional.of(readBody());
        } catch (IOException noBody) {
            return Optional.empty();
        }
    }

    private BodyReader readBody() throws IOException {
        try (JsonParser json = openBody()) {
            return BodyReader.read(json);
        }
    }

    public JsonParser openBody() throws IOException {
        return JSON.createParser(source, bodyFrom, restTo - 1 - bodyFrom);
    }

    /** A colour as it stands in an entry, with its conditions as they are written there. */
    public record Colour(double lightness, double a, double b, String light, int observer, String film) {
        public boolean isUnder(Viewing viewing) {
            return observer == viewing.observer().degrees()
                    && light.equals(viewing.light().name());
        }
    }

    /** @return whether the other entry says the same, wherever it stands */
    public boolean saysTheSameAs(Entry other) {
        return Arrays.equals(source, restFrom, restTo, other.source, other.restFrom, other.restTo);
    }

    /** An order between entries that differ under one name, the same on every machine. */
    int compareContent(Entry other) {
        return Arrays.compare(source, restFrom, restTo, other.source, other.restFrom, other.restTo);
    }

    /** @return the same entry on bytes of its own, so that it does not hold on to a whole file */
    Entry apart() {
        byte[] own = line(1);
        try {
            return read(own, 0, own.length - 1);
        } catch (IOException e) {
            throw new IllegalStateException("what was read once can be read again", e);
        }
    }

    /** @return this entry as line {@code number} of a file, with everything it said, known to us or not */
    public byte[] line(int number) {
        byte[] head = ("\"n\":" + number).getBytes(StandardCharsets.US_ASCII);
        byte[] fields = Arrays.copyOf(head, head.length + restTo - restFrom);
        System.arraycopy(source, restFrom, fields, head.length, restTo - restFrom);
        return Line.seal(fields);
    }

    /**
     * A new entry.
     *
     * @param boat     the boat it belongs to, or null
     * @param replaces the entry it corrects or takes back, or null
     * @param body     a JSON object on one line
     * @throws IllegalArgumentException if the body is no JSON object on one line, or longer than a line may be
     */
    public static Entry of(UUID id, Instant at, String kind, UUID boat, UUID replaces, String body) {
        if (body.chars().anyMatch(c -> c < ' ')) {
            throw new IllegalArgumentException("the body of an entry must be JSON on one line");
        }
        byte[] line = Header.fields(json -> {
            json.writeNumberField("n", 1);
            json.writeStringField("id", id.toString());
            json.writeStringField("at", at.toString());
            json.writeStringField("kind", kind);
            if (boat != null) {
                json.writeStringField("boat", boat.toString());
            }
            if (replaces != null) {
                json.writeStringField("replaces", replaces.toString());
            }
            json.writeFieldName("body");
            json.writeRawValue(body);
        });
        if (line.length > Line.LONGEST) {
            throw new IllegalArgumentException("an entry may be up to " + Line.LONGEST + " bytes, was " + line.length);
        }
        try {
            Entry entry = read(line, 0, line.length - 1);
            entry.readBody();
            return entry;
        } catch (IOException e) {
            throw new IllegalArgumentException("the body of an entry must be a JSON object: " + e.getMessage(), e);
        }
    }

    @Override
    public String toString() {
        return kind + " " + id;
    }

    /**
     * @param source the bytes of a file or line; kept, not copied
     * @param from   the opening brace of the line
     * @param to     past its closing brace
     * @throws IOException if it is not an entry
     */
    static Entry read(byte[] source, int from, int to) throws IOException {
        try (JsonParser json = JSON.createParser(source, from, to - from)) {
            EntryReader reader = new EntryReader(json, from);
            reader.read();
            return new Entry(reader, source, afterNumber(source, from), to);
        } catch (IllegalArgumentException | DateTimeException e) {
            throw new IOException(e.getMessage(), e);
        }
    }

    /** Everything but the line number travels with an entry. */
    private static int afterNumber(byte[] source, int from) {
        int at = from + Line.CHECKED_FROM;
        while (source[at] != ',') {
            at++;
        }
        return at;
    }
}
