package tintwright.window.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import org.junit.jupiter.api.Test;

class LatestAnswerTest {
    private final Queue<Runnable> held = new ArrayDeque<>();
    private final List<String> answers = new ArrayList<>();

    @Test
    void onlyTheLatestAnswerIsShown() {
        LatestAnswer latest = new LatestAnswer(Runnable::run, held::add, new ShellModel(), "working");
        latest.ask(() -> "first", answers::add, e -> answers.add("failed"));
        latest.ask(() -> "second", answers::add, e -> answers.add("failed"));
        held.forEach(Runnable::run);
        assertEquals(List.of("second"), answers);
    }

    @Test
    void aQuestionThatWasOvertakenIsNotEvenBegun() {
        List<String> begun = new ArrayList<>();
        LatestAnswer latest = new LatestAnswer(held::add, Runnable::run, new ShellModel(), "working");
        latest.ask(() -> begun.add("first"), done -> {}, e -> {});
        latest.ask(() -> begun.add("second"), done -> {}, e -> {});
        held.forEach(Runnable::run);
        assertEquals(List.of("second"), begun);
    }

    @Test
    void whatFailsIsHandedOverToo() {
        LatestAnswer latest = new LatestAnswer(Runnable::run, Runnable::run, new ShellModel(), "working");
        latest.ask(
                () -> {
                    throw new IllegalArgumentException("the batch must be 1 to 100000 g, was 0 g");
                },
                done -> answers.add("done"),
                e -> answers.add(FailureWords.of(e)));
        assertEquals(List.of("The batch must be 1 to 100000 g, was 0 g."), answers);
    }

    /** The first time nobody knows; after that it is said by what it took. */
    @Test
    void howMuchIsLeftIsSaidByTheLastTime() {
        ShellModel shell = new ShellModel();
        LatestAnswer latest = new LatestAnswer(held::add, Runnable::run, shell, "Reading the photo\u2026");
        latest.ask(() -> "once", answers::add, e -> {});
        assertTrue(shell.working(300) < 0);
        assertEquals("Reading the photo\u2026", shell.doingProperty().get());
        held.remove().run();
        assertEquals(List.of("once"), answers);
        assertTrue(shell.working(300) < 0, "nothing is awaited");
    }

    @Test
    void aBarNeverReachesItsEndBeforeTheAnswer() {
        assertEquals(0.25, ShellModel.done(1000, 4000), 1e-9);
        assertEquals(0.95, ShellModel.done(9000, 4000), 1e-9);
        assertEquals(-1, ShellModel.done(300, 0), 1e-9, "nobody knows");
        assertEquals("", ShellModel.left(300, 0));
        assertEquals(" about 3 s left", ShellModel.left(1000, 4000));
        assertEquals("", ShellModel.left(3600, 4000));
    }
}
