/**
 * The three pictures that carry the window: the split swatch, the depth gauge and the hue rose. Plain records come
 * in, drawn nodes come out, with words for a screen reader. They know screen colours and numbers; not the engine.
 */
package tintwright.window.picture;
