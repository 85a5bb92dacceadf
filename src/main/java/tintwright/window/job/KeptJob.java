package tintwright.window.job;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tintwright.cup.Cup;
import tintwright.cup.Deed;
import tintwright.files.CupFile;
import tintwright.files.FileProblem;
import tintwright.files.FillJobFile;
import tintwright.files.ShelfFile;
import tintwright.files.TargetFile;
import tintwright.files.TextFile;
import tintwright.fill.Lie;
import tintwright.fill.RepairKind;
import tintwright.fill.RepairLine;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Shelf;

/**
 * The job in hand on disk, so that nothing has to be saved by hand: the shelf, the places and the cup each in a file
 * of their own kind, and one small list of what belongs together, written last. Only what has changed is written.
 *
 * <p>Not for use by two threads at once.
 */
public final class KeptJob {
    private static final String LIST = "job.properties";
    /** Stands in a fill's file while its list is empty, so that what else was typed there has a file to stand in. */
    private static final RepairLine NO_REPAIR = new RepairLine(
            "none yet",
            RepairKind.HOLE.make(Map.of("hole", 5.0, "depth", 5.0), OptionalDouble.empty()),
            Lie.FACING_UP,
            1);

    private final Path folder;
    private Optional<Job> written = Optional.empty();
    private boolean unread;

    /** @param folder need not exist */
    public KeptJob(Path folder) {
        this.folder = folder;
    }

    /** @return true when a job was ever kept in that folder */
    public static boolean begun(Path folder) {
        return Files.exists(folder.resolve(LIST));
    }

