package tintwright.bench;

import java.util.OptionalDouble;
import tintwright.cup.CupState;
import tintwright.cup.Deed;
import tintwright.shelf.Shelf;
import tintwright.shelf.Tint;
import tintwright.units.Grams;

/** Whether a deed can have been done: there is no more in a cup than its can held, and no more poured off than was in. */
record DeedCheck(Shelf shelf, CupState state) {
    /** @throws IllegalArgumentException when it cannot; the sentence says why and what to look at */
    void mustBe(Deed deed) {
        if (deed instanceof Deed.Weighed w) {
            mustFit(w.part(), w.grams());
        } else if (deed instanceof Deed.LetDown l) {
            mustBeTint(l.part());
            mustFit(l.part(), l.grams() / l.oneIn());
        } else if (deed instanceof Deed.Dropped d) {
            mustBeTint(d.part());
            mustFit(d.part(), d.count() * d.dropGrams());
        } else if (deed instanceof Deed.SetAside s && s.grams() > state.mass() + 1e-9) {
            throw new IllegalArgumentException("the cup holds " + Grams.written(state.mass()) + ", so "
                    + Grams.written(s.grams()) + " cannot be set aside: check the number");
        }
    }

    private void mustBeTint(String id) {
        if (shelf.tint(id).isEmpty()) {
            throw new IllegalArgumentException("there is no tint \"" + id + "\" on the shelf: the tints are "
                    + String.join(", ", shelf.tints().stream().map(Tint::id).toList()));
        }
    }

    private void mustFit(String id, double grams) {
        OptionalDouble can = shelf.item(id)
                .filter(item -> item.kind().mixes())
                .map(item -> item.stock().gramsLeft())
                .orElseThrow(() -> new IllegalArgumentException(
                        "there is no \"" + id + "\" on the shelf: add it as a" + " base or tint, or correct the name"));
        if (can.isPresent() && grams > can.getAsDouble() + 1e-9) {
            throw new IllegalArgumentException("the can of " + shelf.nameOf(id) + " holds "
                    + Grams.written(can.getAsDouble()) + ", so " + Grams.written(grams)
                    + " cannot have come from it: check the decimal point, or the shelf");
        }
    }
}
