/**
 * The station of boats. The boats of the log and those worked on lately come in; the boat and the place in hand go
 * out. Knows nothing of colour.
 */
package tintwright.window.boat;
