/**
 * The command line: words and options in, text or JSON out. Knows the bench and no window.
 */
package tintwright.command;
