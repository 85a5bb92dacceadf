/**
 * The job in hand: what is on a bench ({@link tintwright.bench.job.Job}), as an order the fill's engine takes, and on disk,
 * so that either face opens what the other left. Knows no screen and no page.
 */
package tintwright.bench.job;
