package tintwright.command.hull;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tintwright.bench.PhotoBench;
import tintwright.bench.SheetBench;
import tintwright.colour.Lab;
import tintwright.colour.Viewing;
import tintwright.command.pieces.Answer;
import tintwright.command.pieces.Command;
import tintwright.command.pieces.Figures;
import tintwright.files.CardFile;
import tintwright.files.Demo;
import tintwright.files.Fields;
import tintwright.files.FileProblem;
import tintwright.files.MarksFile;
import tintwright.files.SharedFile;
import tintwright.files.ShelfFile;
import tintwright.files.TargetFile;
import tintwright.match.Aim;
import tintwright.reading.Covariance;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Repeats;
import tintwright.reading.photo.Flag;
import tintwright.reading.photo.PhotoReadings;
import tintwright.reading.photo.SpotReading;
import tintwright.reading.photo.card.CardFinder;
import tintwright.reading.photo.card.Marks;
import tintwright.reading.photo.card.ReferenceCard;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.Progress;
import tintwright.reading.photo.sheet.SheetContents;
import tintwright.shelf.Shelf;

/** A photo, or several of one place, read through its reference patches. */
@CommandLine.Command(
        name = "read",
        sortOptions = false,
        description = {
            "Reads colours in a photo through the printed sheet (see: tintwright sheet) or marked patches in it, and",
            "says how sure they are. The sheet needs no marks.",
            "Several photos of one place are taken together."
        },
        footer = {
            "",
            "Examples:",
            "  tintwright read bow.jpg",
            "  tintwright read bow.jpg --on-sheet chips.json --shelf my-shelf.json --learn --out bow-target.json",
            "  tintwright read bow.jpg --marks bow-marks.json",
            "  tintwright read bow-1.jpg bow-2.jpg bow-3.jpg --out bow-target.json --place \"port bow\""
        })
public final class ReadCommand extends Command {
    @Parameters(paramLabel = "PHOTO", arity = "1..*", description = "JPEG, PNG or TIFF.")
    private List<Path> photos;

    @Option(
            names = "--marks",
            paramLabel = "FILE",
            description = "What is where in the photo (docs/formats.md);"
                    + " PHOTO.marks.json beside the photo when not said; without one the sheet is looked for.")
    private Path marks;

    @Option(
            names = "--card",
            paramLabel = "CARD",
            description = "Find this card in the photo instead of the marked"
                    + " ones: five-by-five, or a card file of two rows and columns or more.")
    private String card;

    @Option(
            names = "--card-on-hull",
            description =
                    "The card lies on the hull, in the light of the spots: when the ground between them changes, it"
                            + " is paint.")
    private boolean cardOnHull;

    @Option(
            names = "--on-sheet",
            paramLabel = "FILE",
            description = "Which chips lie on the sheet, and how many layers of tape (docs/formats.md);"
                    + " nothing when not said.")
    private Path onSheet;

    @Option(
            names = "--shelf",
            paramLabel = "FILE",
            description = "For --on-sheet: the shelf the chips are mixed from; the demo shelf when not said.")
    private Path shelfFile;

    @Option(
            names = "--learn",
            description = "Put the chips on the sheet onto --shelf: they teach the tints, and go on correcting the hull"
                    + " of this photo. Needs --on-sheet and --shelf.")
    private boolean learn;

    @Option(
            names = "--light",
            paramLabel = "NAME",
            description = "Light the colours are wanted for; D65 when not" + " said.")
    private String light = "D65";

    @Option(names = "--observer", paramLabel = "2|10", description = "Observer they are wanted for; 10 when not said.")
    private int observer = 10;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write the hull's spots there, into a new file, as a target.")
    private Path out;

    @Option(names = "--boat", paramLabel = "NAME", description = "The boat, for --out.")
    private String boat = "";

    @Option(
            names = "--place",
            paramLabel = "NAME",
            description = "The place on the boat, for --out; the photo's name" + " when not said.")
    private String place;

    private final List<String> lines = new ArrayList<>();
    private PhotoReadings kept;

    @Override
    protected Answer answer() throws FileProblem, PhotoException {
        if (marks != null && photos.size() > 1) {
            throw new IllegalArgumentException(
                    "--marks belongs to one photo; for several put PHOTO.marks.json beside" + " each");
        }
        if (learn && (onSheet == null || shelfFile == null)) {
            throw new IllegalArgumentException(
                    "--learn needs --on-sheet, which says what lies on the sheet, and --shelf,"
                            + " your shelf's file that the chips are put into");
        }
        Viewing viewing = Viewing.of(light, observer);
        List<PhotoReadings> all = new ArrayList<>();
        List<PhotoReadings> shown = new ArrayList<>();
        for (Path photo : photos) {
            PhotoReadings one = read(photo, viewing);
            say(one);
            shown.add(one);
            all.add(kept);
        }
        Fields tree = Fields.none().each("photos", shown, ReadCommand::fields);
        together(all, tree);
        return new Answer(lines, tree);
    }

    private PhotoReadings read(Path photo, Viewing viewing) throws FileProblem, PhotoException {
        PhotoBench bench = PhotoBench.open(photo);
        if (marks != null || card != null || onSheet == null && Files.exists(MarksFile.beside(photo))) {
            kept = bench.read(marksOf(bench), viewing, Progress.NONE);
            return kept;
        }
        SheetContents contents = onSheet == null ? SheetContents.PAPER_ALONE : SheetBench.contents(onSheet);
        Optional<Shelf> shelf = Optional.empty();
        if (shelfFile != null || onSheet != null) {
            shelf = Optional.of(shelfFile == null ? Demo.shelf() : ShelfFile.read(shelfFile));
        }
        SheetBench.Read sheet = SheetBench.read(photo, contents, shelf, viewing, Progress.NONE);
        lines.add(
                "Sheet:     sign " + sheet.found().shop() + ", " + sheet.found().codes() + " of 4 corner codes");
        kept = learn ? learnt(sheet) : sheet.readings();
        return sheet.readings();
    }

