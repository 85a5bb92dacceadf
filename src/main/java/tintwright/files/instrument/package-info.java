/**
 * What instruments and spreadsheets write: tables, CGATS and CxF3 in, named readings and chips out. A file that cannot be
 * used becomes one sentence with its place. Knows none of our own files but the shape of a chip.
 */
package tintwright.files.instrument;
