package tintwright.window;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Whether the system's own settings ask programs to keep still. The toolkit of this release cannot tell, so the system
 * is asked by its own command. Key names as the systems publish them, from memory: {@code enable-animations} of the
 * GNOME desktop schemas, {@code reduceMotion} of macOS, bit 1 of the fifth byte of Windows' {@code UserPreferencesMask}
 * (client area animation).
 */
final class SystemMotion {
    private static final long PATIENCE_SECONDS = 2;
    private static final Pattern MASK = Pattern.compile("REG_BINARY\\s+[0-9A-Fa-f]{8}([0-9A-Fa-f]{2})");
    private static final int CLIENT_AREA_ANIMATION = 2;

    /**
     * How a system is asked.
     *
     * @param name  what the name of such a system contains
     * @param still tells from its answer that nothing is to move
     */
    private record Question(String name, List<String> command, Predicate<String> still) {}

    private static final List<Question> QUESTIONS = List.of(
            new Question(
                    "linux",
                    List.of("gsettings", "get", "org.gnome.desktop.interface", "enable-animations"),
                    "false"::equals),
            new Question("mac", List.of("defaults", "read", "com.apple.universalaccess", "reduceMotion"), "1"::equals),
            new Question(
                    "windows",
                    List.of("reg", "query", "HKCU\\Control Panel\\Desktop", "/v", "UserPreferencesMask"),
                    SystemMotion::maskSaysStill));

    private SystemMotion() {}

    /** @return false when the system says that nothing is to move; one that gives no answer has said nothing. Waits */
    static boolean wanted() {
        return wanted(System.getProperty("os.name", ""), SystemMotion::answer);
    }

    /** @param ask runs a command of that system and gives its answer; empty for none */
    static boolean wanted(String system, Function<List<String>, String> ask) {
        return QUESTIONS.stream()
                .filter(question -> system.toLowerCase(Locale.ROOT).contains(question.name()))
                .noneMatch(question -> question.still().test(ask.apply(question.command())));
    }

    private static boolean maskSaysStill(String answer) {
        Matcher mask = MASK.matcher(answer);
        return mask.find() && (Integer.parseInt(mask.group(1), 16) & CLIENT_AREA_ANIMATION) == 0;
    }

    private static String answer(List<String> command) {
        try {
            Process asked =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            if (!asked.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                asked.destroy();
                return "";
            }
            try (BufferedReader lines = asked.inputReader(StandardCharsets.UTF_8)) {
                return lines.lines().collect(Collectors.joining("\n")).strip();
            }
        } catch (IOException noSuchCommand) {
            return "";
        } catch (InterruptedException closing) {
            Thread.currentThread().interrupt();
            return "";
        }
    }
}
