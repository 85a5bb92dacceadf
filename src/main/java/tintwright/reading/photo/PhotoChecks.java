package tintwright.reading.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tintwright.colour.Ciede2000;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.photo.camera.Correction;
import tintwright.reading.photo.camera.KnownSample;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.PatchRecord;
import tintwright.reading.photo.card.PlacedCard;
import tintwright.reading.photo.card.Sharpness;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Pixels;
import tintwright.reading.photo.file.Rgb;

/**
 * What a person should know about a photo that was read; the limits are common practice, no source.
 */
final class PhotoChecks {
    /** A grey at this share of full light is drowned in the noise of an 8-bit file; a judgement of ours. */
    private static final double DARK = 0.012;

    /** A judgement of ours. */
    private static final double GLARE = 0.04;

    /** A judgement of ours. */
    private static final double UNEVEN_SPOT = 0.06;
    /** Change of light between the marks, as a share; a judgement of ours. */
    private static final double UNEVEN_LIGHT = 0.15;
    /** Width of an edge over the distance from patch to patch, and in pixels: a small sharp card is not blurred; a judgement of ours. */
    private static final double BLURRED = 0.13;

    /** A judgement of ours. */
    private static final double BLURRED_PIXELS = 5;

    /** A judgement of ours. */
    private static final double SMALL_PATCH_PIXELS = 60;
    /** Nearest reference farther than this from the hull's colour, in CIEDE2000; a judgement of ours. */
    private static final double FAR = 18;
    /** A correction this bad at its own references was fought by the phone; a judgement of ours. */
    private static final double FOUGHT = 3.5;

    private PhotoChecks() {}

    static List<Flag> flags(
            PhotoFile photo,
            Marks marks,
            PhotoReader.Records records,
            Correction correction,
            List<SpotReading> readings,
            Viewing viewing,
            boolean foundLinear) {
        List<Flag> flags = new ArrayList<>();
        if (records.references.isEmpty()) {
            flags.add(new Flag(
                    Flag.Kind.NO_REFERENCE,
                    "photo",
                    "Nothing in the photo has a known colour, so the "
                            + "answer is only as good as the phone's own guess."));
        }
        file(flags, photo);
        if (foundLinear) {
            flags.add(new Flag(
                    Flag.Kind.LINEAR_CODES,
                    "photo",
                    "The references fit much better when the file's codes "
                            + "are taken in proportion to light, so they were."));
        }
        for (int i = 0; i < marks.spots().size(); i++) {
            spot(flags, marks.spots().get(i).name(), records.spots.get(i));
        }
        references(flags, records, correction);
        for (PlacedCard placed : marks.cards()) {
            sharp(flags, placed, records.pixels);
        }
        light(flags, records, correction);
        for (SpotReading one : readings) {
            far(flags, one, records, viewing);
        }
        if (correction.leaveOneOut() > FOUGHT) {
            flags.add(new Flag(
                    Flag.Kind.STRONG_PROCESSING,
                    "photo",
                    String.format(
                            Locale.ROOT,
                            "The references "
                                    + "contradict each other by about %.1f, as when the phone changes colours to please.",
                            correction.leaveOneOut())));
        }
        return flags;
    }

    /** What the file itself says of how it was taken. */
    static void file(List<Flag> flags, PhotoFile photo) {
        if (photo.flash()) {
            flags.add(new Flag(
                    Flag.Kind.FLASH,
                    "photo",
                    "The flash fired, which lights the middle more than the " + "rest and makes gloss shine."));
        }
        if (photo.profileBroken()) {
            flags.add(new Flag(
                    Flag.Kind.PROFILE_BROKEN,
                    "photo",
                    "The colour profile in the file cannot be used; " + "sRGB stands in for it."));
        }
    }

    static void spot(List<Flag> flags, String name, PatchRecord record) {
        if (record.isClipped()) {
            flags.add(new Flag(
                    Flag.Kind.CLIPPED,
                    name,
                    String.format(
                            Locale.ROOT,
                            "%.0f %% of \"%s\" is clipped to "
                                    + "the brightest the camera can hold, so it was not read.",
                            100 * record.clipped(),
                            name)));
            return;
        }
        if (record.cut() > 0) {
            flags.add(new Flag(
                    Flag.Kind.CLIPPED,
                    name,
                    "One of three channels of \"" + name + "\" is burnt out and was left out. Take it once more, a"
                            + " little darker."));
        }
        if (record.isBlack() || brightness(record) < DARK) {
            flags.add(new Flag(Flag.Kind.TOO_DARK, name, "\"" + name + "\" is nearly black in the photo."));
        }
        if (record.glare() > GLARE) {
            flags.add(new Flag(
                    Flag.Kind.GLARE,
                    name,
                    String.format(
                            Locale.ROOT,
                            "%.0f %% of \"%s\" shines brighter " + "than the rest.",
                            100 * record.glare(),
                            name)));
        }
        if (record.uneven() > UNEVEN_SPOT && !record.isBlack() && brightness(record) >= DARK) {
            flags.add(new Flag(
                    Flag.Kind.NOT_ONE_COLOUR,
                    name,
                    String.format(
                            Locale.ROOT,
                            "The brightness within " + "\"%s\" varies by %.0f %%.",
                            name,
                            100 * record.uneven())));
        }
    }

