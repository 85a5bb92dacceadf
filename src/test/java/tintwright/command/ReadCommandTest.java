package tintwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.colour.RgbSpace;
import tintwright.colour.Viewing;
import tintwright.files.CardFile;
import tintwright.files.TargetFile;

/** The read command on photos painted here: a card and a hull under warm light, in sRGB (IEC 61966-2-1). */
class ReadCommandTest {
    private static final int PITCH = 80;
    private static final int EDGE = 100;
    private static final Lab HULL = new Lab(64.5, -9.5, 3, Viewing.D50_2);
    private static final Lab LIGHT_FRAME = new Lab(82, 0, 0, Viewing.D50_2);
    /** What the lamp makes of red, green and blue light. */
    private static final double[] WARM = {1.0, 0.93, 0.74};

    @TempDir
    Path folder;

    private Path photo;

    @BeforeEach
    void shoot() throws Exception {
        photo = shoot("bow-1.png", 0);
    }

    private static int code(Lab lab) {
        RgbSpace.Code code = RgbSpace.SRGB.encode(lab);
        double[] channels = {code.red(), code.green(), code.blue()};
        int rgb = 0;
        for (int k = 0; k < 3; k++) {
            double light = 0.9 * WARM[k] * RgbSpace.toLinear(Math.max(0, Math.min(1, channels[k])));
            rgb = rgb << 8 | (int) Math.round(255 * RgbSpace.toCode(light));
        }
        return rgb;
    }

