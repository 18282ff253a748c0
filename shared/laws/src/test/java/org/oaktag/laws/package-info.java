/** The laws: what holds for every curve, adjustment and seam, and how the house is built. */
@NullMarked
package org.oaktag.laws;

import org.jspecify.annotations.NullMarked;
