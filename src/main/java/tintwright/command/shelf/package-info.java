/**
 * The commands of the shelf: what stands there, what to buy and what chips have taught. Readings of chips come in; a
 * shelf that knows them goes out. Knows no other station.
 */
package tintwright.command.shelf;
