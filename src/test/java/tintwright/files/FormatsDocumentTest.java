package tintwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tintwright.bench.job.BenchFile;
import tintwright.colour.Illuminant;
import tintwright.files.instrument.ChipsFile;

/** The examples in docs/formats.md are read by the program as they stand there. */
class FormatsDocumentTest {
    @Test
    void everyLightIsNamed() throws Exception {
        String said = "`light` is one of " + String.join(", ", Illuminant.names()) + " or ";
        assertTrue(Files.readString(Path.of("docs/formats.md")).contains(said), said);
    }

    @Test
    void everyExampleOfAFileCanBeRead() throws Exception {
        String document = Files.readString(Path.of("docs/formats.md"));
        Matcher block = Pattern.compile("```json\\n(.*?)```", Pattern.DOTALL).matcher(document);
        Set<String> read = new TreeSet<>();
        while (block.find()) {
            JsonPlace example = JsonPlace.parse("docs/formats.md", block.group(1));
            String kind = example.text("kind", example.has("film") ? "reading" : "other");
            switch (kind) {
                case "shelf" -> ShelfFile.from(example);
                case "target" -> TargetFile.from(example);
                case "fill-job" -> FillJobFile.from(example);
                case "cup" -> CupFile.from(example);
                case "chips" -> ChipsFile.from(example);
                case "sheet" -> SheetFile.from(example);
                case "bench" -> BenchFile.from(example);
                case "boats" -> BoatsFile.from(example);
                case "clocks" -> ClocksFile.from(example);
                case "settings" -> SettingsFile.from(example);
                case "noted-times" -> NotedTimesFile.from(example);
                case "reading" -> ReadingShape.from(example);
                default -> {
                    continue;
                }
            }
            read.add(kind);
        }
        assertEquals(
                Set.of(
                        "bench",
                        "boats",
                        "chips",
                        "clocks",
                        "cup",
                        "fill-job",
                        "noted-times",
                        "reading",
                        "settings",
                        "sheet",
                        "shelf",
                        "target"),
                read);
    }
}
