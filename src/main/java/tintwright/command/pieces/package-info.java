/**
 * What every command is built from: options and figures as typed come in, an answer in words and for machines goes
 * out. Knows no station.
 */
package tintwright.command.pieces;
