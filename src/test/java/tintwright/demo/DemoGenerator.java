package tintwright.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import tintwright.bench.PhotoBench;
import tintwright.bench.SheetBench;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Spectrum;
import tintwright.files.FileProblem;
import tintwright.files.SheetFile;
import tintwright.files.ShelfFile;
import tintwright.files.TargetFile;
import tintwright.files.TextFile;
import tintwright.files.instrument.ChipsFile;
import tintwright.reading.FilmState;
import tintwright.reading.PlaceReadings;
import tintwright.reading.Reading;
import tintwright.reading.SpectralReading;
import tintwright.reading.photo.file.PhotoException;
import tintwright.reading.photo.file.Progress;
import tintwright.shelf.Base;
import tintwright.shelf.Chip;
import tintwright.shelf.ItemKind;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.Paste;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;
import tintwright.shelf.Stock;
import tintwright.shelf.StockItem;
import tintwright.shelf.Sundry;
import tintwright.shelf.Tint;

/**
 * Makes the demo: an invented boat whose port bow was photographed with the sheet on it, and the shelf of somebody with
 * eyes, a phone and a pocket scale, whose chips were weighed and lay in that photo. Beside it, for the tests, the shelf
 * and the readings of a shop with a meter. Everything comes from {@link HiddenPigment} through {@link HiddenBench} with
 * a fixed seed, so the files are the same every time; what the demo says of the photo is what the program reads in it.
 *
 * <p>Assumptions on top of the bench's: with the meter of each tint two chips in white, 0.3 % and 2 % of 50 g; the hull
 * was once mixed from pigments like these, and weathering tilted its reflectance smoothly by up to 0.4 %, so that no
 * mix meets it exactly; with the meter each place was read three times, at the stern quarter with one that was lent.
 *
 * <p>Run it from the project's folder with
 * {@code mvn -q test-compile exec:java -Dexec.mainClass=tintwright.demo.DemoGenerator -Dexec.classpathScope=test}.
 */
public final class DemoGenerator {
    private static final String WHITE_ID = "plain-white";
    /** What the port bow was once mixed from. */
    private static final Map<HiddenPigment, Double> BOW = Map.of(
            HiddenPigment.WHITE,
            100.0,
            HiddenPigment.BLACK,
            0.66,
            HiddenPigment.GREEN,
            0.46,
            HiddenPigment.YELLOW_OXIDE,
            0.8);

    private static final LocalDate CHIP_DAY = LocalDate.of(2026, 3, 14);

    /** The invented tints: id, name, what is sold in the tub, what is really in it. */
    private enum Tub {
        SOOT("soot-black", "soot black", PigmentFamily.CARBON_BLACK, HiddenPigment.BLACK, 210, 46),
        BRICK("brick-red", "brick red", PigmentFamily.RED_IRON_OXIDE, HiddenPigment.RED_OXIDE, 180, 42),
        STRAW("straw-yellow", "straw yellow", PigmentFamily.YELLOW_IRON_OXIDE, HiddenPigment.YELLOW_OXIDE, 240, 42),
        INK("ink-blue", "ink blue", PigmentFamily.PHTHALO_BLUE, HiddenPigment.BLUE, 150, 68),
        BOTTLE("bottle-green", "bottle green", PigmentFamily.PHTHALO_GREEN, HiddenPigment.GREEN, 160, 68),
        BARK("bark-brown", "bark brown", PigmentFamily.BROWN_OXIDE, HiddenPigment.UMBER, 90, 42),
        LEMON("lemon-yellow", "lemon yellow", PigmentFamily.ORGANIC_YELLOW, HiddenPigment.ORGANIC_YELLOW, 130, 75),
        BERRY("berry-red", "berry red", PigmentFamily.ORGANIC_RED, HiddenPigment.ORGANIC_RED, 18, 79);

        private final String id;
        private final String title;
        private final PigmentFamily family;
        private final HiddenPigment inside;
        private final double gramsLeft;
        private final double pricePerKg;

        Tub(String id, String title, PigmentFamily family, HiddenPigment inside, double gramsLeft, double pricePerKg) {
            this.id = id;
            this.title = title;
            this.family = family;
            this.inside = inside;
            this.gramsLeft = gramsLeft;
            this.pricePerKg = pricePerKg;
        }
    }

    private final HiddenBench bench = new HiddenBench(20260314);
    private final Map<String, HiddenPigment> inside = new LinkedHashMap<>();

