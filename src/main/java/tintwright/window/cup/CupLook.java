package tintwright.window.cup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import tintwright.bench.CupBench;
import tintwright.bench.job.Job;
import tintwright.colour.DifferenceWords;
import tintwright.cup.Cup;
import tintwright.cup.CupDeeds;
import tintwright.cup.CupState;
import tintwright.cup.Deed;
import tintwright.cup.Dose;
import tintwright.cup.Outlook;
import tintwright.cup.Plan;
import tintwright.cup.WayWords;
import tintwright.reading.FilmState;
import tintwright.reading.Reading;
import tintwright.shelf.Parts;
import tintwright.shelf.Shelf;
import tintwright.shelf.Tint;
import tintwright.units.Grams;

/** From a cup on the bench to what its station shows of it, all in one piece. */
final class CupLook {
    private CupLook() {}

    /** @param goneOn names of cups with the chips that were gone on from although they disagree */
    static CupModel.InHand at(CupBench bench, Job now, Set<String> goneOn) {
        Cup cup = bench.cup();
        Plan plan = bench.plan();
        Shelf shelf = now.shelf();
        Optional<Dispute> dispute = bench.contradiction().map(found -> Dispute.of(found, bench));
        boolean unsettled = dispute.isPresent()
                && !goneOn.contains(cup.name() + dispute.get().chip());
        CupDeeds deeds = bench.deeds(now.ahead(), unsettled);
        List<WayWords.Said> ways =
                plan instanceof Plan.WayBack && now.ahead().isEmpty() && !unsettled ? bench.waysSaid() : List.of();
        Optional<Outlook> outlook = bench.outlook();
        CupPictures drawn = CupPictures.of(bench);
        List<String> today = shelf.tints().stream()
                .map(Tint::id)
                .filter(id -> !now.off().contains(id))
                .toList();
        // Before anything is in, the pictures show what goes in first: never bare grey, never an earlier cup.
        boolean empty = bench.state().parts().isEmpty();
        Parts all = bench.state().parts().orElseGet(() -> Parts.of(Map.of(cup.base(), 1.0)));
        String name = empty ? "White" : "Cup";
        Optional<Reading> chip = (dispute.isPresent()
                        ? bench.state().samples().stream().reduce((a, b) -> b)
                        : bench.state().unread().isEmpty()
                                ? bench.state().lastSample()
                                : Optional.<CupState.Sample>empty())
                .map(sample -> sample.read().reading())
                .filter(reading -> reading.film() == FilmState.CURED);
        List<Deed> doses = !now.ahead().isEmpty()
                ? now.ahead()
                : plan instanceof Plan.Doses planned
                        ? planned.doses().stream().map(Dose::deed).toList()
                        : List.of();
        String field = empty
                ? "White, to go in first"
                : chip.isEmpty() || dispute.isPresent() ? "Cup, as computed" : "Cup, by weights and chip";
        String compared =
                empty ? "Hull and white" : dispute.isPresent() ? "By the weights, hull and cup" : "Hull and cup";
        return new CupModel.InHand(
                cup,
                deeds,
                contents(bench, shelf),
                drawn.cup(
                        field,
                        compared,
                        all,
                        chip,
                        empty || dispute.isPresent()
                                ? OptionalDouble.empty()
                                : outlook.stream()
                                        .mapToDouble(Outlook::within90)
                                        .findFirst()),
                drawn.doses(name, all, cup.base(), doses),
                drawn.rose(name, all, today, CupPictures.parts(doses)),
                outlook.map(seen -> close(seen, dispute)).orElse("not begun"),
                dispute.isPresent() ? "By the weights, or by the chip." : deeds.verdict(),
                outlook.map(seen -> dispute.isPresent() ? "not sure" : DifferenceWords.likely(seen.within90()))
                        .orElse("\u2013"),
                dispute.isPresent()
                        ? "chip and weights disagree"
                        : outlook.isPresent() ? DifferenceWords.LIKELY_MEANS : "",
                ways,
                drawn.shade(cup.base()),
                dispute);
    }

    /** Two stories are two figures: neither is hidden behind the other. */
    private static String close(Outlook seen, Optional<Dispute> dispute) {
        return dispute.map(Dispute::byChip)
                .filter(byChip -> !byChip.isEmpty())
                .map(byChip -> DifferenceWords.size(seen.deltaE()) + " or " + byChip + " off")
                .orElse(DifferenceWords.off(seen.deltaE()));
    }

    private static String contents(CupBench bench, Shelf shelf) {
        List<String> words = new ArrayList<>();
        bench.state().grams().forEach((id, grams) -> words.add(Grams.about(grams) + " " + shelf.nameOf(id)));
        String inside = words.isEmpty()
                ? "Nothing is in it yet."
                : say("%s in the cup: %s.", Grams.about(bench.state().mass()), String.join(", ", words));
        return bench.state().reserve() > 0
                ? inside
                        + say(
                                " %s of white held back.",
                                Grams.about(bench.state().reserve()))
                : inside;
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
