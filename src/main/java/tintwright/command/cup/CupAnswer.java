package tintwright.command.cup;

import java.util.ArrayList;
import java.util.List;
import tintwright.bench.CupBench;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Figures;
import tintwright.cup.Contradiction;
import tintwright.cup.Cup;
import tintwright.cup.CupDeeds;
import tintwright.cup.CupEntry;
import tintwright.cup.Deed;
import tintwright.cup.Dose;
import tintwright.cup.Outlook;
import tintwright.cup.Plan;
import tintwright.cup.Way;
import tintwright.files.Fields;

/** What the cup commands say: in words, and as fields. */
public final class CupAnswer {
    private final CupBench bench;
    private final List<String> lines = new ArrayList<>();
    private final Fields fields = Fields.none();

    CupAnswer(CupBench bench) {
        this.bench = bench;
    }

    CupAnswer say(String line) {
        lines.add(line);
        return this;
    }

    CupAnswer field(String name, Object value) {
        fields.with(name, value);
        return this;
    }

    Cup cup() {
        return bench.cup();
    }

    Answer answer() {
        return new Answer(lines, fields);
    }

    /** What is in it and how it looks. */
    CupAnswer state() {
        CupBench.Depth depth = bench.depth();
        fields.with("name", bench.cup().name())
                .with("grams", bench.state().grams())
                .with("mass", bench.state().mass())
                .with("reserve", bench.state().reserve())
                .with(
                        "depth",
                        Fields.of("white", depth.white())
                                .with("hull", depth.hull())
                                .orNull("cup", depth.cup()))
                .orNull("outlook", bench.outlook().map(CupAnswer::outlook))
                .with("verdict", bench.verdict());
        return this;
    }

    /** What is thought of the eye. */
    CupAnswer eye() {
        fields.with(
                "eye",
                Fields.of("answers", bench.eye().answers())
                        .with("poorness", bench.eye().poorness())
                        .with("poor", bench.eye().poor())
                        .orNull("doubted", bench.eye().doubted()));
        return this;
    }

    CupAnswer contents() {
        lines.add("The cup \"" + bench.cup().name() + "\": "
                + Figures.fixed(bench.state().mass(), 2) + " g, "
                + Figures.fixed(bench.state().reserve(), 2) + " g of white held back, "
                + Figures.fixed(bench.cup().wantedGrams(), 0) + " g wanted.");
        bench.state()
                .grams()
                .forEach((id, mass) -> lines.add(
                        "  " + Figures.fixed(mass, 4) + " g " + bench.shelf().nameOf(id)));
        bench.state()
                .aside()
                .forEach(away -> lines.add(
                        "  set aside: " + Figures.fixed(away.parts().total(), 2) + " g as \"" + away.name() + "\""));
        if (bench.state().mass() > 0) {
            lines.add(bench.verdict());
        }
        return this;
    }

    /** Says what disagrees, and the entries that would mend it. */
    private Fields contradiction(Contradiction found) {
        lines.add(found.words());
        for (Contradiction.Slip slip : found.slips()) {
            lines.add("  They would agree if " + Figures.fixed(slip.really(), 2) + " g "
                    + bench.shelf().nameOf(slip.part())
                    + " went in, not " + Figures.fixed(slip.written(), 2) + ": cup fix --entry " + slip.entry()
                    + " --grams " + Figures.fixed(slip.really(), 2));
        }
        lines.add("  Was the chip read wrongly? cup undo --entry " + found.entry());
        return Fields.of("entry", found.entry())
                .with("apart", found.apart())
                .each(
                        "slips",
                        found.slips(),
                        slip -> Fields.of("entry", slip.entry())
                                .with("written", slip.written())
                                .with("really", slip.really())
                                .with("left", slip.left()));
    }

    /** Every entry, those that do not hold marked so. */
    CupAnswer story() {
        List<String> holds = bench.cup().standing().stream().map(CupEntry::id).toList();
        List<Object> list = new ArrayList<>();
        for (CupEntry entry : bench.cup().entries()) {
            boolean about = entry.deed() instanceof Deed.Undone || entry.deed() instanceof Deed.Corrected;
            boolean gone = !about && !holds.contains(entry.id());
            lines.add("  " + entry.id() + "  " + entry.at() + "  " + CupDeeds.words(entry.deed(), bench.shelf())
                    + (gone ? "  (taken back)" : ""));
            list.add(Fields.of("id", entry.id())
                    .with("at", entry.at())
                    .with("words", CupDeeds.words(entry.deed(), bench.shelf()))
                    .with("holds", !gone));
        }
        fields.with("entries", list);
        return this;
    }

