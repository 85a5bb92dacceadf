package tintwright.bench;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tintwright.files.FileProblem;
import tintwright.files.TextFile;
import tintwright.fill.FillOrder;
import tintwright.fill.FillPlan;
import tintwright.fill.FillPlanner;
import tintwright.paper.HtmlSheet;
import tintwright.paper.JobSheet;
import tintwright.paper.Paper;
import tintwright.paper.PdfSheet;
import tintwright.paper.Sheet;
import tintwright.paper.TextSheet;
import tintwright.units.UnitSystem;

/**
 * Working out a fill job and handing it over: the plan, the same in words, and the job sheet as PDF or HTML.
 *
 * @param order    the job and whose it is
 * @param plan     the job worked out
 * @param day      the day it is for
 * @param standing how the colour in the cup stands to the hull; empty where no cup is in hand
 */
public record PlanFill(FillOrder order, FillPlan plan, Optional<CupStanding> standing, LocalDate day) {
    /** Paper a job sheet is printed on. */
    public enum PaperSize {
        /** 210 by 297 mm. */
        A4,
        /** 8.5 by 11 inches. */
        LETTER;

        /** @throws IllegalArgumentException for any other name */
        public static PaperSize named(String name) {
            for (PaperSize size : values()) {
                if (size.name().equals(name.trim().toUpperCase(Locale.ROOT))) {
                    return size;
                }
            }
            throw new IllegalArgumentException("the paper must be a4 or letter, was \"" + name + "\"");
        }
    }

    /**
     * Works it out.
     *
     * @param day the day it is for; it stands on the sheet
     * @throws IllegalArgumentException when the job is too large for one sheet
     */
    public static PlanFill of(FillOrder order, Optional<CupStanding> standing, LocalDate day) {
        return new PlanFill(order, FillPlanner.plan(order.job()), standing, day);
    }

    /**
     * How much colour the holes want from the cup: what they take, what is lost, and what the smallest batch is raised by;
     * rounded up to what the scale shows. A spare is for the person to add.
     *
     * @return grams; 0 where nothing can be filled
     */
    public double gramsForTheCup() {
        double step = order.job().tools().scaleG();
        return Math.ceil(plan.gelCoatGrams() / step - 1e-9) * step;
    }

    /** @return the job sheet in plain lines */
    public List<String> lines(UnitSystem units) {
        return TextSheet.of(sheet(units));
    }

    /** Writes the job sheet as PDF; what stood there still stands when that fails. */
    public void writePdf(Path file, PaperSize size, UnitSystem units) throws FileProblem {
        TextFile.write(file, PdfSheet.of(sheet(units), size == PaperSize.A4 ? Paper.A4 : Paper.LETTER));
    }

    /** Writes the job sheet as one HTML page; what stood there still stands when that fails. */
    public void writeHtml(Path file, UnitSystem units) throws FileProblem {
        TextFile.write(file, HtmlSheet.of(sheet(units)));
    }

    private Sheet sheet(UnitSystem units) {
        return JobSheet.of(
                order, plan, day, units, standing.map(seen -> new JobSheet.Colour(seen.sentence(), seen.first())));
    }
}
