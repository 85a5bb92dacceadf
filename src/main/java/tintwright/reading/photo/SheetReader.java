package tintwright.reading.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tintwright.colour.Geometry;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.reading.ColourReading;
import tintwright.reading.Covariance;
import tintwright.reading.photo.camera.KnownSample;
import tintwright.reading.photo.camera.PaperCorrection;
import tintwright.reading.photo.card.PatchReader;
import tintwright.reading.photo.card.PatchRecord;
import tintwright.reading.photo.card.Region;
import tintwright.reading.photo.card.Sample;
import tintwright.reading.photo.card.Spot;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.PhotoFile;
import tintwright.reading.photo.file.Pixels;
import tintwright.reading.photo.file.Progress;
import tintwright.reading.photo.file.Rgb;
import tintwright.reading.photo.sheet.Area;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.reading.photo.sheet.SheetFinder;
import tintwright.reading.photo.sheet.SheetLayout;
import tintwright.reading.photo.sheet.SheetMarks;
import tintwright.reading.photo.sheet.SheetPose;
import tintwright.reading.photo.sheet.SheetSearch;

/**
 * Reads a photo with the printed sheet in it: finds the sheet, takes the light that falls off out by its paper, learns
 * the camera from the paper (and tape), and reads the hull in the window, the chips and the dab.
 */
public final class SheetReader {
    /** Usual white paper as it looks with its brightener in daylight, D65; common practice, no source. */
    private static final double[] PAPER = {93, 1, -4};
    /** How far a paper may be from that, standard deviation in CIEDE2000: 3 for most papers; common practice, no source. */
    private static final double PAPER_SIGMA = 1.3;
    /** Fewer patches of paper than this in a channel do not show the light; a judgement of ours. */
    private static final int LEAST_PATCHES = 8;
    /** Light of a channel that is cut off everywhere: this far from its top, as a share; a judgement of ours. */
    private static final double CUT_OFF = 0.4;
    /** Paper beside paper differs by more than this: a shadow's edge or a reflection; a judgement of ours. */
    private static final double ROUGH = 0.04;
    /** The same beside the window; a judgement of ours. */
    private static final double ROUGH_RIM = 0.025;
    /** Light that changes by more over the sheet is named; a judgement of ours. */
    private static final double UNEVEN = 0.35;
    /** White paper whose channels lie further apart than this, in ln of light, is coloured; a judgement of ours. */
    private static final double COLOURED = 0.6;
    /** As near to the paper in every channel as bare paper itself; a judgement of ours. */
    private static final double BARE = 0.02;

    private final PhotoFile photo;
    private final SheetPose pose;
    private final PatchReader reader;
    private final SheetContents contents;
    private final Viewing viewing;
    private final List<Flag> flags = new ArrayList<>();
    private PaperField field;
    private double unevenness;

    private SheetReader(PhotoFile photo, Pixels pixels, SheetPose pose, SheetContents contents, Viewing viewing) {
        this.photo = photo;
        this.pose = pose;
        this.reader = new PatchReader(photo, pixels, photo.profile());
        this.contents = contents;
        this.viewing = viewing;
    }

    /**
     * @param photo    the photo
     * @param sign     of the shop's own sheets: the one to read when there are several; empty for any
     * @param contents what lies on the sheet
     * @param viewing  light and observer the readings are stated for
     * @param progress told how far it is
     * @throws PhotoException when no sheet is found or nothing on it can be read; the message says what to do
     */
    public static SheetReadings read(
            PhotoFile photo, Optional<String> sign, SheetContents contents, Viewing viewing, Progress progress)
            throws PhotoException {
        Pixels pixels = photo.decode(0, 0, photo.width(), photo.height(), progress);
        SheetSearch search = SheetFinder.find(pixels, sign);
        if (search instanceof SheetSearch.Missed missed) {
            throw new PhotoException(missed.why().sentence());
        }
        SheetSearch.Found found = (SheetSearch.Found) search;
        return new SheetReadings(
                new SheetReader(photo, pixels, found.pose(), contents, viewing).read(found.remarks()), found);
    }

