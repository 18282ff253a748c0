/**
 * Curves, paths and outlines for property tests, hard cases included, and the figures they are checked against.
 *
 * <p>Nothing here computes what it checks: generators only place points.
 */
@NullMarked
package org.oaktag.testkit.curves;

import org.jspecify.annotations.NullMarked;
