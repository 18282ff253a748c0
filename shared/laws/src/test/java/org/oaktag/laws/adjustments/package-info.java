/** The laws that drafts and adjustments of tops obey, on bodies drawn from a survey. */
@NullMarked
package org.oaktag.laws.adjustments;

import org.jspecify.annotations.NullMarked;
