/**
 * Units at the public surface: {@link org.oaktag.measure.Length}, {@link org.oaktag.measure.Angle} and
 * {@link org.oaktag.measure.Percent}.
 *
 * <p>A maker reads and writes these; the geometry below computes in plain {@code double} millimetres and radians. No
 * body measure and no garment is known here.
 */
@NullMarked
package org.oaktag.measure;

import org.jspecify.annotations.NullMarked;
