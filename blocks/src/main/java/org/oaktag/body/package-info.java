/**
 * For whom a garment is made: body measurements by their ISO 8559-1 names, the sizes that standards name, and the ease
 * that a maker adds.
 *
 * <p>A body is measured, never guessed in silence: a measure that was not taken is derived by a rule from the published
 * tables of a body survey, and {@link org.oaktag.body.BodyMeasurements#derived()} says which ones and how. What cannot
 * be a body is refused, with the slip of the unit that explains it where there is one.
 *
 * <p>No piece is drawn here and no file is read. The cloth and its stretch belong to {@code org.oaktag.garment}.
 */
@NullMarked
package org.oaktag.body;

import org.jspecify.annotations.NullMarked;
