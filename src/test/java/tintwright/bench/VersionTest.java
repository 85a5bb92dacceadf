package tintwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** One version number: that of pom.xml, with an entry of its own in docs/changes.md. */
class VersionTest {
    private static String inThePom() throws Exception {
        Matcher found = Pattern.compile("<artifactId>tintwright</artifactId>\\s*<version>([^<]+)</version>")
                .matcher(Files.readString(Path.of("pom.xml")));
        assertTrue(found.find());
        return found.group(1);
    }

    @Test
    void theProgramSaysWhatThePomSays() throws Exception {
        assumeTrue(!Version.number().startsWith("not"), "the classes were not built by Maven");
        assertEquals(inThePom(), Version.number());
    }

    @Test
    void theVersionInHandHasItsEntryOnTop() throws Exception {
        String changes = Files.readString(Path.of("docs/changes.md"));
        Matcher first = Pattern.compile("(?m)^## (\\S+)").matcher(changes);
        assertTrue(first.find());
        assertEquals(inThePom(), first.group(1));
    }
}
