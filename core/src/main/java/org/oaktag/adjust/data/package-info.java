/**
 * Values as data that any file format can hold: numbers, words, flags, lists and fields by name.
 *
 * <p>A record of amounts is written by the names of its components and read back through its own constructor, so that
 * what is read obeys every rule that a program must. No format lives here, and no file is read or written.
 */
@NullMarked
package org.oaktag.adjust.data;

import org.jspecify.annotations.NullMarked;
