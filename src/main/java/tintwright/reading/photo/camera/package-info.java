/**
 * What the camera recorded of known colours comes in; the most probable camera, and through it the colour of anything
 * else it recorded with its covariance, goes out. Knows nothing of files and of where in the picture things lie.
 */
package tintwright.reading.photo.camera;
