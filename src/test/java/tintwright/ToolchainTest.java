package tintwright;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ToolchainTest {
    @Test
    void runsOnJava17OrNewer() {
        assertTrue(Runtime.version().feature() >= 17);
    }
}
