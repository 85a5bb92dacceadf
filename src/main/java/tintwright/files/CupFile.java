package tintwright.files;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import tintwright.cup.Cup;
import tintwright.cup.CupEntry;
import tintwright.cup.Deed;
import tintwright.reading.ColourReading;

/** A cup and its whole story on disk. The shape is written down in docs/formats.md. */
public final class CupFile {
    private static final String KIND = "cup";
    private static final int VERSION = 1;
    private static final List<String> DEEDS =
            List.of("weighed", "letdown", "drops", "held", "read", "seen", "setAside", "found");
    /** What a scale shows at least, grams, where a cup does not say; common practice, no source. */
    private static final double USUAL_STEP = 0.01;

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
    public static Fields tree(Cup cup) {
        return JsonText.head(KIND, VERSION)
                .with("name", cup.name())
                .with("base", cup.base())
                .with("wantedGrams", cup.wantedGrams())
                .with("scaleStep", cup.scaleStep())
                .with("hull", TargetFile.fields(cup.hull()))
                .each(
                        "entries",
                        cup.entries(),
                        entry -> Fields.of("id", entry.id())
                                .with("at", entry.at())
                                .and(deed(entry.deed())));
    }

    /** @return a deed as it stands in an entry, under its own name */
    public static Fields deed(Deed deed) {
        if (deed instanceof Deed.Weighed w) {
            return Fields.of(
                    "weighed",
                    Fields.of("part", w.part()).with("grams", w.grams()).with("step", w.step()));
        } else if (deed instanceof Deed.LetDown l) {
            return Fields.of(
                    "letdown",
                    Fields.of("part", l.part())
                            .with("oneIn", l.oneIn())
                            .with("grams", l.grams())
                            .with("step", l.step()));
        } else if (deed instanceof Deed.Dropped d) {
            return Fields.of(
                    "drops",
                    Fields.of("part", d.part()).with("count", d.count()).with("dropGrams", d.dropGrams()));
        } else if (deed instanceof Deed.Held h) {
            return Fields.of("held", h.grams());
        } else if (deed instanceof Deed.Read r) {
            return Fields.of(
                    "read",
                    Fields.of("reading", ReadingShape.toTree(r.reading()))
                            .with("hull", r.hull().map(ReadingShape::toTree))
                            .with("counts", r.counts()));
        } else if (deed instanceof Deed.Seen s) {
            Fields seen = EyeShape.toTree(s.verdict()).with("trial", s.trial().map(CupFile::trial));
            return Fields.of("seen", s.farther().isEmpty() ? seen : seen.each("farther", s.farther(), CupFile::trial));
        } else if (deed instanceof Deed.SetAside s) {
            return Fields.of("setAside", Fields.of("grams", s.grams()).with("name", s.name()));
        } else if (deed instanceof Deed.Found f) {
            return Fields.of("found", Fields.of("parts", f.parts().grams()).with("off", f.off()));
        } else if (deed instanceof Deed.Undone u) {
            return Fields.of("undone", u.entry());
        } else if (deed instanceof Deed.Corrected c) {
            return Fields.of("corrected", Fields.of("entry", c.entry()).and(deed(c.deed())));
        }
        throw new IllegalArgumentException("no shape for a " + deed.getClass().getName());
    }

    public static Cup from(JsonPlace root) throws FileProblem {
        root.head(KIND, VERSION, "name", "base", "wantedGrams", "scaleStep", "hull", "entries");
        if (!root.has("base")) {
            throw root.problem("the cup has no base: give it a \"base\", the id of the white it is mixed in");
        }
        JsonPlace hull = root.at("hull");
        hull.only("boat", "place", "note", "readings");
        return root.make(() -> new Cup(
                root.at("name").text(),
                TargetFile.fromFields(hull),
                root.at("wantedGrams").number(),
                root.number("scaleStep", USUAL_STEP),
                root.at("base").text(),
                root.each("entries", CupFile::entry)));
    }

    private static CupEntry entry(JsonPlace line) throws FileProblem {
        line.only(beside("id", "at", "undone", "corrected"));
        return line.make(() -> new CupEntry(line.at("id").text(), line.at("at").moment(), done(line)));
    }

    private static Deed done(JsonPlace line) throws FileProblem {
        if (line.has("undone")) {
            return new Deed.Undone(line.at("undone").text());
        }
        if (line.has("corrected")) {
            JsonPlace right = line.at("corrected");
            right.only(beside("entry"));
            return right.make(() -> new Deed.Corrected(right.at("entry").text(), deed(right)));
        }
        return deed(line);
    }

    private static String[] beside(String... own) {
        return Stream.concat(Stream.of(own), DEEDS.stream()).toArray(String[]::new);
    }

    public static Deed deed(JsonPlace line) throws FileProblem {
        for (String name : DEEDS) {
            if (line.has(name)) {
                JsonPlace at = line.at(name);
                return at.make(() -> deed(name, at));
            }
        }
        throw line.problem("an entry says what was done: one of " + String.join(", ", DEEDS) + ", undone or corrected");
    }

    private static Deed deed(String name, JsonPlace at) throws FileProblem {
        switch (name) {
            case "weighed" -> {
                at.only("part", "grams", "step");
                return new Deed.Weighed(at.at("part").text(), at.at("grams").number(), at.number("step", USUAL_STEP));
            }
            case "letdown" -> {
                at.only("part", "oneIn", "grams", "step");
                return new Deed.LetDown(
                        at.at("part").text(),
                        at.at("oneIn").whole(),
                        at.at("grams").number(),
                        at.number("step", USUAL_STEP));
            }
            case "drops" -> {
                at.only("part", "count", "dropGrams");
                return new Deed.Dropped(
                        at.at("part").text(),
                        at.at("count").whole(),
                        at.at("dropGrams").number());
            }
            case "held" -> {
                return new Deed.Held(at.number());
            }
            case "read" -> {
                at.only("reading", "hull", "counts");
                return new Deed.Read(
                        ReadingShape.from(at.at("reading")),
                        at.optional("hull", CupFile::hull),
                        at.optional("counts", JsonPlace::truth).orElse(true));
            }
            case "seen" -> {
                return new Deed.Seen(
                        EyeShape.from(at), at.optional("trial", CupFile::trial), at.each("farther", CupFile::trial));
            }
            case "setAside" -> {
                at.only("grams", "name");
                return new Deed.SetAside(at.at("grams").number(), at.at("name").text());
            }
            case "found" -> {
                at.only("parts", "off");
                return new Deed.Found(ChipShape.parts(at, "parts"), at.at("off").number());
            }
            default -> throw new IllegalArgumentException(name);
        }
    }

    private static ColourReading hull(JsonPlace at) throws FileProblem {
        if (ReadingShape.from(at) instanceof ColourReading colour) {
            return colour;
        }
        throw at.problem("the hull in a photo is a colour, not a spectrum; give it as \"lab\"");
    }

    private static Fields trial(Deed.Trial trial) {
        return Fields.of("grams", trial.grams()).each("doses", trial.doses(), CupFile::deed);
    }

    private static Deed.Trial trial(JsonPlace trial) throws FileProblem {
        trial.only("grams", "doses");
        return trial.make(() -> new Deed.Trial(trial.at("grams").number(), trial.each("doses", dose -> {
            dose.only("weighed", "letdown");
            return deed(dose);
        })));
    }
}
