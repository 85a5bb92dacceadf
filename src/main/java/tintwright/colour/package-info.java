/**
 * CIE colorimetry: spectra, lights and observers in; tristimulus values, CIELAB and colour differences out.
 * Every colour carries the light and observer it was seen under. Knows nothing of paint, files or screens.
 */
package tintwright.colour;
