/**
 * Entries as they stand on disk: an entry in, a line that is forced out and checked, and back, merged from the files of
 * every bench in whatever order they are read. Knows no boat and no cup: what an entry says is text to this room.
 */
package tintwright.logbook.disk;
