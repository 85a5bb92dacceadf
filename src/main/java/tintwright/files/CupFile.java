package tintwright.files;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tintwright.cup.Cup;
import tintwright.cup.CupEntry;
import tintwright.cup.Deed;
import tintwright.reading.ColourReading;
import tintwright.reading.EyeVerdict;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.shelf.Parts;

/** A cup and its whole story on disk. The shape is written down in docs/formats.md. */
public final class CupFile {
    private static final String KIND = "cup";
    private static final int VERSION = 1;
    private static final String[] DEEDS = {"weighed", "letdown", "drops", "held", "read", "seen", "setAside", "found"};

    private CupFile() {}

    /** @throws FileProblem when it is missing, malformed, of a newer version, or says what cannot be */
    public static Cup read(Path file) throws FileProblem {
        return at(file).read();
    }

    /** @return the file, to be changed while others may change it too */
    public static SharedFile<Cup> at(Path file) {
        return SharedFile.of(file, CupFile::from, CupFile::text);
    }

    /** @return the cup as it stands in a file */
    public static String text(Cup cup) {
        return JsonText.of(tree(cup));
    }

    /** @return the same as it stands in a larger file */
    public static Map<String, Object> tree(Cup cup) {
        Map<String, Object> tree = JsonText.head(KIND, VERSION);
        tree.put("name", cup.name());
        tree.put("base", cup.base());
        tree.put("wantedGrams", cup.wantedGrams());
        tree.put("scaleStep", cup.scaleStep());
        tree.put("hull", TargetFile.fields(cup.hull()));
        List<Object> entries = new ArrayList<>();
        for (CupEntry entry : cup.entries()) {
            Map<String, Object> line = new LinkedHashMap<>();
            line.put("id", entry.id());
            line.put("at", entry.at().toString());
            put(entry.deed(), line);
            entries.add(line);
        }
        tree.put("entries", entries);
        return tree;
    }

    /** @return a deed as it stands in an entry, under its own name */
    public static Map<String, Object> deed(Deed deed) {
        Map<String, Object> line = new LinkedHashMap<>();
        put(deed, line);
        return line;
    }

    private static void put(Deed deed, Map<String, Object> line) {
        Map<String, Object> tree = new LinkedHashMap<>();
        if (deed instanceof Deed.Weighed w) {
            tree.put("part", w.part());
            tree.put("grams", w.grams());
            tree.put("step", w.step());
            line.put("weighed", tree);
        } else if (deed instanceof Deed.LetDown l) {
            tree.put("part", l.part());
            tree.put("oneIn", l.oneIn());
            tree.put("grams", l.grams());
            tree.put("step", l.step());
            line.put("letdown", tree);
        } else if (deed instanceof Deed.Dropped d) {
            tree.put("part", d.part());
            tree.put("count", d.count());
            tree.put("dropGrams", d.dropGrams());
            line.put("drops", tree);
        } else if (deed instanceof Deed.Held h) {
            line.put("held", h.grams());
        } else if (deed instanceof Deed.Read r) {
            tree.put("reading", ReadingShape.toTree(r.reading()));
            r.hull().ifPresent(hull -> tree.put("hull", ReadingShape.toTree(hull)));
            tree.put("counts", r.counts());
            line.put("read", tree);
        } else if (deed instanceof Deed.Seen s) {
            tree.putAll(EyeShape.toTree(s.verdict()));
            s.trial().ifPresent(trial -> tree.put("trial", trial(trial)));
            if (!s.farther().isEmpty()) {
                tree.put("farther", s.farther().stream().map(CupFile::trial).toList());
            }
            line.put("seen", tree);
        } else if (deed instanceof Deed.SetAside s) {
            tree.put("grams", s.grams());
            tree.put("name", s.name());
            line.put("setAside", tree);
        } else if (deed instanceof Deed.Found f) {
            tree.put("parts", f.parts().grams());
            tree.put("off", f.off());
            line.put("found", tree);
        } else if (deed instanceof Deed.Undone u) {
            line.put("undone", u.entry());
        } else if (deed instanceof Deed.Corrected c) {
            tree.put("entry", c.entry());
            put(c.deed(), tree);
            line.put("corrected", tree);
        }
    }

    public static Cup from(JsonPlace root) throws FileProblem {
        root.head(KIND, VERSION, "name", "base", "wantedGrams", "scaleStep", "hull", "entries");
        String name = root.at("name").text();
        if (!root.has("base")) {
            throw root.problem("the cup has no base: give it a \"base\", the id of the white it is mixed in");
        }
        String base = root.at("base").text();
        double wanted = root.at("wantedGrams").number();
        double step = root.number("scaleStep", 0.01);
        JsonPlace at = root.at("hull");
        at.only("boat", "place", "note", "readings");
        PlaceReadings hull = TargetFile.fromFields(at);
        List<CupEntry> entries = root.each("entries", CupFile::entry);
        return root.make(() -> new Cup(name, hull, wanted, step, base, entries));
    }

