package tintwright.window.cup;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import tintwright.bench.job.Job;
import tintwright.cup.Cup;
import tintwright.cup.Deed;
import tintwright.cup.Dose;
import tintwright.cup.Way;
import tintwright.shelf.Leftover;

/** From a way that was chosen to the steps that stand ahead. */
final class FollowWay {
    private FollowWay() {}

    /**
     * @param freshName a name for a clean cup
     * @return the job once a way is chosen: its steps stand ahead, and for a fresh cup the dark one is set aside
     */
    static Job following(Job before, Way way, Supplier<String> freshName, LocalDate today) {
        Cup cup = before.cup().orElseThrow();
        if (way instanceof Way.Climb climb) {
            return before.after(cup, climb.doses().stream().map(Dose::deed).toList());
        }
        if (way instanceof Way.Split split) {
            List<Deed> ahead = new ArrayList<>(List.of(new Deed.SetAside(split.setAside(), split.name())));
            split.doses().forEach(dose -> ahead.add(dose.deed()));
            return before.after(cup, ahead);
        }
        if (way instanceof Way.Fresh fresh) {
            return fresh(before, cup, fresh, freshName.get(), today);
        }
        return before;
    }

    private static Job fresh(Job before, Cup cup, Way.Fresh fresh, String name, LocalDate today) {
        String id = "aside-" + (before.shelf().leftovers().size() + 1);
        while (!before.shelf().nameOf(id).equals(id)) {
            id = id + "-b";
        }
        Leftover aside =
                new Leftover(id, fresh.name(), cup.state().parts().orElseThrow(), List.of(), Optional.of(today));
        Cup clean = Cup.empty(name, cup.hull(), cup.wantedGrams(), cup.scaleStep(), cup.base());
        return before.with(before.shelf().with(aside))
                .after(
                        clean,
                        List.of(
                                new Deed.Weighed(cup.base(), fresh.white(), cup.scaleStep()),
                                new Deed.Weighed(id, fresh.darkFirst(), cup.scaleStep())));
    }
}
