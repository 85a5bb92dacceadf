/**
 * Target to recipe: what is wanted and what the shelf knows come in; ranked mixes, or how far they fall
 * short, go out. Knows no cup, no file and no screen.
 */
package tintwright.match;
