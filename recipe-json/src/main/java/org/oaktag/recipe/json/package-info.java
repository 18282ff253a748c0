/**
 * Recipes and bodies as text in JSON (RFC 8259), to be kept, sent and compared.
 *
 * <p>What is written comes back exactly, and the same value is always the same text. What is read is checked by the
 * same rules as what a program makes: a field, a version or a step that is not known is refused with what is. Text goes
 * in and out; files are the caller's.
 */
@NullMarked
package org.oaktag.recipe.json;

import org.jspecify.annotations.NullMarked;
