/**
 * Catalyst and the time it leaves: what was chosen and the temperature in, a
 * {@link tintwright.fill.catalyst.CatalystDose} that never stands without basis, limit and caution, and a
 * {@link tintwright.fill.catalyst.WorkingTime} out. Knows no plan and no day.
 */
package tintwright.fill.catalyst;
