package tintwright.window.frame;

import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/** Runs work off the screen's thread, all of it and in order: for what is written, where nothing may be dropped. */
public final class QueuedWork {
    private final Executor worker;
    private final Executor screen;

    /**
     * @param worker one thread at most, so that work keeps its order
     * @param screen where answers are delivered
     */
    public QueuedWork(Executor worker, Executor screen) {
        this.worker = worker;
        this.screen = screen;
    }

    /**
     * @param work   the work; what it throws goes to {@code failed}
     * @param done   takes the answer, on the screen's thread
     * @param failed takes the failure, on the screen's thread
     */
    public <T> void run(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        worker.execute(() -> {
            try {
                T answer = work.call();
                screen.execute(() -> done.accept(answer));
            } catch (Exception e) {
                screen.execute(() -> failed.accept(e));
            }
        });
    }
}
