/**
 * The contract of a block: what every family of garments answers, the library's own and a maker's alike, and a style,
 * which is a block with its ease, its cloth and its steps.
 *
 * <p>No family is known here: the knit top lives in {@code org.oaktag.blocks}, and the catalogue of the library's own
 * beside it.
 */
@NullMarked
package org.oaktag.block;

import org.jspecify.annotations.NullMarked;
