package tintwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tintwright.demo.MeteredShop;

/** The field names that docs/formats.md promises for {@code match --json} are the ones that come out, in that order. */
class AnswerFieldsDocumentTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @Test
    void matchAnswersWithTheFieldsOfTheDocument() throws Exception {
        JsonNode promised = example("match");
        JsonNode answered = answer("match", "--place", "port bow", "--json");
        assertEquals(names(promised), names(answered));
        assertEquals(names(promised.get("target")), names(answered.get("target")));
        JsonNode recipe = answered.get("recipes").get(0);
        assertEquals(names(promised.get("recipes").get(0)), names(recipe));
        for (String list : List.of("parts", "lights")) {
            assertEquals(
                    names(promised.get("recipes").get(0).get(list).get(0)),
                    names(recipe.get(list).get(0)));
        }
        JsonNode learned = answer(
                "learn",
                "--shelf",
                MeteredShop.SHELF_FILE,
                "--chips",
                "src/test/resources/tintwright/demo/contradictory-chip.json",
                "--look",
                "--json");
        assertEquals(
                names(promised.get("doubts").get(0)),
                names(learned.get("doubts").get(0)));
    }

    @Test
    void shelfAndLearnNameTheirFieldsInTheDocument() throws Exception {
        String document = Files.readString(Path.of("docs/formats.md"));
        JsonNode shelf = answer("shelf", "--json");
        JsonNode learned = answer(
                "learn",
                "--shelf",
                MeteredShop.SHELF_FILE,
                "--chips",
                "src/test/resources/tintwright/demo/contradictory-chip.json",
                "--look",
                "--json");
        List<String> all = new ArrayList<>(names(shelf));
        all.addAll(names(shelf.get("items").get(0)));
        all.addAll(names(learned));
        all.addAll(names(learned.get("changes").get(0)));
        for (String name : all) {
            assertTrue(document.contains("`" + name + "`"), name + " is not in docs/formats.md");
        }
    }

    private static JsonNode answer(String... args) throws Exception {
        CommandLineTest.Ran ran = CommandLineTest.run(Commands.all(), args);
        assertEquals(0, ran.code(), ran.err());
        return JSON.readTree(ran.out());
    }

    private static JsonNode example(String command) throws Exception {
        Matcher block = Pattern.compile("```json\\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(Path.of("docs/formats.md")));
        while (block.find()) {
            JsonNode json = JSON.readTree(block.group(1));
            if (command.equals(json.path("command").asText())) {
                return json;
            }
        }
        throw new AssertionError("docs/formats.md has no example of " + command);
    }

    private static List<String> names(JsonNode object) {
        return object.properties().stream().map(Map.Entry::getKey).toList();
    }
}