    /** With the chips on the shelf the place keeps what the sheet alone showed: they correct it wherever it is used. */
    private PhotoReadings learnt(SheetBench.Read sheet) throws FileProblem {
        ShelfFile.at(shelfFile).change(shelf -> new SharedFile.Changed<>(sheet.onto(shelf), shelf));
        lines.add("Learned:   " + sheet.chips().size() + " chips are on the shelf " + shelfFile + " now");
        PhotoReadings shown = sheet.readings();
        List<SpotReading> spots = shown.spots().stream()
                .map(one ->
                        one.spot().name().equals(SheetContents.HULL) ? new SpotReading(one.spot(), sheet.hull()) : one)
                .toList();
        return new PhotoReadings(
                shown.photo(), spots, shown.flags(), shown.references(), shown.correction(), shown.leaveOneOut());
    }

    private Marks marksOf(PhotoBench bench) throws FileProblem, PhotoException {
        Path file = marks == null ? MarksFile.beside(bench.path()) : marks;
        if (marks == null && !Files.exists(file)) {
            throw new IllegalArgumentException("nothing says where the spots are in "
                    + bench.path().getFileName() + "; give --marks FILE, or mark them in the window");
        }
        Marks kept = MarksFile.read(file);
        Marks read = cardOnHull ? kept.withCardOnHull(true) : kept;
        if (card == null) {
            return read;
        }
        ReferenceCard wanted = CardFile.SHIPPED.contains(card) ? CardFile.shipped(card) : CardFile.read(Path.of(card));
        Optional<String> byHand = CardFinder.byHand(wanted);
        if (byHand.isPresent()) {
            throw new PhotoException(byHand.get() + " The window shows the frame (Hull, Photo) and keeps it beside the"
                    + " photo, where read finds it without --card.");
        }
        Optional<CardFinder.Found> found = bench.findCard(wanted, Progress.NONE);
        if (found.isEmpty()) {
            throw new PhotoException("The card \"" + wanted.name() + "\" was not found in "
                    + bench.path().getFileName() + ". Mark its four corners, or go nearer and hold the phone square.");
        }
        lines.add("Card found: " + wanted.name() + ". Look at it in the window before you trust it.");
        return new Marks(
                List.of(found.get().placed()), read.known(), read.spots(), read.linearCodes(), read.cardOnHull());
    }

    private void say(PhotoReadings one) {
        lines.add("Photo:     " + one.photo());
        lines.add("Corrected: by " + one.references() + " reference patches (" + one.correction() + ")"
                + (Double.isNaN(one.leaveOneOut())
                        ? ""
                        : ", each predicted from the others to " + Figures.fixed(one.leaveOneOut(), 1)));
        for (SpotReading spot : one.spots()) {
            Lab lab = spot.reading().lab();
            lines.add("  " + spot.spot().name() + ": " + Figures.colour(lab) + ", " + spot.inWords());
        }
        for (Flag flag : one.flags()) {
            lines.add("  Look: " + flag.sentence());
        }
    }

    private void together(List<PhotoReadings> all, Fields tree) throws FileProblem {
        if (all.stream().allMatch(one -> one.spots().isEmpty())) {
            return;
        }
        if (out == null && all.size() < 2) {
            return;
        }
        String name = place != null ? place : all.get(0).photo();
        PlaceReadings target = PhotoBench.asPlace(boat, name, all);
        if (target.readings().size() > 1) {
            Repeats.Combined combined = Aim.of(target).readings();
            Lab mean = combined.mean();
            lines.add("Together:  " + Figures.axes(mean) + " of "
                    + combined.kept().size() + " readings");
            for (int index : combined.leftOut()) {
                lines.add("  Look: reading " + (index + 1) + " lies far from the others and was left out; take that"
                        + " photo again.");
            }
            tree.with(
                    "together",
                    Fields.of("lab", mean.axes())
                            .with("covariance", six(combined.covariance()))
                            .with("kept", combined.kept())
                            .with("leftOut", combined.leftOut()));
        }
        if (out != null) {
            TargetFile.at(out).create(target);
            lines.add("Written:   " + out);
        }
    }

    private static Fields fields(PhotoReadings one) {
        return Fields.of("photo", one.photo())
                .with("references", one.references())
                .with("correction", one.correction())
                .with("leaveOneOut", Double.isNaN(one.leaveOneOut()) ? null : one.leaveOneOut())
                .each("spots", one.spots(), ReadCommand::fields)
                .each(
                        "flags",
                        one.flags(),
                        flag -> Fields.of("kind", flag.kind())
                                .with("where", flag.where())
                                .with("message", flag.message())
                                .with("advice", flag.kind().advice()));
    }

    private static Fields fields(SpotReading spot) {
        return Fields.of("name", spot.spot().name())
                .with("purpose", spot.spot().purpose())
                .colour(spot.reading().lab())
                .with("within90", spot.goodTo())
                .with("covariance", six(spot.reading().covariance()))
                .with("sharedCovariance", spot.reading().photo().map(bias -> six(bias.covariance())))
                .with("parts", spot.spot().parts());
    }

    private static double[] six(Covariance c) {
        return new double[] {c.ll(), c.la(), c.lb(), c.aa(), c.ab(), c.bb()};
    }
}
