package tintwright.bench;

import java.nio.file.Path;
import tintwright.files.FileProblem;
import tintwright.files.TextFile;
import tintwright.paper.HullSheet;
import tintwright.reading.photo.sheet.CornerCode;
import tintwright.reading.photo.sheet.SheetLayout;
import tintwright.shelf.Shelf;

/** Print the sheet that lies on the hull while the photo is taken. */
public final class SheetBench {
    private SheetBench() {}

    /** @return the sign that tells this shop's sheets from another's */
    public static String signOf(Shelf shelf) {
        return CornerCode.signOf(shelf.name());
    }

    /**
     * Writes the sheet as PDF; what stood there still stands when that fails.
     *
     * @param shelf whose sheet it is
     * @throws FileProblem when it cannot be written
     */
    public static void writePdf(Path file, PlanFill.PaperSize size, Shelf shelf) throws FileProblem {
        SheetLayout layout = size == PlanFill.PaperSize.A4 ? SheetLayout.A4 : SheetLayout.LETTER;
        TextFile.write(file, HullSheet.pdf(layout, signOf(shelf)));
    }
}
