/**
 * How a garment becomes another: a {@link org.oaktag.adjust.Step} is an adjustment with a name and amounts, whose
 * effect is found by comparing the garment before and after and is written into the history; a
 * {@link org.oaktag.adjust.Recipe} is a list of steps that can be played again.
 *
 * <p>Only what suits any piece lives here. What a neckline or a sleeve is, the blocks above know.
 */
@NullMarked
package org.oaktag.adjust;

import org.jspecify.annotations.NullMarked;
