package tintwright.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.log.BoatStory;
import tintwright.bench.log.ShopLog;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;

class DemoLogTest {
    @Test
    void theFileIsWhatTheGeneratorMakes(@TempDir Path folder) throws Exception {
        DemoLogGenerator.write(folder);
        assertEquals(
                Files.readString(folder.resolve("log/demo-0001.jsonl")),
                Files.readString(Path.of("swatches/log/demo-0001.jsonl")));
    }

    @Test
    void itTellsHowTheBowFadedAndTheQuarterYellowed() throws Exception {
        try (ShopLog log = ShopLog.demo(Clock.systemUTC())) {
            assertTrue(log.book().troubles().isEmpty(), log.book().troubles().toString());
            Noted<Page.Boat> boat = log.boat("tarrowmere");
            BoatStory story = BoatStory.of(log, boat);
            BoatStory.Moved bow = story.places().get(0).moved().orElseThrow();
            BoatStory.Moved stern = story.places().get(1).moved().orElseThrow();
            assertTrue(bow.lighter() > 1 && bow.deltaE() > 1, bow.toString());
            assertTrue(stern.yellower() > 1, stern.toString());
            assertEquals("bow 2", log.cup(boat, Optional.empty()).page().name());
        }
    }
}
