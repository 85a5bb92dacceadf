/**
 * The command of the fill: holes and weather come in, batches, steps and catalyst go out. Knows no other station.
 */
package tintwright.command.holes;