    private Path shoot(String name, double lighter) throws Exception {
        int[] patches = CardFile.shipped("five-by-five").patches().stream()
                .mapToInt(patch -> code(patch.colour(Viewing.D50_2)))
                .toArray();
        BufferedImage image =
                new BufferedImage(2 * EDGE + 6 * PITCH + 200, 2 * EDGE + 5 * PITCH, BufferedImage.TYPE_3BYTE_BGR);
        int frame = code(LIGHT_FRAME);
        int hull = code(new Lab(HULL.lightness() + lighter, HULL.a(), HULL.b(), HULL.viewing()));
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int column = Math.floorDiv(x - EDGE, PITCH);
                int row = Math.floorDiv(y - EDGE, PITCH);
                boolean onCard = column >= 0 && column < 5 && row >= 0 && row < 5;
                boolean onPatch =
                        onCard && Math.abs((x - EDGE) % PITCH - 40) < 34 && Math.abs((y - EDGE) % PITCH - 40) < 34;
                int rgb = onPatch ? patches[5 * row + column] : onCard ? frame : hull;
                image.setRGB(x, y, rgb);
            }
        }
        Path file = folder.resolve(name);
        ImageIO.write(image, "png", file.toFile());
        Files.writeString(folder.resolve(name + ".marks.json"), """
                {"formatVersion": 1, "kind": "marks",
                 "cards": [{"card": "five-by-five", "corners": [[106, 106], [494, 106], [494, 494], [106, 494]]}],
                 "spots": [{"name": "port bow", "at": [680, 260], "radius": 30}]}
                """);
        return file;
    }

    private static CommandLineTest.Ran read(Object... args) {
        String[] all = new String[args.length + 1];
        all[0] = "read";
        for (int i = 0; i < args.length; i++) {
            all[i + 1] = args[i].toString();
        }
        return CommandLineTest.run(Commands.all(), all);
    }

    private static Lab lab(JsonNode axes, Viewing viewing) {
        return new Lab(
                axes.get(0).doubleValue(),
                axes.get(1).doubleValue(),
                axes.get(2).doubleValue(),
                viewing);
    }

    @Test
    void findsTheCardOnItsLightFrame() throws Exception {
        CommandLineTest.Ran ran = read(photo, "--card", "five-by-five", "--light", "D50", "--observer", "2", "--json");
        assertEquals(0, ran.code(), ran.err());
        JsonNode shown = new ObjectMapper().readTree(ran.out()).get("photos").get(0);
        assertEquals(25, shown.get("references").intValue());
        double off = Ciede2000.between(lab(shown.get("spots").get(0).get("lab"), Viewing.D50_2), HULL);
        assertTrue(off < 1, "off by " + off);
    }

    @Test
    void aCardOfOneRowIsRefusedWithTheWayOn() {
        CommandLineTest.Ran ran = read(photo, "--card", "grey-six");
        assertEquals(2, ran.code(), ran.err());
        assertTrue(ran.err().contains("single row") && ran.err().contains("drag"), ran.err());
    }

    @Test
    void aPersonCanSayThatTheCardLiesOnTheHull() throws Exception {
        BufferedImage image = ImageIO.read(photo.toFile());
        Graphics2D paint = image.createGraphics();
        paint.setColor(new Color(code(new Lab(60, -6, -14, Viewing.D50_2))));
        paint.fillRect(630, 210, 100, 100);
        paint.dispose();
        ImageIO.write(image, "png", photo.toFile());
        CommandLineTest.Ran asked = read(photo);
        CommandLineTest.Ran said = read(photo, "--card-on-hull");
        assertTrue(asked.out().contains("paint or other light") && asked.out().contains("--card-on-hull"), asked.out());
        assertTrue(asked.out().contains("a rough idea only"), asked.out());
        assertFalse(said.out().contains("paint or other light") || said.out().contains("rough"), said.out());
    }

    @Test
    void readsTheHullThroughTheCard() throws Exception {
        CommandLineTest.Ran ran = read(photo, "--light", "D50", "--observer", "2", "--json");
        assertEquals(0, ran.code(), ran.err());
        JsonNode spot = new ObjectMapper()
                .readTree(ran.out())
                .get("photos")
                .get(0)
                .get("spots")
                .get(0);
        double off = Ciede2000.between(lab(spot.get("lab"), Viewing.D50_2), HULL);
        assertTrue(off < 1, "off by " + off);
        RgbSpace.Code clean = RgbSpace.SRGB.encode(HULL);
        int shot = code(HULL);
        double without = Ciede2000.between(
                RgbSpace.SRGB.decode(clean.red(), clean.green(), clean.blue()),
                RgbSpace.SRGB.decode((shot >> 16) / 255.0, (shot >> 8 & 255) / 255.0, (shot & 255) / 255.0));
        assertTrue(without > 6, "the light alone is off by " + without);
        assertTrue(off <= spot.get("within90").doubleValue(), "off by " + off + ", said " + spot.get("within90"));
    }

    @Test
    void severalPhotosOfOnePlaceAreTakenTogetherAndWritten() throws Exception {
        Path second = shoot("bow-2.png", 0.2);
        Path out = folder.resolve("bow.json");
        CommandLineTest.Ran ran = read(photo, second, "--out", out, "--boat", "Tarrowmere", "--place", "port bow");
        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("of 2 readings"), ran.out());
        assertEquals(2, TargetFile.read(out).readings().size());
        assertEquals("port bow", TargetFile.read(out).place());
        String there = Files.readString(out);
        CommandLineTest.Ran again = read(photo, "--out", out, "--place", "stern");
        assertEquals(2, again.code());
        assertTrue(again.err().contains("is there already and was left as it was: name another file"), again.err());
        assertEquals(there, Files.readString(out));
    }

    @Test
    void saysWhatIsMissing() {
        CommandLineTest.Ran unmarked = read(photo.resolveSibling("bow-9.png"));
        assertEquals(2, unmarked.code());
        assertTrue(unmarked.err().contains("bow-9.png"), unmarked.err());
        CommandLineTest.Ran two = read(photo, photo, "--marks", folder.resolve("bow-1.png.marks.json"));
        assertTrue(two.err().contains("--marks belongs to one photo"), two.err());
        for (CommandLineTest.Ran ran : new CommandLineTest.Ran[] {unmarked, two}) {
            assertFalse(ran.err().contains("Exception"), ran.err());
            assertEquals("", ran.out());
        }
    }
}
