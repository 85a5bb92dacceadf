/**
 * The memory of the shop: boats, places on them, what was measured, what was weighed and how it came out, in a
 * folder of plain JSON lines. What was said to be saved is on disk; what cannot be read is named and left alone.
 *
 * <p>Each bench appends to files of its own and never edits another's. The state is what all files together say,
 * in whatever order they are read, so any program that copies files can carry the folder between machines.
 * Knows no screen; the time of day comes in as a {@link java.time.Clock}.
 */
package tintwright.logbook;
