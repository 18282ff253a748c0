/**
 * A printout as PDF: vectors in millimetres under one matrix, lettering in embedded fonts, bookmarks, layers.
 *
 * <pre>{@code
 * PdfPages.of(Printout.tiled(top, allowances, Tiling.on(Paper.A4))).writeTo(Path.of("pattern-a4.pdf"));
 * }</pre>
 *
 * <p>What is drawn comes from {@link org.oaktag.export.sheet.Printout}, which the other exports are fed from as well.
 * Files, fonts and their subsets are Apache PDFBox's business. The operators on a page are written here, because PDFBox
 * writes coordinates to four decimals of a float, which is too coarse for sheets that are metres long.
 *
 * <p>The same printout gives the same bytes on every machine: nothing is compressed, because another build of zlib
 * compresses in another way, and no date or random identifier is written.
 */
@NullMarked
package org.oaktag.export.pdf;

import org.jspecify.annotations.NullMarked;
