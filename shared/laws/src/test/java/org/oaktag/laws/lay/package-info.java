/** What holds of every lay. */
@NullMarked
package org.oaktag.laws.lay;

import org.jspecify.annotations.NullMarked;
