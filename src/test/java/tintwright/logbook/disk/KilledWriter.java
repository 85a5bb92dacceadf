package tintwright.logbook.disk;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.SplittableRandom;

/**
 * A process of its own that writes entries into a log folder and says the name of each one once it is
 * acknowledged. Arguments: log folder, home, bench, seed, number of entries (0: until killed).
 */
final class KilledWriter {
    private KilledWriter() {}

    public static void main(String[] args) throws IOException {
        ThisBench bench = new ThisBench(args[2], Path.of(args[1]));
        SplittableRandom random = new SplittableRandom(Long.parseLong(args[3]));
        int wanted = Integer.parseInt(args[4]);
        // System.out would keep lines back; the parent must know of each entry the moment it is acknowledged.
        try (FileOutputStream out = new FileOutputStream(FileDescriptor.out);
                LogStore store = new LogStore(
                        Path.of(args[0]), bench, Disk.REAL, Clock.systemUTC(), random.split(), entry -> {})) {
            for (int i = 0; wanted == 0 || i < wanted; i++) {
                String text =
                        args[3] + " " + i + " " + "x".repeat(random.nextInt(random.nextInt(50) == 0 ? 20000 : 300));
                Saved saved = store.append("note", null, Folders.note(text));
                String said = saved instanceof Saved.OnDisk ? saved.entry().id().toString() : "waiting";
                out.write((said + "\n").getBytes(StandardCharsets.US_ASCII));
            }
        }
    }
}
