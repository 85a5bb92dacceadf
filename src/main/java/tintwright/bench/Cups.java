package tintwright.bench;

import java.util.function.BiFunction;
import tintwright.cup.Cup;
import tintwright.cup.CupSight;
import tintwright.shelf.knowledge.Knowledge;

/**
 * The cup that several parts of a face show at once: it is looked at once for each change, however many ask. Safe for
 * several threads.
 */
public final class Cups {
    private final BiFunction<Knowledge, Cup, CupSight> look;
    private CupBench last;

    public Cups() {
        this(CupSight::of);
    }

    /** @param look what looks at a cup, so that a test can count how often that is done */
    public Cups(BiFunction<Knowledge, Cup, CupSight> look) {
        this.look = look;
    }

    /**
     * @return the bench at this cup: the same one as long as cup and knowledge stay
     * @throws IllegalArgumentException when the cup holds something that is not on this shelf
     */
    public synchronized CupBench at(Knowledge knowledge, Cup cup) {
        if (last == null || last.knows() != knowledge || !last.cup().equals(cup)) {
            last = CupBench.open(knowledge, cup, look);
        }
        return last;
    }

    /** A change was worked out: who shows it next finds it here. */
    public synchronized void now(CupBench changed) {
        last = changed;
    }
}