    private PhotoReadings read(List<String> remarks) throws PhotoException {
        remarks.forEach(one -> flags.add(new Flag(Flag.Kind.SECOND_SHEET, "sheet", one)));
        PhotoChecks.file(flags, photo);
        List<KnownSample> known = new ArrayList<>(List.of(paper()));
        if (contents.tapeLayers() > 0) {
            tape().ifPresent(known::add);
        }
        List<Spot> spots = new ArrayList<>();
        List<Sample> samples = new ArrayList<>();
        spots(spots, samples);
        String name = photo.path().getFileName().toString();
        List<PaperCorrection.Answer> answers =
                PaperCorrection.learn(known, viewing).apply(samples);
        List<SpotReading> out = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            out.add(new SpotReading(spots.get(i), reading(answers.get(i), spots.get(i), name)));
        }
        return new PhotoReadings(
                name,
                out,
                flags,
                known.size(),
                known.size() == 1 ? "by the sheet's paper" : "by the sheet's paper and tape",
                Double.NaN);
    }

    private ColourReading reading(PaperCorrection.Answer answer, Spot spot, String name) {
        List<ColourReading.Direction> directions = new ArrayList<>();
        for (int k = 0; k < answer.shared()[0].length; k++) {
            directions.add(
                    new ColourReading.Direction(answer.shared()[0][k], answer.shared()[1][k], answer.shared()[2][k]));
        }
        // L* grows by (L* + 16) / 3 for each unit of log light (CIE 15, 8.2.1.1), a* and b* by a third of themselves.
        Lab lab = answer.colour();
        double[] byLight = {(lab.lightness() + 16) / 3, lab.a() / 3, lab.b() / 3};
        double u = unevenness * unevenness;
        Covariance light = new Covariance(
                u * byLight[0] * byLight[0],
                u * byLight[0] * byLight[1],
                u * byLight[0] * byLight[2],
                u * byLight[1] * byLight[1],
                u * byLight[1] * byLight[2],
                u * byLight[2] * byLight[2]);
        return new ColourReading(
                lab,
                answer.own().plus(light),
                Geometry.SPECULAR_EXCLUDED,
                spot.film(),
                Optional.of(ColourReading.PhotoBias.along(name, directions)));
    }

    /** Learns the light over the sheet and gives the paper as it would look in the middle of the window. */
    private KnownSample paper() throws PhotoException {
        SheetLayout layout = pose.layout();
        List<PaperField.Patch> patches = new ArrayList<>();
        int cut = 0;
        for (Area patch : layout.paper()) {
            PatchRecord record = reader.read("the sheet's paper", SheetMarks.paper(pose, patch));
            Rgb light = record.sample().light();
            Rgb noise = record.sample().noise();
            double[] log = new double[3];
            boolean[] good = new boolean[3];
            for (int k = 0; k < 3; k++) {
                log[k] = Math.log(Math.max(light.at(k), 1e-4));
                // The reader states a channel that is cut off by wide noise.
                good[k] = noise.at(k) < 0.2 * light.at(k);
            }
            cut += record.cut() > 0 ? 1 : 0;
            patches.add(new PaperField.Patch(u(patch), v(patch), log, good));
        }
        field = PaperField.of(patches, LEAST_PATCHES);
        light(layout, cut);
        double[] light = new double[3];
        double[] noise = new double[3];
        int lost = 0;
        double[] middle = {u(layout.window()), v(layout.window())};
        for (int k = 0; k < 3; k++) {
            lost += field.knows(k) ? 0 : 1;
            light[k] = field.knows(k) ? Math.exp(field.log(k, middle[0], middle[1])) : 1;
            noise[k] = field.knows(k) ? 0.004 * light[k] : CUT_OFF;
        }
        if (lost == 3) {
            throw new PhotoException(SheetSearch.Why.BURNT_OUT.sentence());
        }
        if (lost == 0) {
            coloured(light);
        }
        return new KnownSample(
                "paper",
                new Sample(new Rgb(light[0], light[1], light[2]), new Rgb(noise[0], noise[1], noise[2]), 0, 0),
                new Lab(PAPER[0], PAPER[1], PAPER[2], viewing),
                PAPER_SIGMA);
    }

    private void coloured(double[] paper) {
        double most = Math.max(paper[0], Math.max(paper[1], paper[2]));
        double least = Math.min(paper[0], Math.min(paper[1], paper[2]));
        if (Math.log(most / least) > COLOURED) {
            flags.add(new Flag(
                    Flag.Kind.STRONG_PROCESSING,
                    "paper",
                    "The white paper looks strongly coloured in the photo, as under a filter or a lamp, so the hull's"
                            + " colour is hardly to be trusted."));
        }
    }

    private void light(SheetLayout layout, int cut) {
        int all = layout.paper().size();
        int rim = layout.rim().size();
        unevenness = Math.max(0.006, Math.max(field.unevenness(), field.roughness(0, rim)));
        if (cut > all / 4) {
            flags.add(new Flag(
                    Flag.Kind.CLIPPED,
                    "paper",
                    "The paper is burnt out in " + cut + " of " + all
                            + " places, so there it was left out. Take it once more, a little darker."));
        }
        if (field.roughness(0, rim) > ROUGH_RIM) {
            flags.add(new Flag(
                    Flag.Kind.SHADOW_EDGE,
                    SheetContents.HULL,
                    String.format(
                            Locale.ROOT,
                            "The paper beside the window is lit unevenly by %.0f %%, as by a shadow's edge or a"
                                    + " reflection, so the hull may be lit otherwise than its rim.",
                            100 * field.roughness(0, rim))));
        } else if (field.roughness(rim, all) > ROUGH) {
            flags.add(new Flag(
                    Flag.Kind.SHADOW_EDGE,
                    "sheet",
                    String.format(
                            Locale.ROOT,
                            "Bare paper differs from place to place by %.0f %%, as by a shadow's edge or a reflection"
                                    + " on the sheet.",
                            100 * field.roughness(rim, all))));
        }
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Area patch : layout.paper()) {
            double here = field.log(field.knows(1) ? 1 : 0, u(patch), v(patch));
            least = Math.min(least, here);
            most = Math.max(most, here);
        }
        if (most - least > UNEVEN) {
            flags.add(new Flag(
                    Flag.Kind.UNEVEN_LIGHT,
                    "sheet",
                    String.format(
                            Locale.ROOT,
                            "The light changes by %.0f %% over the sheet; it was taken out, but it costs certainty.",
                            100 * Math.expm1(most - least))));
        }
    }

    private Optional<KnownSample> tape() throws PhotoException {
        PatchRecord record = reader.read("tape", SheetMarks.tape(pose));
        PhotoChecks.spot(flags, "tape", record);
        if (record.isClipped()) {
            return Optional.empty();
        }
        int layers = contents.tapeLayers();
        return Optional.of(new KnownSample(
                "tape",
                flat(record.sample(), pose.layout().tape()),
                SheetMarks.tapeColour(layers, viewing),
                SheetMarks.tapeSigma(layers)));
    }

    private void spots(List<Spot> spots, List<Sample> samples) throws PhotoException {
        List<Spot> wanted = SheetMarks.spots(pose, contents);
        List<Area> areas = SheetMarks.areas(pose.layout(), contents);
        for (int i = 0; i < wanted.size(); i++) {
            Spot spot = wanted.get(i);
            PatchRecord record = reader.read(spot.name(), new Region.Disc(spot.centre(), spot.radius()));
            PhotoChecks.spot(flags, spot.name(), record);
            Sample flat = flat(record.sample(), areas.get(i));
            if (spot.purpose() == Spot.Purpose.CHIP && isBare(flat)) {
                flags.add(new Flag(
                        Flag.Kind.NOTHING_THERE,
                        spot.name(),
                        "No chip seems to lie in the place of \"" + spot.name() + "\": it looks like bare paper."));
            } else if (!record.isClipped()) {
                spots.add(spot);
                samples.add(flat);
            } else if (i == 0) {
                throw new PhotoException("The hull in the window is burnt out, so no colour is left to read. Take it"
                        + " once more, a little darker.");
            }
        }
    }

    private boolean isBare(Sample flat) {
        for (int k = 0; k < 3; k++) {
            double paper =
                    field.log(k, u(pose.layout().window()), v(pose.layout().window()));
            if (!field.knows(k) || Math.abs(Math.log(Math.max(flat.light().at(k), 1e-4)) - paper) > BARE) {
                return false;
            }
        }
        return true;
    }

    /** The sample as it would be in the light that falls on the middle of the window. */
    private Sample flat(Sample sample, Area area) {
        SheetLayout layout = pose.layout();
        double[] light = new double[3];
        double[] noise = new double[3];
        for (int k = 0; k < 3; k++) {
            double factor =
                    Math.exp(field.log(k, u(layout.window()), v(layout.window())) - field.log(k, u(area), v(area)));
            light[k] = sample.light().at(k) * factor;
            noise[k] = sample.noise().at(k) * factor;
        }
        return new Sample(new Rgb(light[0], light[1], light[2]), new Rgb(noise[0], noise[1], noise[2]), 0, 0);
    }

    private double u(Area area) {
        return 2 * area.middleX() / pose.layout().width() - 1;
    }

    private double v(Area area) {
        return 2 * area.middleY() / pose.layout().height() - 1;
    }
}
