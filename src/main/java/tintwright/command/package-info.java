/**
 * The command line: words and options in, text or JSON out. Puts the commands of the stations together; knows the
 * bench and no window.
 */
package tintwright.command;
