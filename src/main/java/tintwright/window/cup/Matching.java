package tintwright.window.cup;

import tintwright.bench.MatchBench;
import tintwright.match.Target;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.knowledge.Knowledge;

/** What the plan needs of the engine. */
public interface Matching {
    /** @return what to hit, from all that was read at a place, as what is known of the shelf sees it */
    Target target(PlaceReadings place, Knowledge knowledge);

    /** @return the bench for what is known of a shelf; kept while that stays the same */
    MatchBench on(Knowledge knowledge);
}
