package tintwright.window.holes;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import tintwright.files.FileProblem;
import tintwright.files.NotedTimesFile;
import tintwright.fill.FillPlan;
import tintwright.fill.catalyst.CureTimer;
import tintwright.fill.catalyst.NotedTime;

/** What this shop saw of its cups: "done" beside a running time notes the gel and the tape-off; it belongs to no boat. */
final class ShopTimes {
    /** So many are kept, the newest: a shop's products and seasons change; a judgement of ours. */
    private static final int MOST = 40;
    /** Pressed earlier or later than so many times what is expected, it is no time seen; a judgement of ours. */
    private static final double FAR = 3;

    private final Path file;
    private final Map<Integer, Double> gelled = new HashMap<>();
    private List<NotedTime> noted;
    private List<NotedTime> kept;

    /**
     * @param file need not exist
     * @throws FileProblem when it cannot be read; it is left as it is
     */
    ShopTimes(Path file) throws FileProblem {
        this.file = file;
        noted = Files.exists(file) ? NotedTimesFile.read(file) : List.of();
        kept = noted;
    }

    List<NotedTime> noted() {
        return noted;
    }

    /**
     * Notes what has just been seen of a batch.
     *
     * @param cue   what it was time for
     * @param since the catalyst went in
     * @return whether it is one of the times that teach, and was taken
     */
    boolean note(int batch, String cue, Duration since, FillPlan plan) {
        double minutes = since.toSeconds() / 60.0;
        boolean seen = plan.timers().stream()
                .anyMatch(timer -> timer.cue().equals(cue)
                        && minutes >= timer.fromMinutes() / FAR
                        && minutes <= timer.toMinutes() * FAR);
        boolean gel = cue.equals(CureTimer.GEL);
        if (!seen || !gel && !cue.equals(CureTimer.TAPE_OFF)) {
            return false;
        }
        Double before = gelled.get(batch);
        OptionalDouble gelMinutes = gel
                ? OptionalDouble.of(minutes)
                : before == null || before > minutes ? OptionalDouble.empty() : OptionalDouble.of(before);
        List<NotedTime> more = new ArrayList<>(noted);
        if (gel) {
            gelled.put(batch, minutes);
        } else if (gelMinutes.isPresent()) {
            // The same cup again, now with its tape-off: it teaches its gel time once.
            more.removeIf(one ->
                    one.gelMinutes().equals(gelMinutes) && one.tapeOffMinutes().isEmpty());
        }
        more.add(new NotedTime(
                plan.job().conditions().cupCelsius(),
                plan.share(),
                gelMinutes,
                gel ? OptionalDouble.empty() : OptionalDouble.of(minutes)));
        noted = List.copyOf(more.subList(Math.max(0, more.size() - MOST), more.size()));
        return true;
    }

    /** @throws FileProblem when it cannot be written; what stood there still stands */
    void keep() throws FileProblem {
        List<NotedTime> now = noted;
        NotedTimesFile.keep(file, kept, now);
        kept = now;
    }
}
