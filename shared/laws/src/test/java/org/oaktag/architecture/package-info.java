/**
 * The rules of the house, checked on the compiled classes.
 *
 * <p>Beside the rules stands {@code breaches}, a small house that breaks every one of them, so that a rule which can no
 * longer fail is noticed.
 */
@NullMarked
package org.oaktag.architecture;

import org.jspecify.annotations.NullMarked;
