package tintwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tintwright.colour.Geometry;
import tintwright.colour.Viewing;
import tintwright.reading.Conditions;
import tintwright.reading.FilmState;

/** Whatever happens to a file on its way: it is read, or refused in one sentence that begins with its name. */
class DamagedFilesTest {
    private static final Conditions SAID = new Conditions(
            Optional.of(Viewing.D65_10), Optional.of(Geometry.SPECULAR_INCLUDED), FilmState.CURED, 0.002, 0.3);
    private static final String STRIKING = "{}[]\",:;<>&-+.0159eE\n\r\t #%\0\uFEFF\u00e9\u2028";

    private interface Reader {
        Object read(Path file) throws FileProblem;
    }

    @ParameterizedTest
    @CsvSource({
        "swatches/shelf.json, 1",
        "swatches/tarrowmere/port-bow.json, 2",
        "src/test/resources/tintwright/demo/contradictory-chip.json, 3",
        "src/test/resources/tintwright/files/percent.csv, 4",
        "src/test/resources/tintwright/files/colours.csv, 5",
        "src/test/resources/tintwright/files/pairs.txt, 6",
        "src/test/resources/tintwright/files/lab.txt, 7",
        "src/test/resources/tintwright/files/exchange.cxf, 8"
    })
    void isReadOrRefusedInOneSentence(String name, long seed, @TempDir Path folder) throws Exception {
        byte[] good = Files.readAllBytes(Path.of(name));
        Reader reader = name.endsWith("shelf.json")
                ? ShelfFile::read
                : name.endsWith("bow.json")
                        ? TargetFile::read
                        : name.endsWith(".json")
                                ? file -> ChipsFile.read(file, SAID)
                                : file -> InstrumentFile.read(file, SAID);
        Random chance = new Random(seed);
        Path file = folder.resolve("damaged");
        int refused = 0;
        int tries = 400;
        for (int i = 0; i < tries; i++) {
            byte[] bad = damaged(good, chance);
            Files.write(file, bad);
            try {
                reader.read(file);
            } catch (FileProblem e) {
                refused++;
                assertTrue(e.getMessage().startsWith(file.toString()), e.getMessage());
                assertEquals(1, e.getMessage().lines().count(), e.getMessage());
                assertTrue(e.isAboutInput(), e.getMessage());
            }
            assertEquals(bad.length, Files.size(file));
        }
        assertTrue(refused > tries / 20, "damage must be noticed at times: " + refused);
    }

    private static byte[] damaged(byte[] good, Random chance) {
        int at = chance.nextInt(good.length);
        return switch (chance.nextInt(4)) {
            case 0 -> java.util.Arrays.copyOf(good, at);
            case 1 -> {
                byte[] bad = good.clone();
                bad[at] = (byte) chance.nextInt(256);
                yield bad;
            }
            case 2 -> {
                int to = Math.min(good.length, at + 1 + chance.nextInt(40));
                String text = new String(good, 0, at, StandardCharsets.ISO_8859_1)
                        + new String(good, to, good.length - to, StandardCharsets.ISO_8859_1);
                yield text.getBytes(StandardCharsets.ISO_8859_1);
            }
            default -> {
                char one = STRIKING.charAt(chance.nextInt(STRIKING.length()));
                String text = new String(good, StandardCharsets.UTF_8);
                int place = Math.min(at, text.length());
                yield (text.substring(0, place) + one + text.substring(place)).getBytes(StandardCharsets.UTF_8);
            }
        };
    }
}
