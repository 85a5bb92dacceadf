package tintwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import tintwright.demo.MeteredShop;
import tintwright.shelf.Leftover;
import tintwright.shelf.Parts;
import tintwright.shelf.PigmentFamily;
import tintwright.shelf.Shelf;

class TidyShelfTest {
    private final Shelf shelf = MeteredShop.shelf();

    private static String refused(org.junit.jupiter.api.function.Executable edit) {
        return assertThrows(IllegalArgumentException.class, edit).getMessage();
    }

    @Test
    void aTintKeepsItsChipsUnderAnotherName() {
        Shelf after =
                TidyShelf.change(shelf, "soot-black", " lamp black ", PigmentFamily.UNKNOWN, OptionalDouble.of(80));
        assertEquals("lamp black", after.nameOf("soot-black"));
        assertEquals(
                PigmentFamily.UNKNOWN, after.tint("soot-black").orElseThrow().family());
        assertEquals(
                80, after.tint("soot-black").orElseThrow().stock().gramsLeft().orElseThrow());
        assertEquals(shelf.chips(), after.chips());
        assertEquals(shelf.tints().size(), after.tints().size());
    }

    @Test
    void theWhiteCanBeRenamedAndWeighed() {
        String white = shelf.bases().get(0).id();
        Shelf after = TidyShelf.change(shelf, white, "Shed white", PigmentFamily.UNKNOWN, OptionalDouble.empty());
        assertEquals("Shed white", after.nameOf(white));
        assertTrue(after.bases().get(0).stock().gramsLeft().isEmpty());
        assertEquals(
                shelf.bases().get(0).stock().keeps(),
                after.bases().get(0).stock().keeps());
    }

    @Test
    void twoThingsOfOneNameAreRefused() {
        assertTrue(refused(() -> TidyShelf.change(
                        shelf, "soot-black", "Brick Red", PigmentFamily.UNKNOWN, OptionalDouble.empty()))
                .contains("already"));
        refused(() -> TidyShelf.change(shelf, "soot-black", " ", PigmentFamily.UNKNOWN, OptionalDouble.empty()));
        refused(() -> TidyShelf.change(shelf, "soot-black", "black", PigmentFamily.UNKNOWN, OptionalDouble.of(-1)));
        refused(() -> TidyShelf.change(shelf, "moon dust", "x", PigmentFamily.UNKNOWN, OptionalDouble.empty()));
    }

    @Test
    void aTintGoesWithItsChipsAndNotOutOfACup() {
        long holding = shelf.chips().stream()
                .filter(chip -> chip.parts().grams("berry-red") > 0)
                .count();
        assertTrue(holding > 0);
        Shelf without = TidyShelf.takeOff(shelf, "berry-red", Optional.empty());
        assertTrue(without.tint("berry-red").isEmpty());
        assertEquals(shelf.chips().size() - holding, without.chips().size());
        String white = shelf.bases().get(0).id();
        assertTrue(refused(() -> TidyShelf.takeOff(
                        shelf, "berry-red", Optional.of(Parts.of(Map.of(white, 50.0, "berry-red", 0.1)))))
                .contains("cup in hand"));
        Shelf left = shelf.with(new Leftover(
                "rest", "bow rest", Parts.of(Map.of(white, 50.0, "berry-red", 0.1)), List.of(), Optional.empty()));
        assertTrue(refused(() -> TidyShelf.takeOff(left, "berry-red", Optional.empty()))
                .contains("bow rest"));
        assertTrue(TidyShelf.takeOff(left, "rest", Optional.empty())
                .leftover("rest")
                .isEmpty());
        assertTrue(
                refused(() -> TidyShelf.takeOff(shelf, white, Optional.empty())).contains("leftover"));
    }

    @Test
    void aWrongChipIsForgottenAlone() {
        String wrong = shelf.chips().get(3).id();
        Shelf after = TidyShelf.forget(shelf, wrong);
        assertEquals(shelf.chips().size() - 1, after.chips().size());
        assertTrue(after.chips().stream().noneMatch(chip -> chip.id().equals(wrong)));
        assertTrue(refused(() -> TidyShelf.forget(after, wrong)).contains("no chip"));
    }
}
