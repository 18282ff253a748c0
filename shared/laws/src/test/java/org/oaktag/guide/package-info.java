/** The code that the guides show, compiled and tried, and the check that they show it as it is. */
@NullMarked
package org.oaktag.guide;

import org.jspecify.annotations.NullMarked;
