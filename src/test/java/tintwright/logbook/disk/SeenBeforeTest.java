package tintwright.logbook.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SeenBeforeTest {
    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("seen").resolve("log.json");
    }

    @Test
    void whatTwoWindowsSawIsBothRemembered() {
        SeenBefore one = new SeenBefore(file);
        SeenBefore other = new SeenBefore(file);
        one.remember(Map.of("anna-0001.jsonl", 3, "bert-0001.jsonl", 9));
        other.remember(Map.of("anna-0002.jsonl", 2, "bert-0001.jsonl", 7));
        SeenBefore next = new SeenBefore(file);
        assertTrue(next.knows("anna-0001.jsonl") && next.knows("anna-0002.jsonl"));
        assertTrue(next.wasLonger("bert-0001.jsonl", 8));
        assertEquals(
                List.of("bert-0001.jsonl"),
                next.missing(Map.of("anna-0001.jsonl", 3, "anna-0002.jsonl", 2), name -> false).stream()
                        .map(Trouble::file)
                        .toList());
    }

    @Test
    void harmedItStartsAgainFromWhatIsThere() throws Exception {
        new SeenBefore(file).remember(Map.of("anna-0001.jsonl", 3));
        Files.writeString(file, "{\"anna-0001.jsonl\": \"thr");
        SeenBefore again = new SeenBefore(file);
        assertFalse(again.knows("anna-0001.jsonl"));
        again.remember(Map.of("anna-0001.jsonl", 4));
        assertTrue(new SeenBefore(file).wasLonger("anna-0001.jsonl", 3));
    }
}
