/**
 * What every step must keep, to be run against steps and blocks of your own as against those of the library.
 *
 * <p>What a particular adjustment does (what undoes it, what it commutes with) is stated where that adjustment is
 * tested.
 */
@NullMarked
package org.oaktag.testkit.laws;

import org.jspecify.annotations.NullMarked;
