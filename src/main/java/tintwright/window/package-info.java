/**
 * The window. A start and the person's home folder come in; a window with every station goes out. It puts the stations
 * together and knows what each is called; what a station does is the station's own.
 */
package tintwright.window;
