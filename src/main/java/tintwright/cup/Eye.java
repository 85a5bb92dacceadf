package tintwright.cup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is thought of the eye that looked at a cup's dabs.
 *
 * @param answers  looks that told something
 * @param poorness how many times more its looks stray than usual, 1 to 3, by how its answers fit together
 * @param poor     true when it is likely that answers by this eye, in this light, will not bring the cup near
 * @param doubted  id of the entry of the last look, when by all else that is known it is likelier a slip than not
 */
public record Eye(int answers, double poorness, boolean poor, Optional<String> doubted) {
    static final Eye CLOSED = new Eye(0, 1, false, Optional.empty());

    /** @return what to ask the person whose eye it is, one sentence a line; mostly nothing */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (doubted.isPresent()) {
            notes.add("What was seen last does not fit what was weighed and seen before, so it was kept and not"
                    + " believed: look once more, at the same dab, and say again what you see. Said twice it counts.");
        }
        if (poor) {
            notes.add("The answers do not fit together well. A photo of a dab beside the hull would help more now; or"
                    + " look in daylight without direct sun, gloss against gloss.");
        }
        return notes;
    }
}
