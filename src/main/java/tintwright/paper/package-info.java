/**
 * What is handed over on paper or on a phone: a {@link tintwright.paper.Sheet} of plain blocks in, one PDF or one
 * HTML page out. Knows how to set words, tables and tick boxes on a page; the engine's rooms decide what they say.
 * PDFBox stays in here.
 */
package tintwright.paper;
