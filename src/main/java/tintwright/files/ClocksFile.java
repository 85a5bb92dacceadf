package tintwright.files;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tintwright.fill.catalyst.CureTimer;

/** Cups with catalyst in them, on disk. The shape is written down in docs/formats.md. */
public final class ClocksFile {
    private static final String KIND = "clocks";
    private static final int VERSION = 2;

    private ClocksFile() {}

    /**
     * A cup that cures.
     *
     * @param job       boat and place that it is for, as the day's ticks name them; empty in files of before
     * @param batch     its number in the plan, from 1
     * @param words     what it is for
     * @param catalysed when the catalyst went in
     * @param timers    what comes due after that
     */
    public record Catalysed(Optional<String> job, int batch, String words, Instant catalysed, List<CureTimer> timers) {
        public Catalysed {
            timers = List.copyOf(timers);
        }
    }

    /** @throws FileProblem when it is missing, malformed or of a newer version */
    public static List<Catalysed> read(Path file) throws FileProblem {
        return at(file).read();
    }

    /**
     * Keeps the clocks that run. Those that another window started meanwhile run on, and what either of the two saw
     * done is done.
     *
     * @param before as they were last read or written here; empty when there was no file
     * @throws FileProblem when it cannot be written; what stood there still stands
     */
    public static void keep(Path file, List<Catalysed> before, List<Catalysed> now) throws FileProblem {
        at(file).keep(Optional.of(before), now, ClocksFile::together);
    }

    private static SharedFile<List<Catalysed>> at(Path file) {
        return SharedFile.of(file, ClocksFile::from, ClocksFile::text);
    }

    private static List<Catalysed> together(List<Catalysed> before, List<Catalysed> theirs, List<Catalysed> mine) {
        List<Catalysed> both = new ArrayList<>();
        for (Catalysed one : theirs) {
            Optional<Catalysed> here = sameCup(one, mine);
            if (here.isPresent()) {
                List<CureTimer> left = new ArrayList<>(one.timers());
                left.retainAll(here.get().timers());
                if (!left.isEmpty()) {
                    both.add(new Catalysed(one.job(), one.batch(), one.words(), one.catalysed(), left));
                }
            } else if (sameCup(one, before).isEmpty()) {
                both.add(one);
            }
        }
        mine.stream()
                .filter(one ->
                        sameCup(one, before).or(() -> sameCup(one, theirs)).isEmpty())
                .forEach(both::add);
        return both;
    }

    private static Optional<Catalysed> sameCup(Catalysed one, List<Catalysed> among) {
        return among.stream()
                .filter(other -> other.batch() == one.batch()
                        && other.job().equals(one.job())
                        && other.catalysed().equals(one.catalysed()))
                .findFirst();
    }

    private static String text(List<Catalysed> cups) {
        return JsonText.of(JsonText.head(KIND, VERSION).each("cups", cups, ClocksFile::tree));
    }

    private static Fields tree(Catalysed cup) {
        return Fields.of("batch", cup.batch())
                .with("job", cup.job())
                .with("words", cup.words())
                .with("catalysed", cup.catalysed())
                .each("timers", cup.timers(), ClocksFile::tree);
    }

    static Fields tree(CureTimer timer) {
        return Fields.of("cue", timer.cue())
                .with("minutes", List.of(timer.fromMinutes(), timer.toMinutes()))
                .with("test", timer.test());
    }

    static List<Catalysed> from(JsonPlace root) throws FileProblem {
        root.head(KIND, VERSION, "cups");
        return root.each("cups", cup -> {
            cup.only("batch", "job", "words", "catalysed", "timers");
            return new Catalysed(
                    cup.has("job") ? Optional.of(cup.at("job").text()) : Optional.empty(),
                    cup.at("batch").whole(),
                    cup.at("words").text(),
                    cup.at("catalysed").moment(),
                    cup.each("timers", ClocksFile::timer));
        });
    }

    private static CureTimer timer(JsonPlace place) throws FileProblem {
        place.only("cue", "minutes", "test");
        double[] minutes = place.at("minutes").numbers();
        if (minutes.length != 2) {
            throw place.at("minutes").problem("must be the first and the last minute, such as [12, 18]");
        }
        return place.make(() -> new CureTimer(place.at("cue").text(), minutes[0], minutes[1], place.text("test", "")));
    }
}
