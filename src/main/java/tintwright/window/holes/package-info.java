/**
 * The station of the fill. Repairs, weather and tools come in; what to mix cup by cup, how long it can be worked and
 * the running times go out. Knows nothing of how the colour was found.
 */
package tintwright.window.holes;
