/**
 * The shape of each file on disk, apart from the values inside the program: text comes in, values go out, and
 * back. A file that cannot be used becomes one sentence with its place and remedy.
 */
package tintwright.files;
