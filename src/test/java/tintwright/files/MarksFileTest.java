package tintwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tintwright.reading.FilmState;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.ReferenceCard;
import tintwright.reading.photo.card.Spot;

class MarksFileTest {
    private static final String START = "{\"formatVersion\": 1, \"kind\": \"marks\", ";

    @TempDir
    Path folder;

    private static String message(String text) {
        return assertThrows(
                        FileProblem.class, () -> MarksFile.from(JsonPlace.parse("bow.marks.json", text), Path.of(".")))
                .getMessage();
    }

    @Test
    void keepsWhatWasMarked() throws Exception {
        Marks marks = MarksFile.from(JsonPlace.parse("m", START + """
                "linearCodes": true,
                "cards": [{"card": "five-by-five", "corners": [[10, 20], [610, 25], [605, 420], [12, 410]]}],
                "known": [{"name": "base", "lab": [93, -1, 3], "light": "D65", "observer": 10, "sigma": 0.4,
                           "at": [700, 100], "radius": 30}],
                "spots": [{"name": "bow", "at": [800.5, 300], "radius": 40}],
                "chips": [{"name": "first cup", "at": [900, 300], "radius": 20, "film": "wet",
                           "parts": {"white": 99.5, "soot": 0.5}}]}"""), Path.of("."));
        Path file = folder.resolve("photo.jpg.marks.json");
        MarksFile.keep(file, Marks.NONE, marks);
        Marks again = MarksFile.read(file);
        assertEquals(marks, again);
        assertEquals(25, again.cards().get(0).card().patches().size());
        assertEquals(new PixelPoint(605, 420), again.cards().get(0).corners().get(2));
        Spot chip = again.spots().get(1);
        assertEquals(Spot.Purpose.CHIP, chip.purpose());
        assertEquals(FilmState.WET, chip.film());
        assertEquals(0.5, chip.parts().get("soot"));
        assertTrue(again.linearCodes());
    }

    @Test
    void takesACardFromItsOwnFileBesideTheMarks() throws Exception {
        Files.writeString(folder.resolve("mine.json"), """
                {"formatVersion": 1, "kind": "card", "name": "mine", "rows": 1, "columns": 2,
                 "patches": [{"name": "w", "spectrum": {"firstNm": 400, "stepNm": 20, "values":
                   [0.8,0.8,0.8,0.8,0.8,0.8,0.8,0.8,0.8,0.8,0.8,0.8,0.8,0.8,0.8,0.8]}},
                  {"name": "g", "spectrum": {"firstNm": 400, "stepNm": 20, "values":
                   [0.2,0.2,0.2,0.2,0.2,0.2,0.2,0.2,0.2,0.2,0.2,0.2,0.2,0.2,0.2,0.2]}}]}""");
        Path file = folder.resolve("m.json");
        Files.writeString(
                file,
                START + "\"cards\": [{\"card\": \"mine.json\","
                        + " \"corners\": [[0, 0], [20, 0], [20, 10], [0, 10]]}]}");
        ReferenceCard card = MarksFile.read(file).cards().get(0).card();
        assertEquals("mine", card.name());
        assertTrue(card.patches().get(1).reflectance().isPresent());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"cards\": [{\"card\": \"five-by-five\", \"corners\": [[0,0],[10,10],[10,0],[0,10]]}]} | cards[0].corners | crossed",
                "\"cards\": [{\"card\": \"five-by-five\", \"corners\": [[0,0],[10,0],[10,10]]}]} | cards[0].corners | four corners",
                "\"cards\": [{\"card\": \"deck-25\", \"corners\": []}]} | cards[0].card | travels with the program",
                "\"cards\": [{\"card\": \"gone.json\", \"corners\": []}]} | gone.json | not there",
                "\"cards\": [{\"card\": \"grey-six\", \"centres\": [[0,0],[1,0],[1,1],[0,1]]}]} | cards[0].centres | outer corners",
                "\"spots\": [{\"name\": \"bow\", \"at\": [3], \"radius\": 4}]} | spots[0].at | two numbers",
                "\"spots\": [{\"name\": \"bow\", \"at\": [3, 4], \"radius\": 0}]} | spots[0] | above 0",
                "\"spots\": [{\"name\": \"a\", \"at\": [3, 4], \"radius\": 5}, {\"name\": \"a\", \"at\": [3, 9],"
                        + " \"radius\": 5}]} | m | two spots",
                "\"chips\": [{\"name\": \"c\", \"at\": [3, 4], \"radius\": 5}]} | chips[0] | parts",
                "\"known\": [{\"name\": \"w\", \"lab\": [90, 0, 0], \"at\": [3, 4], \"radius\": 5}]} | known[0] | which light",
                "\"dots\": []} | dots | no such field"
            })
    void saysWhereAndWhatIsWrong(String rest, String where, String what) {
        String message = message(START + rest);
        assertTrue(message.contains(where) && message.contains(what), message);
    }

    static Iterable<String> shipped() {
        return CardFile.SHIPPED;
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyCardThatTravelsWithTheProgramCanBeReadAndWritten(String name) throws Exception {
        ReferenceCard card = CardFile.shipped(name);
        Path file = folder.resolve("card.json");
        TextFile.write(file, CardFile.text(card));
        assertEquals(card, CardFile.read(file));
    }

    @Test
    void aCardWithMissingColoursIsRefusedWithItsPlace() {
        String start = "{\"formatVersion\": 1, \"kind\": \"card\", \"rows\": 1, \"columns\": 2, \"light\": \"D50\","
                + " \"observer\": 2, \"patches\": [{\"name\": \"w\", \"lab\": [95, 0, 1]}";
        String few = assertThrows(FileProblem.class, () -> CardFile.from(JsonPlace.parse("c", start + "]}")))
                .getMessage();
        assertTrue(few.contains("needs 2 colours") && few.contains("there are 1"), few);
        String bare = assertThrows(
                        FileProblem.class, () -> CardFile.from(JsonPlace.parse("c", start + ", {\"name\": \"k\"}]}")))
                .getMessage();
        assertTrue(bare.contains("patches[1]") && bare.contains("no colour"), bare);
    }
}
