package tintwright.phone;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.BindException;
import java.net.InetSocketAddress;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import tintwright.bench.top.BenchTop;

/**
 * Serves the bench's pages to the phones of the shop, from when it is opened until it is closed: on one address of the
 * local network, to whoever holds the secret of the code, and nothing else.
 */
public final class PhoneServer implements AutoCloseable {
    /** Free to use by anybody (RFC 6335, section 6: user ports), chosen by us. */
    public static final int USUAL_PORT = 8417;
    /**
     * A stranger's half request holds a thread until the server gives it up, so there are far more than the streams and
     * works of all phones need; one that only waits holds some tens of kilobytes. Judgement of ours.
     */
    private static final int MOST_THREADS = 1000;

    private static final int QUEUE = 128;

    static {
        // Read by the server's class when it is loaded: a phone that falls asleep over half a photo lets go of its
        // thread, answers are not held back for more, and no heading fills the memory. What a person set stays.
        set("maxReqTime", "120");
        set("maxReqHeaders", "60");
        set("nodelay", "true");
        set("maxIdleConnections", "100");
    }

    private final HttpServer server;
    private final ExecutorService threads;
    private final Passes passes;
    private final Gate gate;
    private final Requests requests;

    private PhoneServer(HttpServer server, BenchTop top, Path photos, Clock clock) {
        this.server = server;
        this.passes = new Passes();
        this.gate = new Gate(server.getAddress(), passes);
        this.requests = new Requests(gate, passes, top, photos, clock);
        this.threads = new ThreadPoolExecutor(2, MOST_THREADS, 30, TimeUnit.SECONDS, new SynchronousQueue<>(), work -> {
            Thread thread = new Thread(work, "phone");
            thread.setDaemon(true);
            return thread;
        });
        server.setExecutor(threads);
        server.createContext("/", requests);
        server.start();
    }

    private static void set(String name, String value) {
        String property = "sun.net.httpserver." + name;
        if (System.getProperty(property) == null) {
            System.setProperty(property, value);
        }
    }

    /**
     * Begins to serve.
     *
     * @param network where; nowhere else
     * @param port    0 for any that is free
     * @param top     what is shown and worked on
     * @param photos  the folder that photos are put in; made when the first one comes
     * @param clock   what the running times are counted by
     * @throws PhoneFailure when the port is taken or the network refuses; the message says what to do
     */
    public static PhoneServer open(LocalNetwork network, int port, BenchTop top, Path photos, Clock clock)
            throws PhoneFailure {
        try {
            HttpServer server = HttpServer.create(new InetSocketAddress(network.address(), port), QUEUE);
            return new PhoneServer(server, top, photos, clock);
        } catch (BindException e) {
            throw new PhoneFailure(
                    "Port " + port + " of " + network.words()
                            + " is taken by another program, perhaps by another window of this one. Choose another port.",
                    e);
        } catch (IOException e) {
            throw new PhoneFailure(
                    "The phone's pages cannot be served on " + network.words() + " (" + e.getMessage() + ").", e);
        }
    }

    /** @return what the code holds now: it lets one phone in, and is another one then */
    public String invitation() {
        return gate.origin() + "/" + passes.invitation() + "/";
    }

    /** @param then told whenever a phone was let in, on a thread of the server: the code is another one then */
    public void whenLetIn(Runnable then) {
        passes.whenLetIn(then);
    }

    /** @return how many phones were let in since the last {@link #renew()} */
    public int phones() {
        return passes.phones();
    }

    /** Lets no phone in any more that was let in before. */
    public void renew() {
        passes.renew();
        requests.stop();
    }

    @Override
    public void close() {
        passes.renew();
        requests.stop();
        server.stop(0);
        threads.shutdownNow();
    }
}
