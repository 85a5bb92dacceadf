package tintwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.cup.Cup;
import tintwright.cup.Deed;
import tintwright.demo.MeteredShop;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.EyeVerdict;
import tintwright.reading.FilmState;
import tintwright.shelf.Parts;

class CupFileTest {
    private static final Instant NOW = Instant.parse("2026-05-31T09:12:00Z");

    private static ColourReading photo(double l) {
        return new ColourReading(
                new Lab(l, -2, 5, Viewing.D65_10),
                Covariance.same(0.4),
                Geometry.SPECULAR_EXCLUDED,
                FilmState.WET,
                Optional.of(new ColourReading.PhotoBias("bow-2", Covariance.same(1.5))));
    }

    private static Cup everyDeed() {
        return Cup.empty("bow", MeteredShop.places().get(0), 100, 0.01, "plain-white")
                .add(NOW, new Deed.Weighed("plain-white", 64, 0.01))
                .add(NOW, new Deed.Held(32))
                .add(NOW, new Deed.LetDown("soot-black", 20, 1.62, 0.01))
                .add(NOW, new Deed.Dropped("ink-blue", 3, 0.04))
                .add(NOW, new Deed.Read(photo(70), Optional.of(photo(62)), true))
                .add(NOW, new Deed.Read(MeteredShop.places().get(1).readings().get(0), Optional.empty(), false))
                .add(
                        NOW,
                        new Deed.Seen(new EyeVerdict(
                                Optional.of(EyeVerdict.Depth.A_LITTLE_TOO_LIGHT),
                                Optional.of(EyeVerdict.Hue.TOO_RED),
                                EyeVerdict.Amount.MUCH,
                                FilmState.CURED)))
                .add(
                        NOW,
                        new Deed.Seen(
                                EyeVerdict.cannotTell(FilmState.WET),
                                Optional.of(new Deed.Trial(
                                        4,
                                        List.of(
                                                new Deed.LetDown("soot-black", 20, 0.08, 0.01),
                                                new Deed.Weighed("rust-red", 0.2, 0.01)))),
                                List.of(new Deed.Trial(4, List.of(new Deed.LetDown("soot-black", 20, 0.16, 0.01))))))
                .add(NOW, new Deed.SetAside(12.5, "bow, dark"))
                .add(NOW, new Deed.Found(Parts.of(Map.of("plain-white", 50.0)), 0.3))
                .add(NOW, new Deed.Corrected("e1", new Deed.Weighed("plain-white", 46, 0.01)))
                .undo(NOW)
                .redo(NOW);
    }

    @Test
    void everythingThatWasDoneComesBackFromTheFile(@TempDir Path folder) throws Exception {
        Cup cup = everyDeed();
        Path file = folder.resolve("bow.json");
        CupFile.at(file).create(cup);
        Cup back = CupFile.read(file);
        assertEquals(cup.entries().size(), back.entries().size());
        assertEquals(CupFile.text(cup), CupFile.text(back));
        assertEquals(cup.state().grams(), back.state().grams());
        assertEquals(cup.state().reserve(), back.state().reserve());
        assertEquals(cup.standing().get(4).deed(), back.standing().get(4).deed());
        assertEquals(cup.standing().get(6).deed(), back.standing().get(6).deed());
        assertEquals(cup.standing().get(7).deed(), back.standing().get(7).deed());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "\"formatVersion\": 1 | \"formatVersion\": 2 | newer Tintwright",
                "\"base\": \"plain-white\", | | has no base",
                "\"oneIn\": 20 | \"oneIn\": 1 | 1 in 2 to 1 in 1000",
                "\"grams\": 1.62 | \"grams\": -1.62 | above 0",
                "\"undone\": \"e11\" | \"undone\": \"e99\" | not written before it",
                "\"hue\": \"too-red\" | \"hue\": \"too-warm\" | must be \"too-red\" or",
                "\"hue\": \"too-red\" | \"hue\": \"none\" | but not which",
                "\"at\": \"2026-05-31T09:12:00Z\" | \"at\": \"yesterday\" | must be a moment",
                "\"held\": 32 | \"hold\": 32 | no such field",
            })
    void whatCannotBeIsRefusedWithItsPlaceAndLeftAsItWas(String from, String to, String says, @TempDir Path folder)
            throws Exception {
        Path file = folder.resolve("bow.json");
        String good = CupFile.text(everyDeed());
        assertTrue(good.contains(from), from);
        String bad = good.replaceFirst(
                java.util.regex.Pattern.quote(from), java.util.regex.Matcher.quoteReplacement(to == null ? "" : to));
        Files.writeString(file, bad);
        FileProblem problem = assertThrows(FileProblem.class, () -> CupFile.read(file));
        assertTrue(
                problem.getMessage().contains(says) && problem.getMessage().contains("bow.json"), problem.getMessage());
        assertEquals(bad, Files.readString(file));
    }
}