    CupAnswer plan() {
        fields.orNull("contradiction", bench.contradiction().map(this::contradiction));
        lines.addAll(bench.deeds().lines());
        fields.with("plan", next(bench.plan()).with("words", bench.deeds().lines()));
        return this;
    }

    private Fields next(Plan plan) {
        if (plan instanceof Plan.Start start) {
            return Fields.of("next", "start").with("white", start.white()).with("reserve", start.reserve());
        } else if (plan instanceof Plan.Doses doses) {
            return Fields.of("next", "doses")
                    .each("doses", doses.doses(), CupAnswer::dose)
                    .with("share", doses.share())
                    .with("after", outlook(doses.after()));
        } else if (plan instanceof Plan.TryDabs row) {
            return Fields.of("next", "trial").and(dab(row.dabs().get(0))).each("dabs", row.dabs(), CupAnswer::dab);
        } else if (plan instanceof Plan.TakeChip chip) {
            return Fields.of("next", "chip").with("besideHull", chip.besideHull());
        } else if (plan instanceof Plan.WayBack back) {
            return Fields.of("next", "correct").with("white", back.white());
        }
        return Fields.of("next", plan instanceof Plan.Stop ? "stop" : "white");
    }

    private static Fields dab(Plan.TrialDab dab) {
        return Fields.of("grams", dab.grams())
                .each("doses", dab.doses(), CupAnswer::dose)
                .with("after", outlook(dab.after()));
    }

    CupAnswer ways() {
        List<Object> list = new ArrayList<>();
        int number = 1;
        for (Way way : bench.ways()) {
            List<String> words = bench.wayWords(way);
            lines.add("Way " + number++ + ", " + kind(way) + ": " + words.get(0));
            words.subList(1, words.size()).forEach(line -> lines.add("   " + line));
            list.add(way(way, words).orNull("recommended", bench.whyWay(way)));
        }
        fields.with("ways", list);
        return this;
    }

    private static Fields way(Way way, List<String> words) {
        Fields fields = Fields.of("way", kind(way))
                .with("finalMass", way.finalMass())
                .with("white", way.white())
                .with("beyondReserve", way.beyondReserve())
                .with("beyondNeed", way.beyondNeed())
                .with("after", outlook(way.after()));
        if (way instanceof Way.Climb climb) {
            fields.each("doses", climb.doses(), CupAnswer::dose);
        } else if (way instanceof Way.Split split) {
            fields.with("keep", split.keep())
                    .with("setAside", split.setAside())
                    .with("name", split.name())
                    .with("shortBy", split.shortBy())
                    .each("doses", split.doses(), CupAnswer::dose);
        } else if (way instanceof Way.Fresh fresh) {
            fields.with("darkFirst", fresh.darkFirst())
                    .with("dark", fresh.dark())
                    .with("name", fresh.name())
                    .each("doses", fresh.doses(), CupAnswer::dose);
        }
        return fields.with("words", words);
    }

    private static String kind(Way way) {
        return way instanceof Way.StopHere
                ? "stop here"
                : way instanceof Way.Climb ? "climb" : way instanceof Way.Split ? "split" : "fresh";
    }

    private static Fields dose(Dose dose) {
        Fields fields = Fields.of("part", dose.part()).with("grams", dose.grams());
        if (dose.deed() instanceof Deed.LetDown down) {
            fields.with("letdownOneIn", down.oneIn())
                    .with("letdownGrams", down.grams())
                    .with("letdownTint", dose.letDown().orElseThrow().tintGrams())
                    .with("letdownBase", dose.letDown().orElseThrow().baseGrams());
        }
        dose.drops().ifPresent(drops -> fields.with("drops", drops.count()).with("dropsWithin", drops.within()));
        return fields;
    }

    private static Fields outlook(Outlook outlook) {
        return Fields.of("lab", outlook.lab().axes())
                .with("deltaE", outlook.deltaE())
                .with("expected", outlook.expected())
                .with("chanceWithin1", outlook.chanceWithin1())
                .with("chanceWithin2", outlook.chanceWithin2())
                .with("within90", outlook.within90())
                .with("chanceTooDark", outlook.chanceTooDark());
    }
}
