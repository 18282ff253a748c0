/**
 * What the modules share for checking themselves: generators of curves, bodies and garments, published reference
 * tables, and assertions that speak of seams.
 *
 * <p>No law is stated here; laws live downstream, where every module can be seen.
 */
@NullMarked
package org.oaktag.testkit;

import org.jspecify.annotations.NullMarked;
