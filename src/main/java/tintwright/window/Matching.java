package tintwright.window;

import tintwright.match.MatchAnswer;
import tintwright.match.Target;
import tintwright.match.Wish;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Knowledge;

/** What the plan needs of the engine. */
interface Matching {
    /** @return what to hit, from all that was read at a place */
    Target target(PlaceReadings place);

    MatchAnswer match(Knowledge knowledge, Wish wish);
}
