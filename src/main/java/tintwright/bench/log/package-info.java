/**
 * What a person does with the log of the shop: cups and readings go in, the story of a boat, what came near a hull and what
 * to weigh to make it again come out. Knows the bench and the log's files, no face and no job in hand.
 */
package tintwright.bench.log;
