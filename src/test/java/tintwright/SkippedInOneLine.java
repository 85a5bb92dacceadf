package tintwright;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;

/** Says at the end of a test run, in one line, what was skipped and why. */
public final class SkippedInOneLine implements TestExecutionListener {
    private final Map<String, Integer> reasons = new TreeMap<>();

    @Override
    public synchronized void executionFinished(TestIdentifier test, TestExecutionResult result) {
        if (result.getStatus() == TestExecutionResult.Status.ABORTED) {
            String said = result.getThrowable().map(Throwable::getMessage).orElse("no reason given");
            reasons.merge(said.replace("Assumption failed: ", ""), 1, Integer::sum);
        }
    }

    @Override
    public synchronized void executionSkipped(TestIdentifier test, String reason) {
        reasons.merge(reason, 1, Integer::sum);
    }

    @Override
    public synchronized void testPlanExecutionFinished(TestPlan plan) {
        if (!reasons.isEmpty()) {
            System.out.println(line(reasons));
        }
        reasons.clear();
    }

    /** @param reasons how many tests were skipped for each reason */
    static String line(Map<String, Integer> reasons) {
        int all = reasons.values().stream().mapToInt(Integer::intValue).sum();
        return "Skipped " + all + ": "
                + reasons.entrySet().stream()
                        .map(reason -> reason.getValue() + " (" + reason.getKey() + ")")
                        .collect(Collectors.joining("; "));
    }
}
