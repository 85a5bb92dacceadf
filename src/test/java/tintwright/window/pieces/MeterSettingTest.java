package tintwright.window.pieces;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javafx.scene.control.ComboBox;
import org.junit.jupiter.api.Test;
import tintwright.colour.Geometry;
import tintwright.colour.Viewing;
import tintwright.window.Stagehand;

/** What a meter can be said to be set to. */
class MeterSettingTest {
    @Test
    void everySettingHasWordsOfItsOwn() {
        Stagehand.onScreen(() -> {
            MeterSetting setting = new MeterSetting();
            assertEquals("daylight, without gloss", setting.words());
            ComboBox<?> lights = (ComboBox<?>) setting.lookup("#meter-light");
            List<Viewing> offered =
                    lights.getItems().stream().map(Viewing.class::cast).toList();
            assertTrue(offered.containsAll(List.of(Viewing.D65_10, Viewing.D65_2, Viewing.D50_2, Viewing.D75_10)));
            List<String> words = offered.stream()
                    .map(viewing -> {
                        setting.setTo(viewing, Geometry.SPECULAR_INCLUDED);
                        assertEquals(viewing, setting.viewing());
                        return setting.words();
                    })
                    .toList();
            assertEquals(words.stream().distinct().toList(), words);
            assertTrue(words.contains("north sky, with gloss"), words.toString());
            return null;
        });
    }

    @Test
    void whatIsNotOfferedIsSaidByItsKind() {
        Stagehand.onScreen(() -> {
            MeterSetting setting = new MeterSetting();
            setting.setTo(Viewing.LED_B3_10, Geometry.SPECULAR_EXCLUDED);
            assertEquals("LED, without gloss", setting.words());
            return null;
        });
    }
}
