package tintwright.match;

import org.junit.jupiter.api.Test;

/** What {@link PromisingStudy} plays for hundreds of shops, for a few. */
class PromisingTest {
    @Test
    void noBetterSetIsLost() {
        PromisingStudy.play(3);
    }
}
