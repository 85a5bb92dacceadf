package tintwright.reading.photo;

import tintwright.reading.photo.sheet.SheetSearch;

/**
 * A photo that was read by the sheet in it.
 *
 * @param readings the hull, called {@code hull}, and the chips and the dab under their names
 * @param found    where the sheet lies, whose it is
 */
public record SheetReadings(PhotoReadings readings, SheetSearch.Found found) {}
