package tintwright.reading.photo;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.AccuracySection;
import tintwright.reading.photo.CardBesideHull.Kind;

/** Fills the table of the card beside the hull in docs/accuracy.md. */
@Tag("study")
class CardBesideHullStudy {
    private static final int PHOTOS = Integer.getInteger("photos", 20);
    /** Constants were chosen on even seeds; odd ones are reported. */
    private static final boolean CHOOSING = Boolean.getBoolean("choosing");

    @TempDir
    Path folder;

    @Test
    void readsAHullBesideACardThatMayLieInOtherLight() throws Exception {
        List<String> lines = new ArrayList<>();
        lines.add("A card of 24 beside one spot of a hull, " + PHOTOS
                + " photos a row, made-up phones. Light on the one is"
                + " 0.37 to 0.74 of that on the other and bluer, or of another hue alone; edges lean and lie anywhere"
                + " between card and spot. \"Ground\" and \"reflection\" count the photos in which it was said that the"
                + " ground round the card is other than the spot's, and that a reflection lies over one side of the"
                + " card. Card and hulls are of a published chart and of published pigments; \"invented\" are as many"
                + " photos of invented curves, on which nothing was chosen. \"When vouched\" is"
                + " what is stated when a person says that the card lies on the hull."
                + " CIEDE2000, D65 and 10 degrees.");
        lines.add("");
        lines.add("Made by `mvn test -Dwanted.groups=study -Dtest=CardBesideHullStudy`; constants were chosen on other"
                + " phones and hulls (`-Dchoosing=true`).");
        lines.add("");
        lines.add("| scene | off: median | 95 % | stated: median | when vouched | in range | invented in range"
                + " | ground | reflection |");
        lines.add("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        CardBesideHull scene = CardBesideHull.published();
        List<String> wrong = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            int held = row(scene, kind, lines);
            // No picture shows in what light a card is held before the hull.
            if (kind != Kind.CARD_BEFORE_THE_HULL && held < 0.8 * PHOTOS) {
                wrong.add(kind + " held in " + held + " of " + PHOTOS);
            }
        }
        lines.forEach(System.out::println);
        if (!CHOOSING) {
            AccuracySection.write("Photos: a card beside the hull, in other light", lines);
        }
        assertTrue(wrong.isEmpty(), wrong::toString);
    }

    /** @return in how many photos the error was within what was stated */
    private int row(CardBesideHull scene, Kind kind, List<String> lines) throws Exception {
        CardBesideHull invented = CardBesideHull.invented();
        int inventedHeld = 0;
        List<Double> off = new ArrayList<>();
        List<Double> stated = new ArrayList<>();
        List<Double> vouched = new ArrayList<>();
        int ground = 0;
        int reflection = 0;
        int held = 0;
        for (int i = 0; i < PHOTOS; i++) {
            long seed = 2L * i + (CHOOSING ? 0 : 1);
            CardBesideHull.Outcome one = scene.read(kind, seed, false, folder);
            off.add(one.off());
            stated.add(one.stated());
            vouched.add(
                    kind.otherLight
                            ? Double.NaN
                            : scene.read(kind, seed, true, folder).stated());
            ground += one.said(Flag.Kind.OTHER_GROUND) ? 1 : 0;
            reflection +=
                    one.flags().stream().anyMatch(flag -> flag.message().startsWith("A reflection seems")) ? 1 : 0;
            held += one.off() <= one.stated() ? 1 : 0;
            CardBesideHull.Outcome other = invented.read(kind, seed, false, folder);
            inventedHeld += other.off() <= other.stated() ? 1 : 0;
        }
        off.sort(null);
        stated.sort(null);
        vouched.sort(null);
        lines.add(String.format(
                Locale.ROOT,
                "| %s | %.1f | %.1f | %.1f | %s | %.0f %% | %.0f %% | %d | %d |",
                kind.words,
                off.get(PHOTOS / 2),
                off.get((int) (0.95 * PHOTOS)),
                stated.get(PHOTOS / 2),
                kind.otherLight ? "-" : String.format(Locale.ROOT, "%.1f", vouched.get(PHOTOS / 2)),
                100.0 * held / PHOTOS,
                100.0 * inventedHeld / PHOTOS,
                ground,
                reflection));
        return held;
    }
}
