/**
 * Bodies and drafts against figures and rules that others have published, each named beside its check.
 *
 * <p>Old books draft other garments, and every tape is laid a little differently; so most checks are bands. What they
 * would catch is a draft that no longer fits the body it is for.
 */
@NullMarked
package org.oaktag.laws.published;

import org.jspecify.annotations.NullMarked;
