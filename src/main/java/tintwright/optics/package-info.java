/**
 * Light in a pigmented film: absorption and scattering in, reflectance out, and back; the surface of the film;
 * hiding. Knows colour, and nothing of shelves, cups, files or screens.
 */
package tintwright.optics;