    private DemoGenerator() {
        inside.put(WHITE_ID, HiddenPigment.WHITE);
        for (Tub tub : Tub.values()) {
            inside.put(tub.id, tub.inside);
        }
    }

    /** The tubs of somebody who owns a white and four tints. */
    private static final List<Tub> FEW = List.of(Tub.SOOT, Tub.BRICK, Tub.STRAW, Tub.BOTTLE);

    /** What weathering did to the port bow. */
    private static double weathered(double nm) {
        return 1 + 0.004 * StrictMath.cos(2 * StrictMath.PI * (nm - 400) / 300);
    }

    /** Writes the demo into the project folder. */
    public static void main(String[] args) throws FileProblem, IOException, PhotoException {
        write(Path.of(""));
    }

    /** Writes every file of the demo below a folder. */
    static void write(Path project) throws FileProblem, IOException, PhotoException {
        DemoGenerator maker = new DemoGenerator();
        Path boat = project.resolve("swatches/tarrowmere");
        Path tests = project.resolve("src/test/resources/tintwright/demo");
        Files.createDirectories(boat);
        Files.createDirectories(tests);
        Shelf metered = maker.shelf();
        TextFile.write(tests.resolve("metered-shelf.json"), ShelfFile.text(metered));
        TextFile.write(tests.resolve("metered-port-bow.json"), TargetFile.text(maker.portBow()));
        TextFile.write(boat.resolve("stern-quarter.json"), TargetFile.text(maker.sternQuarter()));
        TextFile.write(tests.resolve("contradictory-chip.json"), ChipsFile.text(List.of(maker.contradictoryChip())));
        maker.photo(boat, project.resolve("swatches/shelf.json"), metered);
    }

    /** The photo, and the shelf and the place as somebody has them who has let the program read it. */
    private void photo(Path boat, Path shelfFile, Shelf metered) throws FileProblem, IOException, PhotoException {
        DemoPhoto photo = photo();
        Shelf bare = few(metered);
        Path file = boat.resolve(DemoPhoto.NAME);
        photo.take(file, bare);
        TextFile.write(boat.resolve("on-sheet.json"), SheetFile.text(photo.contents()));
        SheetBench.Read read =
                SheetBench.read(file, photo.contents(), Optional.of(bare), PhotoBench.VIEWING, Progress.NONE);
        TextFile.write(shelfFile, ShelfFile.text(read.onto(bare)));
        TextFile.write(
                boat.resolve("port-bow.json"),
                TargetFile.text(new PlaceReadings(
                        "Tarrowmere",
                        "port bow",
                        List.of(read.hull()),
                        "a sea green, faded towards grey; by a photo with the sheet on it (invented)")));
    }

    private DemoPhoto photo() {
        double[] hull = HiddenBench.reflectance(new EnumMap<>(BOW));
        for (int i = 0; i < hull.length; i++) {
            hull[i] *= weathered(HiddenBench.FIRST_NM + i * HiddenBench.STEP_NM);
        }
        return new DemoPhoto(inside, hull);
    }

    /** @return the photo, with what nobody at the bench can know of it */
    public static DemoPhoto hiddenPhoto() {
        return new DemoGenerator().photo();
    }

    /**
     * The same tubs as in the shop with the meter, four of the tints, and no chip yet. When they were opened nobody
     * noted: on whatever day the demo is tried, it must not call its own tubs stale.
     */
    private static Shelf few(Shelf metered) {
        List<String> ids = FEW.stream().map(tub -> tub.id).toList();
        List<StockItem> items = new ArrayList<>();
        for (StockItem item : metered.items()) {
            if (item instanceof Leftover leftover) {
                items.add(new Leftover(leftover.id(), leftover.name(), leftover.parts(), List.of(), Optional.empty()));
            } else if (!(item instanceof Tint) || ids.contains(item.id())) {
                Stock stock = item.stock();
                items.add(item.withStock(new Stock(
                        stock.gramsLeft(), stock.lowAt(), stock.pricePerKg(), Optional.empty(), stock.keeps())));
            }
        }
        return new Shelf(metered.name(), items, List.of());
    }

