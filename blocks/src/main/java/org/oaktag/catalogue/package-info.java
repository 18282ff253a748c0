/**
 * The library's own blocks and steps, of every family: the one place that knows them all.
 *
 * <p>Recipes that are written down name their block and their steps by these catalogues, and so do menus; a maker's own
 * blocks and steps are added to them.
 */
@NullMarked
package org.oaktag.catalogue;

import org.jspecify.annotations.NullMarked;
