package tintwright.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The version of the program. It is stated in pom.xml alone; Maven writes it into a resource as it builds. */
public final class Version {
    private static final String NUMBER = read();

    private Version() {}

    /** @return such as "1.0.0"; "not built by Maven" when the classes were compiled in another way */
    public static String number() {
        return NUMBER;
    }

    private static String read() {
        try (InputStream in = Version.class.getResourceAsStream("version.txt")) {
            String text = in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8).trim();
            return text.isEmpty() || text.startsWith("$") ? "not built by Maven" : text;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
