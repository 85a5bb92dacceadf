package tintwright.files.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tintwright.colour.Geometry;
import tintwright.colour.Grid;
import tintwright.colour.Lab;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;
import tintwright.files.FileProblem;
import tintwright.files.LabRange;
import tintwright.reading.ColourReading;
import tintwright.reading.Conditions;
import tintwright.reading.Covariance;
import tintwright.reading.FilmState;
import tintwright.reading.NamedReading;
import tintwright.reading.Reading;
import tintwright.reading.SpectralReading;

/** From the rows of a table to readings: spectra where there are wavelength columns, else L*, a*, b*. */
final class TableReadings {
    private final Table table;
    private final ReadingColumns columns;
    private final Optional<Grid> grid;
    private final Optional<int[]> lab;
    private final boolean percent;
    private final Conditions unsaid;

    private TableReadings(Table table, Conditions unsaid) throws FileProblem {
        this.table = table;
        this.unsaid = unsaid;
        this.columns = ReadingColumns.of(table);
        this.grid = columns.grid();
        this.lab = columns.lab();
        if (grid.isEmpty() && lab.isEmpty()) {
            throw FileProblem.unusable(table.file() + ": no readings were found among the columns "
                    + String.join(", ", table.columns())
                    + "; name them by wavelength (400, 410, ... 700) or L, a, b");
        }
        this.percent = grid.isPresent() && columns.percent();
    }

    static List<NamedReading> of(Table table, Conditions unsaid) throws FileProblem {
        TableReadings rows = new TableReadings(table, unsaid);
        OptionalInt name = rows.columns.named("name", "sample_name", "sample", "chip", "id", "sample_id");
        List<NamedReading> readings = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            String called = name.isPresent() ? row.cells().get(name.getAsInt()) : "";
            readings.add(new NamedReading(called, rows.reading(row)));
        }
        return readings;
    }

    /** @return readings in the order of the rows, for tables that say more than readings */
    static List<Reading> readings(Table table, Conditions unsaid) throws FileProblem {
        return of(table, unsaid).stream().map(NamedReading::reading).toList();
    }

    private Reading reading(Table.Row row) throws FileProblem {
        Conditions said = new Conditions(
                unsaid.viewing(),
                geometry(row),
                film(row),
                number(row, unsaid.noise(), "noise"),
                number(row, unsaid.sigma(), "sigma"));
        Geometry geometry = said.geometry()
                .orElseThrow(() -> table.problem(
                        row,
                        "whether the gloss is in the reading is not said; add a column geometry with specular-included or"
                                + " specular-excluded"));
        Reading read = grid.isPresent() ? spectrum(row, said, geometry) : colour(row, said, geometry);
        try {
            return LabRange.checked(read);
        } catch (IllegalArgumentException e) {
            throw table.problem(row, e.getMessage() + "; correct it there");
        }
    }

    private Reading spectrum(Table.Row row, Conditions said, Geometry geometry) throws FileProblem {
        double[] values = new double[grid.orElseThrow().count()];
        for (int i = 0; i < values.length; i++) {
            int column = columns.spectrum().get(i);
            values[i] = table.number(row, column) / (percent ? 100 : 1);
            if (!(values[i] >= Spectrum.LEAST && values[i] <= Spectrum.MOST)) {
                throw table.problem(
                        row,
                        column,
                        "reflectance must be " + (percent ? "-2 to 150 %" : "-0.02 to 1.5") + ", was "
                                + row.cells().get(column) + "; correct it there");
            }
        }
        return new SpectralReading(Spectrum.of(grid.orElseThrow(), values), said.noise(), geometry, said.film());
    }

    private Reading colour(Table.Row row, Conditions said, Geometry geometry) throws FileProblem {
        int[] at = lab.orElseThrow();
        Viewing viewing = viewing(row);
        double l = table.number(row, at[0]);
        double a = table.number(row, at[1]);
        double b = table.number(row, at[2]);
        return new ColourReading(
                new Lab(l, a, b, viewing), Covariance.same(said.sigma()), geometry, said.film(), Optional.empty());
    }

    private Viewing viewing(Table.Row row) throws FileProblem {
        OptionalInt light = columns.named("light", "illuminant");
        OptionalInt observer = columns.named("observer");
        if (light.isPresent() != observer.isPresent()) {
            throw FileProblem.unusable(table.file() + ": light and observer belong together; add the missing column");
        }
        if (light.isPresent()) {
            return Instruments.viewing(
                            row.cells().get(light.getAsInt()), row.cells().get(observer.getAsInt()))
                    .orElseThrow(() -> table.problem(
                            row,
                            "light and observer must be such as D65 and 10, were "
                                    + row.cells().get(light.getAsInt()) + " and "
                                    + row.cells().get(observer.getAsInt())
                                    + "; correct them there"));
        }
        return unsaid.viewing()
                .orElseThrow(() -> FileProblem.unusable(table.file()
                        + ": the light and observer of L*, a*, b* are not said; add columns light and observer"));
    }

    private Optional<Geometry> geometry(Table.Row row) throws FileProblem {
        OptionalInt column = columns.named("geometry");
        if (column.isEmpty()) {
            return unsaid.geometry();
        }
        String text = row.cells().get(column.getAsInt());
        Optional<Geometry> found = Instruments.geometry(text);
        if (found.isEmpty()) {
            throw table.problem(
                    row,
                    column.getAsInt(),
                    "must be specular-included or specular-excluded, was \"" + text + "\"; correct it there");
        }
        return found;
    }

    private FilmState film(Table.Row row) throws FileProblem {
        OptionalInt column = columns.named("film");
        if (column.isEmpty()) {
            return unsaid.film();
        }
        String text = row.cells().get(column.getAsInt());
        if (text.equalsIgnoreCase("wet")) {
            return FilmState.WET;
        }
        if (text.equalsIgnoreCase("cured")) {
            return FilmState.CURED;
        }
        throw table.problem(row, column.getAsInt(), "must be wet or cured, was \"" + text + "\"; correct it there");
    }

    private double number(Table.Row row, double otherwise, String heading) throws FileProblem {
        OptionalInt column = columns.named(heading);
        if (column.isEmpty()) {
            return otherwise;
        }
        double value = table.number(row, column.getAsInt());
        double most = heading.equals("noise") ? 0.2 : 20;
        if (!(value >= 0 && value <= most)) {
            throw table.problem(
                    row, column.getAsInt(), "must be 0 to " + most + ", was " + value + "; correct it there");
        }
        return value;
    }
}
