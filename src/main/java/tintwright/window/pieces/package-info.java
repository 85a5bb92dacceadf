/**
 * What every station is built from. Words and figures come in; keys, sheets, fields and layouts that look alike go
 * out. Knows nothing of boats, tints or cups, and keeps nothing.
 */
package tintwright.window.pieces;
