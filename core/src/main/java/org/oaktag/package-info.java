/**
 * The one exception of the library. Everything else lives in a package below this one, so that no code has to be
 * repeated for the way in which a request is refused.
 */
@NullMarked
package org.oaktag;

import org.jspecify.annotations.NullMarked;
