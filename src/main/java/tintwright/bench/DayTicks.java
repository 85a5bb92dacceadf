package tintwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import tintwright.files.FileProblem;
import tintwright.files.SettingsFile;
import tintwright.fill.DayWords;

/** The steps of the day that are done, of one boat and place, on disk beside the bench. */
public final class DayTicks {
    private final Set<String> done = new HashSet<>();
    private String job = "";
    private Optional<Path> file = Optional.empty();

    /** Takes up what was ticked there, and keeps it there from now on; what cannot be read is as if nothing was. */
    public void keepIn(Path place) {
        file = Optional.of(place);
        done.clear();
        try {
            Map<String, String> kept = Files.exists(place) ? SettingsFile.read(place) : Map.of();
            job = kept.getOrDefault("job", "");
            kept.keySet().stream().filter(name -> !name.equals("job")).forEach(done::add);
        } catch (FileProblem nothingToGoBy) {
            job = "";
        }
    }

    /**
     * @param of the boat and place in hand; those of another begin with nothing ticked
     * @return the names of the steps that are done
     */
    public Set<String> of(String of) {
        return of.equals(job) ? Set.copyOf(done) : Set.of();
    }

    /** @throws FileProblem when it cannot be written; it is ticked all the same as long as the window is open */
    public void tick(String of, String step, boolean is) throws FileProblem {
        if (!of.equals(job)) {
            done.clear();
            job = of;
        }
        if (is) {
            done.add(step);
        } else {
            done.remove(step);
        }
        if (file.isPresent()) {
            Map<String, String> now = new TreeMap<>();
            now.put("job", job);
            done.forEach(each -> now.put(each, "done"));
            try {
                // Written anew: a tick that was taken back must go from the file too.
                Files.deleteIfExists(file.get());
                Files.createDirectories(file.get().toAbsolutePath().getParent());
            } catch (IOException e) {
                throw FileProblem.unusable("What is ticked cannot be kept in " + file.get(), e);
            }
            SettingsFile.keep(file.get(), Map.of(), now);
        }
    }

    /** @return what a step is called: when the plan changes, other steps are not done yet */
    public static String name(DayWords.Line step) {
        return step.when() + ": " + step.words();
    }
}
