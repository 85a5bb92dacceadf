/**
 * What is to be filled: sizes measured at the hull in, a {@link tintwright.fill.repair.RepairLine} with its volume, its
 * mix and what of it gel coat can mend ({@link tintwright.fill.repair.Triage}) out. Knows no catalyst, no batch and no
 * clock.
 */
package tintwright.fill.repair;
