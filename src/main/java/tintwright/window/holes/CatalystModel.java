package tintwright.window.holes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tintwright.fill.catalyst.Basis;
import tintwright.fill.catalyst.CatalystChoice;
import tintwright.fill.catalyst.CatalystShare;
import tintwright.fill.catalyst.CatalystTable;
import tintwright.fill.catalyst.WorkingTime;
import tintwright.units.Entry;
import tintwright.units.UnitSystem;
import tintwright.window.frame.FailureWords;
import tintwright.window.job.JobModel;

/** Where the share of catalyst comes from: the general table, the product's own, or a figure typed by hand. */
public final class CatalystModel {
    /** What stands beside every place where a share is typed. */
    public static final String ALWAYS = "Limit " + CatalystShare.limitWords() + "; " + CatalystShare.CAUTION
            + ". The product's data sheet comes first, and it says whether its percent are by mass or by volume.";

    private final JobModel job;
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private Optional<CatalystChoice> own = Optional.empty();
    private Optional<CatalystChoice> byHand = Optional.empty();

    CatalystModel(JobModel job) {
        this.job = job;
        job.jobProperty()
                .addListener((property, before, after) -> note(after.fill().catalyst()));
        note(choice());
    }

    /** What was entered once comes back when its kind is chosen again. */
    private void note(CatalystChoice choice) {
        if (choice instanceof CatalystChoice.Own) {
            own = Optional.of(choice);
        } else if (choice instanceof CatalystChoice.Typed) {
            byHand = Optional.of(choice);
        }
    }

    public void general() {
        problem.set("");
        take(new CatalystChoice.General());
    }

    /** Goes back to the own table that was entered before; nothing happens when there is none yet. */
    public void own() {
        problem.set("");
        own.ifPresent(this::take);
    }

    /** Goes back to the share that was typed before; nothing happens when there is none yet. */
    public void byHand() {
        problem.set("");
        byHand.ifPresent(this::take);
    }

    /** @return false when it cannot be, such as outside the limit; {@link #problemProperty()} says why */
    public boolean share(String percent, Basis basis) {
        return FailureWords.tried(
                problem::set, () -> take(new CatalystChoice.Typed(share(percent, "the catalyst", basis))));
    }

    private static CatalystShare share(String percent, String what, Basis basis) {
        return new CatalystShare(
                FillTyped.number(what, percent, "a percentage, such as 1.8 (" + CatalystShare.CAUTION + ")"), basis);
    }

    /**
     * One row of the product's own table.
     *
     * @param product whose table it is; blank for the one there is
     * @param celsius temperature as typed
     * @param least   shortest working time, minutes, as typed
     * @param most    longest working time, minutes, as typed; blank when the data sheet gives one figure
     * @return false when it cannot be; {@link #problemProperty()} says why
     */
    public boolean row(
            String product, String celsius, String percent, Basis basis, String least, String most, UnitSystem units) {
        return FailureWords.tried(problem::set, () -> {
            double shortest = FillTyped.number("the working time", least, "minutes, such as 15");
            double longest = most.isBlank()
                    ? shortest
                    : FillTyped.number("the longest working time", most, "minutes, such as 20");
            CatalystTable.Row row = new CatalystTable.Row(
                    Entry.celsius("the temperature", celsius, units),
                    share(percent, "the catalyst", basis),
                    new WorkingTime(shortest, longest));
            List<CatalystTable.Row> rows =
                    new ArrayList<>(table().map(CatalystTable::rows).orElse(List.of()));
            rows.add(row);
            take(new CatalystChoice.Own(new CatalystTable(
                    product.isBlank() ? table().map(CatalystTable::product).orElse("") : product.trim(), rows)));
        });
    }

    /** Takes a row out of the own table; without its last the general table holds again. */
    public void removeRow(int index) {
        table().ifPresent(table -> {
            List<CatalystTable.Row> rows = new ArrayList<>(table.rows());
            rows.remove(index);
            if (rows.isEmpty()) {
                own = Optional.empty();
                general();
            } else {
                take(new CatalystChoice.Own(new CatalystTable(table.product(), rows)));
            }
        });
    }

    /** @return the product's own table as far as it was entered */
    Optional<CatalystTable> table() {
        return own.map(choice -> ((CatalystChoice.Own) choice).table());
    }

    CatalystChoice choice() {
        return job.now().fill().catalyst();
    }

    JobModel job() {
        return job;
    }

    private void take(CatalystChoice choice) {
        job.change(before -> before.filling(before.fill().with(choice)));
    }

    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }
}
