/**
 * The photo on the screen: the picture with its card and spots to drag, and the reading beside it. The model knows
 * no node; the view holds no decision.
 */
package tintwright.window.photo;
