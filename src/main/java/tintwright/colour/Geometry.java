package tintwright.colour;

/**
 * Whether a reading holds the gloss of the surface.
 *
 * <p>Source: CIE 15:2018, clause 5 (di:8 includes the regular component; de:8 and 45:0 leave it out).
 */
public enum Geometry {
    /** The mirror reflection of the surface is part of the reading (di:8). */
    SPECULAR_INCLUDED,
    /** The mirror reflection is left out (de:8, 45:0, and what a careful photo sees). */
    SPECULAR_EXCLUDED
}
