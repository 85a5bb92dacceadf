package tintwright.window;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Collectors;
import tintwright.cup.Cup;
import tintwright.files.CupFile;
import tintwright.files.FileProblem;
import tintwright.files.FillJobFile;
import tintwright.files.ShelfFile;
import tintwright.files.TargetFile;
import tintwright.files.TextFile;
import tintwright.reading.PlaceReadings;
import tintwright.shelf.Shelf;

/**
 * The job in hand on disk, so that nothing has to be saved by hand: the shelf, the places and the cup each in a file
 * of their own kind, and one small list of what belongs together, written last. Only what has changed is written.
 *
 * <p>Not for use by two threads at once.
 */
final class KeptJob {
    private static final String LIST = "job.properties";

    private final Path folder;
    private Optional<Job> written = Optional.empty();

    /** @param folder need not exist */
    KeptJob(Path folder) {
        this.folder = folder;
    }

    /** @throws FileProblem when it cannot be written; what was there is still there */
    void keep(Job job) throws FileProblem {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw FileProblem.unusable("The folder " + folder + " cannot be made, so what you do here is not kept. "
                    + "Make room, or make it writable", e);
        }
        if (written.isEmpty() || !written.get().shelf().equals(job.shelf())) {
            ShelfFile.write(folder.resolve("shelf.json"), job.shelf());
        }
        for (int i = 0; i < job.places().size(); i++) {
            boolean same = written.isPresent() && i < written.get().places().size()
                    && written.get().places().get(i).equals(job.places().get(i));
            if (!same) {
                TargetFile.write(place(i), job.places().get(i));
            }
        }
        if (job.cup().isPresent() && (written.isEmpty() || !written.get().cup().equals(job.cup()))) {
            CupFile.write(folder.resolve("cup.json"), job.cup().get());
        }
        if (!job.fill().lines().isEmpty() && (written.isEmpty() || !written.get().fill().equals(job.fill()))) {
            FillJobFile.write(folder.resolve("fill.json"), FillOrders.typed(job));
        }
        TextFile.write(folder.resolve(LIST), list(job));
        written = Optional.of(job);
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
        list.setProperty("repairs", Boolean.toString(!job.fill().lines().isEmpty()));
        list.setProperty("celsius", Double.toString(job.fill().celsius()));
        job.fill().humidity().ifPresent(damp -> list.setProperty("humidity", Double.toString(damp)));
        job.fill().facts().baseHides().ifPresent(mm -> list.setProperty("baseHides", Double.toString(mm)));
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
    Optional<Job> fetch() throws FileProblem {
        if (!Files.exists(folder.resolve(LIST))) {
            return Optional.empty();
        }
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
                ? Optional.of(CupFile.read(folder.resolve("cup.json"))) : Optional.empty();
        Set<String> off = java.util.Arrays.stream(list.getProperty("off", "").split(" "))
                .filter(id -> shelf.tint(id).isPresent()).collect(Collectors.toSet());
        FillDraft fill = fill(list);
        int place = Math.max(-1, Math.min(places.size() - 1, (int) number(list, "place", -1)));
        Job job = new Job(list.getProperty("boat", ""), places, place, shelf, number(list, "grams", 150),
                number(list, "scale", 0.01), off, fill, cup, List.of());
        written = Optional.of(job);
        return Optional.of(job);
    }

    private FillDraft fill(Properties list) throws FileProblem {
        OptionalDouble baseHides = optional(list, "baseHides");
        FillDraft typed = Boolean.parseBoolean(list.getProperty("repairs"))
                ? FillDraft.of(FillJobFile.read(folder.resolve("fill.json")).job(), baseHides) : FillDraft.NONE;
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
            throw FileProblem.unusable(folder.resolve(LIST) + ": " + name + " must be a number, was \"" + text
                    + "\"; correct it, or move the file away", e);
        }
    }
}
