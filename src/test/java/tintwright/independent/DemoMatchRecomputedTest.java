package tintwright.independent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tintwright.Reference;
import tintwright.command.Commands;
import tintwright.demo.MeteredShop;

/** The match of the invented boat, recomputed from what it prints without any class of the engine. */
class DemoMatchRecomputedTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @ParameterizedTest
    @ValueSource(strings = {MeteredShop.BOW_FILE, "swatches/tarrowmere/stern-quarter.json"})
    void comesWithinThreeTenthsByAnIndependentPath(String file) throws IOException {
        PublishedPath path = new PublishedPath();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int code = Commands.run(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                System.err,
                "match",
                "--target",
                file,
                "--shelf",
                MeteredShop.SHELF_FILE,
                "--json");
        assertEquals(0, code);
        JsonNode best = JSON.readTree(out.toString(StandardCharsets.UTF_8))
                .get("recipes")
                .get(0);
        double[] mix = path.lab(numbers(best.get("predictedReflectance")));
        double[] hull = path.lab(mean(JSON.readTree(new File(file)).get("readings")));
        double[] printed = numbers(best.get("predicted").get("lab"));
        for (int axis = 0; axis < 3; axis++) {
            // Straight lines between 10 nm values instead of curves: a few hundredths on a smooth reflectance.
            assertEquals(mix[axis], printed[axis], 0.15, "axis " + axis);
        }
        double independent = PublishedPath.difference(mix, hull);
        assertTrue(independent < 0.3, "CIEDE2000 " + independent);
        assertEquals(independent, best.get("deltaE").doubleValue(), 0.03);
    }

    /** The independent formula itself, on the 34 pairs of Sharma, Wu, Dalal (2005), table 1. */
    @Test
    void theIndependentFormulaAgreesWithThePublishedPairs() {
        int pairs = 0;
        for (String[] row : Reference.rows("ciede2000/sharma-2005.csv")) {
            double[] n = new double[row.length];
            for (int i = 0; i < n.length; i++) {
                n[i] = Double.parseDouble(row[i]);
            }
            int first = row.length - 7;
            assertEquals(
                    n[first + 6],
                    PublishedPath.difference(
                            new double[] {n[first], n[first + 1], n[first + 2]},
                            new double[] {n[first + 3], n[first + 4], n[first + 5]}),
                    0.00005,
                    "pair " + ++pairs);
        }
        assertEquals(34, pairs);
    }

    private static double[] numbers(JsonNode list) {
        double[] numbers = new double[list.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = list.get(i).doubleValue();
        }
        return numbers;
    }

    private static double[] mean(JsonNode readings) {
        double[] mean = new double[31];
        for (JsonNode reading : readings) {
            double[] values = numbers(reading.get("spectrum").get("values"));
            for (int i = 0; i < mean.length; i++) {
                mean[i] += values[i] / readings.size();
            }
        }
        return mean;
    }
}
