/**
 * The station of the plan and the cup. The place in hand and what the chips have taught come in; the mix, the next dose
 * and the cup as it was written down go out. Knows nothing of holes and of the log.
 */
package tintwright.window.cup;
