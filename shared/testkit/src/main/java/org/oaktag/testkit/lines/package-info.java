/** The figures of drafted lines over many bodies: radii, runs, shares. What they must be is said in the laws. */
@NullMarked
package org.oaktag.testkit.lines;

import org.jspecify.annotations.NullMarked;
