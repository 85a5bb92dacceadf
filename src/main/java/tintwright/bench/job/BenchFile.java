package tintwright.bench.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import tintwright.cup.Cup;
import tintwright.cup.Deed;
import tintwright.files.CupFile;
import tintwright.files.Fields;
import tintwright.files.FileProblem;
import tintwright.files.FillJobFile;
import tintwright.files.JsonPlace;
import tintwright.files.JsonText;
import tintwright.files.SharedFile;
import tintwright.files.ShelfFile;
import tintwright.files.TargetFile;
import tintwright.fill.FillJob;
import tintwright.fill.FillOrder;
import tintwright.fill.Materials;
import tintwright.fill.repair.Densities;
import tintwright.fill.repair.Lie;
import tintwright.fill.repair.RepairKind;
import tintwright.fill.repair.RepairLine;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Shelf;

/**
 * The job in hand on disk, in one file, so that there is never a mix of two. The shape is written down in
 * docs/formats.md: the shelf, the places, the cup and the fill stand in it as in files of their own.
 */
public final class BenchFile {
    private static final String KIND = "bench";
    /** From 2 on the holes of each place are apart; in 1 there was one list for a boat, that of the place in hand. */
    private static final int VERSION = 2;
    /** Stands in a fill while its list is empty, so that what else was typed there has a job to stand in. */
    private static final RepairLine NO_REPAIR = new RepairLine(
            "none yet",
            RepairKind.HOLE.make(Map.of("hole", 5.0, "depth", 5.0), OptionalDouble.empty()),
            Lie.FACING_UP,
            1);

    private BenchFile() {}

    /** @throws FileProblem when it is missing, malformed, of a newer version, or says what cannot be */
    public static Job read(Path file) throws FileProblem {
        return at(file).read();
    }

    /**
     * Keeps what is in hand. What another window changed meanwhile in another part of the job stays as that window has
     * it.
     *
     * @param before the job as it was last read or written here; empty when there was none
     * @throws FileProblem when both changed the same part, or it cannot be written; what stood there still stands
     */
    public static void keep(Path file, Optional<Job> before, Job now) throws FileProblem {
        at(file).keep(before, now, (first, theirs, mine) -> together(file, first, theirs, mine));
    }

    private static SharedFile<Job> at(Path file) {
        return SharedFile.of(file, BenchFile::from, job -> JsonText.of(tree(job)));
    }

    private static Job together(Path file, Job before, Job theirs, Job mine) throws FileProblem {
        Map<String, Object> first = tree(before);
        Map<String, Object> one = tree(theirs);
        Map<String, Object> both = new LinkedHashMap<>();
        List<String> clashes = new ArrayList<>();
        tree(mine).forEach((part, value) -> {
            String was = JsonText.of(first.get(part));
            String there = JsonText.of(one.get(part));
            String here = JsonText.of(value);
            both.put(part, here.equals(was) ? one.get(part) : value);
            if (!here.equals(was) && !there.equals(was) && !here.equals(there)) {
                clashes.add(part);
            }
        });
        if (clashes.isEmpty()) {
            return from(JsonPlace.parse(file.toString(), JsonText.of(both)));
        }
        throw FileProblem.unusable("another window changed the same on this bench (" + String.join(", ", clashes)
                + "), so what you did here since is not kept in " + file
                + ": close one of the two windows and open the bench again");
    }

    private static Map<String, Object> tree(Job job) {
        Fields elsewhere = Fields.none();
        new TreeMap<>(job.fill().elsewhere()).forEach((place, left) -> elsewhere.with(place, fill(left)));
        return JsonText.head(KIND, VERSION)
                .with("boat", job.boat())
                .each("places", job.places(), TargetFile::tree)
                .with("place", job.place())
                .with("grams", job.grams())
                .with("scaleStep", job.scaleStep())
                .with("off", List.copyOf(new TreeSet<>(job.off())))
                .with("shelf", ShelfFile.tree(job.shelf()))
                .with("fill", job.fill().equals(FillDraft.NONE) ? null : fill(job.fill()))
                .with("elsewhere", elsewhere)
                .orNull("cup", job.cup().map(CupFile::tree))
                .each("ahead", job.ahead(), CupFile::deed);
    }

    /** As a job of its own: what belongs to the cup and the shelf stands with them, and is not said a second time. */
    private static Fields fill(FillDraft fill) {
        boolean repairs = !fill.lines().isEmpty();
        FillJob typed = (repairs ? fill : fill.plus(NO_REPAIR))
                .job(new Materials(Densities.USUAL, false, OptionalDouble.empty()), 0, 0);
        return Fields.of("repairs", repairs)
                .orNull("baseHides", fill.facts().baseHides())
                .with("job", FillJobFile.tree(new FillOrder("", "", "", List.of(), typed)));
    }

    public static Job from(JsonPlace root) throws FileProblem {
        root.head(
                KIND,
                VERSION,
                "boat",
                "places",
                "place",
                "grams",
                "scaleStep",
                "off",
                "shelf",
                "fill",
                "elsewhere",
                "cup",
                "ahead");
        List<PlaceReadings> places = root.each("places", TargetFile::from);
        Set<String> off = new HashSet<>(root.each("off", JsonPlace::text));
        FillDraft here = root.optional("fill", BenchFile::filling).orElse(FillDraft.NONE);
        Map<String, FillDraft> elsewhere = new TreeMap<>(root.eachNamed("elsewhere", BenchFile::filling));
        FillDraft fill = new FillDraft(here.lines(), here.weather(), here.catalyst(), here.facts(), elsewhere);
        Optional<Cup> cup = root.optional("cup", CupFile::from);
        List<Deed> ahead = root.each("ahead", CupFile::deed);
        String boat = root.text("boat", "");
        Shelf shelf = ShelfFile.from(root.at("shelf"));
        // A tint that stands on the shelf no more is not left out of anything.
        off.removeIf(id -> shelf.tint(id).isEmpty());
        int place = root.whole("place", -1);
        double grams = root.at("grams").number();
        double step = root.number("scaleStep", 0.01);
        return root.make(() -> new Job(boat, places, place, shelf, grams, step, off, fill, cup, ahead));
    }

    private static FillDraft filling(JsonPlace at) throws FileProblem {
        at.only("repairs", "baseHides", "job");
        FillDraft draft = FillDraft.of(FillJobFile.from(at.at("job")).job(), at.optionalNumber("baseHides"));
        return at.at("repairs").truth() ? draft : draft.without(0);
    }
}
