/**
 * What is really in the cup: weighings and readings come in; the next safe dose, or the way back from too
 * dark, goes out. Knows no file, no clock and no screen.
 */
package tintwright.cup;
