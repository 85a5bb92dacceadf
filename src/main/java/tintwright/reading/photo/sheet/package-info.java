/**
 * The printed sheet that lies on the hull while the photo is taken: where everything on it is
 * ({@link tintwright.reading.photo.sheet.SheetLayout}), the codes at its corners
 * ({@link tintwright.reading.photo.sheet.CornerCode}). The library that writes and finds the codes stays in here.
 */
package tintwright.reading.photo.sheet;