    private static CupEntry entry(JsonPlace line) throws FileProblem {
        line.only(beside("id", "at", "undone", "corrected"));
        String id = line.at("id").text();
        Instant at = line.at("at").moment();
        Deed deed;
        if (line.has("undone")) {
            deed = new Deed.Undone(line.at("undone").text());
        } else if (line.has("corrected")) {
            JsonPlace right = line.at("corrected");
            right.only(beside("entry"));
            String entry = right.at("entry").text();
            Deed really = deed(right);
            deed = right.make(() -> new Deed.Corrected(entry, really));
        } else {
            deed = deed(line);
        }
        Deed done = deed;
        return line.make(() -> new CupEntry(id, at, done));
    }

    private static String[] beside(String... own) {
        List<String> all = new ArrayList<>(List.of(own));
        all.addAll(List.of(DEEDS));
        return all.toArray(String[]::new);
    }

    public static Deed deed(JsonPlace line) throws FileProblem {
        if (line.has("weighed")) {
            JsonPlace at = line.at("weighed");
            at.only("part", "grams", "step");
            String part = at.at("part").text();
            double grams = at.at("grams").number();
            double step = at.number("step", 0.01);
            return at.make(() -> new Deed.Weighed(part, grams, step));
        } else if (line.has("letdown")) {
            JsonPlace at = line.at("letdown");
            at.only("part", "oneIn", "grams", "step");
            String part = at.at("part").text();
            int oneIn = at.at("oneIn").whole();
            double grams = at.at("grams").number();
            double step = at.number("step", 0.01);
            return at.make(() -> new Deed.LetDown(part, oneIn, grams, step));
        } else if (line.has("drops")) {
            JsonPlace at = line.at("drops");
            at.only("part", "count", "dropGrams");
            String part = at.at("part").text();
            int count = at.at("count").whole();
            double drop = at.at("dropGrams").number();
            return at.make(() -> new Deed.Dropped(part, count, drop));
        } else if (line.has("held")) {
            double grams = line.at("held").number();
            return line.at("held").make(() -> new Deed.Held(grams));
        } else if (line.has("read")) {
            return read(line.at("read"));
        } else if (line.has("seen")) {
            return seen(line.at("seen"));
        } else if (line.has("setAside")) {
            JsonPlace at = line.at("setAside");
            at.only("grams", "name");
            double grams = at.at("grams").number();
            String name = at.at("name").text();
            return at.make(() -> new Deed.SetAside(grams, name));
        } else if (line.has("found")) {
            JsonPlace at = line.at("found");
            at.only("parts", "off");
            Parts parts = ChipShape.parts(at, "parts");
            double off = at.at("off").number();
            return at.make(() -> new Deed.Found(parts, off));
        }
        throw line.problem("an entry says what was done: one of " + String.join(", ", DEEDS) + ", undone or corrected");
    }

    private static Map<String, Object> trial(Deed.Trial trial) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("grams", trial.grams());
        tree.put("doses", trial.doses().stream().map(CupFile::deed).toList());
        return tree;
    }

    private static Deed seen(JsonPlace at) throws FileProblem {
        EyeVerdict verdict = EyeShape.from(at);
        Optional<Deed.Trial> trial = at.has("trial") ? Optional.of(trial(at.at("trial"))) : Optional.empty();
        List<Deed.Trial> farther = new ArrayList<>();
        if (at.has("farther")) {
            for (JsonPlace dab : at.list("farther")) {
                farther.add(trial(dab));
            }
        }
        return at.make(() -> new Deed.Seen(verdict, trial, farther));
    }

    private static Deed.Trial trial(JsonPlace trial) throws FileProblem {
        trial.only("grams", "doses");
        double grams = trial.at("grams").number();
        List<Deed> doses = new ArrayList<>();
        for (JsonPlace dose : trial.list("doses")) {
            dose.only("weighed", "letdown");
            doses.add(deed(dose));
        }
        return trial.make(() -> new Deed.Trial(grams, doses));
    }

    private static Deed read(JsonPlace at) throws FileProblem {
        at.only("reading", "hull", "counts");
        Reading reading = ReadingShape.from(at.at("reading"));
        Optional<ColourReading> hull = Optional.empty();
        if (at.has("hull")) {
            Reading beside = ReadingShape.from(at.at("hull"));
            if (!(beside instanceof ColourReading colour)) {
                throw at.at("hull").problem("the hull in a photo is a colour, not a spectrum; give it as \"lab\"");
            }
            hull = Optional.of(colour);
        }
        boolean counts = !at.has("counts") || at.at("counts").truth();
        Optional<ColourReading> standing = hull;
        return at.make(() -> new Deed.Read(reading, standing, counts));
    }
}
