/**
 * The phone's door in the window: one press opens it and shows the code, the next closes it. What a phone does goes
 * through the same models as what is pressed here.
 */
package tintwright.window.phone;
