/**
 * The styles that the gallery of the night crew shows, as values that can be made in every size.
 *
 * <p>The scripts in {@code examples/scripts} make garments like these one at a time, for a reader who tries things out.
 */
@NullMarked
package org.oaktag.examples.gallery;

import org.jspecify.annotations.NullMarked;
