/**
 * Pictures of a garment as SVG: the true-scale pattern, the garment laid flat, and what one step did.
 *
 * <pre>{@code
 * SvgSheet.pattern(top, Allowances.industryKnit(top)).writeTo(Path.of("top.svg"));
 * }</pre>
 *
 * <p>Everything is drawn in millimetres. How a line looks says what it means, after ISO 128, and a legend says so on the
 * sheet; colour only helps. The same garment gives the same bytes on every machine.
 *
 * <p>Nothing is computed here that belongs to the pattern: lengths, cut lines and notches come from the model. Drawing
 * and placing are chapters of their own below this package and no API.
 */
@NullMarked
package org.oaktag.export.svg;

import org.jspecify.annotations.NullMarked;
