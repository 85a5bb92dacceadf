package tintwright.phone;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import tintwright.bench.top.BenchTop.Answer;

/** Waits for what the bench says. */
final class Answers {
    private static final long SECONDS = 60;

    private Answers() {}

    static Answer wait(CompletableFuture<Answer> asked) throws InterruptedException {
        try {
            return asked.get(SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException e) {
            return new Answer(
                    false, "The bench is still at it. Look there whether it is done before you send it again.");
        } catch (ExecutionException e) {
            System.getLogger(Answers.class.getName()).log(System.Logger.Level.ERROR, "a deed failed", e);
            return new Answer(false, "That failed at the bench. Nothing was changed; go on there.");
        }
    }
}
