/**
 * The job in hand as whoever stands elsewhere sees it and works on it ({@link tintwright.bench.top.BenchTop}), with its
 * clocks and ticks: acts come in, what lies on the bench goes out. Knows no page and no window.
 */
package tintwright.bench.top;
