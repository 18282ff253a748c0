/** Laws of recipes: what holds whatever steps are done in whatever order, and what a recipe is as a value. */
@NullMarked
package org.oaktag.laws.recipes;

import org.jspecify.annotations.NullMarked;
