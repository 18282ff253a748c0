/**
 * Pictures of a garment as SVG: the true-scale pattern, the garment laid flat, and what one step did.
 *
 * <pre>{@code
 * SvgSheet.pattern(top, KnitTop.allowances(top)).writeTo(Path.of("top.svg"));
 * }</pre>
 *
 * <p>Everything is drawn in millimetres. How a line looks says what it means, after ISO 128, and a legend says so on
 * the sheet; colour only helps. The same garment gives the same bytes on every machine.
 *
 * <p>Nothing is computed here that belongs to the pattern: lengths, cut lines and notches come from the model. What a
 * drawing is made of has a package of its own, so that other files can be written of the same drawing.
 *
 * <p>Lines carry presentation attributes and no style sheet, because readers at cutting tables often know no CSS.
 */
@NullMarked
package org.oaktag.export.svg;

import org.jspecify.annotations.NullMarked;
