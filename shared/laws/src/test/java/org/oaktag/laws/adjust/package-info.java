/** The laws of the operations that suit any piece, on generated pieces and on those of real blocks. */
@NullMarked
package org.oaktag.laws.adjust;

import org.jspecify.annotations.NullMarked;
