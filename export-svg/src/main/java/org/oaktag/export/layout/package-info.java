/**
 * Where things go on a sheet: boxes, a placer that keeps labels off lines and off each other, and the packing of
 * pieces.
 *
 * <p>Everything here is plane geometry in millimetres. What a label says and how a line is drawn is decided elsewhere.
 */
@NullMarked
package org.oaktag.export.layout;

import org.jspecify.annotations.NullMarked;
