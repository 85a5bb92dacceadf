/**
 * Decoded pixels and marks come in; where the things of known colour lie and the light each patch sent to the camera
 * go out. Knows nothing of what the camera did to that light.
 */
package tintwright.reading.photo.card;
