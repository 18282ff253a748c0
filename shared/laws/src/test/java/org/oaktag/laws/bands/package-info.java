/** The laws of what is fitted to an edge: hem bands, cuffs, hoods and their linings. */
@NullMarked
package org.oaktag.laws.bands;

import org.jspecify.annotations.NullMarked;
