package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.Cups;
import tintwright.colour.Lab;
import tintwright.command.Commands;
import tintwright.cup.CupDeeds;
import tintwright.cup.CupSight;
import tintwright.files.CupFile;
import tintwright.files.ShelfFile;
import tintwright.match.Aim;
import tintwright.reading.FilmState;
import tintwright.shelf.Parts;
import tintwright.window.cup.CupModel;

/**
 * Terminal and window say one thing of one cup, and it is looked at once for all that show it. Compared is a cup whose
 * plan is not half done: a plan once begun the window follows to its end, and a cup's file does not know of it.
 */
class OneVoiceTest {
    private static final int CUPS = 6;
    private static final int DEEDS = 5;

    @TempDir
    private Path folder;

    private final AtomicInteger looks = new AtomicInteger();
    private final Desk desk = Desks.demo(Clock.systemUTC(), new Cups((shelf, cup) -> {
        looks.incrementAndGet();
        return CupSight.of(shelf, cup);
    }));

    private CupModel.InHand now() {
        return desk.cup().inHandProperty().get().orElseThrow();
    }

    @Test
    void anyCupIsSaidAlikeInBoth() throws Exception {
        Random random = new Random(15);
        List<CupDeeds.Kind> met = new ArrayList<>();
        for (int i = 0; i < CUPS; i++) {
            desk.cup().begin();
            for (int deed = 0; deed < DEEDS; deed++) {
                met.add(now().deeds().now().kind());
                sayTheSame();
                anything(random);
            }
            desk.cup().putAway();
        }
        assertTrue(met.stream().distinct().count() >= 3, "not one kind of deed only: " + met);
    }

    /** All of what the window shows of the next deed stands on the terminal, and nothing else to weigh. */
    private void sayTheSame() throws Exception {
        Path file = folder.resolve("cup.json");
        Files.deleteIfExists(file);
        CupFile.at(file).create(now().cup());
        Path shelf = folder.resolve("shelf.json");
        Files.writeString(shelf, ShelfFile.text(desk.job().now().shelf()));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Commands.run(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                "cup",
                "plan",
                "--shelf",
                shelf.toString(),
                "--cup",
                file.toString());
        String said = out.toString(StandardCharsets.UTF_8);
        assertEquals(0, code, err.toString(StandardCharsets.UTF_8));
        CupDeeds deeds = now().deeds();
        assertTrue(said.contains(deeds.verdict()), said);
        List<CupDeeds.Todo> all = new ArrayList<>(deeds.next());
        all.add(0, deeds.now());
        int from = 0;
        for (CupDeeds.Todo todo : all) {
            int there = said.indexOf(todo.sentence(), from);
            assertTrue(there >= 0, todo + " stands not, or not in its turn, in " + said);
            assertTrue(said.contains(todo.why()) && said.contains(todo.how()), todo + " in " + said);
            from = there;
        }
        long weighed =
                all.stream().filter(todo -> todo.kind() == CupDeeds.Kind.WEIGH).count();
        assertEquals(
                weighed,
                said.lines()
                        .filter(line -> line.startsWith("Weigh ") && !line.startsWith("Weigh white"))
                        .count(),
                said);
    }

    /** As advised, or more of something, or a chip of it that is off by a little. */
    private void anything(Random random) {
        boolean empty = now().cup().state().parts().isEmpty();
        int what = empty ? 0 : random.nextInt(4);
        boolean asked = now().deeds().now().kind() == CupDeeds.Kind.READ_CHIP;
        if (asked && random.nextBoolean()) {
            readChip(random);
        } else if (what < 2 && now().deeds().now().deed().isPresent()) {
            do {
                desk.cup().accept();
            } while (!desk.job().now().ahead().isEmpty());
        } else if (what < 3) {
            List<String> tints = desk.job().now().shelf().tints().stream()
                    .map(tint -> tint.id())
                    .toList();
            String part = tints.get(random.nextInt(tints.size()));
            assertTrue(desk.cup()
                    .alsoWeighed(part, String.format(Locale.ROOT, "%.2f", 0.05 + 2 * random.nextDouble())));
        } else {
            readChip(random);
        }
    }

    private void readChip(Random random) {
        Parts parts = now().cup().state().parts().orElseThrow();
        Lab hull = Aim.of(now().cup().hull()).target().colour();
        Lab lab = desk.job()
                .knowledgeProperty()
                .get()
                .colour(
                        parts,
                        hull.viewing(),
                        now().cup().hull().readings().get(0).geometry());
        assertTrue(desk.cup()
                .read(
                        near(lab.lightness(), random),
                        near(lab.a(), random),
                        near(lab.b(), random),
                        hull.viewing(),
                        FilmState.CURED));
    }

    private static String near(double axis, Random random) {
        return String.format(Locale.ROOT, "%.1f", axis + 0.5 * random.nextGaussian());
    }

    @Test
    void oneChangeIsOneLook() {
        desk.cup().begin();
        desk.cup().accept();
        readChip(new Random(1));
        int before = looks.get();
        desk.cup().accept();
        assertEquals(1, looks.get() - before, "a dose after a chip");
        before = looks.get();
        desk.cup().alsoWeighed("soot-black", "0.9");
        assertEquals(1, looks.get() - before, "something else");
        before = looks.get();
        if (!now().ways().isEmpty()) {
            desk.cup().choose(0);
            assertEquals(0, looks.get() - before, "a way that was shown already");
        }
    }
}
