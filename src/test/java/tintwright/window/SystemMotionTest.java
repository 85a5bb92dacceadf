package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the systems answer when they are asked whether things may move. */
class SystemMotionTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Linux      | false | false
            Linux      | true  | true
            Linux      | No such schema | true
            Mac OS X   | 1 | false
            Mac OS X   | 0 | true
            Mac OS X   | The domain/default pair does not exist | true
            Windows 11 | UserPreferencesMask    REG_BINARY    9E3E078012000000 | true
            Windows 11 | UserPreferencesMask    REG_BINARY    9032078010000000 | false
            FreeBSD    | false | true
            """)
    void itIsStillWhenTheSystemSaysSo(String system, String answer, boolean moves) {
        assertEquals(moves, SystemMotion.wanted(system, (List<String> command) -> answer));
    }
}