    private Shelf shelf() {
        List<StockItem> items = new ArrayList<>(List.of(
                new Base(
                        WHITE_ID,
                        "plain white",
                        Base.USUAL_DENSITY,
                        false,
                        stock(2400, 14, LocalDate.of(2026, 2, 2), 6)),
                new Paste("gel-paste", "gel paste", 0.7, Stock.UNKNOWN),
                new Sundry("catalyst", "catalyst", ItemKind.CATALYST, stock(120, 30, LocalDate.of(2026, 2, 2), 12))));
        List<Chip> chips = new ArrayList<>();
        chips.add(chip("plain-white alone", Map.of(WHITE_ID, 50.0)));
        for (Tub tub : Tub.values()) {
            items.add(new Tint(
                    tub.id,
                    tub.title,
                    tub.family,
                    Tint.USUAL_LOADING_LIMIT,
                    Tint.USUAL_DENSITY,
                    Tint.USUAL_DROP_GRAMS,
                    stock(tub.gramsLeft, tub.pricePerKg, LocalDate.of(2025, 9, 6), 24)));
            chips.add(chip(tub.id + " 0.3 %", grams(49.85, tub.id, 0.15)));
            chips.add(chip(tub.id + " 2 %", grams(49.0, tub.id, 1.0)));
        }
        Map<String, Double> cup = grams(61.4, "soot-black", 0.18);
        cup.put("bottle-green", 0.07);
        Leftover leftover = new Leftover(
                "cup-2025-4",
                "sea grey, last autumn",
                Parts.of(cup),
                List.of(reading(bench.weighed(hidden(cup)), nm -> 1)),
                Optional.of(LocalDate.of(2025, 10, 11)));
        items.add(leftover);
        return new Shelf("Demo shelf (invented)", items, chips);
    }

    private PlaceReadings portBow() {
        return place(
                "port bow",
                "a sea green, faded towards grey; washed, read behind the cleat (invented)",
                BOW,
                DemoGenerator::weathered);
    }

    private PlaceReadings sternQuarter() {
        return place(
                "stern quarter",
                "once ivory, yellowed in the sun; washed (invented)",
                Map.of(
                        HiddenPigment.WHITE,
                        100.0,
                        HiddenPigment.YELLOW_OXIDE,
                        1.0,
                        HiddenPigment.UMBER,
                        0.22,
                        HiddenPigment.RED_OXIDE,
                        0.04),
                nm -> 1 + 0.003 * StrictMath.sin(2 * StrictMath.PI * (nm - 400) / 300));
    }

    /** Weighed as 0.15 g of blue, but only 0.05 g went in. */
    private Chip contradictoryChip() {
        Map<String, Double> shown = grams(49.85, "ink-blue", 0.15);
        return new Chip(
                "ink-blue again",
                Parts.of(shown),
                List.of(reading(hidden(grams(49.85, "ink-blue", 0.05)), nm -> 1)),
                Optional.of(CHIP_DAY),
                "invented; weighed wrong on purpose");
    }

    private PlaceReadings place(
            String name, String note, Map<HiddenPigment, Double> mix, DoubleUnaryOperator weathering) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            readings.add(reading(mix, weathering));
        }
        return new PlaceReadings("Tarrowmere", name, readings, note);
    }

    private Chip chip(String id, Map<String, Double> shown) {
        return new Chip(
                id,
                Parts.of(shown),
                List.of(reading(bench.weighed(hidden(shown)), nm -> 1)),
                Optional.of(CHIP_DAY),
                "invented; drawn down until it hid");
    }

    private Reading reading(Map<HiddenPigment, Double> mix, DoubleUnaryOperator weathering) {
        Map<HiddenPigment, Double> inOrder = new EnumMap<>(mix);
        double[] values = bench.read(HiddenBench.reflectance(inOrder), weathering);
        return new SpectralReading(
                Spectrum.of(new Grid(HiddenBench.FIRST_NM, HiddenBench.STEP_NM, HiddenBench.COUNT), values),
                HiddenBench.NOISE,
                Geometry.SPECULAR_INCLUDED,
                FilmState.CURED);
    }

    private static Map<String, Double> grams(double white, String tint, double grams) {
        Map<String, Double> mix = new LinkedHashMap<>();
        mix.put(WHITE_ID, white);
        mix.put(tint, grams);
        return mix;
    }

    private Map<HiddenPigment, Double> hidden(Map<String, Double> byId) {
        Map<HiddenPigment, Double> mix = new EnumMap<>(HiddenPigment.class);
        byId.forEach((id, mass) -> mix.put(inside.get(id), mass));
        return mix;
    }

    private static Stock stock(double grams, double price, LocalDate opened, int months) {
        return new Stock(
                OptionalDouble.of(grams),
                OptionalDouble.empty(),
                OptionalDouble.of(price),
                Optional.of(opened),
                Optional.of(Period.ofMonths(months)));
    }
}
