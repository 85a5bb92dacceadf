package tintwright.reading.photo;

import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.photo.camera.Correction;
import tintwright.reading.photo.camera.KnownSample;
import tintwright.reading.photo.card.CardPatch;
import tintwright.reading.photo.card.Homography;
import tintwright.reading.photo.card.KnownPatch;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.PatchReader;
import tintwright.reading.photo.card.PatchRecord;
import tintwright.reading.photo.card.PixelPoint;
import tintwright.reading.photo.card.PlacedCard;
import tintwright.reading.photo.card.ReferenceCard;
import tintwright.reading.photo.card.Region;
import tintwright.reading.photo.card.Sample;
import tintwright.reading.photo.card.Spot;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Pixels;
import tintwright.reading.photo.file.Progress;
import tintwright.reading.photo.file.RgbProfile;

/**
 * Reads a photo like an instrument: the references say what the camera did, the spots are read through that.
 */
public final class PhotoReader {
    /** A sample is taken from this share of a patch, about its middle: clear of edges and of the print's halo; a judgement of ours. */
    private static final double CELL_SHARE = 0.5;
    /** However well a card is known, it is held at some angle and has been touched; a judgement of ours. */
    private static final double HANDLING = 0.30;
    /** Coded light must rise with at least this power of what the references say before linear codes are tried; a judgement of ours. */
    private static final double TOO_STEEP = 0.72;
    /**
     * From so many references on, a card that is not there shows: each predicted from the others is this far off,
     * CIEDE2000, while the worst real photo of a card stays below 5. A judgement of ours.
     */
    private static final int ENOUGH_TO_DENY = 4;

    /** A judgement of ours. */
    private static final double NO_CARD = 12;
    /** Linear codes must explain the references this much better; a judgement of ours. */
    private static final double PLAINLY_BETTER = 0.92;

    /** A judgement of ours. */
    private static final int ENOUGH_TO_TELL = 8;

    private PhotoReader() {}

    /**
     * @param photo    the photo
     * @param marks    what is where; at least one spot
     * @param viewing  light and observer the readings are stated for
     * @param progress told how far it is
     * @throws PhotoException when marks lie outside, patches are too small, or everything is clipped
     */
    public static PhotoReadings read(PhotoFile photo, Marks marks, Viewing viewing, Progress progress)
            throws PhotoException {
        List<Reference> references = references(marks);
        List<Region> spots = new ArrayList<>();
        for (Spot spot : marks.spots()) {
            spots.add(new Region.Disc(spot.centre(), spot.radius()));
        }
        if (spots.isEmpty()) {
            throw new PhotoException("No spot is marked in " + photo.path().getFileName()
                    + ". Mark at least one place on the hull or one chip.");
        }
        notOnACard(marks);
        List<Region> ground = new ArrayList<>();
        if (CardGround.matters(marks)) {
            marks.cards().forEach(placed -> ground.addAll(CardGround.looks(photo, placed)));
        }
        Pixels pixels = decode(photo, references, marks.spots(), spots, ground, progress);
        Records records = new Records(
                photo,
                pixels,
                references,
                marks.spots(),
                spots,
                marks.linearCodes() ? RgbProfile.LINEAR : photo.profile());
        if (records.everythingClipped()) {
            throw new PhotoException("Everything marked in " + photo.path().getFileName() + " is clipped to the "
                    + "brightest the camera can hold, so no colour is left to read. "
                    + Flag.Kind.CLIPPED.advice());
        }
        Correction correction = records.learn(viewing);
        boolean foundLinear = false;
        if (!marks.linearCodes()
                && !photo.profileStated()
                && correction.references() >= ENOUGH_TO_TELL
                && Correction.steepness(records.known(viewing)) < TOO_STEEP) {
            Records linear = new Records(photo, pixels, references, marks.spots(), spots, RgbProfile.LINEAR);
            Correction other = linear.learn(viewing);
            if (other.leaveOneOut() < PLAINLY_BETTER * correction.leaveOneOut()) {
                records = linear;
                correction = other;
                foundLinear = true;
            }
        }
        if (correction.references() >= ENOUGH_TO_DENY && correction.leaveOneOut() > NO_CARD) {
            throw new PhotoException(String.format(
                    java.util.Locale.ROOT,
                    "What lies in the frame is not the card that "
                            + "was named: its patches contradict each other by %.0f. Find the card, drag the frame onto it, or "
                            + "name another card.",
                    correction.leaveOneOut()));
        }
        return answer(photo, marks, records, correction, viewing, foundLinear);
    }

    private static void notOnACard(Marks marks) throws PhotoException {
        for (Spot spot : marks.spots()) {
            for (PlacedCard placed : marks.cards()) {
                if (placed.holds(spot.centre())) {
                    throw new PhotoException("The mark \"" + spot.name()
                            + "\" lies on the card. Move it onto what is to " + "be read, or the frame onto the card.");
                }
            }
        }
    }

