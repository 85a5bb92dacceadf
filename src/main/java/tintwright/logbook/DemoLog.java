package tintwright.logbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import tintwright.logbook.disk.Disk;
import tintwright.logbook.disk.LogFailure;

/** The log of the invented boat that travels inside the program: {@code swatches/log} in the project. */
public final class DemoLog {
    private static final List<String> FILES = List.of("demo-0001.jsonl");

    private DemoLog() {}

    /**
     * Copies it into a folder, where it can be written in like any other; what is there already stays.
     *
     * @throws LogFailure when the folder cannot be written
     */
    public static void copyTo(Path folder) throws LogFailure {
        try {
            Files.createDirectories(folder);
            for (String name : FILES) {
                if (Files.exists(folder.resolve(name))) {
                    continue;
                }
                try (InputStream in = DemoLog.class.getResourceAsStream("/swatches/log/" + name)) {
                    if (in == null) {
                        throw new IllegalStateException(
                                "the program is damaged: /swatches/log/" + name + " is not in it");
                    }
                    Disk.REAL.place(folder.resolve(name), in.readAllBytes());
                }
            }
        } catch (IOException e) {
            throw LogFailure.notWritten(folder, e);
        }
    }
}
