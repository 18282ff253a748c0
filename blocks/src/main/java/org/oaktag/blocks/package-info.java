/**
 * Drafts: how a block is drawn from the measures of a body, and the shapes that drafts and adjustments share, such as
 * an armhole, a sleeve cap or a hood panel.
 *
 * <p>What is done to a finished block lives in {@code org.oaktag.adjustments}; the body itself in
 * {@code org.oaktag.body}.
 */
@NullMarked
package org.oaktag.blocks;

import org.jspecify.annotations.NullMarked;
