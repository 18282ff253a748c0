/** A plain way to pack a cloth, to compare a lay with. */
@NullMarked
package org.oaktag.testkit.lay;

import org.jspecify.annotations.NullMarked;
