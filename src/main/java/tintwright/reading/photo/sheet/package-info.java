/**
 * The printed sheet that lies on the hull while the photo is taken: where everything on it is
 * ({@link tintwright.reading.photo.sheet.SheetLayout}), the codes at its corners
 * ({@link tintwright.reading.photo.sheet.CornerCode}), what a person laid on it
 * ({@link tintwright.reading.photo.sheet.SheetContents}) and where it lies in a photo
 * ({@link tintwright.reading.photo.sheet.SheetFinder}: found, or missed for a reason that says what to do). The reading
 * itself is {@code SheetReader}, one room up; the door for both faces is {@code SheetBench}. The library that writes and finds the codes stays in here.
 */
package tintwright.reading.photo.sheet;
