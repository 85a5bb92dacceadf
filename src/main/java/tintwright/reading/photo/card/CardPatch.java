package tintwright.reading.photo.card;

import java.util.Optional;
import tintwright.colour.Lab;
import tintwright.colour.SmoothReflectance;
import tintwright.colour.Spectrum;
import tintwright.colour.Viewing;

/**
 * One patch of known colour.
 *
 * @param name        what it is called
 * @param lab         its colour, when stated as L*, a*, b*
 * @param reflectance its reflectance, when measured; this then counts
 */
public record CardPatch(String name, Optional<Lab> lab, Optional<Spectrum> reflectance) {
    public CardPatch {
        if (lab.isEmpty() && reflectance.isEmpty()) {
            throw new IllegalArgumentException(
                    "the patch \"" + name + "\" has no colour: give L*, a*, b* or a " + "reflectance");
        }
    }

    public static CardPatch of(String name, Lab lab) {
        return new CardPatch(name, Optional.of(lab), Optional.empty());
    }

    public static CardPatch of(String name, Spectrum reflectance) {
        return new CardPatch(name, Optional.empty(), Optional.of(reflectance));
    }

    /**
     * The colour under a light; a colour stated for another light is carried over by the smoothest reflectance that
     * has it.
     */
    public Lab colour(Viewing viewing) {
        if (reflectance.isPresent()) {
            return Lab.of(reflectance.get(), viewing);
        }
        Lab stated = lab.orElseThrow();
        return stated.viewing().equals(viewing) ? stated : Lab.of(SmoothReflectance.of(stated), viewing);
    }
}
