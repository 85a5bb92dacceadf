/**
 * The commands of match and cup: readings of a place and of chips come in, recipes and doses go out. Knows no other
 * station.
 */
package tintwright.command.cup;
