package tintwright.window.frame;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import tintwright.files.FileProblem;
import tintwright.files.SettingsFile;

/**
 * How the person left the window: its place and size, text size, light or dark, units, and whether the first walk was
 * done. Only comfort is kept here; losing it costs nothing, so a folder that cannot be written is no reason to stop.
 */
public final class WindowMemory {
    private final Path file;
    private final Map<String, String> kept = new TreeMap<>();
    private Map<String, String> before = Map.of();

    /** @param file a settings file; need not exist */
    public WindowMemory(Path file) {
        this.file = file;
        kept.putAll(SettingsFile.readOrPutAside(file));
        before = Map.copyOf(kept);
    }

    public double number(String name, double usual) {
        try {
            double value = Double.parseDouble(kept.getOrDefault(name, ""));
            return Double.isFinite(value) ? value : usual;
        } catch (NumberFormatException e) {
            return usual;
        }
    }

    public boolean truth(String name, boolean usual) {
        return Boolean.parseBoolean(kept.getOrDefault(name, Boolean.toString(usual)));
    }

    public String words(String name, String usual) {
        return kept.getOrDefault(name, usual);
    }

    public void keep(String name, Object value) {
        kept.put(name, String.valueOf(value));
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
            SettingsFile.keep(file, before, kept);
            before = Map.copyOf(kept);
            return true;
        } catch (IOException | FileProblem | SecurityException e) {
            return false;
        }
    }
}