    private static PhotoReadings answer(
            PhotoFile photo, Marks marks, Records records, Correction correction, Viewing viewing, boolean foundLinear)
            throws PhotoException {
        List<Sample> samples = new ArrayList<>();
        List<Spot> readable = new ArrayList<>();
        for (int i = 0; i < marks.spots().size(); i++) {
            PatchRecord one = records.spots.get(i);
            if (!one.isClipped()) {
                samples.add(one.sample());
                readable.add(marks.spots().get(i));
            }
        }
        List<Correction.Answer> answers = correction.apply(samples);
        CardGround ground = CardGround.under(photo, marks, records.reader, readable, samples, answers, correction);
        String name = photo.path().getFileName().toString();
        List<SpotReading> out = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            Correction.Answer one = answers.get(i);
            ColourReading reading = new ColourReading(
                    one.colour(),
                    one.own().plus(ground.own(readable.get(i), one.colour())),
                    Geometry.SPECULAR_EXCLUDED,
                    readable.get(i).film(),
                    Optional.of(new ColourReading.PhotoBias(name, one.shared().plus(ground.shared(one.colour())))));
            out.add(new SpotReading(readable.get(i), reading));
        }
        List<Flag> flags = PhotoChecks.flags(photo, marks, records, correction, out, viewing, foundLinear);
        flags.addAll(ground.flags());
        int used = correction.references();
        String words = used == 0
                ? "none: taken as plain sRGB"
                : correction.flexibility().words();
        return new PhotoReadings(name, out, flags, used, words, correction.leaveOneOut());
    }

    /** A reference patch and where it lies. */
    record Reference(String name, CardPatch patch, Region region, double sigma) {}

    static List<Reference> references(Marks marks) {
        List<Reference> out = new ArrayList<>();
        for (PlacedCard placed : marks.cards()) {
            ReferenceCard card = placed.card();
            Homography grid = placed.grid();
            for (int row = 0; row < card.rows(); row++) {
                for (int column = 0; column < card.columns(); column++) {
                    CardPatch patch = card.patch(row, column);
                    out.add(new Reference(
                            patch.name(),
                            patch,
                            new Region.Cell(grid, row, column, card.patchShare() / 2 * CELL_SHARE),
                            card.sigma()));
                }
            }
        }
        for (KnownPatch known : marks.known()) {
            out.add(new Reference(
                    known.patch().name(),
                    known.patch(),
                    new Region.Disc(known.centre(), known.radius()),
                    known.sigma()));
        }
        return out;
    }

    private static Pixels decode(
            PhotoFile photo,
            List<Reference> references,
            List<Spot> spots,
            List<Region> regions,
            List<Region> ground,
            Progress progress)
            throws PhotoException {
        Rectangle all = null;
        for (Reference one : references) {
            all = inside(photo, one.name(), one.region(), all);
        }
        for (int i = 0; i < regions.size(); i++) {
            all = inside(photo, spots.get(i).name(), regions.get(i), all);
        }
        for (Region look : ground) {
            all = all.union(look.bounds());
        }
        return photo.decode(all.x, all.y, all.x + all.width, all.y + all.height, progress);
    }

    private static Rectangle inside(PhotoFile photo, String name, Region region, Rectangle all) throws PhotoException {
        PixelPoint centre = region.centre();
        if (!(centre.x() >= 0 && centre.y() >= 0 && centre.x() < photo.width() && centre.y() < photo.height())) {
            throw new PhotoException(String.format(
                    java.util.Locale.ROOT,
                    "The mark \"%s\" lies at %.0f, %.0f, "
                            + "outside the photo, which is %d by %d pixels. Move it onto the picture.",
                    name,
                    centre.x(),
                    centre.y(),
                    photo.width(),
                    photo.height()));
        }
        Rectangle box = region.bounds();
        return all == null ? box : all.union(box);
    }

    /** Everything marked, as the camera recorded it. */
    static final class Records {
        final Pixels pixels;
        final PatchReader reader;
        final List<Reference> references;
        final List<PatchRecord> patches = new ArrayList<>();
        final List<PatchRecord> spots = new ArrayList<>();
        /** References left out because a reflection lies on that side of the card. */
        List<KnownSample> shining = List.of();

        Records(
                PhotoFile photo,
                Pixels pixels,
                List<Reference> references,
                List<Spot> names,
                List<Region> regions,
                RgbProfile profile)
                throws PhotoException {
            this.pixels = pixels;
            this.references = references;
            reader = new PatchReader(photo, pixels, profile);
            for (Reference one : references) {
                patches.add(reader.read(one.name(), one.region()));
            }
            for (int i = 0; i < regions.size(); i++) {
                spots.add(reader.read(names.get(i).name(), regions.get(i)));
            }
        }

        boolean everythingClipped() {
            return spots.stream().allMatch(PatchRecord::isClipped)
                    || !patches.isEmpty() && patches.stream().allMatch(PatchRecord::isClipped);
        }

        List<KnownSample> known(Viewing viewing) {
            List<KnownSample> known = new ArrayList<>();
            for (int i = 0; i < patches.size(); i++) {
                Reference one = references.get(i);
                if (!patches.get(i).isClipped()) {
                    known.add(new KnownSample(
                            one.name(),
                            patches.get(i).sample(),
                            one.patch().colour(viewing),
                            Math.hypot(one.sigma(), HANDLING)));
                }
            }
            return known;
        }

        Correction learn(Viewing viewing) {
            List<Sample> wanted = new ArrayList<>();
            for (PatchRecord one : spots) {
                if (!one.isClipped()) {
                    wanted.add(one.sample());
                }
            }
            List<KnownSample> known = new ArrayList<>(known(viewing));
            shining = Correction.underReflection(known);
            known.removeAll(shining);
            return Correction.learn(known, wanted, viewing);
        }
    }
}
