/**
 * What stands on the shelf: bases, tints, pastes, leftovers and chips, each with its stock. Typed or read values come
 * in; one checked shelf goes out. Knows nothing of light in paint, no file and no screen.
 */
package tintwright.shelf;
