/** The laws of the geometry, on curves of every shape, and its figures beside those of independent libraries. */
@NullMarked
package org.oaktag.laws.geometry;

import org.jspecify.annotations.NullMarked;
