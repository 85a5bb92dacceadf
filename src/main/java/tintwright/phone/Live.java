package tintwright.phone;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import tintwright.bench.top.BenchTop;

/** Tells a phone at once that something changed: server-sent events (WHATWG HTML, section 9.2). */
final class Live {
    /** A phone asks again after this: one that fell asleep holds no thread for longer. */
    private static final long STREAM_MILLIS = 60_000;
    /** So often a quiet stream is tried, to see whether anybody still listens. */
    private static final long QUIET_MILLIS = 15_000;
    /** Short beside the second within which a change is seen, long beside a burst of changes. */
    private static final long TOGETHER_MILLIS = 150;

    private final BenchTop top;
    private final Deque<AtomicBoolean> open = new ArrayDeque<>();

    Live(BenchTop top) {
        this.top = top;
    }

    /** Ends every stream; those whose phone is still let in come back. */
    synchronized void stop() {
        open.forEach(ended -> ended.set(true));
        open.clear();
        top.wake();
    }

    /** A phone that lost its Wi-Fi leaves a stream behind that nobody reads: the oldest goes when there are too many. */
    private synchronized AtomicBoolean begin() {
        if (open.size() >= Passes.MOST_PHONES) {
            open.removeFirst().set(true);
            top.wake();
        }
        AtomicBoolean ended = new AtomicBoolean();
        open.add(ended);
        return ended;
    }

    private synchronized void over(AtomicBoolean ended) {
        open.remove(ended);
    }

    /** @param stillIn whether the phone is still let in */
    void serve(HttpExchange exchange, BooleanSupplier stillIn) throws IOException, InterruptedException {
        AtomicBoolean ended = begin();
        try {
            exchange.getResponseHeaders().set("Content-Type", "text/event-stream; charset=utf-8");
            exchange.sendResponseHeaders(Reply.OK, 0);
            OutputStream out = exchange.getResponseBody();
            long seen = top.version();
            say(out, "retry: 1000\ndata: " + seen + "\n\n");
            long until = System.nanoTime() + STREAM_MILLIS * 1_000_000;
            while (!ended.get() && stillIn.getAsBoolean() && System.nanoTime() < until) {
                long now = top.after(seen, QUIET_MILLIS);
                // Many changes in a row are one piece of news.
                Thread.sleep(now == seen ? 0 : TOGETHER_MILLIS);
                now = top.version();
                say(out, now == seen ? ":\n\n" : "data: " + now + "\n\n");
                seen = now;
            }
        } finally {
            over(ended);
        }
    }

    private static void say(OutputStream out, String words) throws IOException {
        out.write(words.getBytes(StandardCharsets.UTF_8));
        out.flush();
    }
}
