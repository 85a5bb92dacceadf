/**
 * The job in hand. Changes come in; the job as it stands, what its chips have taught, undo, and the open log go
 * out. Knows no control and no station.
 */
package tintwright.window.job;
