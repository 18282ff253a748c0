/** What the lines of a draft and of the styles must look like, in figures, over the bodies of a survey. */
@NullMarked
package org.oaktag.laws.lines;

import org.jspecify.annotations.NullMarked;
