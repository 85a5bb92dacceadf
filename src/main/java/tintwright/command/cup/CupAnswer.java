package tintwright.command.cup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tintwright.bench.CupBench;
import tintwright.colour.Lab;
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

/** What the cup commands say: in words, and as fields. */
public final class CupAnswer {
    private final CupBench bench;
    private final List<String> lines = new ArrayList<>();
    private final Map<String, Object> fields = new LinkedHashMap<>();

    CupAnswer(CupBench bench) {
        this.bench = bench;
    }

    CupAnswer say(String line) {
        lines.add(line);
        return this;
    }

    CupAnswer field(String name, Object value) {
        fields.put(name, value);
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
        fields.put("name", bench.cup().name());
        fields.put("grams", rounded(bench.state().grams()));
        fields.put("mass", Figures.six(bench.state().mass()));
        fields.put("reserve", Figures.six(bench.state().reserve()));
        CupBench.Depth depth = bench.depth();
        Map<String, Object> gauge = new LinkedHashMap<>();
        gauge.put("white", Figures.six(depth.white()));
        gauge.put("hull", Figures.six(depth.hull()));
        gauge.put("cup", depth.cup().isPresent() ? Figures.six(depth.cup().getAsDouble()) : null);
        fields.put("depth", gauge);
        fields.put("outlook", bench.outlook().map(CupAnswer::outlook).orElse(null));
        fields.put("verdict", bench.verdict());
        return this;
    }

    /** What is thought of the eye. */
    CupAnswer eye() {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("answers", bench.eye().answers());
        tree.put("poorness", Figures.six(bench.eye().poorness()));
        tree.put("poor", bench.eye().poor());
        tree.put("doubted", bench.eye().doubted().orElse(null));
        fields.put("eye", tree);
        return this;
    }

    private static Map<String, Object> rounded(Map<String, Double> grams) {
        Map<String, Object> out = new LinkedHashMap<>();
        grams.forEach((id, mass) -> out.put(id, Figures.six(mass)));
        return out;
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
    private Map<String, Object> contradiction(Contradiction found) {
        lines.add(found.words());
        List<Object> slips = new ArrayList<>();
        for (Contradiction.Slip slip : found.slips()) {
            lines.add("  They would agree if " + Figures.fixed(slip.really(), 2) + " g "
                    + bench.shelf().nameOf(slip.part())
                    + " went in, not " + Figures.fixed(slip.written(), 2) + ": cup fix --entry " + slip.entry()
                    + " --grams " + Figures.fixed(slip.really(), 2));
            slips.add(Map.of(
                    "entry",
                    slip.entry(),
                    "written",
                    Figures.six(slip.written()),
                    "really",
                    Figures.six(slip.really()),
                    "left",
                    Figures.six(slip.left())));
        }
        lines.add("  Was the chip read wrongly? cup undo --entry " + found.entry());
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("entry", found.entry());
        fields.put("apart", Figures.six(found.apart()));
        fields.put("slips", slips);
        return fields;
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
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("id", entry.id());
            one.put("at", entry.at().toString());
            one.put("words", CupDeeds.words(entry.deed(), bench.shelf()));
            one.put("holds", !gone);
            list.add(one);
        }
        fields.put("entries", list);
        return this;
    }

    CupAnswer plan() {
        fields.put(
                "contradiction", bench.contradiction().map(this::contradiction).orElse(null));
        lines.addAll(bench.deeds().lines());
        Plan plan = bench.plan();
        Map<String, Object> tree = new LinkedHashMap<>();
        if (plan instanceof Plan.Start start) {
            tree.put("next", "start");
            tree.put("white", Figures.six(start.white()));
            tree.put("reserve", Figures.six(start.reserve()));
        } else if (plan instanceof Plan.Doses doses) {
            tree.put("next", "doses");
            tree.put("doses", doses(doses.doses()));
            tree.put("share", Figures.six(doses.share()));
            tree.put("after", outlook(doses.after()));
        } else if (plan instanceof Plan.TryDabs row) {
            tree.put("next", "trial");
            tree.putAll(dab(row.dabs().get(0)));
            tree.put("dabs", row.dabs().stream().map(this::dab).toList());
        } else if (plan instanceof Plan.TakeChip chip) {
            tree.put("next", "chip");
            tree.put("besideHull", chip.besideHull());
        } else if (plan instanceof Plan.Stop) {
            tree.put("next", "stop");
        } else if (plan instanceof Plan.WayBack back) {
            tree.put("next", "correct");
            tree.put("white", Figures.six(back.white()));
        } else {
            tree.put("next", "white");
        }
        tree.put("words", bench.deeds().lines());
        fields.put("plan", tree);
        return this;
    }

