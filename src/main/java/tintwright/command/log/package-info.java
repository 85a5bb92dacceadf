/**
 * The commands of the log: boats, cups and what is asked of them come in, what the log keeps goes out. Knows no other
 * station.
 */
package tintwright.command.log;
