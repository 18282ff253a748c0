/**
 * Points, curves, paths and outlines in the plane, and the exact measures of them: lengths, areas, nearest points.
 *
 * <p>Lengths are millimetres in {@code double}, x runs to the right and y <b>down</b>, as on a drafting table seen from
 * the drafter. Angles are radians; a positive turn is clockwise on the table, and so is a positive area. A <b>curve</b>
 * is a straight segment or a cubic Bézier; a <b>path</b> is an immutable connected run of curves; an <b>outline</b> is
 * a closed path.
 *
 * <p>Everything here is an immutable value, safe to share between threads. {@code equals} is exact; closeness always
 * takes a tolerance. Nothing here knows cloth, pieces or seams: those live in the packages above, which build on this
 * one and never the other way round.
 */
@NullMarked
package org.oaktag.geometry;

import org.jspecify.annotations.NullMarked;
