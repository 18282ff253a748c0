/**
 * What a pattern on paper shows, whatever file it is printed from: each piece with its lines and labels, the header,
 * and which cloth is shown how.
 *
 * <p>The drawings are made of the values of {@link org.oaktag.export.drawing}. Nothing is computed here that belongs to
 * the pattern, and no file is written.
 */
@NullMarked
package org.oaktag.export.sheet;

import org.jspecify.annotations.NullMarked;
