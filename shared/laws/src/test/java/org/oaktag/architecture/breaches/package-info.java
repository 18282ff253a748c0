/** A house that breaks every rule, one class for one breach or a few; nobody lives here. */
@NullMarked
package org.oaktag.architecture.breaches;

import org.jspecify.annotations.NullMarked;
