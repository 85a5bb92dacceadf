package tintwright.files.instrument;

import java.nio.file.Path;
import java.util.List;
import tintwright.files.FileProblem;
import tintwright.files.TextFile;
import tintwright.reading.Conditions;
import tintwright.reading.NamedReading;

/**
 * A file that an instrument or a spreadsheet wrote: CSV, CGATS text (ISO 28178) or CxF3 (ISO 17972-1). Which one it
 * is shows in its first characters, not in its name.
 */
public final class InstrumentFile {
    private InstrumentFile() {}

    /**
     * @param unsaid what to assume where the file does not say
     * @return one reading for each sample, in the order of the file, at least one
     * @throws FileProblem when the file cannot be read, is of no known kind, or a value in it cannot be
     */
    public static List<NamedReading> read(Path file, Conditions unsaid) throws FileProblem {
        return parse(file.toString(), TextFile.read(file), unsaid);
    }

    static List<NamedReading> parse(String file, String text, Conditions unsaid) throws FileProblem {
        List<NamedReading> readings;
        if (text.stripLeading().startsWith("<")) {
            readings = CxfFile.parse(file, text, unsaid);
        } else if (text.contains("BEGIN_DATA_FORMAT")) {
            CgatsText cgats = CgatsText.parse(file, text);
            readings = TableReadings.of(cgats.table(), cgats.conditions(unsaid));
        } else {
            readings = TableReadings.of(CsvTable.parse(file, text), unsaid);
        }
        if (readings.isEmpty()) {
            throw FileProblem.unusable(file + ": no sample stands in it; export the measurements again");
        }
        return readings;
    }
}
