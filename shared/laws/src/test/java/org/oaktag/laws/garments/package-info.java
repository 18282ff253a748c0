/** The laws of whole garments: every grown body of a survey gets a top whose seams are true, or a reason why not. */
@NullMarked
package org.oaktag.laws.garments;

import org.jspecify.annotations.NullMarked;
