/** Laws of skirts, over bodies of all kinds. */
@NullMarked
package org.oaktag.laws.skirt;

import org.jspecify.annotations.NullMarked;
