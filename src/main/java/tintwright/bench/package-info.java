/**
 * One class for each thing a person does: the only door to the engine, for the window and for the command
 * line alike.
 */
package tintwright.bench;
