/**
 * From a phone photo to readings. A photo file and its marks (where the reference patches, the hull's spots and
 * the chips lie) come in; readings with their covariance and warnings with their remedy go out. Knows nothing of
 * paint, of the shape of files other than photos, or of screens. It passes a photo through its three rooms:
 * {@code file}, {@code card}, {@code camera}.
 */
package tintwright.reading.photo;
