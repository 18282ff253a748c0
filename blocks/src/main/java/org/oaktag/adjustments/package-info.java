/**
 * Adjustments of tops: each is a {@link org.oaktag.adjust.Step} with amounts, made by a static method that reads as a
 * phrase: {@code top.adjust(lowerArmhole(mm(18)))}.
 *
 * <p>The shapes that they redraw live in {@code org.oaktag.blocks}; steps that suit any piece live in
 * {@code org.oaktag.adjust}.
 */
@NullMarked
package org.oaktag.adjustments;

import org.jspecify.annotations.NullMarked;