    /** @throws FileProblem when it cannot be written; what was there is still there */
    public void keep(Job job) throws FileProblem {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw FileProblem.unusable(
                    "The folder " + folder + " cannot be made, so what you do here is not kept. "
                            + "Make room, or make it writable",
                    e);
        }
        if (unread) {
            moveAside();
            unread = false;
        }
        if (written.isEmpty() || !written.get().shelf().equals(job.shelf())) {
            ShelfFile.write(folder.resolve("shelf.json"), job.shelf());
        }
        for (int i = 0; i < job.places().size(); i++) {
            boolean same = written.isPresent()
                    && i < written.get().places().size()
                    && written.get().places().get(i).equals(job.places().get(i));
            if (!same) {
                TargetFile.write(place(i), job.places().get(i));
            }
        }
        if (job.cup().isPresent() && (written.isEmpty() || !written.get().cup().equals(job.cup()))) {
            CupFile.write(folder.resolve("cup.json"), job.cup().get());
        }
        if (!job.fill().equals(FillDraft.NONE)
                && (written.isEmpty() || !written.get().fill().equals(job.fill()))) {
            FillJobFile.write(
                    folder.resolve("fill.json"),
                    FillOrders.typed(
                            job.fill().lines().isEmpty()
                                    ? job.filling(job.fill().plus(NO_REPAIR))
                                    : job));
        }
        TextFile.write(folder.resolve(LIST), list(job));
        written = Optional.of(job);
    }

    /** What could not be read is never written over: somebody may still mend it by hand. */
    private void moveAside() throws FileProblem {
        try {
            Path aside = Files.createTempDirectory(folder, "unread-");
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.filter(Files::isRegularFile)
                        .filter(each -> !each.getFileName().toString().startsWith("cure"))
                        .toList()) {
                    Files.move(file, aside.resolve(file.getFileName()));
                }
            }
        } catch (IOException e) {
            throw FileProblem.unusable(
                    "What could not be read in " + folder + " cannot be moved aside, so what you "
                            + "do here is not kept",
                    e);
        }
    }

    private Path place(int number) {
        return folder.resolve("place-" + (number + 1) + ".json");
    }

    private static String list(Job job) {
        Properties list = new Properties();
        list.setProperty("boat", job.boat());
        list.setProperty("places", Integer.toString(job.places().size()));
        list.setProperty("place", Integer.toString(job.place()));
        list.setProperty("grams", Double.toString(job.grams()));
        list.setProperty("scale", Double.toString(job.scaleStep()));
        list.setProperty("off", String.join(" ", job.off()));
        list.setProperty("cup", Boolean.toString(job.cup().isPresent()));
        list.setProperty("fill", Boolean.toString(!job.fill().equals(FillDraft.NONE)));
        list.setProperty("repairs", Boolean.toString(!job.fill().lines().isEmpty()));
        list.setProperty("celsius", Double.toString(job.fill().celsius()));
        job.fill().humidity().ifPresent(damp -> list.setProperty("humidity", Double.toString(damp)));
        job.fill().facts().baseHides().ifPresent(mm -> list.setProperty("baseHides", Double.toString(mm)));
        KeptAhead.write(job.ahead(), list);
        StringWriter text = new StringWriter();
        try {
            list.store(text, "what is on the bench");
        } catch (IOException e) {
            throw new IllegalStateException("writing to memory failed", e);
        }
        return text.toString();
    }

    /**
     * @return what was on the bench; empty when nothing was kept yet
     * @throws FileProblem when it cannot be read; it is left as it is
     */
    public Optional<Job> fetch() throws FileProblem {
        if (!Files.exists(folder.resolve(LIST))) {
            return Optional.empty();
        }
        try {
            Job job = read();
            written = Optional.of(job);
            return written;
        } catch (FileProblem e) {
            unread = true;
            throw e;
        }
    }

    private Job read() throws FileProblem {
        Properties list = new Properties();
        try {
            list.load(new StringReader(TextFile.read(folder.resolve(LIST))));
        } catch (IOException | IllegalArgumentException e) {
            throw FileProblem.unusable(folder.resolve(LIST) + " cannot be read; it was left as it is", e);
        }
        Shelf shelf = ShelfFile.read(folder.resolve("shelf.json"));
        List<PlaceReadings> places = new ArrayList<>();
        int count = (int) number(list, "places", 0);
        for (int i = 0; i < count; i++) {
            places.add(TargetFile.read(place(i)));
        }
        Optional<Cup> cup = Boolean.parseBoolean(list.getProperty("cup"))
                ? Optional.of(CupFile.read(folder.resolve("cup.json")))
                : Optional.empty();
        Set<String> off = java.util.Arrays.stream(list.getProperty("off", "").split(" "))
                .filter(id -> shelf.tint(id).isPresent())
                .collect(Collectors.toSet());
        FillDraft fill = fill(list);
        List<Deed> ahead = ahead(list);
        int place = Math.max(-1, Math.min(places.size() - 1, (int) number(list, "place", -1)));
        return new Job(
                list.getProperty("boat", ""),
                places,
                place,
                shelf,
                number(list, "grams", 150),
                number(list, "scale", 0.01),
                off,
                fill,
                cup,
                cup.isPresent() ? ahead : List.of());
    }

    private List<Deed> ahead(Properties list) throws FileProblem {
        try {
            return KeptAhead.read(list);
        } catch (IllegalArgumentException e) {
            throw FileProblem.unusable(
                    folder.resolve(LIST) + " does not say what is still to be done of the way " + "back ("
                            + e.getMessage() + "); correct it, or move the file away",
                    e);
        }
    }

    private FillDraft fill(Properties list) throws FileProblem {
        OptionalDouble baseHides = optional(list, "baseHides");
        boolean repairs = Boolean.parseBoolean(list.getProperty("repairs"));
        FillDraft typed = repairs || Boolean.parseBoolean(list.getProperty("fill"))
                ? FillDraft.of(FillJobFile.read(folder.resolve("fill.json")).job(), baseHides)
                : FillDraft.NONE;
        if (!repairs && !typed.lines().isEmpty()) {
            typed = typed.without(0);
        }
        return typed.at(number(list, "celsius", FillDraft.NONE.celsius()), optional(list, "humidity"));
    }

    private OptionalDouble optional(Properties list, String name) throws FileProblem {
        return list.containsKey(name) ? OptionalDouble.of(number(list, name, 0)) : OptionalDouble.empty();
    }

    private double number(Properties list, String name, double usual) throws FileProblem {
        String text = list.getProperty(name);
        try {
            return text == null ? usual : Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw FileProblem.unusable(
                    folder.resolve(LIST) + ": " + name + " must be a number, was \"" + text
                            + "\"; correct it, or move the file away",
                    e);
        }
    }
}
