/**
 * The station where the hull is read. Typed numbers, instrument files and photos come in; readings of the place in hand
 * go out. Knows nothing of tints and cups.
 */
package tintwright.window.hull;
