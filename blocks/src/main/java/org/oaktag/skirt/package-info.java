/**
 * Skirts: the straight block with its darts, the steps that shape it, and what a skirt must leave room for.
 *
 * <p>Nothing here has a privilege: it is written against the public types of the core, the body and the contract of a
 * block, as a maker's own block is. A half is drawn with its centre at x = 0 and the waist of its centre at y = 0, its
 * side to the right, in millimetres.
 */
@NullMarked
package org.oaktag.skirt;

import org.jspecify.annotations.NullMarked;
