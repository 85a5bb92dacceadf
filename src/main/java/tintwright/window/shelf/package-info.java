/**
 * The station of the shelf. Stock and chips typed in or read from a file come in; a shelf and the next chip to make go
 * out. Knows nothing of the cup.
 */
package tintwright.window.shelf;
