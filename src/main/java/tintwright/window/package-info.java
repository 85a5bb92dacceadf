/**
 * The window: what a person sees and does, over the bench. The only room that knows JavaFX.
 */
package tintwright.window;
