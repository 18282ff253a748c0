/**
 * The figures of the guides in {@code docs/}: every line in them is drawn by the library, from a real block.
 *
 * <p>A test draws them again and compares, so that no text is illustrated by what the library no longer does.
 */
@NullMarked
package org.oaktag.examples.figures;

import org.jspecify.annotations.NullMarked;
