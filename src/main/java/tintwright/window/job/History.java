package tintwright.window.job;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * What was before, and what was taken back.
 *
 * @param <T> an immutable state
 */
final class History<T> {
    private static final int MOST = 200;

    private final Deque<T> before = new ArrayDeque<>();
    private final Deque<T> after = new ArrayDeque<>();

    /** Remembers a state that is about to be replaced by something new. */
    void leave(T state) {
        before.push(state);
        after.clear();
        if (before.size() > MOST) {
            before.removeLast();
        }
    }

    boolean canUndo() {
        return !before.isEmpty();
    }

    boolean canRedo() {
        return !after.isEmpty();
    }

    /** @param now the present state, kept for {@link #redo} */
    T undo(T now) {
        after.push(now);
        return before.pop();
    }

    /** @param now the present state, kept for {@link #undo} */
    T redo(T now) {
        before.push(now);
        return after.pop();
    }
}
