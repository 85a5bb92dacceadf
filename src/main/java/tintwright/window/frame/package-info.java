/**
 * What stands around every station. The stations to show come in; the shell with its strip, the first walk, and work
 * done off the screen's thread go out. Knows no station and no job.
 */
package tintwright.window.frame;
