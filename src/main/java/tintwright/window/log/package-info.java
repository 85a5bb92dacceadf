/**
 * The station of the log. The job in hand and the pages of the log come in; what was mixed, how it came out, and how to
 * make it again go out. Knows nothing of how a cup is worked.
 */
package tintwright.window.log;