    private Map<String, Object> dab(Plan.TrialDab dab) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("grams", Figures.six(dab.grams()));
        tree.put("doses", doses(dab.doses()));
        tree.put("after", outlook(dab.after()));
        return tree;
    }

    CupAnswer ways() {
        List<Object> list = new ArrayList<>();
        int number = 1;
        for (Way way : bench.ways()) {
            List<String> words = bench.wayWords(way);
            lines.add("Way " + number++ + ", " + kind(way) + ": " + words.get(0));
            words.subList(1, words.size()).forEach(line -> lines.add("   " + line));
            Map<String, Object> tree = way(way, words);
            tree.put("recommended", bench.whyWay(way).orElse(null));
            list.add(tree);
        }
        fields.put("ways", list);
        return this;
    }

    private static Map<String, Object> way(Way way, List<String> words) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("way", kind(way));
        tree.put("finalMass", Figures.six(way.finalMass()));
        tree.put("white", Figures.six(way.white()));
        tree.put("beyondReserve", Figures.six(way.beyondReserve()));
        tree.put("beyondNeed", Figures.six(way.beyondNeed()));
        tree.put("after", outlook(way.after()));
        if (way instanceof Way.Climb climb) {
            tree.put("doses", doses(climb.doses()));
        } else if (way instanceof Way.Split split) {
            tree.put("keep", Figures.six(split.keep()));
            tree.put("setAside", Figures.six(split.setAside()));
            tree.put("name", split.name());
            tree.put("shortBy", Figures.six(split.shortBy()));
            tree.put("doses", doses(split.doses()));
        } else if (way instanceof Way.Fresh fresh) {
            tree.put("darkFirst", Figures.six(fresh.darkFirst()));
            tree.put("dark", Figures.six(fresh.dark()));
            tree.put("name", fresh.name());
            tree.put("doses", doses(fresh.doses()));
        }
        tree.put("words", words);
        return tree;
    }

    private static String kind(Way way) {
        return way instanceof Way.StopHere
                ? "stop here"
                : way instanceof Way.Climb ? "climb" : way instanceof Way.Split ? "split" : "fresh";
    }

    private static List<Object> doses(List<Dose> doses) {
        List<Object> list = new ArrayList<>();
        for (Dose dose : doses) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("part", dose.part());
            one.put("grams", Figures.six(dose.grams()));
            if (dose.deed() instanceof Deed.LetDown down) {
                one.put("letdownOneIn", down.oneIn());
                one.put("letdownGrams", Figures.six(down.grams()));
                one.put("letdownTint", Figures.six(dose.letDown().orElseThrow().tintGrams()));
                one.put("letdownBase", Figures.six(dose.letDown().orElseThrow().baseGrams()));
            }
            dose.drops().ifPresent(drops -> {
                one.put("drops", drops.count());
                one.put("dropsWithin", Figures.six(drops.within()));
            });
            list.add(one);
        }
        return list;
    }

    private static Map<String, Object> outlook(Outlook outlook) {
        Lab lab = outlook.lab();
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("lab", List.of(Figures.six(lab.lightness()), Figures.six(lab.a()), Figures.six(lab.b())));
        tree.put("deltaE", Figures.six(outlook.deltaE()));
        tree.put("expected", Figures.six(outlook.expected()));
        tree.put("chanceWithin1", Figures.six(outlook.chanceWithin1()));
        tree.put("chanceWithin2", Figures.six(outlook.chanceWithin2()));
        tree.put("within90", Figures.six(outlook.within90()));
        tree.put("chanceTooDark", Figures.six(outlook.chanceTooDark()));
        return tree;
    }
}
