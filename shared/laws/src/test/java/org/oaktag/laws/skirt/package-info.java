/** The skirt: what holds of it on every body, and what others published of skirts. */
@NullMarked
package org.oaktag.laws.skirt;

import org.jspecify.annotations.NullMarked;
