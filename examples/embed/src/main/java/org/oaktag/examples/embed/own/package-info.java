/**
 * A block and an adjustment of somebody else's: written against the public API alone, held to the laws of the library.
 */
@NullMarked
package org.oaktag.examples.embed.own;

import org.jspecify.annotations.NullMarked;
