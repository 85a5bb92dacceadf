package tintwright.window.frame;

import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;

/**
 * Runs work off the screen's thread and hands back only the answer to the latest question: a person who changes
 * their mind is never shown the answer to what they asked before.
 */
public final class LatestAnswer {
    private final Executor worker;
    private final Executor screen;
    private final ShellModel shell;
    private final String words;
    private final AtomicLong asked = new AtomicLong();
    /** How long the last one that was answered took, ms; 0 until one was. */
    private final AtomicLong took = new AtomicLong();

    private boolean open;

    /**
     * @param worker where the work runs; in the program one background thread
     * @param screen where answers are delivered; in the program the screen's thread
     * @param shell  told while an answer is awaited
     * @param words  what is said when it takes a while, such as "Learning the shelf"
     */
    public LatestAnswer(Executor worker, Executor screen, ShellModel shell, String words) {
        this.worker = worker;
        this.screen = screen;
        this.shell = shell;
        this.words = words;
    }

    /**
     * Asks. An older question still waiting is not even begun; one under way is let finish and its answer dropped.
     *
     * @param question the work; what it throws goes to {@code failed}
     * @param answered takes the answer, on the screen's thread
     * @param failed   takes the failure, on the screen's thread
     */
    public <T> void ask(Callable<T> question, Consumer<T> answered, Consumer<Exception> failed) {
        long mine = asked.incrementAndGet();
        if (!open) {
            open = true;
            shell.begin(this);
        }
        worker.execute(() -> {
            if (asked.get() != mine) {
                return;
            }
            try {
                long began = System.nanoTime();
                T answer = question.call();
                took.set((System.nanoTime() - began) / 1_000_000);
                deliver(mine, () -> answered.accept(answer));
            } catch (Exception e) {
                deliver(mine, () -> failed.accept(e));
            }
        });
    }

    private void deliver(long mine, Runnable delivery) {
        screen.execute(() -> {
            if (asked.get() == mine) {
                close();
                delivery.run();
            }
        });
    }

    /** Awaits no answer any more; one that still comes is dropped. */
    public void cancel() {
        asked.incrementAndGet();
        close();
    }

    private void close() {
        if (open) {
            open = false;
            shell.end(this);
        }
    }

    /** @return how long it took the last time, ms; 0 when nobody knows */
    long took() {
        return took.get();
    }

    /** @return what is being worked on, in a few words */
    String words() {
        return words;
    }
}
