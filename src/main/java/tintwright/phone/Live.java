package tintwright.phone;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import tintwright.bench.BenchTop;

/** Tells a phone at once that something changed: server-sent events (WHATWG HTML, section 9.2). */
final class Live {
    /** A phone asks again after this: one that fell asleep holds no thread for longer. */
    private static final long STREAM_MILLIS = 60_000;
    /** So often a quiet stream is tried, to see whether anybody still listens. */
    private static final long QUIET_MILLIS = 15_000;
    /** Short beside the second within which a change is seen, long beside a burst of changes. */
    private static final long TOGETHER_MILLIS = 150;

    private final BenchTop top;
    private final Semaphore free = new Semaphore(Passes.MOST_PHONES);
    private final AtomicLong ended = new AtomicLong();

    Live(BenchTop top) {
        this.top = top;
    }

    /** Ends every stream; those whose phone is still let in come back. */
    void stop() {
        ended.incrementAndGet();
        top.wake();
    }

    /** @param stillIn whether the phone is still let in */
    void serve(HttpExchange exchange, BooleanSupplier stillIn) throws IOException, InterruptedException, Refused {
        if (!free.tryAcquire()) {
            throw new Refused(Reply.BUSY, "Too many phones look at the bench at once.");
        }
        try {
            exchange.getResponseHeaders().set("Content-Type", "text/event-stream; charset=utf-8");
            exchange.sendResponseHeaders(Reply.OK, 0);
            OutputStream out = exchange.getResponseBody();
            long begun = ended.get();
            long seen = top.version();
            say(out, "retry: 1000\ndata: " + seen + "\n\n");
            long until = System.nanoTime() + STREAM_MILLIS * 1_000_000;
            while (begun == ended.get() && stillIn.getAsBoolean() && System.nanoTime() < until) {
                long now = top.after(seen, QUIET_MILLIS);
                // Many changes in a row are one piece of news.
                Thread.sleep(now == seen ? 0 : TOGETHER_MILLIS);
                now = top.version();
                say(out, now == seen ? ":\n\n" : "data: " + now + "\n\n");
                seen = now;
            }
        } finally {
            free.release();
        }
    }

    private static void say(OutputStream out, String words) throws IOException {
        out.write(words.getBytes(StandardCharsets.UTF_8));
        out.flush();
    }
}
