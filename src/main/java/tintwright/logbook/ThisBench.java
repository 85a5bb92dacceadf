package tintwright.logbook;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.random.RandomGenerator;

/**
 * Who writes: this user on this machine.
 *
 * @param id   the beginning of the names of the files it appends to; letters a to z, digits and dashes
 * @param home a folder of this machine alone, for locks and for entries the log folder would not take
 */
public record ThisBench(String id, Path home) {
    private static final String FILE = "bench.json";
    private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final int LETTERS_IN_ID = 8;

    public ThisBench {
        if (!id.matches("[a-z0-9][a-z0-9-]{0,39}")) {
            throw new IllegalArgumentException("the id of a bench is 1 to 40 of a-z, 0-9 and dash, was \"" + id + "\"");
        }
    }

    /**
     * Who we are, as remembered in {@code home}; made up and remembered the first time.
     *
     * @param machine the name of this machine: a copied home on another machine must become another bench, for
     *                two machines that append to one file would undo each other's work
     * @throws LogFailure if the home can be neither read nor written
     */
    public static ThisBench at(Path home, String machine, RandomGenerator random) throws LogFailure {
        Path file = home.resolve(FILE);
        try {
            Files.createDirectories(home);
            String known = Files.exists(file) ? idFrom(file, machine) : "";
            if (!known.isEmpty()) {
                return new ThisBench(known, home);
            }
            String fresh = freshId(random);
            Disk.REAL.place(file, describe(fresh, machine));
            return new ThisBench(fresh, home);
        } catch (IOException e) {
            throw new LogFailure(
                    "Tintwright could not keep its own small file " + file + " ("
                            + e.getClass().getSimpleName() + "). Make that folder writable, or choose another home.",
                    e);
        }
    }

    /** @return the id, or nothing if the file is another machine's or says nothing of use */
    private static String idFrom(Path file, String machine) throws IOException {
        String id = "";
        String writtenOn = "";
        try (JsonParser json = Entry.JSON.createParser(Files.readAllBytes(file))) {
            json.nextToken();
            for (String field = json.nextFieldName(); field != null; field = json.nextFieldName()) {
                String text = json.nextTextValue();
                if ("id".equals(field) && text != null) {
                    id = text;
                } else if ("machine".equals(field) && text != null) {
                    writtenOn = text;
                }
            }
        } catch (com.fasterxml.jackson.core.JsonProcessingException harmed) {
            return "";
        }
        boolean usable = writtenOn.equals(machine) && id.matches("[a-z0-9][a-z0-9-]{0,39}");
        return usable ? id : "";
    }

    private static byte[] describe(String id, String machine) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonGenerator json = Entry.JSON.createGenerator(out)) {
            json.writeStartObject();
            json.writeStringField("id", id);
            json.writeStringField("machine", machine);
            json.writeEndObject();
        }
        return out.toByteArray();
    }

    private static String freshId(RandomGenerator random) {
        StringBuilder id = new StringBuilder("bench-");
        for (int i = 0; i < LETTERS_IN_ID; i++) {
            id.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return id.toString();
    }

    /**
     * Where the locks on our files lie. One place for all log folders, for one folder may be reached by many paths;
     * at worst a window takes a file with the next number.
     */
    Path locks() {
        return home.resolve("locks");
    }

    Path locksOfWaiting() {
        return home.resolve("locks-waiting");
    }

    /** Where entries wait that a log folder would not take; each log folder has its own. */
    Path waiting(Path logFolder) {
        return home.resolve("waiting").resolve(key(logFolder));
    }

    /** What this bench remembers of a log folder. */
    Path seen(Path logFolder) {
        return home.resolve("seen").resolve(key(logFolder) + ".json");
    }

    private static String key(Path logFolder) {
        String name = String.valueOf(logFolder.getFileName()).replaceAll("[^A-Za-z0-9]", "-");
        return name + "-"
                + Integer.toHexString(
                        logFolder.toAbsolutePath().normalize().toString().hashCode());
    }
}
