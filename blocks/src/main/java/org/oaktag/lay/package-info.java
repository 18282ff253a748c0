/**
 * The lay: the pieces of one cloth placed on the cutting table, and how much of the cloth to buy.
 *
 * <pre>{@code
 * CutList list = CutList.of(hooded);
 * Lay lay = Lay.of(list, shell, KnitTop.allowances(hooded), Spread.single(cm(150)).withNap(), Effort.standard());
 * lay.lengthToBuy();
 * }</pre>
 *
 * <p>x runs across the cloth, from the selvage or the fold, y along its length. The direction of the grain is kept: a
 * piece is laid with its grainline along the length, top up, or turned by half a turn where the cloth has no nap. What
 * is packed is the exact cut line, as chords whose error is added to the gap, never a box round it.
 *
 * <p>Nothing here knows a body or a particular garment, and nothing draws; a lay is drawn by an exporter.
 */
@NullMarked
package org.oaktag.lay;

import org.jspecify.annotations.NullMarked;
