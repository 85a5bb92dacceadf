/**
 * From holes to grams: cavities in, grams of gel coat, paste, wax and catalyst out, with the working time, the
 * order of the job, the grit ladder and the cautions. Knows no colour, no screen, no file and no clock.
 */
package tintwright.fill;
