package tintwright.logbook.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.random.RandomGenerator;
import tintwright.files.Claim;
import tintwright.files.Fields;
import tintwright.files.FileProblem;
import tintwright.files.Fingerprint;
import tintwright.files.JsonPlace;
import tintwright.files.JsonText;

/**
 * Who writes: this user on this machine.
 *
 * @param id   the beginning of the names of the files it appends to; letters a to z, digits and dashes
 * @param home a folder of this machine alone, for locks and for entries the log folder would not take
 */
public record ThisBench(String id, Path home) {
    private static final String FILE = "bench.json";
    private static final String ID = "[a-z0-9][a-z0-9-]{0,39}";
    private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final int LETTERS_IN_ID = 8;
    private static final Duration LONGEST_WAIT = Duration.ofSeconds(20);

    public ThisBench {
        if (!id.matches(ID)) {
            throw new IllegalArgumentException("the id of a bench is 1 to 40 of a-z, 0-9 and dash, was \"" + id + "\"");
        }
    }

    /**
     * Who we are, as remembered in {@code home}; made up and remembered the first time.
     *
     * @param machine marks of this machine, at least one; a home that was copied to a machine with none of them, or to
     *                another place on this one, becomes another bench, for two that append to one file would undo each
     *                other's work
     * @throws LogFailure if the home can be neither read nor written
     */
    public static ThisBench at(Path home, List<String> machine, RandomGenerator random) throws LogFailure {
        Path file = home.resolve(FILE);
        try {
            Files.createDirectories(home);
            String place = home.toRealPath().toString();
            List<String> marks = machine.stream()
                    .map(mark -> Fingerprint.of(mark + "\n" + place))
                    .toList();
            // Several first starts at once must not make up several names.
            try (Claim alone = Claim.await(home.resolve("locks").resolve("bench.lock"), LONGEST_WAIT)
                    .orElseThrow(() -> new IOException("another Tintwright does not let go of it"))) {
                String known = Files.exists(file) ? idFrom(file, marks) : "";
                if (!known.isEmpty()) {
                    return new ThisBench(known, home);
                }
                String fresh = freshId(random);
                Disk.REAL.place(file, describe(fresh, marks));
                return new ThisBench(fresh, home);
            }
        } catch (IOException e) {
            throw new LogFailure(
                    "Tintwright could not keep its own small file " + file + " ("
                            + e.getClass().getSimpleName() + "). Make that folder writable, or choose another home.",
                    e);
        }
    }

    /** @return the id, or nothing if the file is another machine's or says nothing of use */
    private static String idFrom(Path file, List<String> marks) throws IOException {
        String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        try {
            JsonPlace root = JsonPlace.parse(FILE, text);
            String id = root.text("id", "");
            boolean ours = false;
            for (JsonPlace mark : root.list("marks")) {
                ours |= marks.contains(mark.text());
            }
            return ours && id.matches(ID) ? id : "";
        } catch (FileProblem harmed) {
            return "";
        }
    }

    private static byte[] describe(String id, List<String> marks) {
        return JsonText.of(Fields.of("id", id).with("marks", marks)).getBytes(StandardCharsets.UTF_8);
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
        return kept("waiting", logFolder, "");
    }

    /** What this bench remembers of a log folder. */
    Path seen(Path logFolder) {
        return kept("seen", logFolder, ".json");
    }

    private Path kept(String what, Path logFolder, String ending) {
        String whole = logFolder.toAbsolutePath().normalize().toString();
        String name = String.valueOf(logFolder.getFileName()).replaceAll("[^A-Za-z0-9]", "-");
        // Earlier versions named it after 32 bits, which two folders can share; what they kept there still counts.
        Path earlier = home.resolve(what).resolve(name + "-" + Integer.toHexString(whole.hashCode()) + ending);
        return Files.exists(earlier)
                ? earlier
                : home.resolve(what).resolve(name + "-" + Fingerprint.of(whole) + ending);
    }
}
