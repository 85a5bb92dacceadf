/**
 * What was measured: a colour or a spectrum, how sure it is, and under which conditions. Raw instrument values
 * come in; readings with their uncertainty go out. Knows colour; not what the reading is of.
 */
package tintwright.reading;
