/**
 * A photo file comes in; its pixels as the file's own codes, what they mean in linear light, and a preview go out.
 * Knows nothing of what is in the picture.
 */
package tintwright.reading.photo.file;
