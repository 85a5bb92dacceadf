/**
 * The commands that read a hull: photos and the sheet that lies in them come in, readings go out. Knows no other
 * station.
 */
package tintwright.command.hull;
