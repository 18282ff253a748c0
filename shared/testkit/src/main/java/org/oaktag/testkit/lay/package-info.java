/** What to compare a lay with: a plain way to pack a cloth, and a proof of what no lay can reach. */
@NullMarked
package org.oaktag.testkit.lay;

import org.jspecify.annotations.NullMarked;
