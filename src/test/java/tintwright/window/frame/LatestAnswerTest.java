package tintwright.window.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
}
