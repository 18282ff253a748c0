/**
 * What the modules share for checking themselves: generators of curves, bodies and garments, published reference
 * tables, and assertions that speak of seams.
 *
 * <p>Of laws, only what any step must keep is stated here, so that it can be run against steps of others; the rest live
 * downstream, where every module can be seen.
 */
@NullMarked
package org.oaktag.testkit;

import org.jspecify.annotations.NullMarked;
