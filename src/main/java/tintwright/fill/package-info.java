/**
 * From holes to grams: a {@link tintwright.fill.FillJob} of repairs in, a {@link tintwright.fill.FillPlan} of grams,
 * paste, wax and catalyst out, cup by cup, with the working time, the order of the job, the grit ladder and the
 * cautions. Knows no colour, no screen, no file and no clock.
 */
package tintwright.fill;
