/** A slider that drags an amount and draws the garment anew at each move. Knows the model and Java 2D, no exporter. */
@NullMarked
package org.oaktag.examples.embed.slider;

import org.jspecify.annotations.NullMarked;
