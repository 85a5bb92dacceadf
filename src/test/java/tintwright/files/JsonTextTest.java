package tintwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class JsonTextTest {
    @Test
    void keepsWhatIsShortOnOneLineAndTheOrderOfFields() {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("name", "Sky \"7\"\n");
        tree.put("parts", Map.of("white", 50.0));
        tree.put("spectrum", Collections.nCopies(40, 0.125));
        tree.put("long", List.of("a".repeat(60), "b".repeat(60)));
        tree.put("none", null);
        assertEquals(
                """
                {
                  "name": "Sky \\"7\\"\\n",
                  "parts": {"white": 50},
                  "spectrum": [%s],
                  "long": [
                    "%s",
                    "%s"
                  ],
                  "none": null
                }
                """.formatted(String.join(", ", Collections.nCopies(40, "0.125")), "a".repeat(60), "b".repeat(60)),
                JsonText.of(tree));
    }

    @Test
    void writesNumbersWithoutAnExponentAndRefusesNotANumber() {
        assertEquals("[0.00001, 100000000, 0, -0.3, 7]\n", JsonText.of(List.of(1e-5, 1e8, -0.0, -0.3, 7)));
        assertThrows(IllegalArgumentException.class, () -> JsonText.of(Double.NaN));
    }
}
