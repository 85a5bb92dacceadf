package tintwright.window.job;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import tintwright.bench.job.Job;
import tintwright.cup.Cup;
import tintwright.cup.CupDeeds;
import tintwright.cup.CupEntry;
import tintwright.fill.repair.RepairLine;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.shelf.Chip;
import tintwright.shelf.Shelf;
import tintwright.units.Grams;

/** What one change of the job was, in a few words: whoever takes it back may be at another station by then. */
final class Changed {
    private Changed() {}

    /**
     * @param before the job without the change
     * @param after  the job with it
     */
    static String words(Job before, Job after) {
        if (!before.boat().equals(after.boat())) {
            return after.boat().isBlank() ? "the boat" : "the boat " + after.boat();
        }
        if (!before.cup().equals(after.cup())) {
            return cup(before, after);
        }
        if (!before.places().equals(after.places())) {
            return places(before.places(), after.places());
        }
        if (!before.shelf().equals(after.shelf())) {
            return shelf(before.shelf(), after.shelf());
        }
        if (before.place() != after.place()) {
            return "the choice of "
                    + (after.place() < 0
                            ? "a place"
                            : after.places().get(after.place()).place());
        }
        if (!before.ahead().equals(after.ahead())) {
            return "the choice of a way back";
        }
        if (before.grams() != after.grams()) {
            return "how much to mix, " + Grams.about(after.grams());
        }
        if (before.scaleStep() != after.scaleStep()) {
            return "what the scale shows, " + Grams.onScale(after.scaleStep(), after.scaleStep());
        }
        if (!before.off().equals(after.off())) {
            return off(before, after);
        }
        return before.fill().equals(after.fill()) ? "nothing that is to be seen" : fill(before, after);
    }

    private static String cup(Job before, Job after) {
        if (before.cup().isEmpty()) {
            return "the cup " + after.cup().get().name();
        }
        if (after.cup().isEmpty()
                || !after.cup().get().name().equals(before.cup().get().name())) {
            return "the end of the cup " + before.cup().get().name();
        }
        List<CupEntry> were = standing(before);
        List<CupEntry> are = standing(after);
        boolean longer = are.size() > were.size();
        if (are.size() == were.size()) {
            return "a change of the cup " + after.cup().get().name();
        }
        CupEntry last = longer ? are.get(were.size()) : were.get(are.size());
        return (longer ? "" : "taking back ") + CupDeeds.words(last.deed(), after.shelf());
    }

    private static List<CupEntry> standing(Job job) {
        return job.cup().map(Cup::standing).orElse(List.of());
    }

    private static String places(List<PlaceReadings> before, List<PlaceReadings> after) {
        List<String> came = new ArrayList<>(names(after));
        came.removeAll(names(before));
        if (!came.isEmpty()) {
            return "the place " + String.join(", ", came);
        }
        List<String> went = new ArrayList<>(names(before));
        went.removeAll(names(after));
        if (!went.isEmpty()) {
            return "taking away the place " + String.join(", ", went);
        }
        for (int i = 0; i < Math.min(before.size(), after.size()); i++) {
            if (!before.get(i).equals(after.get(i))) {
                return readings(
                        before.get(i).readings(),
                        after.get(i).readings(),
                        after.get(i).place());
            }
        }
        return "the order of the places";
    }

    private static List<String> names(List<PlaceReadings> places) {
        return places.stream().map(PlaceReadings::place).toList();
    }

    private static String readings(List<Reading> before, List<Reading> after, String place) {
        boolean more = after.size() > before.size();
        List<Reading> longer = more ? after : before;
        List<Reading> shorter = more ? before : after;
        int at = 0;
        while (at < shorter.size() && shorter.get(at).equals(longer.get(at))) {
            at++;
        }
        int many = longer.size() - shorter.size();
        String which = many > 1 ? many + " readings of " : "reading " + (at + 1) + " of ";
        return (more ? "" : "removing ") + which + place;
    }

    private static String shelf(Shelf before, Shelf after) {
        String tint = named("the tint ", before.tints(), after.tints(), each -> each.name());
        String leftover = named("the leftover ", before.leftovers(), after.leftovers(), each -> each.name());
        if (!tint.isEmpty()) {
            return tint;
        }
        if (!leftover.isEmpty()) {
            return leftover;
        }
        return before.chips().size() == after.chips().size()
                ? "a change of the shelf"
                : named("the chip ", before.chips(), after.chips(), Chip::id);
    }

    /** @return the name that came or went; empty when as many are there as before */
    private static <T> String named(String what, List<T> before, List<T> after, Function<T, String> name) {
        if (before.size() == after.size()) {
            return "";
        }
        boolean more = after.size() > before.size();
        List<String> left =
                new ArrayList<>((more ? after : before).stream().map(name).toList());
        left.removeAll((more ? before : after).stream().map(name).toList());
        return (more ? "" : "taking away ") + what + String.join(", ", left);
    }

    private static String off(Job before, Job after) {
        boolean out = after.off().size() > before.off().size();
        List<String> left = new ArrayList<>(out ? after.off() : before.off());
        left.removeAll(out ? before.off() : after.off());
        return (out ? "leaving out " : "using ")
                + String.join(", ", left.stream().map(after.shelf()::nameOf).toList())
                + (out ? "" : " again");
    }

    private static String fill(Job before, Job after) {
        int were = before.fill().lines().size();
        int are = after.fill().lines().size();
        if (were == are) {
            return "a change at Fill";
        }
        List<RepairLine> left = new ArrayList<>(
                are > were ? after.fill().lines() : before.fill().lines());
        left.removeAll(are > were ? before.fill().lines() : after.fill().lines());
        return (are > were ? "the repair " : "taking away the repair ")
                + (left.isEmpty() ? "" : left.get(0).name());
    }
}
