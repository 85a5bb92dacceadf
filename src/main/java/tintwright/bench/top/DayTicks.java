package tintwright.bench.top;

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
    private static final String JOB = "job";

    private final Set<String> done = new HashSet<>();
    private String job = "";
    private Optional<Path> file = Optional.empty();
    private Map<String, String> before = Map.of();

    /** Takes up what was ticked there, and keeps it there from now on; a file that cannot be read is put aside. */
    public void keepIn(Path place) {
        file = Optional.of(place);
        done.clear();
        before = SettingsFile.readOrPutAside(place);
        job = before.getOrDefault(JOB, "");
        before.keySet().stream().filter(name -> !name.equals(JOB)).forEach(done::add);
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
            now.put(JOB, job);
            done.forEach(each -> now.put(each, "done"));
            try {
                Files.createDirectories(file.get().toAbsolutePath().getParent());
            } catch (IOException e) {
                throw FileProblem.unusable("What is ticked cannot be kept in " + file.get(), e);
            }
            SettingsFile.keep(file.get(), before, now);
            before = now;
        }
    }

    /** @return what a step is called: when the plan changes, other steps are not done yet */
    public static String name(DayWords.Line step) {
        return step.when() + ": " + step.words();
    }
}
