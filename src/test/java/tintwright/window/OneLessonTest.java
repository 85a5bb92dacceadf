package tintwright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tintwright.bench.log.ShopLog;
import tintwright.shelf.Shelf;
import tintwright.shelf.Tint;

/** A shelf is learned from once, whatever is done beside it: counted, for a time would prove nothing. */
class OneLessonTest {
    private final List<Shelf> lessons = new ArrayList<>();
    private final Desk desk = new Desk(
            Desks.metered(),
            Runnable::run,
            Runnable::run,
            Clock.systemUTC(),
            () -> ShopLog.demo(Clock.systemUTC()),
            shelf -> {
                lessons.add(shelf);
                return Desks.learn(shelf);
            });

    @Test
    void nothingButTheShelfIsLearnedFrom() {
        assertEquals(1, lessons.size(), "the shelf as the desk was opened");
        Tint tint = desk.job().now().shelf().tints().get(0);
        desk.plan().place(1);
        desk.plan().place(0);
        desk.plan().use(tint.id(), false);
        desk.plan().use(tint.id(), true);
        desk.plan().batch("120");
        desk.plan().scaleStep(0.1);
        desk.cup().begin();
        desk.cup().accept();
        assertTrue(desk.cup().alsoWeighed(tint.id(), "0.3"));
        assertTrue(desk.cup().inHandProperty().get().isPresent(), "a cup is in hand");
        assertEquals(1, lessons.size(), "no place, batch, dose or cup changes what the shelf has taught");
    }

    @Test
    void aShelfThatChangedIsLearnedFromOnceMore() {
        String chip = desk.job().now().shelf().chips().get(0).id();
        assertTrue(desk.shelf().forget(chip));
        assertEquals(2, lessons.size());
        assertEquals(desk.job().now().shelf(), lessons.get(1));
        desk.plan().batch("130");
        assertEquals(2, lessons.size());
    }
}
