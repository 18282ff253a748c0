/**
 * In which order a garment is sewn, and with which stitch.
 *
 * <p>Everything is derived from the seams of the garment and the cloths of its pieces; no particular garment is known
 * here.
 */
@NullMarked
package org.oaktag.sewing;

import org.jspecify.annotations.NullMarked;
