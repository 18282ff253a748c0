/** What holds of every order of sewing. */
@NullMarked
package org.oaktag.laws.sewing;

import org.jspecify.annotations.NullMarked;