    private static double brightness(PatchRecord record) {
        Rgb light = record.sample().light();
        return 0.3 * light.red() + 0.6 * light.green() + 0.1 * light.blue();
    }

    private static void references(List<Flag> flags, PhotoReader.Records records, Correction correction) {
        List<String> clipped = new ArrayList<>();
        List<String> glare = new ArrayList<>();
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < records.patches.size(); i++) {
            PatchRecord record = records.patches.get(i);
            least = Math.min(least, record.pixels());
            if (record.isClipped()) {
                clipped.add(records.references.get(i).name());
            } else if (record.glare() > GLARE) {
                glare.add(records.references.get(i).name());
            }
        }
        if (!clipped.isEmpty()) {
            flags.add(new Flag(
                    Flag.Kind.CLIPPED,
                    String.join(", ", clipped),
                    "Clipped, and left out: " + String.join(", ", clipped) + "."));
        }
        if (!glare.isEmpty()) {
            flags.add(new Flag(
                    Flag.Kind.GLARE,
                    String.join(", ", glare),
                    "A reflection lies on " + String.join(", ", glare) + "."));
        }
        if (!records.shining.isEmpty()) {
            String names = String.join(
                    ", ", records.shining.stream().map(KnownSample::name).toList());
            flags.add(new Flag(
                    Flag.Kind.GLARE,
                    names,
                    "A reflection seems to lie over one side of the card, so what lies there was left out: " + names
                            + "."));
        }
        if (!correction.setAside().isEmpty()) {
            String names = String.join(", ", correction.setAside());
            flags.add(new Flag(
                    Flag.Kind.DOES_NOT_FIT, names, "All other patches contradict " + names + ", so it was left out."));
        }
        if (least < SMALL_PATCH_PIXELS) {
            flags.add(new Flag(
                    Flag.Kind.CARD_TOO_SMALL, "card", "The smallest patch holds only " + least + " usable pixels."));
        }
    }

    private static void sharp(List<Flag> flags, PlacedCard placed, Pixels pixels) {
        double pitch = placed.corners().get(0).distance(placed.corners().get(1))
                / placed.card().columns();
        Sharpness.edgeWidth(pixels, placed).ifPresent(width -> {
            if (width > BLURRED && width * pitch > BLURRED_PIXELS * pixels.step()) {
                flags.add(new Flag(
                        Flag.Kind.BLURRED,
                        placed.card().name(),
                        String.format(
                                Locale.ROOT,
                                "The edges of "
                                        + "the card's patches are %.0f pixels wide, so patches run into each other.",
                                width * pitch)));
            }
        });
    }

    private static void light(List<Flag> flags, PhotoReader.Records records, Correction correction) {
        if (correction.references() < 4) {
            return;
        }
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        List<PatchRecord> all = new ArrayList<>(records.patches);
        all.addAll(records.spots);
        for (PatchRecord one : all) {
            double light = correction.lightAt(one.sample().x(), one.sample().y());
            least = Math.min(least, light);
            most = Math.max(most, light);
        }
        double change = Math.exp(most - least) - 1;
        if (change > UNEVEN_LIGHT) {
            flags.add(new Flag(
                    Flag.Kind.UNEVEN_LIGHT,
                    "photo",
                    String.format(
                            Locale.ROOT,
                            "The light changes by "
                                    + "%.0f %% between the marks; this was allowed for, but it costs certainty.",
                            100 * change)));
        }
        correction
                .shadowEdge()
                .ifPresent(step -> flags.add(new Flag(
                        Flag.Kind.SHADOW_EDGE,
                        "card",
                        String.format(
                                Locale.ROOT,
                                "One part of the card is %.0f %% darker than the rest, as if a shadow's "
                                        + "edge lay across it.",
                                100 * step))));
    }

    private static void far(List<Flag> flags, SpotReading one, PhotoReader.Records records, Viewing viewing) {
        Lab lab = one.reading().lab();
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < records.patches.size(); i++) {
            if (!records.patches.get(i).isClipped()) {
                nearest = Math.min(
                        nearest,
                        Ciede2000.between(lab, records.references.get(i).patch().colour(viewing)));
            }
        }
        if (nearest > FAR && nearest < Double.POSITIVE_INFINITY) {
            flags.add(new Flag(
                    Flag.Kind.FAR_FROM_REFERENCES,
                    one.spot().name(),
                    String.format(
                            Locale.ROOT,
                            "The nearest " + "reference is %.0f away from the colour of \"%s\".",
                            nearest,
                            one.spot().name())));
        }
    }
}
