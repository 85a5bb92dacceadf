package tintwright.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tintwright.shelf.Chip;
import tintwright.shelf.Shelf;
import tintwright.shelf.Tint;
import tintwright.shelf.knowledge.Doubt;
import tintwright.shelf.knowledge.Knowledge;

/** Let new chips teach the shelf, and see what they changed. */
public final class LearnBench {
    private LearnBench() {}

    /**
     * What chips did to what was thought of one tint.
     *
     * @param strength  how many times as strong as was thought, 1 for no change
     * @param before    how well its strength was known, one standard deviation in ln
     * @param after     how well it is known now
     */
    public record Change(String id, String name, double strength, double before, double after) {}

    /**
     * @param before  what was known
     * @param after   what is known with the chips; its shelf holds them
     * @param added   the chips that came in
     * @param changes one for each tint that the chips hold
     * @param doubts  chips, old or new, that contradict the rest
     */
    public record Learned(
            Knowledge before, Knowledge after, List<Chip> added, List<Change> changes, List<Doubt> doubts) {}

    /**
     * @throws IllegalArgumentException when a chip has the name of another, or holds what is not on the shelf
     */
    public static Learned learn(Shelf shelf, List<Chip> chips) {
        if (chips.isEmpty()) {
            throw new IllegalArgumentException("there is no chip to learn from; name at least one");
        }
        List<Chip> all = new ArrayList<>(shelf.chips());
        all.addAll(chips);
        Knowledge before = Knowledge.of(shelf);
        Knowledge after = Knowledge.of(shelf.withChips(all));
        List<Change> changes = new ArrayList<>();
        for (Tint tint : shelf.tints()) {
            if (chips.stream().anyMatch(chip -> chip.parts().grams(tint.id()) > 0)) {
                changes.add(new Change(
                        tint.id(),
                        tint.name(),
                        strength(after, tint) / strength(before, tint),
                        before.strengthDeviation(tint.id()),
                        after.strengthDeviation(tint.id())));
            }
        }
        return new Learned(before, after, List.copyOf(chips), changes, after.doubts());
    }

    private static double strength(Knowledge knowledge, Tint tint) {
        return Arrays.stream(knowledge.absorption()[knowledge.ids().indexOf(tint.id())])
                .sum();
    }
}
