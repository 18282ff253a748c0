/**
 * Benchmarks: time, error and allocation of what the library does, in one run with the libraries one would otherwise
 * use.
 *
 * <p>Nothing here is asserted: a noisy machine would fail an honest build. Correctness is checked by the tests.
 */
@NullMarked
package org.oaktag.bench;

import org.jspecify.annotations.NullMarked;
