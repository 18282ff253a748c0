/** Laws of the cut line, checked by the JTS Topology Suite. */
@NullMarked
package org.oaktag.laws.garment;

import org.jspecify.annotations.NullMarked;
