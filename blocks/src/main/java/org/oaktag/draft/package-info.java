/**
 * What blocks of several families are drafted with: the finding of the one unknown of a draft, the drawing of an
 * edge whose darts are closed, and what is laid on.
 */
@NullMarked
package org.oaktag.draft;

import org.jspecify.annotations.NullMarked;
