package tintwright.window.frame;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Properties;

/**
 * How the person left the window: its place and size, text size, light or dark, units, and whether the first walk was
 * done. Only comfort is kept here; losing it costs nothing, so a folder that cannot be written is no reason to stop.
 */
public final class WindowMemory {
    private final Path file;
    private final Properties kept = new Properties();

    /** @param file a properties file; need not exist */
    public WindowMemory(Path file) {
        this.file = file;
        if (Files.isReadable(file)) {
            try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                kept.load(reader);
            } catch (IOException | IllegalArgumentException e) {
                kept.clear();
            }
        }
    }

    public double number(String name, double usual) {
        try {
            double value = Double.parseDouble(kept.getProperty(name, ""));
            return Double.isFinite(value) ? value : usual;
        } catch (NumberFormatException e) {
            return usual;
        }
    }

    public boolean truth(String name, boolean usual) {
        return Boolean.parseBoolean(kept.getProperty(name, Boolean.toString(usual)));
    }

    public String words(String name, String usual) {
        return kept.getProperty(name, usual);
    }

    public void keep(String name, Object value) {
        kept.setProperty(name, String.valueOf(value));
    }

    /** Keeps it and writes it down now: a window that is killed in the next moment must know it. */
    public void keepAtOnce(String name, Object value) {
        keep(name, value);
        save();
    }

    /** @return false when it could not be written; nothing else is lost by that */
    public boolean save() {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            Path draft = file.resolveSibling(file.getFileName() + ".draft");
            try (Writer writer = Files.newBufferedWriter(draft, StandardCharsets.UTF_8)) {
                kept.store(writer, "how the window was left");
            }
            Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
            return true;
        } catch (IOException | SecurityException e) {
            return false;
        }
    }
}
