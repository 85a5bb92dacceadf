package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.log.ShopLog;
import tintwright.bench.top.BenchTop;
import tintwright.phone.LocalNetwork;
import tintwright.phone.PhoneBenches;
import tintwright.phone.PhoneServer;
import tintwright.phone.RawPhone;
import tintwright.window.cup.PlanModel;
import tintwright.window.frame.Step;
import tintwright.window.pieces.Look;

/**
 * Fifty phones, each with its stream of news open and asking for a page every second, and a photo of twelve megapixels
 * from one of them every minute: how long the window takes to answer, with them and without them in turn, and what
 * memory is held. Its figures stand in docs/performance.md. All of it runs in one Java, the phones too.
 *
 * <p>{@code mvn test -Dwanted.groups=study -Dtest=PhoneLoadStudy -Dphone.minutes=10 -Dphone.photos=1}: so many minutes
 * under load, so many photos a minute. A machine that is busy with other work makes the ratio of the waits worse.
 */
@Tag("study")
class PhoneLoadStudy {
    private static final int PHONES = 50;
    private static final int BLOCK_SECONDS = 20;
    private static final int ACROSS = 2828;

    @TempDir
    Path folder;

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "engine");
        thread.setDaemon(true);
        return thread;
    });
    private final AtomicInteger pages = new AtomicInteger();
    private final AtomicInteger photos = new AtomicInteger();
    private final AtomicInteger unread = new AtomicInteger();
    private final Map<String, Integer> failures = new ConcurrentHashMap<>();
    private volatile boolean loaded;
    private volatile boolean over;
    private Desk desk;
    private byte[] photo;

    /**
     * Milliseconds from a press to the whole new plan, from a press to the screen's thread alone, and of processor time
     * that the window's two threads took for it, which other programs on the machine disturb less; and for each block
     * what the whole program took, phones included, in percent of one core.
     */
    private record Answered(List<Double> plan, List<Double> thread, List<Double> work, List<Double> core) {
        Answered() {
            this(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        }

        static double at(List<Double> all, double share) {
            double[] sorted = all.stream().mapToDouble(one -> one).sorted().toArray();
            return sorted[(int) (share * (sorted.length - 1))];
        }
    }

    @Test
    void theWindowAnswersAsBefore() throws Exception {
        int blocks = Math.max(1, (int)
                Math.round(Double.parseDouble(System.getProperty("phone.minutes", "10")) * 60 / BLOCK_SECONDS));
        Clock clock = Clock.systemUTC();
        Stage stage = Stagehand.onScreen(() -> {
            desk = new Desk(Desk.demo(), worker, Platform::runLater, clock, () -> ShopLog.demo(clock), Desks::learn);
            desk.cup().begin();
            desk.shell().stepProperty().set(Step.CUP);
            Scene scene = new Scene(desk.view(), 1280, 800);
            Look.dress(scene);
            Stage shown = new Stage();
            shown.setScene(scene);
            shown.show();
            return shown;
        });
        BenchTop top = Stagehand.onScreen(() -> new DeskTop(
                        desk.job(),
                        desk.cup(),
                        desk.sheet(),
                        desk.fill(),
                        desk.log(),
                        desk.shell(),
                        desk.chipPhoto(),
                        desk.chipPhoto(),
                        Platform::runLater)
                .top());
        Stagehand.onScreen(() -> {
            desk.shell().stepProperty().set(Step.HULL);
            return null;
        });
        photo = PhoneBenches.photoOf(
                desk.job().now().shelf(), new Color(138, 150, 140), new Color(196, 200, 196), ACROSS);
        LocalNetwork here = new LocalNetwork("lo", InetAddress.getLoopbackAddress());
        Answered without = new Answered();
        Answered with = new Answered();
        List<Long> held = new ArrayList<>();
        try (PhoneServer server = PhoneServer.open(here, 0, top, folder.resolve("photos"), clock)) {
            for (int i = 0; i < PHONES; i++) {
                RawPhone phone = RawPhone.in(server);
                int number = i;
                start(() -> poll(phone, number));
                start(() -> listen(phone));
            }
            Answered warm = new Answered();
            measure(warm);
            say("warm: %d switches%n", warm.plan().size());
            for (int block = 0; block < blocks; block++) {
                loaded = false;
                TimeUnit.SECONDS.sleep(3);
                measure(without);
                loaded = true;
                TimeUnit.SECONDS.sleep(3);
                measure(with);
                held.add(held());
            }
            over = true;
        }
        Stagehand.onScreen(() -> {
            stage.close();
            return null;
        });
        say(
                "%d phones, %d pages, %d photos (%d not read), %d requests failed%n",
                PHONES,
                pages.get(),
                photos.get(),
                unread.get(),
                failures.values().stream().mapToInt(Integer::intValue).sum());
        say("%-34s %10s %10s %7s%n", "", "without ms", "with ms", "ratio");
        double ratio = line("a tint switched, median", without.plan(), with.plan(), 0.5);
        line("a tint switched, nine of ten", without.plan(), with.plan(), 0.9);
        line("the same, processor time, median", without.work(), with.work(), 0.5);
        line("the screen's thread, median", without.thread(), with.thread(), 0.5);
        line("the screen's thread, nine of ten", without.thread(), with.thread(), 0.9);
        line("all of it, % of a core, median", without.core(), with.core(), 0.5);
        say(
                "held after each block, MiB: %s%n",
                held.stream().map(bytes -> bytes >> 20).toList());
        assertEquals(Map.of(), failures, "requests that failed");
        assertTrue(photos.get() > 0 && unread.get() == 0, "every photo is read");
        assertTrue(ratio > 0, "measured");
    }

    private void failed(String why) {
        failures.merge(why, 1, Integer::sum);
    }

    private static double line(String what, List<Double> without, List<Double> with, double share) {
        double before = Answered.at(without, share);
        double after = Answered.at(with, share);
        say("%-34s %10.2f %10.2f %7.2f%n", what, before, after, after / before);
        return after / before;
    }

    private static void say(String pattern, Object... values) {
        System.out.printf(java.util.Locale.ROOT, pattern, values);
    }

    private static void start(Runnable work) {
        Thread thread = new Thread(work, "made-up phone");
        thread.setDaemon(true);
        thread.start();
    }

    private static long held() {
        System.gc();
        Runtime java = Runtime.getRuntime();
        return java.totalMemory() - java.freeMemory();
    }

    private void measure(Answered into) throws InterruptedException {
        String tint = desk.job().now().shelf().tints().get(0).id();
        long begun = System.nanoTime();
        long begunWork = ofAll();
        long until = begun + TimeUnit.SECONDS.toNanos(BLOCK_SECONDS);
        while (System.nanoTime() < until) {
            long work = ofWindow();
            long asked = System.nanoTime();
            SynchronousQueue<Long> planned = new SynchronousQueue<>();
            SynchronousQueue<Long> reached = new SynchronousQueue<>();
            Platform.runLater(() -> {
                long there = System.nanoTime();
                start(() -> hand(reached, there));
                desk.plan().planProperty().addListener(new ChangeListener<PlanModel.Plan>() {
                    @Override
                    public void changed(
                            javafx.beans.value.ObservableValue<? extends PlanModel.Plan> plan,
                            PlanModel.Plan before,
                            PlanModel.Plan after) {
                        desk.plan().planProperty().removeListener(this);
                        long done = System.nanoTime();
                        start(() -> hand(planned, done));
                    }
                });
                desk.plan().use(tint, desk.job().now().off().contains(tint));
            });
            Long there = reached.poll(20, TimeUnit.SECONDS);
            Long done = planned.poll(20, TimeUnit.SECONDS);
            if (there == null || done == null) {
                throw new AssertionError("the window did not answer within twenty seconds");
            }
            into.thread().add((there - asked) / 1e6);
            into.plan().add((done - asked) / 1e6);
            into.work().add((ofWindow() - work) / 1e6);
            Thread.sleep(200);
        }
        into.core().add(100.0 * (ofAll() - begunWork) / (System.nanoTime() - begun));
    }

    private static long ofAll() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    /** @return nanoseconds of processor time of the screen's thread and the engine's */
    private static long ofWindow() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        return Arrays.stream(threads.getThreadInfo(threads.getAllThreadIds()))
                .filter(Objects::nonNull)
                .filter(one -> one.getThreadName().equals("engine")
                        || one.getThreadName().equals("JavaFX Application Thread"))
                .mapToLong(one -> threads.getThreadCpuTime(one.getThreadId()))
                .sum();
    }

    private static void hand(SynchronousQueue<Long> to, long value) {
        try {
            to.put(value);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void poll(RawPhone phone, int number) {
        long every = (long)
                (TimeUnit.MINUTES.toNanos(1) * PHONES / Double.parseDouble(System.getProperty("phone.photos", "1")));
        long photoAt = System.nanoTime() + every * number / PHONES;
        String[] asked = {"dose", "photo", "day", "log", "eye"};
        try {
            for (int i = number; !over; i++) {
                Thread.sleep(1000);
                if (!loaded) {
                    photoAt += TimeUnit.SECONDS.toNanos(1);
                    continue;
                }
                String page = asked[i % asked.length];
                RawPhone.Heard heard = phone.get(page);
                if (heard.status() == 200) {
                    pages.incrementAndGet();
                } else if (!over) {
                    failed(page + ": " + heard.status() + " " + heard.words());
                }
                if (System.nanoTime() > photoAt) {
                    photoAt += every;
                    send(phone);
                }
            }
        } catch (IOException e) {
            if (!over) {
                failed(e.toString());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** A photo that no other is the same as; its reading is taken back, so that the job stays as large as it was. */
    private void send(RawPhone phone) throws IOException {
        // A comment of eight bytes after the start of the image (ISO/IEC 10918-1, B.2.4.5).
        ByteBuffer other = ByteBuffer.allocate(photo.length + 12);
        other.put(photo, 0, 2).putShort((short) 0xfffe).putShort((short) 10).putLong(photos.incrementAndGet());
        other.put(photo, 2, photo.length - 2);
        phone.photo(other.array());
        if (phone.get("photo").words().contains("The hull is read")) {
            Platform.runLater(() -> desk.job()
                    .change(now -> now.withPlaces(now.boat(), Desk.demo().places(), 0)));
        } else {
            unread.incrementAndGet();
        }
    }

    private void listen(RawPhone phone) {
        byte[] heard = new byte[4096];
        while (!over) {
            try {
                Thread.sleep(500);
                if (!loaded) {
                    continue;
                }
                try (Socket socket = phone.socket()) {
                    socket.setSoTimeout(20_000);
                    socket.getOutputStream()
                            .write(RawPhone.head("GET", "/" + phone.secret() + "/live", Map.copyOf(phone.usual())));
                    while (loaded && socket.getInputStream().read(heard) >= 0) {
                        Arrays.fill(heard, (byte) 0);
                        phone.get("photo");
                        pages.incrementAndGet();
                    }
                }
            } catch (IOException ended) {
                // The stream is asked for anew, as a browser does.
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }
}
