/**
 * Metric and US units: factors by their definitions, what a person types turned into millimetres, grams, millilitres
 * and degrees Celsius, and those written out again. A leaf: every room may use it, it uses none. All amounts inside
 * the program are metric.
 */
package tintwright.units;
