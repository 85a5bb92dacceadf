package tintwright.window.boat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tintwright.bench.job.Job;
import tintwright.bench.job.RecentBoats;
import tintwright.bench.log.ShopLog;
import tintwright.cup.Cup;
import tintwright.reading.PlaceReadings;
import tintwright.window.Desk;
import tintwright.window.Desks;
import tintwright.window.Opening;

/** Going from boat to boat and back, also over a restart. */
class RecentModelTest {
    @TempDir
    Path home;

    private Desk desk;
    private String tarrowmere;

    @BeforeEach
    void open() {
        desk = opened();
        tarrowmere = desk.job().now().boat();
    }

    private Desk opened() {
        return Opening.fetch(home, false, Desks::learn)
                .desk(Runnable::run, Runnable::run, Clock.systemUTC(), () -> ShopLog.demo(Clock.systemUTC()));
    }

    private void goTo(String boat) {
        List<PlaceReadings> places = desk.job().now().places().stream()
                .limit(1)
                .map(place -> new PlaceReadings(boat, place.place(), place.readings(), ""))
                .toList();
        desk.job().change(before -> before.withPlaces(boat, places, 0).mixing(Optional.empty()));
    }

    private static List<String> names(Desk desk) {
        return desk.recent().shownProperty().get().stream()
                .map(RecentModel.Line::boat)
                .toList();
    }

    @Test
    void aBoatThatWasLeftIsOnePressAwayWithItsCup() {
        desk.cup().begin();
        desk.cup().accept();
        Job left = desk.job().now();
        assertTrue(left.cup().orElseThrow().state().mass() > 0);
        goTo("Dunnelquay");
        assertEquals(List.of(tarrowmere), names(desk));
        assertTrue(desk.recent()
                .shownProperty()
                .get()
                .get(0)
                .words()
                .contains(left.cup().get().name()));

        desk.shell().lastBoat();
        assertEquals(left, desk.job().now(), "as it was left");
        assertEquals(List.of("Dunnelquay"), names(desk));
        assertTrue(desk.recent().open("Dunnelquay"));
        assertEquals("Dunnelquay", desk.job().now().boat());
        assertTrue(desk.job().now().cup().isEmpty());
    }

    @Test
    void theListOutlivesTheWindow() {
        Job left = desk.job().now();
        goTo("Dunnelquay");
        Desk again = opened();
        assertEquals("Dunnelquay", again.job().now().boat());
        assertEquals(List.of(tarrowmere), names(again));
        again.shell().lastBoat();
        assertEquals(left.places(), again.job().now().places());
    }

    @Test
    void shelfAndScaleStayAsTheyAreNow() {
        goTo("Dunnelquay");
        desk.plan().scaleStep(0.1);
        desk.job().change(now -> now.with(Desk.own().shelf()));
        desk.shell().lastBoat();
        assertEquals(Desk.own().shelf(), desk.job().now().shelf());
        assertEquals(0.1, desk.job().now().scaleStep());
    }

    @Test
    void takingItBackNeverMixesTheCupsOfTwoBoats() {
        desk.cup().begin();
        desk.cup().accept();
        Job first = desk.job().now();
        goTo("Dunnelquay");
        desk.cup().begin();
        desk.cup().accept();
        Cup own = desk.job().now().cup().orElseThrow();
        desk.job()
                .change(now -> now.mixing(Optional.of(new Cup(
                        first.cup().orElseThrow().name(),
                        own.hull(),
                        own.wantedGrams(),
                        own.scaleStep(),
                        own.base(),
                        own.entries()))));
        Job second = desk.job().now();
        desk.recent().open(tarrowmere);
        desk.shell().undo();
        assertEquals(second, desk.job().now());
        desk.shell().redo();
        assertEquals(first, desk.job().now());
    }

    @Test
    void theLongestLeftGoesWhenThereAreTooMany() {
        for (int i = 0; i <= RecentBoats.MOST + 1; i++) {
            goTo("Boat " + i);
        }
        assertEquals(RecentBoats.MOST, names(desk).size());
        assertEquals("Boat " + RecentBoats.MOST, names(desk).get(0));
        assertFalse(desk.recent().open(tarrowmere), "only the log knows it now");
        assertEquals("Boat " + (RecentBoats.MOST + 1), desk.job().now().boat());
        assertTrue(desk.recent().open("Boat 3"));
        assertEquals("Boat 3", desk.job().now().boat());
    }

    @Test
    void aListThatCannotBeReadIsSaidAndNothingStops() throws Exception {
        goTo("Dunnelquay");
        Path list = home.resolve("demo-bench").resolve("boats").resolve("boats.json");
        Files.writeString(list, "boats=many");
        Desk again = opened();
        assertTrue(again.shell().noticeProperty().get().contains("boats.json"));
        assertEquals(List.of(), names(again));
        assertEquals("boats=many", Files.readString(list));
    }
}
