package tintwright.bench.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ThisMachineTest {
    @Test
    void isKnownByWhatStaysWhenItIsRenamed() {
        List<String> marks = ThisMachine.marks();
        assertFalse(marks.isEmpty());
        assertEquals(marks, ThisMachine.marks());
        for (String mark : marks) {
            assertTrue(mark.matches("id \\S+|card ([0-9a-f]{2})+|system .+"), mark);
        }
    }
}
