/**
 * Base, tints, pastes, leftovers and chips, and what the chips have taught about each of them. Chips come in;
 * absorption and scattering of every part, with their uncertainty, go out. Knows no file and no screen.
 */
package tintwright.shelf;
