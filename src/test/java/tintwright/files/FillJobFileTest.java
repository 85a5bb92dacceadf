package tintwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tintwright.fill.FillOrder;
import tintwright.fill.FillPlanner;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.repair.CountersunkHole;
import tintwright.units.UnitSystem;

class FillJobFileTest {
    private static final String SMALL = """
            {"formatVersion": 1, "kind": "fill-job", "conditions": {"celsius": 20},
             "repairs": [{"name": "holes", "kind": "countersunk", "count": 3, "lie": "facing-up",
                          "hole": "3/16 in", "top": 10, "angle": 82, "depth": "8 mm"}],
             "catalyst": {"from": "typed", "percent": 2, "basis": "mass"}}
            """;

    private static FillOrder read(String text) throws FileProblem {
        return FillJobFile.from(JsonPlace.parse("job.json", text));
    }

    @Test
    void aJobComesBackAsItWasWritten(@TempDir Path folder) throws Exception {
        FillOrder demo = Demo.fillOrder();
        Path file = folder.resolve("job.json");
        TextFile.write(file, FillJobFile.text(demo));
        assertEquals(demo, FillJobFile.read(file));
        FillOrder small = read(SMALL);
        TextFile.write(file, FillJobFile.text(small));
        assertEquals(small, FillJobFile.read(file));
    }

    @Test
    void anOwnTableComesBackAsItWasWritten() throws Exception {
        FillOrder own = read(SMALL.replace("{\"from\": \"typed\", \"percent\": 2, \"basis\": \"mass\"}", """
                {"from": "own", "product": "plain white", "basis": "mass",
                 "rows": [{"celsius": 15, "percent": 2.5, "minutes": [25, 40]},
                          {"celsius": 25, "percent": 1.5, "minutes": [12, 18]}]}"""));
        assertTrue(own.job().catalyst() instanceof CatalystChoice.Own table
                && table.table().rows().size() == 2);
        assertEquals(own, read(FillJobFile.text(own)));
    }

    @Test
    void aSizeMayCarryItsOwnUnit() throws Exception {
        CountersunkHole hole =
                (CountersunkHole) read(SMALL).job().lines().get(0).repair();
        assertEquals(3.0 / 16 * 25.4, hole.holeMm(), 1e-12);
        assertEquals(8, hole.depthMm(), 1e-12);
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "\"top\": 10|\"top\": 2|repairs[0]: the countersink must be wider than its hole",
                "\"top\": 10|\"topp\": 10|\"topp\" is no size of the kind countersunk",
                "\"top\": 10,||top is missing",
                "\"count\": 3|\"count\": 0|count of holes must be 1 to 1000",
                "\"count\": 3|\"count\": 2.5|repairs[0].count: must be a whole number",
                "facing-up|sideways|repairs[0].lie: how the surface lies must be",
                "countersunk|dent|repairs[0].kind: the kind of repair must be one of",
                "\"percent\": 2|\"percent\": 4|catalyst: catalyst must be 1.2 to 3 %, was 4 % by mass",
                "\"basis\": \"mass\"|\"basis\": \"weight\"|catalyst.basis: a catalyst percentage must be by mass or by volume",
                ", \"basis\": \"mass\"||the field \"basis\" is missing",
                "8 mm|8 furlongs|depth must be in one of",
                "\"celsius\": 20|\"celsius\": \"warm\"|conditions.celsius: must be a number",
                "\"celsius\": 20|\"celsius\": 20, \"wind\": 3|conditions.wind: no such field is known here"
            })
    void aSlipIsNamedWithItsPlace(String from, String to, String words) {
        String text = SMALL.replace(from, to == null ? "" : to);
        assertTrue(!text.equals(SMALL), "the slip was made");
        String message = assertThrows(FileProblem.class, () -> read(text)).getMessage();
        assertTrue(message.startsWith("job.json") && message.contains(words), message);
    }

    @Test
    void thePlanForMachinesCarriesEveryGuardOfTheCatalyst() throws Exception {
        FillOrder demo = Demo.fillOrder();
        JsonNode plan = new ObjectMapper()
                .readTree(JsonText.of(FillPlanShape.toTree(FillPlanner.plan(demo.job()), UnitSystem.METRIC)));
        List<JsonNode> figures = plan.findParents("percent");
        assertEquals(1 + plan.get("batches").size(), figures.size());
        for (JsonNode figure : figures) {
            assertEquals("volume", figure.get("basis").textValue());
            assertEquals("[1.2,3]", figure.get("limitPercent").toString());
            assertTrue(figure.get("caution").textValue().contains("goggles"));
        }
        for (JsonNode batch : plan.get("batches")) {
            assertTrue(batch.get("catalyst").has("limitPercent")
                    && batch.get("catalyst").has("basis"));
        }
        assertTrue(Files.readString(Path.of("docs/formats.md")).contains("fill-job"));
    }
}
