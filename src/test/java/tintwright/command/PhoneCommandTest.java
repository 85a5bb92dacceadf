package tintwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.job.BenchFile;
import tintwright.bench.log.ShopLog;
import tintwright.command.pieces.Command;
import tintwright.phone.LocalNetwork;
import tintwright.phone.PhoneBenches;
import tintwright.reading.photo.sheet.CodePattern;
import tintwright.reading.photo.sheet.CodeReading;

class PhoneCommandTest {
    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(List<LocalNetwork> networks, String keys, String... args) {
        Command command = new PhoneCommand(
                new ByteArrayInputStream(keys.getBytes(StandardCharsets.UTF_8)), () -> networks, ShopLog::demo);
        return Commands.run(List.of(command), new PrintStream(out, true), new PrintStream(err, true), args);
    }

    private static LocalNetwork here() {
        return new LocalNetwork("lo", InetAddress.getLoopbackAddress());
    }

    @Test
    void printsAnAddressThatACameraReadsAndServesUntilItIsEnded() throws Exception {
        Path file = folder.resolve("bench.json");
        BenchFile.keep(file, Optional.empty(), PhoneBenches.job());
        int code = run(List.of(here()), "\nend\n", "phone", "--bench", file.toString(), "--port", "0");
        String said = out.toString(StandardCharsets.UTF_8);
        assertEquals(Commands.DONE, code, err.toString(StandardCharsets.UTF_8));
        Matcher address =
                Pattern.compile("http://127\\.0\\.0\\.1:\\d+/[0-9a-f]{32}/").matcher(said);
        assertTrue(address.find(), said);
        assertTrue(said.contains("Ended. Phones that were let in: 0."), said);
        List<String> code1 =
                said.lines().takeWhile(line -> !line.startsWith("http")).toList();
        assertEquals(Optional.of(address.group()), CodeReading.of(picture(code1)));
        assertTrue(said.indexOf(address.group()) < said.lastIndexOf(address.group()), "again at Enter");
    }

    /** What a camera sees of the terminal: block characters are light. */
    private static BufferedImage picture(List<String> lines) {
        int scale = 8;
        int wide = lines.get(0).length();
        BufferedImage image = new BufferedImage(wide * scale, lines.size() * 2 * scale, BufferedImage.TYPE_BYTE_GRAY);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                char here = lines.get(y / scale / 2).charAt(x / scale);
                boolean upper = y / scale % 2 == 0;
                boolean light = here == '\u2588' || here == (upper ? '\u2580' : '\u2584');
                image.setRGB(x, y, light ? 0xffffff : 0);
            }
        }
        return image;
    }

    @Test
    void whatIsWrongIsOneSentence() throws Exception {
        assertEquals(Commands.UNUSABLE, run(List.of(), "", "phone"));
        assertTrue(
                err.toString(StandardCharsets.UTF_8).startsWith("This machine is on no local network."),
                err.toString(StandardCharsets.UTF_8));
        err.reset();
        Path none = folder.resolve("none.json");
        assertEquals(Commands.UNUSABLE, run(List.of(here()), "", "phone", "--bench", none.toString()));
        assertTrue(
                err.toString(StandardCharsets.UTF_8).contains("none.json")
                        && err.toString(StandardCharsets.UTF_8).lines().count() == 1,
                err.toString(StandardCharsets.UTF_8));
        err.reset();
        assertEquals(Commands.UNUSABLE, run(List.of(here()), "", "phone", "--port", "70000"));
        assertEquals("--port must be 0 to 65535, was 70000.\n", err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aCodeHasLightAllAround() {
        CodePattern code = CodePattern.of("http://192.168.1.20:8417/0123456789abcdef0123456789abcdef/");
        assertEquals(0, (code.side() - 17) % 4, "ISO/IEC 18004: 17 and four for every version");
        assertTrue(code.dark(0, 0) && !code.dark(1, 1) && code.dark(3, 3), "the finder pattern");
        assertTrue(!code.dark(-1, 0) && !code.dark(0, code.side()));
    }
}
