/**
 * What the chips have taught about everything on the shelf. A shelf comes in; absorption and scattering of every part,
 * with their uncertainty and what is doubted, go out. Knows no recipe, no file and no screen.
 */
package tintwright.shelf.knowledge;
