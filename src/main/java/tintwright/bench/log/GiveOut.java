package tintwright.bench.log;

import java.nio.file.Path;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import tintwright.colour.Lab;
import tintwright.files.FileProblem;
import tintwright.files.TextFile;
import tintwright.logbook.BoatZip;
import tintwright.logbook.LogCsv;
import tintwright.logbook.MeanColour;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.logbook.disk.LogFailure;
import tintwright.paper.CupSheets;
import tintwright.paper.HtmlSheet;
import tintwright.paper.PdfSheet;
import tintwright.paper.Sheet;
import tintwright.reading.photo.sheet.CupLabel;

/** Hands things out of the log: a label, a card, the whole as a table, one boat as a zip; and takes a zip in. */
public final class GiveOut {
    private final ShopLog log;

    public GiveOut(ShopLog log) {
        this.log = log;
    }

    /** Writes the label of a cup as PDF; what stood there still stands when that fails. */
    public void label(Noted<Page.Cup> cup, Path file) throws FileProblem {
        TextFile.write(file, labelPdf(cup));
    }

    /** @return the label of a cup as PDF */
    public byte[] labelPdf(Noted<Page.Cup> cup) {
        return PdfSheet.of(CupSheets.label(told(cup)), CupSheets.LABEL);
    }

    /** @return the recipe card of a cup, for a page of its own */
    public Sheet cardSheet(Noted<Page.Cup> cup) {
        return CupSheets.card(told(cup));
    }

    /** Writes the recipe card of a cup as PDF; what stood there still stands when that fails. */
    public void card(Noted<Page.Cup> cup, Path file) throws FileProblem {
        TextFile.write(file, PdfSheet.of(CupSheets.card(told(cup)), CupSheets.CARD));
    }

    /** Writes the recipe card of a cup as one HTML page, for a phone. */
    public void cardHtml(Noted<Page.Cup> cup, Path file) throws FileProblem {
        TextFile.write(file, HtmlSheet.of(cardSheet(cup)));
    }

    /** Writes everything in the log as a table. */
    public void csv(Path file) throws FileProblem {
        TextFile.write(file, LogCsv.of(log.book()));
    }

    /**
     * Writes one boat, with every word ever written of it and its photos, as a zip for another shop.
     *
     * @param keepMarks whether photos keep what tells where, by whom and with which camera they were taken
     * @return what was left out and why, a sentence each
     */
    public List<String> zip(Noted<Page.Boat> boat, Path file, boolean keepMarks) throws FileProblem, LogFailure {
        BoatZip.Packed packed = BoatZip.of(log.book(), boat.id(), log.clock().instant(), keepMarks);
        TextFile.write(file, packed.bytes());
        return packed.left();
    }

    /** Takes a zip from another shop in; see {@link BoatZip#into}. */
    public BoatZip.Imported takeIn(byte[] zip) throws LogFailure {
        return BoatZip.into(log.book(), zip);
    }

    private CupSheets.Told told(Noted<Page.Cup> cup) {
        UUID boat = cup.boat().orElseThrow(() -> new IllegalArgumentException("the cup belongs to no boat"));
        String name = log.book()
                .find(boat)
                .filter(noted -> noted.page() instanceof Page.Boat)
                .map(noted -> ((Page.Boat) noted.page()).name())
                .orElse("a boat that was taken back");
        String place = cup.page()
                .place()
                .flatMap(log.book()::find)
                .filter(noted -> noted.page() instanceof Page.Place)
                .map(noted -> ((Page.Place) noted.page()).name())
                .orElse("");
        List<String> verdicts = log.book().of(boat, Page.Verdict.class).stream()
                .filter(judged -> judged.page().of().equals(cup.id()))
                .map(judged ->
                        judged.page().day() + ": " + judged.page().outcome().words()
                                + (judged.page().note().isBlank()
                                        ? ""
                                        : ", " + judged.page().note()))
                .toList();
        return new CupSheets.Told(
                name, place, cup.page(), hull(cup, boat), verdicts, shortName(cup.id()), CupLabel.text(cup.id()));
    }

    /** The reading of the place that lies nearest to the day of the cup. */
    private Optional<Lab> hull(Noted<Page.Cup> cup, UUID boat) {
        return cup.page()
                .place()
                .flatMap(place -> log.book().of(boat, Page.Target.class).stream()
                        .map(Noted::page)
                        .filter(target -> target.place().equals(place))
                        .min(Comparator.comparingLong(target -> Math.abs(
                                ChronoUnit.DAYS.between(target.day(), cup.page().day()))))
                        .flatMap(target -> MeanColour.of(target.readings())))
                .map(MeanColour::lab);
    }

    /** @return the end of an entry's name: enough to find it again, short enough to write on a cup */
    public static String shortName(UUID id) {
        return id.toString().substring(28);
    }
}
