package tintwright.window.boat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import tintwright.bench.log.BoatStory;
import tintwright.bench.log.KeepBoat;
import tintwright.bench.log.ShopLog;
import tintwright.logbook.Noted;
import tintwright.logbook.Page;
import tintwright.reading.PlaceReadings;
import tintwright.window.frame.FailureWords;
import tintwright.window.frame.LatestAnswer;
import tintwright.window.frame.ShellModel;
import tintwright.window.job.JobModel;
import tintwright.window.job.OpenLog;

/** The boats of the log: to be searched, taken onto the bench, added to. */
public final class BoatsModel {
    private static final int MOST_BOATS = 40;

    private final JobModel job;
    private final ShellModel shell;
    private final OpenLog log;
    private final LatestAnswer asking;
    private final ReadOnlyObjectWrapper<List<Line>> shown = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private String searched = "";

    /** A boat in the list. */
    record Line(UUID id, String name, String words, boolean inHand) {}

    public BoatsModel(JobModel job, ShellModel shell, OpenLog log, LatestAnswer asking) {
        this.job = job;
        this.shell = shell;
        this.log = log;
        this.asking = asking;
        log.changesProperty().addListener((property, before, after) -> look());
        job.jobProperty().addListener((property, before, after) -> {
            if (!before.boat().equals(after.boat())) {
                look();
            }
        });
    }

    /** Shows the boats whose name, places or notes hold these words; all of them for none. */
    void search(String words) {
        searched = words;
        look();
    }

    private void look() {
        String words = searched;
        String inHand = job.now().boat();
        log.now().ifPresent(from -> asking.ask(() -> lines(from, words, inHand), shown::set, this::failed));
    }

    private void failed(Exception failure) {
        shell.warn(FailureWords.of(failure));
    }

    private static List<Line> lines(ShopLog log, String words, String boatInHand) {
        List<Noted<Page.Boat>> found =
                words.isBlank() ? log.book().boats() : log.book().search(words, MOST_BOATS);
        Optional<UUID> inHand =
                log.book().boatsNamed(boatInHand).stream().findFirst().map(Noted::id);
        return found.stream()
                .limit(MOST_BOATS)
                .map(boat -> new Line(
                        boat.id(),
                        boat.page().name(),
                        boat.page().about(),
                        inHand.filter(boat.id()::equals).isPresent()))
                .toList();
    }

    /** Takes a boat from the log onto the bench, its places as last read. */
    void take(UUID id) {
        log.now()
                .ifPresent(from -> asking.ask(
                        () -> taken(from, id), taken -> onBench(taken.boat(), taken.places()), this::failed));
    }

    private static Taken taken(ShopLog from, UUID id) {
        Noted<Page.Boat> boat = from.book().boats().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
        List<PlaceReadings> places = new ArrayList<>();
        for (BoatStory.PlaceStory place : BoatStory.of(from, boat).places()) {
            place.latest()
                    .flatMap(seen -> from.book().find(seen.id()))
                    .filter(noted -> noted.page() instanceof Page.Target)
                    .map(noted -> (Page.Target) noted.page())
                    .ifPresent(target -> places.add(new PlaceReadings(
                            boat.page().name(), place.place().page().name(), target.readings(), target.note())));
        }
        return new Taken(boat.page().name(), places);
    }

    private record Taken(String boat, List<PlaceReadings> places) {}

    private void onBench(String boat, List<PlaceReadings> places) {
        job.change(before ->
                before.withPlaces(boat, places, places.isEmpty() ? -1 : 0).mixing(Optional.empty()));
    }

    /**
     * Writes a new boat and takes it onto the bench.
     *
     * @param taken runs once she is written down; until then, or when she cannot be, what was typed is still needed
     */
    void newBoat(String name, String type, String year, Runnable taken) {
        problem.set("");
        try {
            Optional<Integer> built = year.isBlank() ? Optional.empty() : Optional.of(Integer.parseInt(year.trim()));
            Page.Boat boat = new Page.Boat(name.trim(), type.trim(), built, "", List.of());
            log.write(
                    open -> new KeepBoat(open).add(boat),
                    () -> {
                        onBench(boat.name(), List.of());
                        taken.run();
                    },
                    problem::set);
        } catch (NumberFormatException e) {
            problem.set("The year must be a whole number such as 1987, was \"" + year.trim() + "\".");
        } catch (IllegalArgumentException e) {
            problem.set(FailureWords.of(e));
        }
    }

    /** What was wrong with the new boat is being mended. */
    void mended() {
        problem.set("");
    }

    ReadOnlyObjectProperty<List<Line>> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** @return what was wrong with the new boat; empty when nothing was */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }
}
