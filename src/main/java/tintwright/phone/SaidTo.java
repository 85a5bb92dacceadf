package tintwright.phone;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;
import tintwright.bench.top.BenchTop.Answer;

/** What came of the last deed of each phone, said on the page where it was done and not to the other phones. */
final class SaidTo {
    private record Line(String pass, Place place) {}

    private record Words(Answer answer, long until) {}

    private final LongSupplier nanos;
    private final Map<Line, Words> words = new HashMap<>();

    /** @param nanos a clock in nanoseconds that never goes back */
    SaidTo(LongSupplier nanos) {
        this.nanos = nanos;
    }

    synchronized void keep(String pass, Place place, Answer answer) {
        long now = nanos.getAsLong();
        words.values().removeIf(one -> one.until() - now <= 0);
        words.put(new Line(pass, place), new Words(answer, now + place.saidSeconds() * 1_000_000_000L));
    }

    synchronized Optional<Answer> of(String pass, Place place) {
        return Optional.ofNullable(words.get(new Line(pass, place)))
                .filter(one -> one.until() - nanos.getAsLong() > 0)
                .map(Words::answer);
    }
}
